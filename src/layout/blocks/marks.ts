/**
 * Marks drawn as paths, since text faces lack them or draw them differently: the alert triangle, tick boxes,
 * bullets, pointers and leaders.
 */
import type { Colour, PathPiece } from '../../drawing/drawing';
import type { PlacedShape, StructureIndex } from '../frame';

/** A closed path through points. */
export function polygon(
  points: readonly (readonly [number, number])[],
  fill: Colour,
  tag?: StructureIndex,
): PlacedShape {
  const pieces: PathPiece[] = points.map(([x, y], index) => ({ op: index === 0 ? 'move' : 'line', x, y }));
  const shape = { kind: 'path', pieces: [...pieces, { op: 'close' }], paint: { fill } } as const;
  return tag === undefined ? { kind: 'shape', shape } : { kind: 'shape', shape, tag };
}

/** A filled rectangle. */
export function filledRect(x: number, y: number, width: number, height: number, fill: Colour): PlacedShape {
  return { kind: 'shape', shape: { kind: 'rect', x, y, width, height, paint: { fill } } };
}

/** A rectangle drawn as a line that lies wholly inside it. */
export function outlinedRect(
  x: number,
  y: number,
  width: number,
  height: number,
  colour: Colour,
  linePt: number,
): PlacedShape {
  const half = linePt / 2;
  const inner = { x: x + half, y: y + half, width: width - linePt, height: height - linePt };
  return { kind: 'shape', shape: { kind: 'rect', ...inner, paint: { stroke: { colour, widthPt: linePt } } } };
}

/** A straight line across. */
export function rule(x: number, y: number, width: number, colour: Colour, linePt: number): PlacedShape {
  const pieces: PathPiece[] = [
    { op: 'move', x, y },
    { op: 'line', x: x + width, y },
  ];
  return { kind: 'shape', shape: { kind: 'path', pieces, paint: { stroke: { colour, widthPt: linePt } } } };
}

/** A straight line down. */
export function ruleDown(x: number, y: number, height: number, colour: Colour, linePt: number): PlacedShape {
  const pieces: PathPiece[] = [
    { op: 'move', x, y },
    { op: 'line', x, y: y + height },
  ];
  return { kind: 'shape', shape: { kind: 'path', pieces, paint: { stroke: { colour, widthPt: linePt } } } };
}

/** A row of dots that leads the eye from `x` to `right`, on a fixed beat so that leaders stand under each other. */
export function leader(x: number, right: number, y: number, sizePt: number, colour: Colour): PlacedShape[] {
  const beat = 0.42 * sizePt;
  const from = Math.ceil(x / beat) * beat;
  const count = Math.floor((right - from) / beat);
  if (count < 2) return [];
  const pieces: PathPiece[] = [
    { op: 'move', x: from, y },
    { op: 'line', x: from + count * beat, y },
  ];
  const stroke = { colour, widthPt: 0.085 * sizePt, dashPt: [0, beat], cap: 'round' } as const;
  return [{ kind: 'shape', shape: { kind: 'path', pieces, paint: { stroke } } }];
}

/** Least length of a leader worth drawing, as a share of the type size. */
export const leastLeaderEm = 1.6;

/** The alert symbol of ANSI Z535: a triangle with a mark in it, `side` wide, its foot at `y`. */
export function alertTriangle(
  x: number,
  y: number,
  side: number,
  triangle: Colour,
  mark: Colour,
): PlacedShape[] {
  const height = (side * Math.sqrt(3)) / 2;
  const middle = x + side / 2;
  const bar = 0.055 * side;
  const top = y - 0.68 * height;
  const foot = y - 0.28 * height;
  const dot = { cx: middle, cy: y - 0.14 * height, r: 0.062 * side };
  return [
    polygon(
      [
        [middle, y - height],
        [x + side, y],
        [x, y],
      ],
      triangle,
    ),
    polygon(
      [
        [middle - bar, top],
        [middle + bar, top],
        [middle + 0.7 * bar, foot],
        [middle - 0.7 * bar, foot],
      ],
      mark,
    ),
    { kind: 'shape', shape: { kind: 'circle', ...dot, paint: { fill: mark } } },
  ];
}

/** A box to tick, `side` wide, standing on the baseline `y`. */
export function tickBox(x: number, y: number, side: number, colour: Colour, linePt: number): PlacedShape {
  return outlinedRect(x, y - side, side, side, colour, linePt);
}

/** A solid triangle that points right, `height` tall, centred on `y`. */
export function pointer(x: number, y: number, height: number, colour: Colour): PlacedShape {
  return polygon(
    [
      [x, y - height / 2],
      [x + 0.8 * height, y],
      [x, y + height / 2],
    ],
    colour,
  );
}

/** A list's bullet: a dot, a ring, or a dash, by how deep the list stands. */
export function bullet(x: number, y: number, sizePt: number, depth: number, colour: Colour): PlacedShape {
  const r = 0.14 * sizePt;
  if (depth >= 2) return rule(x - 1.6 * r, y, 3.2 * r, colour, 0.08 * sizePt);
  const paint = depth === 0 ? { fill: colour } : { stroke: { colour, widthPt: 0.07 * sizePt } };
  return { kind: 'shape', shape: { kind: 'circle', cx: x, cy: y, r, paint } };
}
