/** Procedures changed for tests: steps left out, put in, altered; facts that nobody learns. */
import type { Car } from '../../src/car/car';
import type { Procedure, Procedures, Step } from '../../src/procedure/procedure';
import { chain } from '../../src/proof/chain';
import { Experience } from '../../src/proof/experience';
import { modelOf } from '../../src/proof/model';
import { theDay } from './library';

/** A change of all procedures. */
export type Edit = (procedures: Procedures) => Procedures;

/** Whether a step has this id; `crack-pilot-valve` also means `crack-pilot-valve/…`. */
function is(step: Step, id: string): boolean {
  return step.id === id || step.id.startsWith(`${id}/`);
}

function inProcedure(id: string, change: (steps: readonly Step[]) => readonly Step[]): Edit {
  return (procedures) => {
    let done = false;
    const changed = procedures.map((procedure): Procedure => {
      if (procedure.id !== id) return procedure;
      done = true;
      return { ...procedure, steps: change(procedure.steps) };
    });
    if (!done) throw new Error(`no procedure ${id}`);
    return changed;
  };
}

/** Leave out every step with this id in a procedure. */
export function without(procedure: string, ...ids: readonly string[]): Edit {
  return inProcedure(procedure, (steps) => {
    const kept = steps.filter((step) => !ids.some((id) => is(step, id)));
    if (kept.length === steps.length) throw new Error(`no step ${ids.join(', ')} in ${procedure}`);
    return kept;
  });
}

/** Put steps in before the first step with this id, or at the end. */
export function putIn(procedure: string, before: string | undefined, ...more: readonly Step[]): Edit {
  return inProcedure(procedure, (steps) => {
    const at = before === undefined ? steps.length : steps.findIndex((step) => is(step, before));
    if (at < 0) throw new Error(`no step ${before} in ${procedure}`);
    return [...steps.slice(0, at), ...more, ...steps.slice(at)];
  });
}

/** Alter every step with this id in a procedure. */
export function altered(procedure: string, id: string, change: (step: Step) => Step): Edit {
  return inProcedure(procedure, (steps) => {
    if (!steps.some((step) => is(step, id))) throw new Error(`no step ${id} in ${procedure}`);
    return steps.map((step) => (is(step, id) ? change(step) : step));
  });
}

/** Nobody ever learns these facts. */
export function forgetting(...facts: readonly string[]): Edit {
  return (procedures) =>
    procedures.map((procedure) => ({
      ...procedure,
      steps: procedure.steps.map((step) => ({
        ...step,
        proves: step.proves.filter((fact) => !facts.includes(fact)),
      })),
    }));
}

/** A step for tests; a look at nothing unless more is said. */
export function step(more: Partial<Step> & { readonly id: string }): Step {
  return {
    action: 'look',
    who: 'driver',
    say: `Do ${more.id}.`,
    result: '',
    remark: '',
    row: '',
    cautions: [],
    proves: [],
    sets: {},
    onCard: true,
    ifSafe: false,
    origin: { kind: 'library', at: { file: 'test.yaml', line: 1, column: 1 } },
    ...more,
  };
}

/** A procedure for tests. */
export function procedure(id: string, steps: readonly Step[], more: Partial<Procedure> = {}): Procedure {
  return {
    id,
    title: id,
    phase: 'reading-in',
    after: [],
    purpose: '',
    good: '',
    wrong: [],
    cautions: [],
    steps,
    seen: '',
    toldBy: [],
    never: [],
    beginsWhile: [],
    leaves: [],
    changes: [],
    ...more,
  };
}

/** What a day with these procedures breaks: rules by their names, and what does not go as written. */
export function brokenIn(
  car: Car,
  procedures: Procedures,
): { readonly rules: ReadonlySet<string>; readonly snags: readonly string[] } {
  const model = modelOf(car);
  const day = chain(new Experience(model), procedures, theDay());
  return {
    rules: new Set(day.runs.flatMap((run) => run.breaches.map((breach) => breach.rule.id))),
    snags: [
      ...new Set(day.runs.flatMap((run) => run.snags.map((snag) => `${snag.step.id}: ${snag.hitch.what}`))),
    ],
  };
}
