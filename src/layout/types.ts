/**
 * What a caller tells layout: the sheet, the look, the running heads, and how far type may shrink or grow.
 */
import type { Colour } from '../drawing/drawing';
import type { Face, FontSet } from '../font/metrics';
import type { Theme } from './theme';

/** Clear space inside the edges of a sheet, in points. Nothing is printed in it. */
export interface Margins {
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly left: number;
}

/** One side of the paper that is printed on. */
export interface Sheet {
  readonly name: string;
  readonly widthPt: number;
  readonly heightPt: number;
  readonly margins: Margins;
}

/** One piece of a running head or foot. */
export type RunningPiece =
  | { readonly kind: 'words'; readonly text: string; readonly strong: boolean }
  /** Title of the chapter (level 1 heading) that the page begins in. */
  | { readonly kind: 'chapter' }
  /** Number of this page, counted from 1. */
  | { readonly kind: 'page' }
  /** How many pages there are. */
  | { readonly kind: 'pages' };

/** A running head or foot in three parts; any may be empty. */
export interface RunningLine {
  readonly left: readonly RunningPiece[];
  readonly centre: readonly RunningPiece[];
  readonly right: readonly RunningPiece[];
}

/** How to lay out a paper that flows over pages: a manual, a log, a table. */
export interface FlowOptions {
  readonly fonts: FontSet;
  readonly theme: Theme;
  readonly sheet: Sheet;
  readonly head: RunningLine;
  readonly foot: RunningLine;
  /** Whether the first page carries the head and the foot; a title page carries neither. */
  readonly firstPage: { readonly head: boolean; readonly foot: boolean };
  /** Whether each level 1 heading starts a new page. */
  readonly chaptersOnNewPage: boolean;
  /** Whether each chapter has a mark at the outer edge of its pages, if the theme shows them. */
  readonly chapterTabs: boolean;
  /** Printed on both sides of the paper: margins and marks of even pages are those of odd ones in a mirror. */
  readonly bothSides: boolean;
}

/** How to lay out a card, or a sheet that is read like one. */
export interface CardOptions {
  readonly fonts: FontSet;
  readonly theme: Theme;
  readonly sheet: Sheet;
  /** Stands at the head of every face after the first, with "continued". */
  readonly title: string;
  /** What the foot of every face says: car, card, issue, fingerprint. Each piece stays whole if it can. */
  readonly foot: readonly string[];
  /** What is printed behind everything, and how far beyond the margins of the sheet; left out, the bare paper. */
  readonly ground?: { readonly colour: Colour; readonly outsetPt: number };
  /** Smallest legible size of each face where the card is read, in points. Type never goes below it. */
  readonly leastPt: Readonly<Record<Face, number>>;
  /** The same of what is looked up with the card in the hand; left out where the whole card is read so. */
  readonly lookUpPt?: Readonly<Record<Face, number>>;
  /** Height of safety signs, in points: that at which they are told apart where the card is read. */
  readonly signPt: number;
  /** Largest useful size of the steps, in points. */
  readonly mostPt: number;
  /** How many faces the card may take. More is refused with a reason. */
  readonly mostFaces: number;
}
