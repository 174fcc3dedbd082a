/** Every valve has a known position at the beginning of every procedure, however it is come to. */
import type { Diagnostic } from '../diagnostic/diagnostic';
import { type Chain, cameBy, type Run } from './chain';
import { nameOf } from './effects/act';
import type { Model } from './model';
import { of } from './state';
import { shut } from './values';

/** Valves that stand open or shut at the beginning of a procedure by what came before it, and that the procedure does not set. */
export function valvesNotKnown(model: Model, chain: Chain): readonly Diagnostic[] {
  return [...chain.of.values()].flatMap((runs) => {
    const [first] = runs;
    if (first === undefined) return [];
    const { procedure } = first;
    const set = new Set(procedure.steps.flatMap((step) => (step.part === undefined ? [] : [step.part])));
    return model.valves.flatMap((valve): readonly Diagnostic[] => {
      const isShut = (run: Run) => of(run.trace.start, model.slots.valve, valve) === shut;
      const other = runs.find((run) => isShut(run) !== isShut(first));
      if (set.has(valve) || other === undefined) return [];
      const [step] = procedure.steps;
      return [
        {
          code: 'proof-valve-unknown',
          severity: 'error',
          ...(step === undefined ? {} : { at: step.origin.at }),
          message: `“${procedure.title}” begins with ${nameOf(model, valve)} ${isShut(first) ? 'shut' : 'open'} after “${cameBy(first)[0] ?? ''}” and ${isShut(first) ? 'open' : 'shut'} after “${cameBy(other)[0] ?? ''}”, and no step sets it`,
          expected: 'one position, or a step that sets it',
          mend: 'add a step that sets the valve here, or at the end of what comes before',
        },
      ];
    });
  });
}
