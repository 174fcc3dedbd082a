/**
 * A book made by two at once: each lays out and writes its part of the chapters; whoever has the first part binds both. Nothing here
 * knows how the two reach each other.
 */
import { good, type Outcome } from '../diagnostic/diagnostic';
import type { Face } from '../font/metrics';
import { Book } from '../layout/flow/book';
import { layoutWhole } from '../layout/flow/layout-pages';
import { type LaidPart, layoutPart, type PartFound } from '../layout/flow/together';
import type { LaidOut, StructureElement } from '../layout/frame';
import { originOf } from '../layout/survey';
import type { FlowOptions } from '../layout/types';
import type { Block } from '../markup/block';
import { type PageNote, type WrittenPages, writePages } from '../pdf/pages';
import type { Binding } from '../pdf/write';

/** Somebody who may lay out and write the second part of a book. */
export interface Partner {
  /** Whether it has begun. If it has not, it never will: who asks has to do all of the book. */
  hasBegun(): boolean;
  /** Tells it what a round found of the first part; gives what it found of the second in the same round. */
  exchange(found: PartFound): PartFound;
  /** Its part, once a round has settled the numbers of all pages. */
  part(): WrittenPart;
}

/** The second part of a book, written. Plain data. */
export interface WrittenPart extends WrittenPages {
  readonly structure: readonly StructureElement[];
}

/** A book ready to be bound. */
export interface WrittenBook {
  readonly written: WrittenPages;
  readonly binding: Binding;
  /** Its pages as they were laid out; undefined if some were elsewhere. */
  readonly laidOut: LaidOut | undefined;
}

/** Fonts to write with, by face. */
type FontFiles = Readonly<Record<Face, Uint8Array>>;

/** Makes the first part of a book and takes the second from `partner`; or all of it, if it has not begun or something is to be told. */
export function writeFirstPart(
  blocks: readonly Block[],
  options: FlowOptions,
  fontFiles: FontFiles,
  partner: Partner,
): Outcome<WrittenBook> {
  const book = new Book(blocks, options);
  const rounds = layoutPart(book, 'first');
  let round = rounds.next();
  // what has been filled by then need not be made again
  if (!partner.hasBegun()) return writtenWhole(layoutWhole(book, originOf(blocks)), fontFiles);
  while (round.done !== true) round = rounds.next(partner.exchange(round.value));
  if (round.value === undefined)
    return writtenWhole(layoutWhole(new Book(blocks, options), originOf(blocks)), fontFiles);
  const written = writePages(round.value, fontFiles);
  return good(bound(book, round.value, written, partner.part()));
}

/**
 * Makes the second part of a book. Yields what each round found and is given what the other found in the same; ends with the part,
 * or with nothing if the other does all of it.
 */
export function* writeSecondPart(
  blocks: readonly Block[],
  options: FlowOptions,
  fontFiles: FontFiles,
): Generator<PartFound, WrittenPart | undefined, PartFound> {
  const part = yield* layoutPart(new Book(blocks, options), 'second');
  return part === undefined ? undefined : { ...writePages(part, fontFiles), structure: part.structure };
}

function writtenWhole(laidOut: Outcome<LaidOut>, fontFiles: FontFiles): Outcome<WrittenBook> {
  if (!laidOut.ok) return laidOut;
  const { value, remarks } = laidOut;
  return good({ written: writePages(value, fontFiles), binding: value, laidOut: value }, remarks);
}

/** Both parts as one. Elements of the second part's structure come after those of the first, under the same document. */
function bound(book: Book, first: LaidPart, written: WrittenPages, second: WrittenPart): WrittenBook {
  const moved = first.structure.length - 1;
  const movedTag = (tag: number): number => (tag === 0 ? 0 : tag + moved);
  const movedNote = (note: PageNote): PageNote =>
    note.kind === 'rank' || note.tag === undefined ? note : { ...note, tag: movedTag(note.tag) };
  const [, ...elements] = second.structure.map((element) =>
    element.parent === undefined ? element : { ...element, parent: movedTag(element.parent) },
  );
  const faces = new Set([...written.letters.keys(), ...second.letters.keys()]);
  const lettersOf = (face: Face) =>
    // what was first seen in the first part stands
    new Map([...(second.letters.get(face) ?? []), ...(written.letters.get(face) ?? [])]);
  return {
    written: {
      pages: [
        ...written.pages,
        ...second.pages.map((page) => ({ ...page, notes: page.notes.map(movedNote) })),
      ],
      letters: new Map([...faces].map((face) => [face, lettersOf(face)])),
    },
    binding: {
      structure: [...first.structure, ...elements],
      destinations: first.destinations,
      outline: book.outline,
    },
    laidOut: undefined,
  };
}
