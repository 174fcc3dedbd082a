/**
 * Shares out chapters that each begin on a new page, and what begins on a new page within them. A part whose last page
 * would hold little is set a little closer, if that saves the page: the spaces between its blocks and in the rows of
 * its tables shrink, never its type.
 */
import type { FilledBox } from '../flow/fill';
import type { Piece } from '../pieces';
import type { Setting } from '../setting';
import { closedUp } from './closer';
import { bettered } from './last-on-page';
import { boxesOf, paginate } from './paginate';

/** A last page filled to no more than this share is worth saving. */
const littleShare = 0.4;
/** What is left of the spaces between blocks, tried in turn. */
const closer = [0.9, 0.8, 0.7, 0.6, 0.5] as const;

/** Boxes page by page, part after part. There is at least one page. */
export function paginateChapters(chapters: readonly (readonly Piece[])[], setting: Setting): FilledBox[][] {
  const pages = chapters
    .flatMap(partsOf)
    .flatMap((pieces) => paginatePart(pieces, setting))
    .filter((page) => page.length > 0);
  return pages.length > 0 ? pages : [[]];
}

/** A chapter, parted where a new page begins whatever is left of the one before. */
function partsOf(chapter: readonly Piece[]): Piece[][] {
  const parts: Piece[][] = [[]];
  for (const piece of chapter) {
    if (piece.kind === 'break' && piece.unlessLeft === undefined) parts.push([]);
    else parts.at(-1)?.push(piece);
  }
  return parts;
}

function paginatePart(pieces: readonly Piece[], setting: Setting): FilledBox[][] {
  const pages = paginate(pieces, setting);
  // where something is wrong no paper comes of it, and another try would tell of it again
  if (pages.length < 2 || setting.problems.told().length > 0) return boxesOf(pages);
  if (holdsLittle(boxesOf(pages), setting.roomPt)) {
    for (const share of closer) {
      const closed = closedUp(pieces, share);
      const tried = paginate(closed, setting);
      if (tried.length < pages.length) return boxesOf(bettered(tried, closed, setting));
    }
  }
  return boxesOf(bettered(pages, pieces, setting));
}

function holdsLittle(pages: readonly (readonly FilledBox[])[], roomPt: number): boolean {
  const last = pages.at(-1) ?? [];
  return (
    Math.max(0, ...last.map(({ box, y }) => y + box.heightPt - (box.stretchPt ?? 0))) <= littleShare * roomPt
  );
}
