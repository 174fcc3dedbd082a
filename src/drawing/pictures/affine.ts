/** Turning, moving and scaling of places in a picture: x' = a x + c y + e, y' = b x + d y + f (SVG 1.1, 7.5). */
import type { PathPiece } from '../drawing';

/** The six numbers a, b, c, d, e, f. */
export type Affine = readonly [number, number, number, number, number, number];

/** Everything stays where it is. */
export const unmoved: Affine = [1, 0, 0, 1, 0, 0];

/** First `inner`, then `outer`. */
export function after(outer: Affine, inner: Affine): Affine {
  const [a, b, c, d, e, f] = outer;
  const [p, q, r, s, t, u] = inner;
  return [a * p + c * q, b * p + d * q, a * r + c * s, b * r + d * s, a * t + c * u + e, b * t + d * u + f];
}

/** How much longer a line becomes, on the whole. */
export function growth([a, b, c, d]: Affine): number {
  return Math.sqrt(Math.abs(a * d - b * c));
}

/** The piece where it comes to stand. */
export function movedPiece(piece: PathPiece, [a, b, c, d, e, f]: Affine): PathPiece {
  const x = (px: number, py: number) => a * px + c * py + e;
  const y = (px: number, py: number) => b * px + d * py + f;
  switch (piece.op) {
    case 'close':
      return piece;
    case 'curve':
      return {
        op: 'curve',
        x1: x(piece.x1, piece.y1),
        y1: y(piece.x1, piece.y1),
        x2: x(piece.x2, piece.y2),
        y2: y(piece.x2, piece.y2),
        x: x(piece.x, piece.y),
        y: y(piece.x, piece.y),
      };
    default:
      return { op: piece.op, x: x(piece.x, piece.y), y: y(piece.x, piece.y) };
  }
}

/** The `transform` of an element; nothing if it cannot be read. Angles are in degrees. */
export function readTransform(text: string): Affine | undefined {
  let all: Affine = unmoved;
  const calls = [...text.matchAll(/\s*,?\s*([a-zA-Z]+)\s*\(([^)]*)\)/gy)];
  if (
    calls
      .map(([whole]) => whole)
      .join('')
      .trim() !== text.trim()
  )
    return undefined;
  for (const [, name = '', inside = ''] of calls) {
    const numbers = inside
      .split(/[\s,]+/)
      .filter((each) => each !== '')
      .map(Number);
    const one = numbers.every(Number.isFinite) ? single(name, numbers) : undefined;
    if (one === undefined) return undefined;
    all = after(all, one);
  }
  return all;
}

function single(name: string, [p = 0, q, r, s, t, u]: readonly number[]): Affine | undefined {
  const turn = (p * Math.PI) / 180;
  switch (name) {
    case 'matrix':
      return [q, r, s, t, u].includes(undefined) ? undefined : [p, q ?? 0, r ?? 0, s ?? 0, t ?? 0, u ?? 0];
    case 'translate':
      return [1, 0, 0, 1, p, q ?? 0];
    case 'scale':
      return [p, 0, 0, q ?? p, 0, 0];
    case 'rotate': {
      const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
      const about: Affine = [cos, sin, -sin, cos, 0, 0];
      return after(after([1, 0, 0, 1, q ?? 0, r ?? 0], about), [1, 0, 0, 1, -(q ?? 0), -(r ?? 0)]);
    }
    case 'skewX':
      return [1, 0, Math.tan(turn), 1, 0, 0];
    case 'skewY':
      return [1, Math.tan(turn), 0, 1, 0, 0];
    default:
      return undefined;
  }
}
