/** Procedures as the templates see them: text in pieces, with the names of parts in bold. */
import type { Car, PartId } from '../../car/car';
import { gravestFirst } from '../../language/signal';
import type { Caution, Phase, Procedure, Procedures, Step } from '../../procedure/procedure';
import { type Piece, withNamesStrong } from '../pieces';
import { type OtherCards, type SendingPiece, sendingTo, textAlone, withCards, withFaces } from './cardsSaid';
import { withPartStrong } from './partBold';
import { type SaidOnCard, withPlaces } from './placesSaid';
import { eachAlone, inRowsOfBook, type Row } from './rows';
import { firstSteps, stepAnchor } from './stepAnchors';

/** One step. */
export interface StepContext {
  readonly id: string;
  /** What the index leads to it by; empty where it does not, and on cards. */
  readonly anchor: string;
  readonly say: readonly SendingPiece[];
  readonly result: readonly SendingPiece[];
  readonly remark: readonly Piece[];
  /** The place where it is done, by name; empty if it is done nowhere in particular. */
  readonly place: string;
  readonly helper: boolean;
  readonly cautions: readonly CautionContext[];
  readonly critical: boolean;
  /** The keeper's reason, if the step is this car's own. */
  readonly because: string;
  /** Whether these are several acts in a row, and whether they are left undone where danger bars the way; empty for one act. */
  readonly row: '' | 'in-order' | 'if-safe';
}

/** A caution, said whole or, on cards and where it has been said before in the procedure, in one line. */
export interface CautionContext extends Caution {
  readonly brief: boolean;
  /** Said in brief once already on the same card, so that what to do is enough. */
  readonly repeated: boolean;
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

/** One procedure on a card. */
export interface CardProcedureContext extends ProcedureContext {
  /** What is seen and what is never done, with the card or the face of each procedure that they send to. */
  readonly seenInPieces: readonly SendingPiece[];
  readonly neverInPieces: readonly (readonly SendingPiece[])[];
}

/**
 * All steps of every procedure. A caution is said whole once in a chapter, and in one line after that; `chapterOf` tells which
 * chapter a phase stands in. An emergency is read alone, whatever was said before it, and in haste: what hangs over all of it is said
 * whole, what belongs to a step in one line, so that it stands on one page if it can. The first of them has every act by itself; in the
 * others switches turned off one after the other are said in a row, and so is what danger may bar the way to.
 */
export function proceduresContext(
  procedures: Procedures,
  car: Car,
  critical: ReadonlySet<string>,
  chapterOf: (phase: Phase) => string,
): readonly ProcedureContext[] {
  const said = new Map<string, Set<string>>();
  const firstEmergency = procedures.find(({ phase }) => phase === 'emergency');
  return procedures.map((procedure) => {
    const isEmergency = procedure.phase === 'emergency';
    const chapter = chapterOf(procedure.phase);
    const inChapter = said.get(chapter) ?? new Set<string>();
    said.set(chapter, inChapter);
    const written = procedureContext(
      procedure,
      { car, critical },
      isEmergency ? { kind: 'whole-at-head' } : { kind: 'whole-once', said: inChapter },
      isEmergency && procedure !== firstEmergency
        ? inRowsOfBook(procedure.steps)
        : eachAlone(procedure.steps),
    );
    if (isEmergency) return written;
    const indexed = new Set(firstSteps(procedure).values());
    const steps = written.steps.map((step, index) =>
      indexed.has(index) ? { ...step, anchor: stepAnchor(procedure, index) } : step,
    );
    return { ...written, steps };
  });
}

/**
 * The steps that belong on a card: those the library puts there, and every critical one. The first of them to name a part
 * says where it is. What the card says is noted in `said`; `rowsOf` tells which of them are said as one.
 */
export function cardProcedure(
  procedure: Procedure,
  car: Car,
  critical: ReadonlySet<string>,
  said: SaidOnCard,
  rowsOf: (steps: readonly Step[]) => readonly Row[] = eachAlone,
): CardProcedureContext {
  const { cards } = said;
  const pieces = (text: string) =>
    cards === undefined ? [plain(text)] : sendingTo(text, cards, procedure.id);
  // what stands above the steps is read before them, so that it tells the other cards first
  const above = { seenInPieces: pieces(procedure.seen), neverInPieces: procedure.never.map(pieces) };
  const context = procedureContext(
    procedure,
    { car, critical },
    { kind: 'brief', said },
    rowsOf(cardSteps(procedure, critical)),
  );
  return { ...context, ...above };
}

/** The steps of a procedure that stand on its card, in their order. */
export function cardSteps({ id, steps }: Procedure, critical: ReadonlySet<string>): readonly Step[] {
  return steps.filter((step) => step.onCard || critical.has(`${id} ${step.id}`));
}

/** How cautions are said: in brief and then briefer, whole at the head alone, or whole unless they have been said already. */
type Saying =
  | { readonly kind: 'brief'; readonly said: SaidOnCard }
  | { readonly kind: 'whole-at-head' }
  | { readonly kind: 'whole-once'; readonly said: Set<string> };

/** The car, and the keys of its critical steps: `procedure step`. */
interface Known {
  readonly car: Car;
  readonly critical: ReadonlySet<string>;
}

function procedureContext(
  procedure: Procedure,
  known: Known,
  saying: Saying,
  wanted: readonly Row[],
): ProcedureContext {
  const { id, title, phase, purpose, good, wrong, seen, never, cautions, changes } = procedure;
  const isBrief = (caution: Caution) =>
    saying.kind === 'brief' || (saying.kind === 'whole-once' && saying.said.has(caution.id));
  return {
    id,
    title,
    phase,
    purpose,
    good,
    wrong,
    seen,
    never,
    cautions: gravestFirst(cautions).map((caution) => ({
      ...caution,
      brief: isBrief(caution),
      repeated: false,
    })),
    changes,
    steps: stepContexts(wanted, id, known, cautions, saying),
  };
}

/** Steps with their cautions. Over a run of neighbouring steps that share a caution, it stands before the first. */
function stepContexts(
  rows: readonly Row[],
  procedure: string,
  known: Known,
  atHead: readonly Caution[],
  saying: Saying,
): readonly StepContext[] {
  const form = (id: string): Pick<CautionContext, 'brief' | 'repeated'> => {
    if (saying.kind === 'whole-at-head') return { brief: true, repeated: false };
    const said = saying.kind === 'brief' ? saying.said.cautions : saying.said;
    const before = said.has(id);
    said.add(id);
    return saying.kind === 'brief' ? { brief: true, repeated: before } : { brief: before, repeated: false };
  };
  const { places: told, cards } = saying.kind === 'brief' ? saying.said : {};
  if (saying.kind === 'whole-once') for (const { id } of atHead) saying.said.add(id);
  return rows.map((row, index) => {
    // a card has no cautions over a whole procedure
    const head = saying.kind === 'brief' ? [] : atHead;
    const before = index === 0 ? head : (rows[index - 1] ?? []).flatMap((step) => step.cautions);
    const own = row.flatMap((step) => step.cautions);
    const cautions = gravestFirst(own)
      .filter(({ id }, at, all) => all.findIndex((caution) => caution.id === id) === at)
      .filter(({ id }) => !before.some((caution) => caution.id === id))
      .map((caution) => ({ ...caution, ...form(caution.id) }));
    const steps = row.map((step) =>
      stepContext(
        row.length > 1 ? { ...step, say: step.row, result: '', remark: '' } : step,
        procedure,
        known,
        [],
        told,
        cards,
      ),
    );
    const [first] = steps;
    if (first === undefined || steps.length === 1) return { ...(first ?? missing()), cautions };
    return {
      ...first,
      say: [...steps.flatMap(({ say }, at) => (at === 0 ? say : [plain(', '), ...say])), plain('.')],
      place: '',
      cautions,
      critical: steps.some((step) => step.critical),
      row: row.some(({ ifSafe }) => ifSafe) ? 'if-safe' : 'in-order',
    };
  });
}

const plain = (text: string): SendingPiece => textAlone({ text, strong: false });

function missing(): never {
  throw new RangeError('a row without a step');
}

function stepContext(
  step: Step,
  procedure: string,
  { car, critical }: Known,
  cautions: readonly CautionContext[],
  told: Set<PartId> | undefined,
  cards: OtherCards | undefined,
): StepContext {
  const place = car.places.get(step.place ?? '');
  const carded = (text: string) => (cards === undefined ? text : withCards(text, cards));
  const faced = (pieces: readonly Piece[]) =>
    cards === undefined ? pieces.map(textAlone) : withFaces(pieces, cards, procedure);
  const placed = (text: string) => carded(told === undefined ? text : withPlaces(text, step, car, told));
  return {
    id: step.id,
    anchor: '',
    say: faced(withPartStrong(placed(step.say), step.part, car)),
    result: faced(withNamesStrong(placed(step.result), [])),
    remark: withNamesStrong(step.remark, []),
    place: place?.name ?? '',
    helper: step.who === 'helper',
    cautions,
    critical: critical.has(`${procedure} ${step.id}`),
    because: step.origin.because ?? '',
    row: '',
  };
}
