/** How much was tried, and what came of it. */
import { type Chain, countStates } from './chain';
import type { Escape } from './escape';
import type { LeakCount } from './leaks';
import type { Model } from './model';
import { type SlipKind, slipKinds, type TriedSlip } from './slip';

/** Slips of one kind by what came of them. */
export interface SlipCount {
  readonly kind: SlipKind;
  readonly tried: number;
  readonly caughtAtOnce: number;
  readonly caughtLater: number;
  readonly harmless: number;
  readonly critical: number;
  /** Of the critical ones, those where nothing is wrong on the car yet and somebody acts without knowing. */
  readonly blind: number;
}

/** The numbers of a proof. */
export interface Statistics extends DayStatistics, LeakCount {}

/** Those of the day gone through. */
export interface DayStatistics {
  readonly valves: number;
  readonly steps: number;
  readonly rules: number;
  readonly runs: number;
  readonly states: number;
  readonly slips: readonly SlipCount[];
  /** Share of the slips that matter (all but the harmless) which somebody notices before harm; 1 if none matters. */
  readonly shareCaught: number;
  readonly situations: number;
  readonly longestWayOut: number;
  readonly firstActFar: number;
}

/** Count. */
export function statisticsOf(
  model: Model,
  rules: number,
  chain: Chain,
  slips: readonly TriedSlip[],
  wayOut: Escape | undefined,
): DayStatistics {
  const counts = slipKinds.map((kind) => countOf(kind, slips));
  const matter = counts.reduce((sum, each) => sum + each.tried - each.harmless, 0);
  const caught = counts.reduce((sum, each) => sum + each.caughtAtOnce + each.caughtLater, 0);
  return {
    valves: model.valves.length,
    steps: [...chain.of.values()].reduce((sum, runs) => sum + (runs[0]?.procedure.steps.length ?? 0), 0),
    rules,
    runs: chain.runs.length,
    states: countStates(chain),
    slips: counts,
    shareCaught: matter === 0 ? 1 : caught / matter,
    situations: wayOut?.tried ?? 0,
    longestWayOut: wayOut?.longest?.acts.length ?? 0,
    firstActFar: wayOut?.far.length ?? 0,
  };
}

function countOf(kind: SlipKind, slips: readonly TriedSlip[]): SlipCount {
  const outcomes = slips.flatMap(({ slip, outcome }) => (slip.kind === kind ? [outcome] : []));
  const of = (name: (typeof outcomes)[number]['class']) =>
    outcomes.filter((outcome) => outcome.class === name).length;
  return {
    kind,
    tried: outcomes.length,
    caughtAtOnce: of('caught at once'),
    caughtLater: of('caught later'),
    harmless: of('harmless'),
    critical: of('critical'),
    blind: outcomes.filter((outcome) => outcome.class === 'critical' && outcome.blind).length,
  };
}
