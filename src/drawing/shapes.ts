/**
 * Short ways to make shapes.
 */
import type { Face } from '../font/metrics';
import type { Colour, Paint, PathPiece, Shape, Stroke } from './drawing';

/** A place in a drawing, in points. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** The kind of text a drawing holds. */
export type TextShape = Extract<Shape, { readonly kind: 'text' }>;

/** A stroke with round ends, solid unless dashed. */
export function stroke(widthPt: number, colour: Colour, dashPt?: readonly number[]): Stroke {
  return { colour, widthPt, cap: 'round', ...(dashPt ? { dashPt } : {}) };
}

/** A line through points. */
export function polyline(points: readonly Point[], line: Stroke): Shape {
  return { kind: 'path', pieces: through(points), paint: { stroke: line } };
}

/** A closed shape with straight sides. */
export function polygon(points: readonly Point[], paint: Paint): Shape {
  return { kind: 'path', pieces: [...through(points), { op: 'close' }], paint };
}

/** A circle. */
export function circle(centre: Point, r: number, paint: Paint): Shape {
  return { kind: 'circle', cx: centre.x, cy: centre.y, r, paint };
}

/** A rectangle about its middle, with rounded corners if `radius` is given. */
export function box(middle: Point, width: number, height: number, paint: Paint, radius = 0): Shape {
  return { kind: 'rect', x: middle.x - width / 2, y: middle.y - height / 2, width, height, radius, paint };
}

/** Text on one line. */
export function text(
  at: Point,
  words: string,
  {
    face,
    sizePt,
    colour,
    anchor = 'start',
  }: { face: Face; sizePt: number; colour: Colour; anchor?: TextShape['anchor'] },
): TextShape {
  return { kind: 'text', x: at.x, y: at.y, text: words, face, sizePt, colour, anchor };
}

function through([first, ...rest]: readonly Point[]): PathPiece[] {
  if (!first) return [];
  return [{ op: 'move', ...first }, ...rest.map((point) => ({ op: 'line', ...point }) as const)];
}
