/** What pages part that a reader would want together, found in a finished paper by its structure alone. */
import type { LaidOut, StructureIndex, StructureType } from '../../src/layout/frame';

const heads: readonly StructureType[] = ['H1', 'H2', 'H3', 'H4'];
// a caution, and a figure with its caption, is a Div
const introduced: readonly StructureType[] = ['Table', 'L', 'Div'];

/** An introduction is a paragraph of no more letters than this, right below a heading. */
const introLetters = 250;

/** The elements of a paper with what is needed to ask where they stand. */
class Read {
  /** The first and the last page of each element, from its own items and those of all it holds. */
  private readonly pages: { first: number; last: number; words: string }[];
  readonly children: StructureIndex[][];

  constructor(readonly laidOut: LaidOut) {
    const { structure } = laidOut;
    this.pages = structure.map(() => ({ first: Number.POSITIVE_INFINITY, last: -1, words: '' }));
    this.children = structure.map(() => []);
    structure.forEach(({ parent }, index) => {
      if (parent !== undefined) this.children[parent]?.push(index);
    });
    laidOut.pages.forEach(({ items }, page) => {
      for (const item of items) {
        if (item.tag !== undefined) this.note(item.tag, page, item.kind === 'text' ? item.text : '');
      }
    });
  }

  private note(tag: StructureIndex, page: number, text: string): void {
    for (
      let at: StructureIndex | undefined = tag;
      at !== undefined;
      at = this.laidOut.structure[at]?.parent
    ) {
      const known = this.pages[at];
      if (known === undefined) return;
      known.first = Math.min(known.first, page);
      known.last = Math.max(known.last, page);
      known.words += text;
    }
  }

  of(element: StructureIndex | undefined): { first: number; last: number; words: string } | undefined {
    const found = element === undefined ? undefined : this.pages[element];
    return found === undefined || found.last < 0 ? undefined : found;
  }

  typeOf(element: StructureIndex | undefined): StructureType | undefined {
    return element === undefined ? undefined : this.laidOut.structure[element]?.type;
  }
}

/** Introductions that stand last on a page, below their heading, with what they introduce overleaf. */
export function partedIntroductions(laidOut: LaidOut): string[] {
  const read = new Read(laidOut);
  return read.children.flatMap((siblings) =>
    siblings.flatMap((element, index) => {
      const [above, below] = [read.typeOf(siblings[index - 1]), read.typeOf(siblings[index + 1])];
      const [own, next] = [read.of(element), read.of(siblings[index + 1])];
      const introduces = read.typeOf(element) === 'P' && above !== undefined && heads.includes(above);
      if (!introduces || below === undefined || !introduced.includes(below)) return [];
      if (own === undefined || next === undefined || own.words.length > introLetters) return [];
      return own.last < next.first ? [`page ${own.last + 1}: ${own.words}`] : [];
    }),
  );
}

/** A paragraph of no more letters than this, right below a table, is said of it. */
const closingLetters = 250;

/** Words right below a table that begin a page, though the table has rows enough to go overleaf with them. */
export function partedClosings(laidOut: LaidOut): string[] {
  const read = new Read(laidOut);
  return read.children.flatMap((siblings) =>
    siblings.flatMap((element, index) => {
      const table = siblings[index - 1];
      if (table === undefined || read.typeOf(element) !== 'P' || read.typeOf(table) !== 'Table') return [];
      const [own, above] = [read.of(element), read.of(table)];
      if (own === undefined || above === undefined || own.words.length > closingLetters) return [];
      const rows = (read.children[table] ?? []).flatMap((part) =>
        read.typeOf(part) === 'TBody' ? (read.children[part] ?? []) : [],
      );
      return own.first > above.last && rows.length >= 6 ? [`page ${own.first + 1}: ${own.words}`] : [];
    }),
  );
}

/** Tables of which a page holds fewer than three rows, though there are enough for three on either side of each break. */
export function straggledRows(laidOut: LaidOut): string[] {
  const read = new Read(laidOut);
  return laidOut.structure.flatMap(({ type }, body) => {
    if (type !== 'TBody') return [];
    const rows = (read.children[body] ?? []).flatMap((row) => read.of(row)?.first ?? []);
    const counts = new Map<number, number>();
    for (const page of rows) counts.set(page, (counts.get(page) ?? 0) + 1);
    if (counts.size < 2 || rows.length < 3 * counts.size) return [];
    const words = read.of(body)?.words.slice(0, 40) ?? '';
    return [...counts]
      .filter(([, count]) => count < 3)
      .map(([page, count]) => `page ${page + 1}: ${count} of ${words}`);
  });
}
