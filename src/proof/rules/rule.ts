/** What a rule is: one thing that must never be so on the car, or never be done without knowing something. */
import type { PartId } from '../../car/car';
import type { DiagnosticCode } from '../../diagnostic/catalogue';
import type { FactKey } from '../../procedure/facts';
import type { Procedure, Step } from '../../procedure/procedure';
import type { Flow, Flows } from '../flows';
import type { Model } from '../model';
import { burns, type State } from '../state';

/** A step as the rules look at it. */
export interface StepView {
  readonly model: Model;
  readonly flows: Flows;
  readonly procedure: Procedure;
  readonly step: Step;
  readonly before: State;
  readonly during: State;
  readonly after: State;
  readonly lighting: readonly PartId[];
  readonly fedBefore: readonly PartId[];
  readonly fedAfter: readonly PartId[];
  /** Burners that burn after the step and did not before. */
  readonly newlyLit: readonly PartId[];
  /** Main burners to which fuel comes after the step and did not before. */
  readonly newlyFedMains: readonly PartId[];
}

/** The end of a procedure as the rules look at it. */
export interface EndView {
  readonly model: Model;
  readonly flows: Flows;
  readonly procedure: Procedure;
  readonly state: State;
  /** The car is left for good after this procedure. */
  readonly parked: boolean;
}

/** The parts of a car a rule is about. */
export type RuleGroup = 'water' | 'fuel' | 'steam' | 'people' | 'completeness';

/**
 * A rule. The texts are plain words, lower case, without a full stop. A check returns the state that makes the step
 * unsafe, in plain words, or nothing.
 */
export interface Rule {
  /** Its name, by which a car may overrule it. */
  readonly id: string;
  readonly code: DiagnosticCode;
  readonly group: RuleGroup;
  /** The rule itself. */
  readonly title: string;
  /** Why it is a rule. */
  readonly reason: string;
  /** What would mend a breach. */
  readonly mend: string;
  /** What the rule asks whether somebody knows; the model keeps only knowledge that some rule asks for. */
  readonly asks: readonly FactKey[];
  /** It can be broken by a step that only looks, listens or says something; the others are not asked then. */
  readonly onQuietSteps?: true;
  readonly appliesTo: (model: Model) => boolean;
  readonly atStep?: (view: StepView) => string | undefined;
  readonly atEnd?: (view: EndView) => string | undefined;
  readonly ofCar?: (model: Model) => string | undefined;
}

/** Every car. */
export const everyCar = (): boolean => true;

const nobody: readonly PartId[] = [];

/** Make the view of a step. */
export function viewOf(
  given: Pick<
    StepView,
    'model' | 'flows' | 'procedure' | 'step' | 'before' | 'during' | 'after' | 'lighting'
  >,
): StepView {
  const { model, flows, before, after } = given;
  const was: Flow = flows.in(before);
  const is: Flow = flows.in(after);
  const lit = model.burners.filter((id) => burns(model, after, id) && !burns(model, before, id));
  const fed = was === is ? nobody : model.mains.filter((id) => is.fed.includes(id) && !was.fed.includes(id));
  return { ...given, fedBefore: was.fed, fedAfter: is.fed, newlyLit: lit, newlyFedMains: fed };
}
