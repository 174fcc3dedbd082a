/**
 * A sheet of dipstick strips beside each other, with the ruler that shows whether the printer scaled.
 */
import type { FontSet } from '../font/metrics';
import { drawDipstick, widthOfStrip } from './dipstick';
import type { DipstickInput } from './dipstickInput';
import type { Drawing } from './drawing';
import { placeShape } from './place';
import { rulerEndPt, rulerLengthPt, rulerUpright, rulerWidthPt } from './ruler';

/** What a sheet of strips is drawn from. */
export interface StripSheetInput {
  readonly name: string;
  readonly strips: readonly DipstickInput[];
}

/** Between two strips: room for the shears. */
const gapPt = 8;

/** Shares strips out over sheets of a width, in their order, each sheet as full as it goes; no sheet is without a strip. */
export function stripsOnSheets(
  strips: readonly DipstickInput[],
  widthPt: number,
  fonts: FontSet,
): readonly (readonly DipstickInput[])[] {
  const sheets: DipstickInput[][] = [];
  let left = 0;
  for (const strip of strips) {
    const needed = gapPt + widthOfStrip(strip, fonts);
    const sheet = needed <= left ? sheets.at(-1) : undefined;
    if (sheet === undefined) {
      sheets.push([strip]);
      left = widthPt - rulerWidthPt - needed;
    } else {
      sheet.push(strip);
      left -= needed;
    }
  }
  return sheets;
}

/** Height of the ruler; a sheet is never lower. */
export const leastSheetPt = rulerLengthPt + 2 * rulerEndPt;

/** Draws the sheet: the ruler first, strips from left to right, all standing on one line. */
export function drawStripSheet({ name, strips }: StripSheetInput, fonts: FontSet): Drawing {
  const drawn = strips.map((strip) => drawDipstick(strip, fonts));
  const heightPt = Math.max(leastSheetPt, ...drawn.map((strip) => strip.heightPt));
  const begins = (index: number) =>
    drawn.slice(0, index).reduce((x, { widthPt }) => x + widthPt + gapPt, rulerWidthPt + gapPt);
  const ruler = rulerUpright({ x: 0, y: heightPt });
  return {
    name,
    widthPt: begins(drawn.length) - gapPt,
    heightPt,
    alt: [
      ...drawn.map(({ alt }) => alt),
      ...strips.slice(0, 1).map(({ say }) => say('ruler-beside', {})),
    ].join(' '),
    shapes: [
      ...ruler,
      ...drawn.flatMap((strip, index) => {
        const [x, y] = [begins(index), heightPt - strip.heightPt];
        return strip.shapes.map((shape) => placeShape(shape, 1, x, y));
      }),
    ],
  };
}
