/** A car together with the issue before it, where its record of issues names that one's spec or one was asked for. */
import { dirname, join } from 'node:path';
import { bad, type Diagnostic, good, type Outcome, type Spot } from '../diagnostic/diagnostic';
import type { ProvenCar, ReadyCar } from '../kettlebook';
import type { Opened, OpenedProven } from './openCar';

/** A car, and the issue before it. */
export interface IssueOf<C extends ProvenCar> extends Opened<C> {
  readonly earlier?: Opened<C>;
}

/** Cars that papers can be made of. */
export type OpenedIssue = IssueOf<ReadyCar>;

/** What was asked for on the command line. */
export interface IssueAsked {
  readonly spec: string;
  /** The spec of the issue to mark changes against, instead of the one that the record of issues names. */
  readonly since?: string | undefined;
}

/** Open both with `open`. The issue before that one is not looked for: it changes nothing in these papers. */
export async function openIssue<C extends ProvenCar>(
  { spec, since }: IssueAsked,
  open: (spec: string) => Promise<Outcome<Opened<C>>>,
): Promise<Outcome<IssueOf<C>>> {
  const opened = await open(spec);
  if (!opened.ok) return opened;
  const named = since === undefined ? namedBefore(opened.value, spec) : { file: since };
  if (named === undefined) return opened;
  const earlier = await open(named.file);
  if (!earlier.ok) return bad(earlier.problems.map((problem) => ofOlderSpec(problem, named)));
  // what its figures bring to light later is told of it in the same way
  const told: OpenedProven['told'] = (problems) =>
    earlier.value.told(problems).map((problem) => ofOlderSpec(problem, named));
  return good({ ...opened.value, earlier: { ...earlier.value, told } }, opened.remarks);
}

interface NamedSpec {
  readonly file: string;
  /** Where the newer spec names it. */
  readonly at?: Spot;
}

/** The newest earlier issue whose spec is kept. */
function namedBefore({ ready: { car } }: OpenedProven, spec: string): NamedSpec | undefined {
  const { earlier = [] } = car.spec.issue;
  const index = earlier.findIndex((issue) => issue.spec !== undefined);
  const name = earlier[index]?.spec;
  if (name === undefined) return undefined;
  return { file: join(dirname(spec), name), at: car.spotOf(`issue.earlier.${index}.spec`) };
}

function ofOlderSpec(problem: Diagnostic, { file, at }: NamedSpec): Diagnostic {
  const without = at === undefined ? 'leave `--since` out' : 'take `spec` out of the record of issues';
  const note = `The manual marks what reads otherwise than in \`${file}\`. To make the papers without these marks, ${without}.`;
  const place = problem.at ?? at;
  return {
    ...problem,
    ...(place === undefined ? {} : { at: place }),
    notes: [...(problem.notes ?? []), note],
  };
}
