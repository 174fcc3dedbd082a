/**
 * Frames: finished pages. Every coordinate is decided; nothing after this stage makes a choice.
 *
 * Coordinates are in points from the top left corner of the sheet, y downwards. The PDF writer, the text
 * dump and any preview read this and nothing else.
 */
import type { Colour, Shape } from '../drawing/drawing';
import type { Face } from '../font/metrics';
import type { Field } from '../markup/block';

/** Index into `LaidOut.structure`; an item without one is an artifact (rules, running heads, page numbers). */
export type StructureIndex = number;

/** A run of text in one face on one line. `x`, `y` are the left end of its baseline. */
export interface PlacedText {
  readonly kind: 'text';
  readonly x: number;
  readonly y: number;
  /** Width as measured, without a space at the end; the writer does not stretch to it, checks use it. */
  readonly widthPt: number;
  /** Ends in a space where a line ends between two words of one paragraph, so that they read apart. */
  readonly text: string;
  readonly face: Face;
  readonly sizePt: number;
  readonly colour: Colour;
  readonly tag?: StructureIndex;
}

/** A shape at its place: `shape`'s coordinates are on the sheet already. */
export interface PlacedShape {
  readonly kind: 'shape';
  readonly shape: Shape;
  readonly tag?: StructureIndex;
}

/** A rectangle that leads to a destination when clicked. `tag` is a `Link` element. */
export interface PlacedLink {
  readonly kind: 'link';
  readonly x: number;
  readonly y: number;
  readonly widthPt: number;
  readonly heightPt: number;
  /** Name of a `Destination`. */
  readonly target: string;
  /** What the link leads to, in words. */
  readonly words: string;
  readonly tag?: StructureIndex;
}

/** A rectangle to be filled in. What is drawn around it stands beside it as shapes. `tag` is a `Form` element. */
export interface PlacedField {
  readonly kind: 'field';
  readonly x: number;
  readonly y: number;
  readonly widthPt: number;
  readonly heightPt: number;
  readonly field: Field;
  /** Size of what is typed into it; of no use for a box to tick. */
  readonly sizePt: number;
  readonly tag?: StructureIndex;
}

/** One thing on a page. */
export type PlacedItem = PlacedText | PlacedShape | PlacedLink | PlacedField;

/** A named place that links, contents and bookmarks lead to. */
export interface Destination {
  readonly name: string;
  /** Index into `LaidOut.pages`. */
  readonly page: number;
  readonly y: number;
}

/** A bookmark and those under it. */
export interface OutlineEntry {
  readonly title: string;
  readonly destination: string;
  readonly children: readonly OutlineEntry[];
}

/** The standard PDF structure types the program uses (ISO 32000-1, 14.8.4). */
export type StructureType =
  | 'Document'
  | 'Sect'
  | 'H1'
  | 'H2'
  | 'H3'
  | 'H4'
  | 'P'
  | 'L'
  | 'LI'
  | 'Lbl'
  | 'LBody'
  | 'Table'
  | 'THead'
  | 'TBody'
  | 'TR'
  | 'TH'
  | 'TD'
  | 'Caption'
  | 'Figure'
  | 'TOC'
  | 'TOCI'
  | 'Link'
  | 'Form'
  | 'Span'
  | 'Note'
  | 'Div';

/** One element of the structure tree, in reading order. Element 0 is the `Document`. */
export interface StructureElement {
  readonly type: StructureType;
  /** Index of the parent; absent only for element 0. Children come after their parent. */
  readonly parent?: StructureIndex;
  readonly alt?: string;
  readonly scope?: 'Column' | 'Row' | 'Both';
  readonly columnSpan?: number;
  /** For a Figure: its box on its page, left, top, right, bottom in points from the top left. */
  readonly box?: readonly [number, number, number, number];
  /** For a list: how its items are numbered. */
  readonly numbering?: 'Decimal' | 'Disc' | 'None';
  readonly language?: string;
}

/** One finished page, or one face of a card. */
export interface Page {
  readonly widthPt: number;
  readonly heightPt: number;
  /** The number or name printed on it, such as `12` or `2 of 3`. */
  readonly label: string;
  readonly items: readonly PlacedItem[];
  /**
   * For each item, where it comes in the order of reading across all pages, if that is not the order of the pages: on a
   * sheet of several cards, the face it belongs to.
   */
  readonly readingRanks?: readonly number[];
  /** Where the face of a card is to be cut and punched; drawn only on sheets of several. */
  readonly guides?: readonly PlacedItem[];
  /** The part of the sheet that all printing stays in: left, top, right, bottom. */
  readonly printable: readonly [number, number, number, number];
  /** A strip beside it in which the mark of the page's chapter stands, and nothing else. */
  readonly tabStrip?: readonly [number, number, number, number];
  /** A strip beside it in which the marks of what changed stand, and nothing else. */
  readonly changeStrip?: readonly [number, number, number, number];
}

/** A whole paper, laid out. */
export interface LaidOut {
  readonly pages: readonly Page[];
  readonly structure: readonly StructureElement[];
  readonly destinations: readonly Destination[];
  readonly outline: readonly OutlineEntry[];
  /** Of a card or a sheet: some step has the mark of a caution that is said above it. */
  readonly marked?: boolean;
}
