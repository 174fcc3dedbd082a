/**
 * Shares out chapters that each begin on a new page. One whose last page would hold little is set a little closer, if
 * that saves the page: the spaces between its blocks shrink, never its type.
 */
import type { FilledBox } from '../flow/fill';
import { gap, type Piece } from '../pieces';
import type { Setting } from '../setting';
import { paginate } from './paginate';

/** A last page filled to no more than this share is worth saving. */
const littleShare = 0.3;
/** What is left of the spaces between blocks, tried in turn. */
const closer = [0.9, 0.8, 0.7] as const;

/** Boxes page by page, chapter after chapter. There is at least one page. */
export function paginateChapters(chapters: readonly (readonly Piece[])[], setting: Setting): FilledBox[][] {
  const pages = chapters
    .flatMap((pieces) => paginateChapter(pieces, setting))
    .filter((page) => page.length > 0);
  return pages.length > 0 ? pages : [[]];
}

function paginateChapter(pieces: readonly Piece[], setting: Setting): FilledBox[][] {
  const pages = paginate(pieces, setting);
  // where something is wrong no paper comes of it, and another try would tell of it again
  if (pages.length < 2 || !holdsLittle(pages, setting.roomPt) || setting.problems.told().length > 0)
    return pages;
  for (const share of closer) {
    const tried = paginate(
      pieces.map((piece) => closedUp(piece, share)),
      setting,
    );
    if (tried.length < pages.length) return tried;
  }
  return pages;
}

function holdsLittle(pages: readonly (readonly FilledBox[])[], roomPt: number): boolean {
  const last = pages.at(-1) ?? [];
  return Math.max(0, ...last.map(({ box, y }) => y + box.heightPt)) <= littleShare * roomPt;
}

function closedUp(piece: Piece, share: number): Piece {
  return piece.kind === 'gap' ? gap(share * piece.heightPt) : piece;
}
