/**
 * Marks at the outer edge of a page, one for each chapter, stepped down the sheet, so that a thumb finds a chapter. They
 * are artifacts: the outline and the contents say the same to whoever cannot see them.
 */
import type { FontSet } from '../../font/metrics';
import { fits } from '../fits';
import type { PlacedItem } from '../frame';
import type { Bounds } from '../shape';
import { pointsPerMm } from '../sheet';
import type { Theme } from '../theme';
import type { Sheet } from '../types';

/** Which edge of the page is the outer one. */
export type OuterEdge = 'left' | 'right';

/** The marks of one paper, all of one length. */
export interface Tabs {
  /** The strip that the marks of all chapters lie in. */
  strip(outer: OuterEdge): Bounds;
  /** The mark of the chapter at `index`. */
  mark(index: number, outer: OuterEdge): readonly PlacedItem[];
}

const face = 'narrow-bold';
/** Clear space before and after the words of a mark, in sizes of its type. */
const padEm = 0.8;
/** Length of a mark without words, in points, where the strip has room for it. */
const plainPt = 24 * pointsPerMm;

/** Works out the marks for chapters with these titles, between `top` and `bottom` of the sheet. */
export function chapterTabs(
  titles: readonly string[],
  sheet: Sheet,
  { top, bottom }: { readonly top: number; readonly bottom: number },
  theme: Theme,
  fonts: FontSet,
): Tabs {
  const { widthMm, clearMm, panel, letters } = theme.tabs;
  const { size } = theme.type.running;
  const roomPt = bottom - top;
  const widthPt = widthMm * pointsPerMm;
  const clearPt = clearMm * pointsPerMm;
  const wordsPt = Math.max(0, ...titles.map((title) => fonts[face].widthOf(title, size))) + 2 * padEm * size;
  // a title that would take more than half the edge leaves no room to step: the marks then stand without words
  const worded = fits(wordsPt, roomPt / 2);
  const lengthPt = worded ? wordsPt : Math.min(plainPt, roomPt / Math.max(1, titles.length));
  const stepPt = titles.length > 1 ? (roomPt - lengthPt) / (titles.length - 1) : 0;
  const leftOf = (outer: OuterEdge) => (outer === 'left' ? clearPt : sheet.widthPt - clearPt - widthPt);
  const capPt = fonts[face].capHeight * size;
  return {
    strip: (outer) => [leftOf(outer), top, leftOf(outer) + widthPt, bottom],
    mark(index, outer) {
      const x = leftOf(outer);
      const y = top + index * stepPt;
      const block: PlacedItem = {
        kind: 'shape',
        shape: { kind: 'rect', x, y, width: widthPt, height: lengthPt, paint: { fill: panel } },
      };
      if (!worded) return [block];
      // words run down the right edge and up the left, their feet towards the text
      const [turn, side] = outer === 'right' ? [90, -1] : [-90, 1];
      const words: PlacedItem = {
        kind: 'shape',
        shape: {
          kind: 'text',
          x: x + widthPt / 2 + (side * capPt) / 2,
          y: y + lengthPt / 2,
          text: titles[index] ?? '',
          face,
          sizePt: size,
          colour: letters,
          anchor: 'middle',
          turn,
        },
      };
      return [block, words];
    },
  };
}
