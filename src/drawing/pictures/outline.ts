/** The outlines of the shapes an SVG may have (SVG 1.1, 9), in its own units. */
import type { PathPiece } from '../drawing';
import { arcCurves } from './arc';
import { readPathData } from './pathData';

/** Shapes that are read. */
export const shapeNames = ['path', 'rect', 'circle', 'ellipse', 'line', 'polyline', 'polygon'] as const;

/** One of them. */
export type ShapeName = (typeof shapeNames)[number];

/** The outline; nothing if a number of it cannot be read. */
export function outlineOf(
  name: ShapeName,
  attributes: Readonly<Record<string, string>>,
): readonly PathPiece[] | undefined {
  const number = (key: string) => Number.parseFloat(attributes[key] ?? '0');
  switch (name) {
    case 'path':
      return readPathData(attributes.d ?? '');
    case 'rect': {
      const corner = Number.parseFloat(attributes.rx ?? attributes.ry ?? '0');
      return box(number('x'), number('y'), number('width'), number('height'), corner);
    }
    case 'circle':
      return oval(number('cx'), number('cy'), number('r'), number('r'));
    case 'ellipse':
      return oval(number('cx'), number('cy'), number('rx'), number('ry'));
    case 'line':
      return sound([
        { op: 'move', x: number('x1'), y: number('y1') },
        { op: 'line', x: number('x2'), y: number('y2') },
      ]);
    case 'polyline':
    case 'polygon':
      return through(attributes.points ?? '', name === 'polygon');
  }
}

function sound(pieces: readonly PathPiece[]): readonly PathPiece[] | undefined {
  return pieces.every((piece) =>
    Object.values(piece).every((value) => value === piece.op || Number.isFinite(value)),
  )
    ? pieces
    : undefined;
}

function box(x: number, y: number, width: number, height: number, corner: number) {
  const r = Math.min(Math.max(corner, 0), width / 2, height / 2);
  const [right, bottom] = [x + width, y + height];
  const turn = (x0: number, y0: number, x1: number, y1: number) =>
    arcCurves(x0, y0, { rx: r, ry: r, turnDeg: 0, large: false, sweep: true, x: x1, y: y1 });
  if (!(r > 0))
    return sound([
      { op: 'move', x, y },
      { op: 'line', x: right, y },
      { op: 'line', x: right, y: bottom },
      { op: 'line', x, y: bottom },
      { op: 'close' },
    ]);
  return sound([
    { op: 'move', x: x + r, y },
    { op: 'line', x: right - r, y },
    ...turn(right - r, y, right, y + r),
    { op: 'line', x: right, y: bottom - r },
    ...turn(right, bottom - r, right - r, bottom),
    { op: 'line', x: x + r, y: bottom },
    ...turn(x + r, bottom, x, bottom - r),
    { op: 'line', x, y: y + r },
    ...turn(x, y + r, x + r, y),
    { op: 'close' },
  ]);
}

function oval(cx: number, cy: number, rx: number, ry: number) {
  const half = (x0: number, x1: number) =>
    arcCurves(x0, cy, { rx, ry, turnDeg: 0, large: false, sweep: true, x: x1, y: cy });
  return sound([
    { op: 'move', x: cx - rx, y: cy },
    ...half(cx - rx, cx + rx),
    ...half(cx + rx, cx - rx),
    { op: 'close' },
  ]);
}

function through(points: string, closed: boolean): readonly PathPiece[] | undefined {
  const numbers = points
    .split(/[\s,]+/)
    .filter((each) => each !== '')
    .map(Number);
  if (numbers.length % 2 === 1) return undefined;
  const pieces = Array.from({ length: numbers.length / 2 }, (_, index): PathPiece => {
    const [x = 0, y = 0] = numbers.slice(2 * index);
    return { op: index === 0 ? 'move' : 'line', x, y };
  });
  return sound(closed && pieces.length > 0 ? [...pieces, { op: 'close' }] : pieces);
}
