/**
 * Shapes as path operators (ISO 32000-1, 8.5), in a space with y downwards.
 */
import type { Colour, Paint, PathPiece, Shape, Stroke } from '../drawing/drawing';
import { num, nums } from './syntax';

/** Any shape but text. */
export type InkedShape = Exclude<Shape, { readonly kind: 'text' }>;

/** How far the handles of a quarter circle stand from its ends, for a radius of 1. */
const handle = (4 / 3) * (Math.SQRT2 - 1);

/** The outline of a shape. */
export function outlineOf(shape: InkedShape): string {
  switch (shape.kind) {
    case 'path':
      return shape.pieces.map(pieceOperator).join('\n');
    case 'circle':
      return roundedBox(shape.cx - shape.r, shape.cy - shape.r, 2 * shape.r, 2 * shape.r, shape.r);
    case 'rect': {
      const radius = Math.min(shape.radius ?? 0, shape.width / 2, shape.height / 2);
      if (radius > 0) return roundedBox(shape.x, shape.y, shape.width, shape.height, radius);
      return `${nums(shape.x, shape.y, shape.width, shape.height)} re`;
    }
  }
}

/** The operator that paints the outline before it; nothing to paint leaves nothing on the page. */
export function paintOperator({ fill, stroke }: Paint): string {
  if (fill && stroke) return 'B';
  if (fill) return 'f';
  return stroke ? 'S' : 'n';
}

const colours = new Map<Colour, string>();

/** The operands of a colour operator: red, green, blue from 0 to 1. */
export function colourNumbers(colour: Colour): string {
  const known = colours.get(colour);
  if (known !== undefined) return known;
  if (!/^#[0-9a-f]{6}$/i.test(colour)) throw new RangeError(`"${colour}" is not a colour`);
  const value = Number.parseInt(colour.slice(1), 16);
  const numbers = [value >> 16, (value >> 8) & 255, value & 255].map((part) => num(part / 255)).join(' ');
  colours.set(colour, numbers);
  return numbers;
}

/** Line width, dashes and ends. */
export function strokeOperators({ widthPt, dashPt = [], cap = 'butt' }: Stroke): string {
  return `${num(widthPt)} w [${nums(...dashPt)}] 0 d ${cap === 'round' ? 1 : 0} J`;
}

function pieceOperator(piece: PathPiece): string {
  switch (piece.op) {
    case 'move':
      return `${nums(piece.x, piece.y)} m`;
    case 'line':
      return `${nums(piece.x, piece.y)} l`;
    case 'curve':
      return `${nums(piece.x1, piece.y1, piece.x2, piece.y2, piece.x, piece.y)} c`;
    case 'close':
      return 'h';
  }
}

function roundedBox(x: number, y: number, width: number, height: number, radius: number): string {
  const [right, bottom, reach] = [x + width, y + height, radius * (1 - handle)];
  return [
    `${nums(x + radius, y)} m`,
    `${nums(right - radius, y)} l`,
    `${nums(right - reach, y, right, y + reach, right, y + radius)} c`,
    `${nums(right, bottom - radius)} l`,
    `${nums(right, bottom - reach, right - reach, bottom, right - radius, bottom)} c`,
    `${nums(x + radius, bottom)} l`,
    `${nums(x + reach, bottom, x, bottom - reach, x, bottom - radius)} c`,
    `${nums(x, y + radius)} l`,
    `${nums(x, y + reach, x + reach, y, x + radius, y)} c`,
    'h',
  ].join('\n');
}
