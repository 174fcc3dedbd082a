/**
 * Puts a shape somewhere else: on a page, or in a larger drawing.
 */
import type { Paint, PathPiece, Shape } from './drawing';

/** The shape scaled about the origin, then moved. Lines and type scale with it. */
export function placeShape(shape: Shape, scale: number, dx: number, dy: number): Shape {
  const x = (value: number) => value * scale + dx;
  const y = (value: number) => value * scale + dy;
  switch (shape.kind) {
    case 'path':
      return {
        ...shape,
        pieces: shape.pieces.map((piece) => placePiece(piece, x, y)),
        paint: scalePaint(shape.paint, scale),
      };
    case 'rect': {
      const placed = {
        ...shape,
        x: x(shape.x),
        y: y(shape.y),
        width: shape.width * scale,
        height: shape.height * scale,
      };
      const round = shape.radius === undefined ? placed : { ...placed, radius: shape.radius * scale };
      return { ...round, paint: scalePaint(shape.paint, scale) };
    }
    case 'circle':
      return {
        ...shape,
        cx: x(shape.cx),
        cy: y(shape.cy),
        r: shape.r * scale,
        paint: scalePaint(shape.paint, scale),
      };
    case 'text':
      return { ...shape, x: x(shape.x), y: y(shape.y), sizePt: shape.sizePt * scale };
  }
}

function placePiece(piece: PathPiece, x: (value: number) => number, y: (value: number) => number): PathPiece {
  if (piece.op === 'close') return piece;
  if (piece.op !== 'curve') return { ...piece, x: x(piece.x), y: y(piece.y) };
  return {
    op: 'curve',
    x1: x(piece.x1),
    y1: y(piece.y1),
    x2: x(piece.x2),
    y2: y(piece.y2),
    x: x(piece.x),
    y: y(piece.y),
  };
}

function scalePaint(paint: Paint, scale: number): Paint {
  if (scale === 1 || paint.stroke === undefined) return paint;
  const { stroke } = paint;
  const scaled = { ...stroke, widthPt: stroke.widthPt * scale };
  if (stroke.dashPt === undefined) return { ...paint, stroke: scaled };
  return { ...paint, stroke: { ...scaled, dashPt: stroke.dashPt.map((dash) => dash * scale) } };
}
