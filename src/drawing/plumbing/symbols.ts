/**
 * Symbols of parts, drawn about their middle with the flow from top to bottom. Valves: two triangles, as drawings of
 * pipework have them; a shut one is filled.
 */
import { inks } from '../carScale';
import type { Paint, Shape } from '../drawing';
import { box, circle, type Point, polygon, polyline, stroke } from '../shapes';
import type { Box, SymbolKind } from './plumbing';

const line = stroke(1, inks.line);
const fine = stroke(0.6, inks.line);
const hollow: Paint = { fill: inks.paper, stroke: line };
const solid: Paint = { fill: inks.line, stroke: line };

/** The shapes of a symbol in its box. `shut` matters to a valve alone. */
export function symbol(kind: SymbolKind, { left, top, right, bottom }: Box, shut: boolean): readonly Shape[] {
  const frame: Frame = {
    middle: { x: (left + right) / 2, y: (top + bottom) / 2 },
    half: { x: (right - left) / 2, y: (bottom - top) / 2 },
    at: (across, down) => ({
      x: (left + right) / 2 + (across * (right - left)) / 2,
      y: (top + bottom) / 2 + (down * (bottom - top)) / 2,
    }),
  };
  return draw[kind](frame, shut);
}

interface Frame {
  readonly middle: Point;
  readonly half: Point;
  /** A point by shares of the half width and height from the middle. */
  at(across: number, down: number): Point;
}

type Draw = (frame: Frame, shut: boolean) => readonly Shape[];

const outline = ({ middle, half }: Frame, radius: number): Shape =>
  box(middle, half.x * 2, half.y * 2, hollow, radius);

/** Two triangles, tip to tip. */
const bowTie = ({ at }: Frame, upper: Paint, lower: Paint): readonly Shape[] => [
  polygon([at(-1, -1), at(1, -1), at(0, 0)], upper),
  polygon([at(-1, 1), at(1, 1), at(0, 0)], lower),
];

/** A stem to the left of the middle, with what works the valve at its end. */
const stem = ({ middle }: Frame): Shape => polyline([middle, { x: middle.x - 8, y: middle.y }], line);

const zigzag = ({ at }: Frame, turns: number, paint = line): Shape =>
  polyline(
    Array.from({ length: turns + 1 }, (_, index) =>
      at(index % 2 === 0 ? -0.7 : 0.7, -0.65 + (1.3 * index) / turns),
    ),
    paint,
  );

const draw: Readonly<Record<SymbolKind, Draw>> = {
  tank: (frame) => [
    outline(frame, 8),
    polyline([frame.at(-0.82, 0.1), frame.at(0.82, 0.1)], fine),
    polyline([frame.at(-0.4, 0.42), frame.at(0.4, 0.42)], fine),
  ],
  boiler: (frame) => [
    outline(frame, 5),
    ...[-0.6, -0.3, 0, 0.3, 0.6].map((across) =>
      polyline([frame.at(across, -0.2), frame.at(across, 0.75)], fine),
    ),
    polyline([frame.at(-0.95, -0.45), frame.at(0.95, -0.45)], fine),
  ],
  engine: (frame) => [
    outline(frame, 1),
    box(frame.at(-0.25, 0), 5, frame.half.y * 2, { fill: inks.line }),
    polyline([frame.at(-0.25, 0), frame.at(0.95, 0)], stroke(1.8, inks.line)),
  ],
  burner: (frame) => [
    box(frame.at(0, 0.62), frame.half.x * 2, frame.half.y * 0.76, hollow, 1),
    ...[-0.6, 0, 0.6].map((across) => flame(frame.at(across, 0.2), frame.half.y * 1.05)),
  ],
  coil: (frame) => [outline(frame, 2), zigzag(frame, 6)],
  exchanger: (frame) => [
    outline(frame, 2),
    ...[-0.5, 0, 0.5].map((down) => polyline([frame.at(-0.8, down), frame.at(0.8, down)], fine)),
    polyline([frame.at(-0.8, 0.85), frame.at(0.8, -0.85)], fine),
  ],
  pump: (frame) => [
    circle(frame.middle, frame.half.x, hollow),
    polygon([frame.at(-0.68, -0.45), frame.at(0.68, -0.45), frame.at(0, 0.92)], solid),
  ],
  valve: (frame, shut) => {
    const paint = shut ? solid : hollow;
    const { x, y } = frame.middle;
    return [
      stem(frame),
      polyline(
        [
          { x: x - 8, y: y - 4 },
          { x: x - 8, y: y + 4 },
        ],
        stroke(1.4, inks.line),
      ),
      ...bowTie(frame, paint, paint),
    ];
  },
  'check-valve': (frame) => [
    polygon([frame.at(-1, -0.9), frame.at(1, -0.9), frame.at(0, 0.7)], hollow),
    polyline([frame.at(-1, 0.8), frame.at(1, 0.8)], stroke(1.8, inks.line)),
  ],
  automatic: (frame) => {
    const { x, y } = frame.middle;
    return [
      stem(frame),
      box({ x: x - 8.5, y }, 5, 13, { fill: inks.line }, 2.5),
      ...bowTie(frame, hollow, hollow),
    ];
  },
  'relief-valve': (frame) => {
    const { x, y } = frame.middle;
    const spring = [0, 1, 2, 3, 4].map((turn) => ({
      x: x - 1 - turn * 2.4,
      y: y + (turn % 2 === 0 ? -3.2 : 3.2),
    }));
    return [polyline(spring, line), ...bowTie(frame, hollow, { ...solid })];
  },
  strainer: (frame) => [
    outline(frame, 0),
    polyline([frame.at(-1, -0.7), frame.at(1, 0.7)], { ...line, dashPt: [2, 1.6], cap: 'butt' }),
  ],
  joint: (frame) => [
    box(frame.middle, frame.half.x, frame.half.y * 2, { fill: inks.paper }),
    ...[-0.45, 0.45].map((down) => polyline([frame.at(-1, down), frame.at(1, down)], stroke(1.6, inks.line))),
  ],
  muffler: (frame) => [
    outline(frame, 6),
    polyline([frame.at(-0.4, -1), frame.at(-0.4, 0.3)], fine),
    polyline([frame.at(0.1, -0.3), frame.at(0.1, 1)], fine),
    polyline([frame.at(0.55, -1), frame.at(0.55, 0.3)], fine),
  ],
  glass: (frame) => [
    outline(frame, frame.half.x),
    box(frame.at(0, 0.4), frame.half.x * 1.1, frame.half.y * 0.95, { fill: inks.soft }, frame.half.x * 0.5),
  ],
  dial: (frame) => [
    circle(frame.middle, frame.half.x, hollow),
    polyline([frame.middle, frame.at(0.45, -0.6)], line),
  ],
  plain: (frame) => [outline(frame, 0)],
  'open-air': (frame) => [
    polyline(
      [frame.at(-1, 1), frame.at(0, -0.9), frame.at(1, 1)].map((point) => point),
      line,
    ),
    polyline([frame.at(0, -0.9), frame.at(0, 1)], line),
  ],
  ground: (frame) => [
    polyline([frame.at(-1, -0.9), frame.at(1, -0.9)], line),
    polyline([frame.at(-0.6, 0), frame.at(0.6, 0)], line),
    polyline([frame.at(-0.25, 0.9), frame.at(0.25, 0.9)], line),
  ],
};

/** A flame standing on a point. */
function flame({ x, y }: Point, height: number): Shape {
  const half = height * 0.32;
  return {
    kind: 'path',
    pieces: [
      { op: 'move', x, y: y - height },
      {
        op: 'curve',
        x1: x + half * 0.4,
        y1: y - height * 0.6,
        x2: x + half * 1.3,
        y2: y - height * 0.45,
        x: x + half,
        y: y - height * 0.18,
      },
      {
        op: 'curve',
        x1: x + half * 0.7,
        y1: y,
        x2: x - half * 0.7,
        y2: y,
        x: x - half,
        y: y - height * 0.18,
      },
      {
        op: 'curve',
        x1: x - half * 1.3,
        y1: y - height * 0.45,
        x2: x - half * 0.4,
        y2: y - height * 0.6,
        x,
        y: y - height,
      },
      { op: 'close' },
    ],
    paint: hollow,
  };
}
