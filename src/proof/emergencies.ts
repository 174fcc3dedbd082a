/**
 * Emergencies held against the rules: none of them does harm of its own, whatever the car was doing when it began; and
 * where the fire is lit again after one, the procedure that lights it can be carried out from there.
 */
import type { Procedure, Procedures } from '../procedure/procedure';
import { type Chain, type Run, snags } from './chain';
import { brokenAt } from './check';
import type { Day } from './day';
import { type Experience, Question } from './experience';
import { allKnown, viewAllKnown } from './knowing';
import { at, burns, type State, situationOf } from './state';
import { steam } from './values';

/** Runs of the emergencies from every state with steam up at the end of a procedure, everything being known. */
export function emergencyRuns(
  experience: Experience,
  procedures: Procedures,
  chain: Chain,
  day: Day,
): readonly Run[] {
  const { model, book } = experience;
  const broken = new Question((view) => brokenAt(book, viewAllKnown(view)));
  const starts = new Map<string, { readonly state: State; readonly follows: Run }>();
  for (const run of chain.runs) {
    if (at(run.trace.end, model.slots.steam) === steam.none) continue;
    const state = allKnown(model, run.trace.end);
    const key = situationOf(model, state);
    if (!starts.has(key)) starts.set(key, { state, follows: run });
  }
  const stepped = (procedure: Procedure, state: State, follows: Run): Run => {
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
  };
  return procedures
    .filter((procedure) => procedure.phase === 'emergency')
    .flatMap((procedure) => {
      const lighting = procedures.find(({ id }) => id === day.litAgain.get(procedure.id));
      return [...starts.values()].flatMap(({ state, follows }): readonly Run[] => {
        const run = stepped(procedure, state, follows);
        if (lighting === undefined || !model.mains.some((fire) => burns(model, state, fire))) return [run];
        const again = stepped(lighting, allKnown(model, run.trace.end), run);
        return [run, { ...again, snags: snags(again.trace) }];
      });
    });
}
