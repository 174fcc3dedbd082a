/** Emergencies held against the rules: none of them does harm of its own, whatever the car was doing when it began. */
import type { Procedures } from '../procedure/procedure';
import type { Chain, Run } from './chain';
import { brokenAt } from './check';
import { type Experience, Question } from './experience';
import { allKnown, viewAllKnown } from './knowing';
import { at, type State, situationOf } from './state';
import { steam } from './values';

/** Runs of the emergencies from every state with steam up at the end of a procedure, everything being known. */
export function emergencyRuns(experience: Experience, procedures: Procedures, chain: Chain): readonly Run[] {
  const { model, book } = experience;
  const broken = new Question((view) => brokenAt(book, viewAllKnown(view)));
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
        const trace = experience.leg(procedure, state);
        const breaches = trace.moments.flatMap((moment) =>
          experience.ask(broken, procedure, moment).answer.map((found) => ({
            ...found,
            procedure,
            step: moment.step,
            state: allKnown(model, moment.after),
          })),
        );
        return { procedure, follows, trace, brokenOffAt: undefined, breaches, snags: [] };
      }),
    );
}
