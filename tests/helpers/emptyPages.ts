/** How full the pages of a paper are. */
import type { LaidOut, Page } from '../../src/layout/frame';

/** A page is nearly empty if what is read on it reaches no further down than this share of its text's room. */
const littleShare = 0.25;

/** Above the foot of a page, and the line over it. */
const footPt = 30;

/** How far down what is read on a page, or written on it, reaches, as a share of the room between its clear edges. */
export function filledShare({ items, printable: [, top, , bottom] }: Page): number {
  const lowest = items.reduce((low, item) => {
    const isLine = item.kind === 'shape' && item.shape.kind === 'path';
    if (item.tag === undefined && !isLine) return low;
    if (item.kind === 'text') return Math.max(low, item.y);
    if (item.kind === 'field') return Math.max(low, item.y + item.heightPt);
    return item.kind === 'shape' && item.shape.kind === 'path'
      ? item.shape.pieces.reduce(
          (most, piece) => ('y' in piece && piece.y < bottom - footPt ? Math.max(most, piece.y) : most),
          low,
        )
      : low;
  }, top);
  return (lowest - top) / (bottom - top);
}

/** Labels of the pages that hold next to nothing, though their chapter goes on after them. */
export function nearlyEmpty(laidOut: LaidOut): string[] {
  return laidOut.pages
    .filter((page, index) => !endsChapter(laidOut, index) && filledShare(page) < littleShare)
    .map(({ label }) => label);
}

/** The last page of a chapter of several holds a line or two if what is read on it reaches no further down than this share. */
const straggleShare = 0.08;

/** Labels of the pages that a chapter ends on with a line or two, after another page of it. */
export function straggledEnds(laidOut: LaidOut): string[] {
  const { pages } = laidOut;
  return pages
    .filter(
      (page, index) =>
        index > 0 &&
        endsChapter(laidOut, index) &&
        !endsChapter(laidOut, index - 1) &&
        filledShare(page) < straggleShare,
    )
    .map(({ label }) => label);
}

function endsChapter({ pages, destinations, outline }: LaidOut, index: number): boolean {
  const chapters = new Set(outline.map(({ destination }) => destination));
  const isOpened = destinations.some(({ name, page }) => page === index + 1 && chapters.has(name));
  return index === pages.length - 1 || isOpened;
}
