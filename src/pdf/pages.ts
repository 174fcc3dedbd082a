/**
 * Pages as they go into a file: everything of them that does not depend on which file it is, or on what else stands in it. So that
 * pages can be written by whoever laid them out, and bound elsewhere.
 */
import { deflateSync } from 'node:zlib';
import type { Face } from '../font/metrics';
import type { LaidOut, Page, PlacedField, PlacedLink, StructureIndex } from '../layout/frame';
import { PageContent } from './content';
import type { Letters } from './embed';
import { Inks } from './fonts';
import { LineEnds } from './lineEnds';
import { latin, num } from './syntax';

/** One page. Plain data. */
export interface WrittenPage {
  readonly widthPt: number;
  readonly heightPt: number;
  readonly label: string;
  /** Its content, packed. */
  readonly content: Uint8Array;
  /** The faces it uses, in the order in which it first does. */
  readonly faces: readonly Face[];
  /** What the rest of the file has to know of, in the order in which it stands on the page. */
  readonly notes: readonly PageNote[];
}

/** Content of an element of the structure tree, something to click or to fill in, or where in the order of reading the next of them come. */
export type PageNote =
  | { readonly kind: 'mark'; readonly tag: StructureIndex }
  | { readonly kind: 'rank'; readonly rank: number }
  | PlacedLink
  | PlacedField;

/** The letters that each glyph used stood for when it first was, face by face. */
export type LettersUsed = ReadonlyMap<Face, ReadonlyMap<number, Letters>>;

/** Some pages. Plain data. */
export interface WrittenPages {
  readonly pages: readonly WrittenPage[];
  readonly letters: LettersUsed;
}

/** Writes pages. Throws if a page has a tag that the structure has not. */
export function writePages(
  laidOut: Pick<LaidOut, 'pages' | 'structure'>,
  fontFiles: Readonly<Record<Face, Uint8Array>>,
): WrittenPages {
  const inks = new Inks(fontFiles);
  const lineEnds = new LineEnds(laidOut);
  const typeOf = (tag: StructureIndex): string => {
    const element = laidOut.structure[tag];
    if (element === undefined) throw new RangeError(`there is no structure element ${tag}`);
    return element.type;
  };
  const pages = laidOut.pages.map((page) => writePage(page, { inks, lineEnds, typeOf }));
  return { pages, letters: inks.letters() };
}

/** What the pages of one run share. */
interface Writing {
  readonly inks: Inks;
  readonly lineEnds: LineEnds;
  readonly typeOf: (tag: StructureIndex) => string;
}

function writePage(page: Page, { inks, lineEnds, typeOf }: Writing): WrittenPage {
  const notes: PageNote[] = [];
  let marks = 0;
  let rank = 0;
  const content = new PageContent(
    (face) => inks.of(face),
    (tag) => {
      notes.push({ kind: 'mark', tag });
      return `/${typeOf(tag)} <</MCID ${marks++}>> BDC`;
    },
  );
  page.items.forEach((item, at) => {
    const own = page.readingRanks?.[at] ?? 0;
    if (own !== rank) notes.push({ kind: 'rank', rank: own });
    rank = own;
    if (item.kind === 'text') content.text(item, lineEnds.needsSpace(item) ? ' ' : '');
    else if (item.kind === 'shape') content.shape(item.shape, item.tag);
    else notes.push(item);
  });
  const { widthPt, heightPt, label } = page;
  // from the top left corner down, as everything on the page is measured
  const operators = `1 0 0 -1 0 ${num(heightPt)} cm\n${content.finish()}`;
  return {
    widthPt,
    heightPt,
    label,
    // a copy of its own length: what packs it gives a piece of something larger
    content: new Uint8Array(deflateSync(latin(operators))),
    faces: content.faces,
    notes,
  };
}
