/** Letters beside the alert triangle: at a caution, and at each step that it holds for too. */
import type { Colour } from '../../drawing/drawing';
import type { FontSet } from '../../font/metrics';
import type { PlacedText, StructureIndex } from '../frame';
import type { TextStyle } from '../look';

/** Capitals that are neither wide nor taken for a figure, in their order. */
const letters = 'ABCDEFGHJKLNPRSTUVXYZ';

/** The letter at an index from 0 on; when there are no more, they begin again doubled. */
export function letterAt(index: number): string {
  return letters.charAt(index % letters.length).repeat(1 + Math.floor(index / letters.length));
}

/** Between a triangle and its letter, as a share of the size of the letter. */
const besideEm = 0.04;

/** Room for any one letter right of its triangle. */
export function besidePt({ face, sizePt }: TextStyle, fonts: FontSet): number {
  return besideEm * sizePt + Math.max(...[...letters].map((letter) => fonts[face].widthOf(letter, sizePt)));
}

/** Where a letter stands: right of a triangle whose right corner is at `besideX`. */
export interface LetterPlace {
  readonly besideX: number;
  readonly baseline: number;
  readonly style: TextStyle;
  readonly colour: Colour;
  readonly tag?: StructureIndex;
}

/** A letter at its place. */
export function placeLetter(
  letter: string,
  { besideX, baseline: y, style, colour, tag }: LetterPlace,
  fonts: FontSet,
): PlacedText {
  const { face, sizePt } = style;
  const widthPt = fonts[face].widthOf(letter, sizePt);
  const x = besideX + besideEm * sizePt;
  const text = { kind: 'text', x, y, widthPt, text: letter, face, sizePt, colour } as const;
  return tag === undefined ? text : { ...text, tag };
}
