/** Procedures as the templates see them: text in pieces, with the names of parts in bold. */
import type { Car } from '../../car/car';
import type { Caution, Procedure, Procedures, Step } from '../../procedure/procedure';
import { type Piece, withNamesStrong } from '../pieces';

/** One step. */
export interface StepContext {
  readonly id: string;
  readonly say: readonly Piece[];
  readonly result: readonly Piece[];
  readonly remark: readonly Piece[];
  /** The place where it is done, by name; empty if it is done nowhere in particular. */
  readonly place: string;
  readonly helper: boolean;
  readonly cautions: readonly Caution[];
  readonly critical: boolean;
  /** The keeper's reason, if the step is this car's own. */
  readonly because: string;
}

/** One procedure. */
export interface ProcedureContext {
  readonly id: string;
  readonly title: string;
  readonly phase: string;
  readonly purpose: string;
  readonly good: string;
  readonly wrong: readonly string[];
  readonly seen: string;
  readonly never: readonly string[];
  readonly cautions: readonly Caution[];
  readonly steps: readonly StepContext[];
  readonly changes: readonly { readonly words: string; readonly because: string }[];
}

/** All steps of every procedure. */
export function proceduresContext(procedures: Procedures, car: Car): readonly ProcedureContext[] {
  return procedures.map((procedure) => procedureContext(procedure, car, () => true));
}

/** The steps that belong on a card. */
export function cardProcedure(procedure: Procedure, car: Car): ProcedureContext {
  return procedureContext(procedure, car, (step) => step.onCard);
}

function procedureContext(procedure: Procedure, car: Car, wanted: (step: Step) => boolean): ProcedureContext {
  const { id, title, phase, purpose, good, wrong, seen, never, cautions, changes } = procedure;
  return {
    id,
    title,
    phase,
    purpose,
    good,
    wrong,
    seen,
    never,
    cautions,
    changes,
    steps: procedure.steps.filter(wanted).map((step) => stepContext(step, car)),
  };
}

function stepContext(step: Step, car: Car): StepContext {
  const part = step.part === undefined ? undefined : car.parts.get(step.part);
  const names = part === undefined ? [] : [part.name, ...(part.tag === undefined ? [] : [part.tag])];
  return {
    id: step.id,
    say: withNamesStrong(step.say, names),
    result: withNamesStrong(step.result, []),
    remark: withNamesStrong(step.remark, []),
    place: step.place === undefined ? '' : (car.places.get(step.place)?.name ?? ''),
    helper: step.who === 'helper',
    cautions: step.cautions,
    critical: false,
    because: step.origin.because ?? '',
  };
}
