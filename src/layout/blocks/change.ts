/** What is to be marked in the margin goes with the pieces, whatever page they come to stand on. */
import type { ChangeMark } from '../../markup/block';
import type { Box, Layer, Piece } from '../pieces';

/** The pieces of one thing with its mark: beside each of them, and below the last if something after it is gone. */
export function withChange(pieces: readonly Piece[], change: ChangeMark | undefined): readonly Piece[] {
  const last = pieces.findLastIndex(({ kind }) => kind === 'box');
  return pieces.map((piece, index) =>
    piece.kind === 'box' ? boxWith(piece, change, index === last) : piece,
  );
}

/** The same for lines. */
export function linesWithChange(lines: readonly Box[], change: ChangeMark | undefined): readonly Box[] {
  return lines.map((line, index) => boxWith(line, change, index === lines.length - 1));
}

/** The mark of something `heightPt` tall. */
export function changeLayer(heightPt: number, change: ChangeMark): Layer {
  return { y: 0, items: [], beside: { heightPt, change } };
}

function boxWith(box: Box, change: ChangeMark | undefined, isLast: boolean): Box {
  if (change === undefined) return box;
  const own = { changed: change.changed, goneAfter: change.goneAfter && isLast };
  return { ...box, layers: [...box.layers, changeLayer(box.heightPt, own)] };
}
