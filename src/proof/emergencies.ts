/** Emergencies held against the rules: none of them does harm of its own, whatever the car was doing when it began. */
import type { Procedures } from '../procedure/procedure';
import type { Chain, Run } from './chain';
import { breachesAt, type RuleBook } from './check';
import type { Flows } from './flows';
import { allKnown } from './knowing';
import type { Model } from './model';
import { simulate } from './simulate';
import { at, type State, situationOf } from './state';
import { steam } from './values';

/** Runs of the emergencies from every state with steam up at the end of a procedure, everything being known. */
export function emergencyRuns(
  model: Model,
  flows: Flows,
  book: RuleBook,
  procedures: Procedures,
  chain: Chain,
): readonly Run[] {
  const starts = new Map<string, { readonly state: State; readonly follows: Run }>();
  for (const run of chain.runs) {
    if (at(run.trace.end, model.slots.steam) === steam.none) continue;
    const state = allKnown(model, run.trace.end);
    const key = situationOf(model, state);
    if (!starts.has(key)) starts.set(key, { state, follows: run });
  }
  return procedures
    .filter((procedure) => procedure.phase === 'emergency')
    .flatMap((procedure) =>
      [...starts.values()].map(({ state, follows }): Run => {
        const trace = simulate(model, flows, procedure, state);
        const breaches = trace.moments.flatMap((moment) =>
          breachesAt(model, flows, book, procedure, {
            ...moment,
            before: allKnown(model, moment.before),
            after: allKnown(model, moment.after),
            during: allKnown(model, moment.during),
          }),
        );
        return { procedure, follows, trace, brokenOffAt: undefined, breaches, snags: [] };
      }),
    );
}
