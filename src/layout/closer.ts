/** Pieces set closer: the spaces between them, and those in the rows of tables, shrink; type never does. */
import { gap, type Piece } from './pieces';

/** The pieces with a share of their spaces. */
export function closedUp(pieces: readonly Piece[], share: number): readonly Piece[] {
  return share === 1 ? pieces : pieces.map((piece) => oneClosedUp(piece, share));
}

function oneClosedUp(piece: Piece, share: number): Piece {
  if (piece.kind === 'gap') return gap(share * piece.heightPt);
  if (piece.kind !== 'splittable' || piece.closer === undefined) return piece;
  const { keep, anchors } = piece;
  return { ...piece.closer(share), keep, anchors };
}
