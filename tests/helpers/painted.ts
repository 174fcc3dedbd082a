/** What colour shapes leave at a point: painted in order, later shapes over earlier ones. Text is passed over. */
import type { Colour, PathPiece, Shape } from '../../src/drawing/drawing';

type Point = readonly [x: number, y: number];

/** The colour seen at a point; nothing where no shape is. */
export type ColourAt = (x: number, y: number) => Colour | undefined;

/** Makes shapes ready to be asked what is seen where. */
export function painted(shapes: readonly Shape[]): ColourAt {
  const flat = shapes.flatMap((shape) =>
    shape.kind === 'text' ? [] : [{ paint: shape.paint, rings: ringsOf(shape) }],
  );
  return (x, y) => {
    let seen: Colour | undefined;
    for (const { paint, rings } of flat) {
      if (paint.fill !== undefined && isInside(rings, x, y)) seen = paint.fill;
      const { stroke } = paint;
      if (stroke !== undefined && distanceTo(rings, x, y) <= stroke.widthPt / 2) seen = stroke.colour;
    }
    return seen;
  };
}

/** Shares of a frame by colour, from a grid of points. */
export function sharesOf(
  { widthPt, heightPt, shapes }: { widthPt: number; heightPt: number; shapes: readonly Shape[] },
  steps = 90,
): ReadonlyMap<Colour | 'none', number> {
  const at = painted(shapes);
  const counts = new Map<Colour | 'none', number>();
  for (let row = 0; row < steps; row += 1)
    for (let column = 0; column < steps; column += 1) {
      const seen = at(((column + 0.5) * widthPt) / steps, ((row + 0.5) * heightPt) / steps) ?? 'none';
      counts.set(seen, (counts.get(seen) ?? 0) + 1);
    }
  return new Map([...counts].map(([colour, count]) => [colour, count / (steps * steps)]));
}

function ringsOf(shape: Exclude<Shape, { kind: 'text' }>): readonly (readonly Point[])[] {
  if (shape.kind === 'circle') {
    const ring = Array.from({ length: 65 }, (_, step): Point => {
      const angle = (step * Math.PI) / 32;
      return [shape.cx + shape.r * Math.cos(angle), shape.cy + shape.r * Math.sin(angle)];
    });
    return [ring];
  }
  if (shape.kind === 'rect') {
    const { x, y, width, height } = shape;
    return [
      [
        [x, y],
        [x + width, y],
        [x + width, y + height],
        [x, y + height],
        [x, y],
      ],
    ];
  }
  return flattened(shape.pieces);
}

function flattened(pieces: readonly PathPiece[]): Point[][] {
  const rings: Point[][] = [];
  for (const piece of pieces) {
    const ring = rings.at(-1) ?? [];
    const [first] = ring;
    if (piece.op === 'move') rings.push([[piece.x, piece.y]]);
    else if (piece.op === 'curve') ring.push(...curve(ring.at(-1) ?? [0, 0], piece));
    else if (piece.op === 'close') {
      if (first !== undefined) ring.push(first);
    } else ring.push([piece.x, piece.y]);
  }
  return rings;
}

function curve([x0, y0]: Point, { x1, y1, x2, y2, x, y }: Extract<PathPiece, { op: 'curve' }>): Point[] {
  return Array.from({ length: 12 }, (_, step): Point => {
    const t = (step + 1) / 12;
    const [a, b, c, d] = [(1 - t) ** 3, 3 * (1 - t) ** 2 * t, 3 * (1 - t) * t ** 2, t ** 3];
    return [a * x0 + b * x1 + c * x2 + d * x, a * y0 + b * y1 + c * y2 + d * y];
  });
}

function isInside(rings: readonly (readonly Point[])[], x: number, y: number): boolean {
  let winding = 0;
  for (const ring of rings)
    for (const [index, [x1, y1]] of ring.entries()) {
      const [x2, y2] = ring[index + 1] ?? ring[0] ?? [x1, y1];
      if (y1 <= y === y2 <= y) continue;
      if (x1 + ((y - y1) / (y2 - y1)) * (x2 - x1) > x) winding += y2 > y1 ? 1 : -1;
    }
  return winding !== 0;
}

function distanceTo(rings: readonly (readonly Point[])[], x: number, y: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (const ring of rings)
    for (const [index, [x1, y1]] of ring.entries()) {
      const next = ring[index + 1];
      if (next === undefined) continue;
      const [dx, dy] = [next[0] - x1, next[1] - y1];
      const length = dx * dx + dy * dy;
      const along = length === 0 ? 0 : Math.max(0, Math.min(1, ((x - x1) * dx + (y - y1) * dy) / length));
      least = Math.min(least, Math.hypot(x - x1 - along * dx, y - y1 - along * dy));
    }
  return least;
}
