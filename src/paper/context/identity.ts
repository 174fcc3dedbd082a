/** Which car, whose, and which issue: what every paper carries. */
import type { CarSpec } from '../../spec/schema/carSpec';
import type { Phrases } from '../phrase';

/** One issue of the spec. */
export interface IssueContext {
  readonly letter: string;
  readonly date: string;
  readonly changed: readonly string[];
}

/** What every template knows of the car. */
export interface IdentityContext {
  readonly name: string;
  readonly make: string;
  readonly model: string;
  readonly year: number;
  readonly body: string;
  readonly seats: number;
  readonly number: string;
  /** Whether the car has a number at all that the spec tells. */
  readonly hasNumber: boolean;
  readonly invented: boolean;
  readonly keeper: string;
  readonly telephone: string;
  /** Fire and ambulance; empty if the spec says none. */
  readonly emergencyNumber: string;
  readonly ask: string;
  readonly issue: IssueContext;
  /** The issue on hand and those before it, newest first. */
  readonly issues: readonly IssueContext[];
  readonly story: readonly string[];
  /** What this car does that others do not. */
  readonly different: readonly string[];
}

/** What every template knows of the car. */
export function identityContext(spec: CarSpec, phrases: Phrases): IdentityContext {
  const issueOf = (issue: { letter: string; date: string; changed: readonly string[] }): IssueContext => ({
    letter: issue.letter,
    date: phrases.date(issue.date),
    changed: issue.changed,
  });
  return {
    name: spec.car.name,
    make: spec.car.make,
    model: spec.car.model,
    year: spec.car.year,
    body: spec.car.body,
    seats: spec.car.seats,
    number: spec.car['number-on-car'] ?? phrases.notKnown,
    hasNumber: spec.car['number-on-car'] !== undefined,
    invented: spec.car.invented ?? false,
    keeper: spec.keeper.name,
    telephone: spec.keeper.telephone ?? '',
    emergencyNumber: spec.keeper['emergency-number'] ?? '',
    ask: spec.keeper.ask ?? '',
    issue: issueOf(spec.issue),
    issues: [spec.issue, ...(spec.issue.earlier ?? [])].map(issueOf),
    story: spec.car.story ?? [],
    different: spec.different ?? [],
  };
}
