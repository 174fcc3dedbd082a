/**
 * A sheet of dipstick strips beside each other, with the ruler that shows whether the printer scaled.
 */
import type { FontSet } from '../font/metrics';
import { type DipstickInput, drawDipstick, stripWidthPt } from './dipstick';
import type { Drawing } from './drawing';
import { placeShape } from './place';
import { rulerEndPt, rulerLengthPt, rulerUpright, rulerWidthPt } from './ruler';

/** What a sheet of strips is drawn from. */
export interface StripSheetInput {
  readonly name: string;
  readonly strips: readonly DipstickInput[];
}

const gapPt = 12;

/** How many strips stand beside each other and the ruler on a width. */
export function stripsAcross(widthPt: number): number {
  return Math.floor((widthPt - rulerWidthPt) / (stripWidthPt + gapPt));
}

/** Height of the ruler; a sheet is never lower. */
export const leastSheetPt = rulerLengthPt + 2 * rulerEndPt;

/** Draws the sheet: the ruler first, strips from left to right, all standing on one line. */
export function drawStripSheet({ name, strips }: StripSheetInput, fonts: FontSet): Drawing {
  const drawn = strips.map((strip) => drawDipstick(strip, fonts));
  const heightPt = Math.max(leastSheetPt, ...drawn.map((strip) => strip.heightPt));
  const ruler = rulerUpright({ x: 0, y: heightPt });
  return {
    name,
    widthPt: rulerWidthPt + drawn.length * (gapPt + stripWidthPt),
    heightPt,
    alt: [
      ...drawn.map(({ alt }) => alt),
      ...strips.slice(0, 1).map(({ say }) => say('ruler-beside', {})),
    ].join(' '),
    shapes: [
      ...ruler,
      ...drawn.flatMap((strip, index) => {
        const x = rulerWidthPt + gapPt + index * (stripWidthPt + gapPt);
        return strip.shapes.map((shape) => placeShape(shape, 1, x, heightPt - strip.heightPt));
      }),
    ],
  };
}
