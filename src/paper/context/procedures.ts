/** Procedures as the templates see them: text in pieces, with the names of parts in bold. */
import type { Car } from '../../car/car';
import type { Caution, Phase, Procedure, Procedures, Step } from '../../procedure/procedure';
import { type Piece, withNamesStrong } from '../pieces';

/** One step. */
export interface StepContext {
  readonly id: string;
  readonly say: readonly Piece[];
  readonly result: readonly Piece[];
  readonly remark: readonly Piece[];
  /** The place where it is done, by name; empty if it is done nowhere in particular. */
  readonly place: string;
  /** The same if a valve, pump or other part is worked there that a driver does not reach from the seat. */
  readonly away: string;
  readonly helper: boolean;
  readonly cautions: readonly CautionContext[];
  readonly critical: boolean;
  /** The keeper's reason, if the step is this car's own. */
  readonly because: string;
}

/** A caution, said whole or, on cards and where it has been said before in the procedure, in one line. */
export interface CautionContext extends Caution {
  readonly brief: boolean;
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
  readonly cautions: readonly CautionContext[];
  readonly steps: readonly StepContext[];
  readonly changes: readonly { readonly words: string; readonly because: string }[];
}

/**
 * All steps of every procedure. With its steps a caution is said whole once in a chapter, and in one line after that;
 * `chapterOf` tells which chapter a phase stands in.
 */
export function proceduresContext(
  procedures: Procedures,
  car: Car,
  critical: ReadonlySet<string>,
  chapterOf: (phase: Phase) => string,
): readonly ProcedureContext[] {
  const said = new Map<string, Set<string>>();
  return procedures.map((procedure) => {
    const chapter = chapterOf(procedure.phase);
    const inChapter = said.get(chapter) ?? new Set<string>();
    said.set(chapter, inChapter);
    return procedureContext(
      procedure,
      { car, critical },
      { kind: 'whole-once', said: inChapter },
      procedure.steps,
    );
  });
}

/** The steps that belong on a card: those the library puts there, and every critical one. */
export function cardProcedure(
  procedure: Procedure,
  car: Car,
  critical: ReadonlySet<string>,
): ProcedureContext {
  return procedureContext(procedure, { car, critical }, { kind: 'brief' }, cardSteps(procedure, critical));
}

/** The steps of a procedure that stand on its card, in their order. */
export function cardSteps({ id, steps }: Procedure, critical: ReadonlySet<string>): readonly Step[] {
  return steps.filter((step) => step.onCard || critical.has(`${id} ${step.id}`));
}

/** How cautions are said: in one line each, or whole unless they have been said already. */
type Saying = { readonly kind: 'brief' } | { readonly kind: 'whole-once'; readonly said: Set<string> };

/** The car, and the keys of its critical steps: `procedure step`. */
interface Known {
  readonly car: Car;
  readonly critical: ReadonlySet<string>;
}

function procedureContext(
  procedure: Procedure,
  known: Known,
  saying: Saying,
  wanted: readonly Step[],
): ProcedureContext {
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
    cautions: cautions.map((caution) => ({ ...caution, brief: saying.kind === 'brief' })),
    changes,
    steps: stepContexts(wanted, id, known, cautions, saying),
  };
}

/** Steps with their cautions. Over a run of neighbouring steps that share a caution, it stands before the first. */
function stepContexts(
  steps: readonly Step[],
  procedure: string,
  known: Known,
  atHead: readonly Caution[],
  saying: Saying,
): readonly StepContext[] {
  const isBrief = (id: string): boolean => {
    if (saying.kind === 'brief' || saying.said.has(id)) return true;
    saying.said.add(id);
    return false;
  };
  if (saying.kind === 'whole-once') for (const { id } of atHead) saying.said.add(id);
  return steps.map((step, index) => {
    const before = index === 0 ? atHead : (steps[index - 1]?.cautions ?? []);
    const cautions = step.cautions
      .filter(({ id }) => !before.some((caution) => caution.id === id))
      .map((caution) => ({ ...caution, brief: isBrief(caution.id) }));
    return stepContext(step, procedure, known, cautions);
  });
}

function stepContext(
  step: Step,
  procedure: string,
  { car, critical }: Known,
  cautions: readonly CautionContext[],
): StepContext {
  const part = step.part === undefined ? undefined : car.parts.get(step.part);
  const names = part === undefined ? [] : [part.name, ...(part.tag === undefined ? [] : [part.tag])];
  const place = car.places.get(step.place ?? '');
  return {
    id: step.id,
    say: withNamesStrong(step.say, names),
    result: withNamesStrong(step.result, []),
    remark: withNamesStrong(step.remark, []),
    place: place?.name ?? '',
    away: part?.place === undefined || place === undefined || place.reach === 'seated' ? '' : place.name,
    helper: step.who === 'helper',
    cautions,
    critical: critical.has(`${procedure} ${step.id}`),
    because: step.origin.because ?? '',
  };
}
