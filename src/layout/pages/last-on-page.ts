/**
 * Pages that do not end with what ought not to be last on one, such as the first step of several below its heading; but
 * never more pages for that.
 */
import { heldWhere, isSolid, type Piece } from '../pieces';
import { Problems } from '../problems';
import type { Setting } from '../setting';
import { alike, type HeadRooms, paginateUnderHeads, type StartedPage } from './paginate';

/** The pages that `pieces` were shared out over, or as many that end better. */
export function bettered(
  pages: readonly StartedPage[],
  pieces: readonly Piece[],
  setting: Setting,
  heads: HeadRooms = alike(setting),
): readonly StartedPage[] {
  let best = pages;
  if (best.length >= (heads.mostPages ?? Number.POSITIVE_INFINITY)) return best;
  // what is only tried leaves no problems behind
  const trial = { ...setting, problems: new Problems() };
  const tried = new Set<number>();
  let held: ReadonlySet<number> = new Set();
  const wronglyLast = () =>
    best.map(endBefore).find((index) => isWrongly(pieces[index]) && !tried.has(index));
  for (let index = wronglyLast(); index !== undefined; index = wronglyLast()) {
    tried.add(index);
    const more = new Set([...held, ...runUpTo(index, pieces)]);
    const other = paginateUnderHeads(heldWhere(pieces, more), trial, heads);
    if (other.length > best.length) continue;
    held = more;
    best = other;
  }
  return best;
}

/** Which piece the page before ends with; -1 if this page goes on in it. */
function endBefore({ work: { bound, at, rest } }: StartedPage): number {
  return rest === undefined ? bound.pieces.slice(0, at).findLastIndex(isSolid) : -1;
}

/** The piece at `index` with those right before it that ought not to end a page either: of no use one without the other. */
function runUpTo(index: number, pieces: readonly Piece[]): number[] {
  const run = [index];
  for (let at = index - 1; at >= 0; at -= 1) {
    const piece = pieces[at];
    if (isWrongly(piece)) run.push(at);
    else if (piece?.kind !== 'gap') break;
  }
  return run;
}

function isWrongly(last: Piece | undefined): boolean {
  return last !== undefined && isSolid(last) && last.notLast === true;
}
