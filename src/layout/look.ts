/**
 * The look of a paper: the theme's styles with every size decided. Manuals take theirs straight from the theme,
 * cards from the size that fits; everything that collects blocks reads this and never asks which it is.
 */
import type { Colour } from '../drawing/drawing';
import type { Face, FontSet } from '../font/metrics';
import type { SignalWord, TableBlock } from '../markup/block';
import type { Theme } from './theme';

/** How a stretch of text is set: the faces for plain, strong and emphasised words, size, and line distance. */
export interface TextStyle {
  readonly face: Face;
  readonly strong: Face;
  readonly emphasis: Face;
  readonly sizePt: number;
  readonly leadingPt: number;
  readonly colour: Colour;
}

/** A heading's type, and the space above and below it. */
export interface HeadingLook {
  readonly style: TextStyle;
  readonly abovePt: number;
  readonly belowPt: number;
  /** Kept clear at its right, where it may come to stand beside something. */
  readonly besidePt?: number;
}

/** How steps are set. */
export interface StepsLook {
  readonly number: TextStyle;
  readonly action: TextStyle;
  readonly result: TextStyle;
  readonly remark: TextStyle;
  /** Whether a result that fits stands on the action's last line, at the end of a leader. */
  readonly leader: Readonly<Record<'number' | 'tick', boolean>>;
  /** Where a result stands that does not: under the action, or as a block at the right edge. */
  readonly beneath: 'left' | 'right';
  readonly gapPt: number;
}

/** How cautions are set. */
export interface CautionLook {
  readonly signal: TextStyle;
  readonly text: TextStyle;
  /** Hazard, consequence and avoidance in one paragraph instead of three. */
  readonly runOn: boolean;
  readonly padXPt: number;
  readonly padYPt: number;
  /** Where the words of a brief one begin: under those of the steps, or as near to its symbol as they may stand. */
  readonly briefFrom: 'steps' | 'symbol';
  readonly panels: Readonly<
    Record<
      SignalWord,
      { readonly word: string; readonly panel: Colour; readonly letters: Colour; readonly symbol: boolean }
    >
  >;
}

/** How safety signs are set: their height, and the numbers under them, by which a book's reader finds them in the standard. A card has none. */
export interface SignLook {
  readonly heightPt: number;
  readonly label?: TextStyle;
}

/** Lengths between and around blocks, in points. */
export interface SpaceLook {
  readonly paragraph: number;
  readonly listItem: number;
  readonly block: number;
  readonly caption: number;
  readonly indent: number;
  readonly cellX: number;
  readonly cellY: number;
  /** What must be left of that in a table set closer so that it ends on its page: a share. */
  readonly leastCellY: number;
  readonly boxX: number;
  readonly boxY: number;
  readonly writing: number;
  readonly columnGap: number;
}

/** Everything that decides how blocks look. */
export interface Look {
  readonly fonts: FontSet;
  readonly body: TextStyle;
  readonly lead: TextStyle;
  /** Running text in columns. */
  readonly column: TextStyle;
  readonly note: TextStyle;
  readonly caption: TextStyle;
  readonly headings: readonly [HeadingLook, HeadingLook, HeadingLook, HeadingLook];
  /** Styles of each kind of table, to be tried in turn until the table fits its width. */
  readonly tables: Readonly<Record<TableBlock['style'], readonly TextStyle[]>>;
  readonly steps: StepsLook;
  readonly cautions: CautionLook;
  readonly signs: SignLook;
  readonly space: SpaceLook;
  readonly line: Theme['line'];
  readonly colours: Theme['colours'];
  readonly words: Theme['words'];
  /** The look of what is looked up with a card in the hand; left out where everything is read so. */
  readonly lookUp?: Look;
  /** The same with tables and lists set closer, for a long list that is read as the rest is; left out where it is no card. */
  readonly close?: Look;
  /** Widest column of running text, in sizes of body type. */
  readonly measureEm: number;
}

const companions: Readonly<Record<Face, { readonly strong: Face; readonly emphasis: Face }>> = {
  text: { strong: 'text-bold', emphasis: 'text-italic' },
  'text-italic': { strong: 'text-bold', emphasis: 'text' },
  'text-bold': { strong: 'text-bold', emphasis: 'text-bold' },
  narrow: { strong: 'narrow-bold', emphasis: 'text-italic' },
  'narrow-bold': { strong: 'narrow-bold', emphasis: 'narrow-bold' },
};

/** A style in `face` with the faces that go with it. */
export function styleOf(face: Face, sizePt: number, leadingPt: number, colour: Colour): TextStyle {
  return { face, ...companions[face], sizePt, leadingPt, colour };
}

/** The same style with its strong face throughout. */
export function strongStyle(style: TextStyle): TextStyle {
  return styleOf(style.strong, style.sizePt, style.leadingPt, style.colour);
}

/** Height from the top of a line to its baseline: the letters stand in the middle of their line distance. */
export function baselineIn(style: TextStyle, fonts: FontSet): number {
  const { ascent, descent } = fonts[style.face];
  return (style.leadingPt + (ascent - descent) * style.sizePt) / 2;
}
