/**
 * Shares out chapters that each begin on a new page, and what begins on a new page within them. A part whose last page
 * would hold little is set a little closer, if that saves the page: the spaces between its blocks and in the rows of
 * its tables shrink, never its type.
 */

import { closedUp } from '../closer';
import type { FilledBox } from '../flow/fill';
import type { Piece } from '../pieces';
import type { Setting } from '../setting';
import { bettered } from './last-on-page';
import { boxesOf, type FilledPage, paginate, type StartedPage } from './paginate';

/** A last page filled to no more than this share is worth saving. */
const littleShare = 0.4;
/** One filled to no more than this holds next to nothing. */
const nothingShare = 0.2;
/** What is left of the spaces between blocks, tried in turn. */
const closer = [0.9, 0.8, 0.7, 0.6, 0.5, 0.4] as const;

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
  const best = holdsLittle(pages, littleShare, setting) ? fewer(pages.length, pieces, setting) : undefined;
  if (best !== undefined) return boxesOf(bettered(best.pages, best.pieces, setting));
  return boxesOf(bettered(pages, pieces, setting));
}

/** A way to share pieces out, and the pieces as they are set for it. */
interface Way {
  readonly pieces: readonly Piece[];
  readonly pages: readonly StartedPage[];
}

/**
 * The pieces set as little closer as saves a page, if any way does; but where the last page of that would hold next to
 * nothing, closer still, if that helps.
 */
function fewer(count: number, pieces: readonly Piece[], setting: Setting): Way | undefined {
  let first: Way | undefined;
  for (const share of closer) {
    const closed = closedUp(pieces, share);
    const pages = paginate(closed, setting);
    if (pages.length >= count) continue;
    const way = { pieces: closed, pages };
    if (pages.length === 1 || !holdsLittle(pages, nothingShare, setting)) return way;
    first ??= way;
  }
  return first;
}

function holdsLittle(pages: readonly FilledPage[], share: number, { roomPt }: Setting): boolean {
  const last = pages.at(-1)?.boxes ?? [];
  return Math.max(0, ...last.map(({ box, y }) => y + box.heightPt - (box.stretchPt ?? 0))) <= share * roomPt;
}
