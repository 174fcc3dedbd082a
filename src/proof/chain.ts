/**
 * The whole day: every procedure is stepped through from every state that the procedures before it can leave, over every
 * order in which they can follow each other, until no new state comes up.
 */
import type { Procedure, Procedures } from '../procedure/procedure';
import type { Breach, Snag } from './check';
import type { Day } from './day';
import type { Experience } from './experience';
import type { WhenInStep } from './halfDone';
import { afterNight } from './lapses';
import type { Model } from './model';
import { at, keyOf, parkedState, type State } from './state';
import type { Moment, Trace } from './trace';
import { lowLevel } from './truths';
import { steam } from './values';

/** A procedure stepped through from one of the states in which it can begin. */
export interface Run {
  readonly procedure: Procedure;
  /** What came before; nothing at the very beginning. */
  readonly follows: Run | undefined;
  readonly trace: Trace;
  /** The reading that sends the reader elsewhere before the end, if the run ends with one. */
  readonly brokenOffAt: number | undefined;
  readonly breaches: readonly Breach[];
  readonly snags: readonly Snag[];
  /** Where the day was broken off, for an emergency and what is done after one. */
  readonly struckAt?: StruckAt;
}

/** Where in a day an emergency begins. */
export interface StruckAt {
  readonly procedure: Procedure;
  /** How many of its steps were done. */
  readonly done: number;
  readonly when: WhenInStep;
}

/** Everything that can happen in a day. */
export interface Chain {
  readonly runs: readonly Run[];
  /** Runs of each procedure, by its id. */
  readonly of: ReadonlyMap<string, readonly Run[]>;
  /** Procedures that nothing leads to. */
  readonly unreached: readonly Procedure[];
}

/** More states than this at the beginning of procedures, and something feeds on itself. */
const mostRuns = 4000;

/** Step through every procedure of a day. */
export function chain(experience: Experience, procedures: Procedures, day: Day): Chain {
  const { model } = experience;
  const daily = procedures.filter((procedure) => procedure.phase !== 'emergency');
  const runs: Run[] = [];
  const seen = new Set<string>();
  const waiting: { procedure: Procedure; start: State; follows: Run | undefined }[] = [];
  const first = daily[0];
  if (first !== undefined) waiting.push({ procedure: first, start: parkedState(model), follows: undefined });
  for (let next = waiting.shift(); next !== undefined && runs.length < mostRuns; next = waiting.shift()) {
    const key = `${next.procedure.id} ${keyOf(next.start)}`;
    if (seen.has(key)) continue;
    seen.add(key);
    const run = oneRun(experience, day, daily, next);
    runs.push(run);
    const end = day.nightAfter.has(run.procedure.id) ? afterNight(model, run.trace.end) : run.trace.end;
    for (const procedure of successors(model, daily, run, day))
      waiting.push({ procedure, start: end, follows: run });
  }
  const of = new Map(
    procedures.map((procedure) => [procedure.id, runs.filter((run) => run.procedure.id === procedure.id)]),
  );
  return { runs, of, unreached: daily.filter((procedure) => of.get(procedure.id)?.length === 0) };
}

/** Procedures that can follow a run. In place of one that is left out with steam up come those that follow it. */
function successors(model: Model, daily: Procedures, run: Run, day: Day): Procedures {
  const steamUp = at(run.trace.end, model.slots.steam) === steam.working;
  const after = (id: string): Procedures =>
    daily
      .filter((procedure) => procedure.after.includes(id))
      .flatMap((procedure) =>
        steamUp && day.leftOutWithSteamUp.has(procedure.id) ? after(procedure.id) : [procedure],
      );
  return after(run.procedure.id).filter(
    (procedure) => run.brokenOffAt === undefined || procedure.id === day.levelTooLow,
  );
}

function oneRun(
  experience: Experience,
  day: Day,
  daily: Procedures,
  { procedure, start, follows }: { procedure: Procedure; start: State; follows: Run | undefined },
): Run {
  const full = experience.leg(procedure, start);
  const remedy = daily.find((each) => each.id === day.levelTooLow);
  const low =
    remedy?.after.includes(procedure.id) === true
      ? full.moments.findIndex((moment) => moment.hitches.some((hitch) => hitch.what === lowLevel))
      : -1;
  const trace = low < 0 ? full : cutAt(full, low);
  const parked = day.parkedAfter.has(procedure.id);
  const atEnd = low < 0 ? experience.brokenAtEnd(procedure, trace.end, parked).answer : [];
  const breaches = [
    ...trace.moments.flatMap(({ step, after: state }, index) =>
      full.found(index).map((found) => ({ ...found, procedure, step, state })),
    ),
    ...atEnd.map((found) => ({ ...found, procedure, step: procedure.steps.at(-1), state: trace.end })),
  ];
  return {
    procedure,
    follows,
    trace,
    brokenOffAt: low < 0 ? undefined : low,
    breaches,
    snags: low < 0 ? snags(trace) : snags(trace).filter((snag) => snag.hitch.what !== lowLevel),
  };
}

function cutAt(trace: Trace, last: number): Trace {
  const moments: readonly Moment[] = trace.moments.slice(0, last + 1);
  return { ...trace, moments, end: moments.at(-1)?.after ?? trace.start };
}

/** What did not go as written. That something is so already is no fault: a step may make sure. */
export function snags({ procedure, moments }: Trace): readonly Snag[] {
  return moments.flatMap(({ step, hitches }) =>
    hitches.flatMap((hitch) => (hitch.kind === 'idle' ? [] : [{ procedure, step, hitch }])),
  );
}

/** How many different states were met in a day, at the ends of steps. */
export function countStates({ runs }: Chain): number {
  return new Set(runs.flatMap(({ trace }) => trace.moments.map((moment) => keyOf(moment.after)))).size;
}

/** What led to a run, nearest first, in the titles of the procedures. */
export function cameBy(run: Run, most = 3): readonly string[] {
  const titles: string[] = [];
  for (let before = run.follows; before !== undefined && titles.length < most; before = before.follows)
    titles.push(before.procedure.title);
  return titles;
}
