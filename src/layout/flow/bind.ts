/**
 * Works out, before any page is filled, how much room each piece needs: its own height and that of all that must,
 * or ought to, stay on its page with it.
 */
import { fits } from '../fits';
import { isSolid, type Piece } from '../pieces';

/** Pieces with what each needs. Gaps and breaks need nothing. */
export interface Bound {
  readonly pieces: readonly Piece[];
  /** Height that must fit on the page for the piece to stand there. */
  readonly must: readonly number[];
  /** Height that ought to fit. */
  readonly ought: readonly number[];
  /** Index of the last piece that holds together with this one. */
  readonly chainEnd: readonly number[];
}

/** Works out the needs of `pieces`. */
export function bind(pieces: readonly Piece[]): Bound {
  const must = new Array<number>(pieces.length).fill(0);
  const ought = new Array<number>(pieces.length).fill(0);
  const chainEnd = pieces.map((_, index) => index);
  let next = -1;
  let gapPt = 0;
  for (let index = pieces.length - 1; index >= 0; index -= 1) {
    const piece = pieces[index];
    if (piece === undefined) continue;
    if (piece.kind === 'gap') gapPt = Math.max(gapPt, piece.heightPt);
    else if (!isSolid(piece)) next = -1;
    else {
      const least = piece.kind === 'box' ? piece.heightPt : piece.leastPt;
      const want = piece.kind === 'box' ? piece.heightPt : piece.wantPt;
      const holds = piece.keep !== 'free' && next !== -1;
      const below = (needs: readonly number[]) => piece.heightPt + gapPt + (needs[next] ?? 0);
      must[index] = holds && piece.keep === 'must' ? below(must) : least;
      ought[index] = holds ? below(ought) : want;
      if (holds) chainEnd[index] = chainEnd[next] ?? index;
      next = index;
    }
    if (piece.kind !== 'gap') gapPt = 0;
  }
  return { pieces, must, ought, chainEnd };
}

/** Whether all that ought to stay with the piece at `index` fits on an empty page. */
export function canStayTogether(bound: Bound, index: number, emptyRoomPt: number): boolean {
  return fits(bound.ought[index] ?? 0, emptyRoomPt);
}
