/**
 * The car from above, in outline: frame, wheels, mudguards, body, seats, steering.
 *
 * Only what is measured is to scale: length, width, wheelbase, front axle. The rest is drawn in the usual proportions of
 * its kind of car (common practice, no source): with a steering wheel a long hood before the dash, with a tiller a
 * short open front.
 */
import type { PathPiece, Shape } from './drawing';
import { box, circle, type Point, polygon, polyline, stroke, text } from './shapes';

/** What the outline is drawn from. Lengths in metres; "back" counts from the foremost point, "right" from the middle. */
export interface OutlineInput {
  readonly lengthM: number;
  readonly widthM: number;
  readonly wheelbaseM: number;
  readonly frontAxleBackM: number;
  /** How many may ride. */
  readonly seats: number;
  readonly driverSide: 'left' | 'right' | 'centre';
  readonly steering: 'wheel' | 'tiller';
}

/** Where a place of the car, in metres, is on the paper. */
export interface CarScale {
  readonly ptPerM: number;
  at(backM: number, rightM: number): Point;
}

/** Colours that stay apart on a grey printer. */
export const inks = {
  line: '#1a1a1a',
  soft: '#6b6b6b',
  tyre: '#cfcfca',
  body: '#f1f1ee',
  seat: '#dcdcd7',
  paper: '#ffffff',
} as const;

const heavy = stroke(1.2, inks.line);
const middle = stroke(0.75, inks.line);
const fine = stroke(0.45, inks.soft);

/** Where the main parts of a body of this kind stand, in metres. */
interface Body {
  readonly dash: number;
  readonly tubHalf: number;
  readonly noseHalf: number;
  readonly nose: number;
  readonly tail: number;
  readonly seatRows: readonly { readonly back: number; readonly count: number }[];
  readonly tyre: number;
  readonly wheel: number;
  readonly trackHalf: number;
}

/** The outline's shapes, from the lowest to the uppermost. */
export function carOutline(input: OutlineInput, scale: CarScale): readonly Shape[] {
  const body = input.steering === 'wheel' ? touringBody(input) : runaboutBody(input);
  return [
    ...chassis(input, body, scale),
    ...mudguards(input, body, scale),
    ...wheels(input, body, scale),
    ...(input.steering === 'wheel' ? hood(body, scale) : []),
    tub(input, body, scale),
    ...cowl(input, body, scale),
    ...seats(input, body, scale),
    ...steering(input, body, scale),
    ...lamps(input, body, scale),
  ];
}

function touringBody({
  lengthM,
  widthM,
  wheelbaseM: base,
  frontAxleBackM: axle,
  seats: count,
}: OutlineInput): Body {
  const rows = count <= 2 ? [count] : count <= 5 ? [2, count - 2] : [2, count - 5, 3];
  const first = axle + base * 0.52;
  const last = axle + base * 0.92;
  const step = rows.length > 1 ? (last - first) / (rows.length - 1) : 0;
  return {
    dash: axle + base * 0.27,
    tubHalf: widthM * 0.385,
    noseHalf: widthM * 0.235,
    nose: Math.min(0.14, axle * 0.25),
    tail: lengthM - 0.1,
    seatRows: rows.map((row, index) => ({ back: first + index * step, count: row })),
    tyre: 0.115,
    wheel: Math.max(0.7, base * 0.29),
    trackHalf: widthM / 2 - 0.13,
  };
}

function runaboutBody({
  lengthM,
  widthM,
  wheelbaseM: base,
  frontAxleBackM: axle,
  seats: count,
}: OutlineInput): Body {
  const rows = count <= 3 ? [count] : [2, count - 2];
  const first = axle + base * (rows.length > 1 ? 0.3 : 0.62);
  return {
    dash: axle + base * 0.14,
    tubHalf: widthM * 0.32,
    noseHalf: widthM * 0.27,
    nose: Math.min(axle * 0.5, 0.2),
    tail: lengthM - 0.06,
    seatRows: rows.map((row, index) => ({ back: first + index * base * 0.42, count: row })),
    tyre: 0.075,
    wheel: Math.max(0.62, base * 0.44),
    trackHalf: widthM / 2 - 0.07,
  };
}

/** Side members and axles. */
function chassis(input: OutlineInput, body: Body, scale: CarScale): readonly Shape[] {
  const rail = body.tubHalf * (input.steering === 'wheel' ? 0.62 : 0.4);
  const rails = [-rail, rail].map((right) =>
    polyline([scale.at(body.nose, right), scale.at(body.tail, right)], middle),
  );
  const beams = axlesOf(input).map((back) =>
    polyline([scale.at(back, -body.trackHalf), scale.at(back, body.trackHalf)], stroke(2, inks.line)),
  );
  return [...rails, ...beams];
}

/** The tyres, dashed, since the mudguards hide them. */
function wheels(input: OutlineInput, body: Body, scale: CarScale): readonly Shape[] {
  const [width, length] = [body.tyre * scale.ptPerM, body.wheel * scale.ptPerM];
  const hidden = stroke(0.6, inks.line, [2.4, 2]);
  return axlesOf(input).flatMap((back) =>
    [-body.trackHalf, body.trackHalf].map((right) =>
      box(scale.at(back, right), width, length, { fill: inks.tyre, stroke: hidden }, width * 0.42),
    ),
  );
}

function axlesOf({ frontAxleBackM, wheelbaseM }: OutlineInput): readonly number[] {
  return [frontAxleBackM, frontAxleBackM + wheelbaseM];
}

/** Over each wheel; on a touring car joined by running boards. */
function mudguards(input: OutlineInput, body: Body, scale: CarScale): readonly Shape[] {
  const { frontAxleBackM: front, wheelbaseM, widthM } = input;
  const outer = widthM / 2;
  const inner = body.trackHalf - body.tyre * 0.9;
  const paint = { fill: inks.paper, stroke: middle };
  return [-1, 1].flatMap((side) => {
    const guard = (back: number, fore: number, aft: number): Shape => {
      const [a, b] = [scale.at(back - fore, side * inner), scale.at(back + aft, side * outer)];
      const centre = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
      const [width, length] = [Math.abs(b.x - a.x), Math.abs(b.y - a.y)];
      return box(centre, width, length, paint, width * 0.48);
    };
    const reach = body.wheel * 0.56;
    const guards = [guard(front, reach, reach * 1.15), guard(front + wheelbaseM, reach * 1.1, reach)];
    if (input.steering === 'tiller') return guards;
    const board = [
      scale.at(front + reach, side * body.tubHalf * 0.96),
      scale.at(front + reach, side * outer * 0.985),
      scale.at(front + wheelbaseM - reach, side * outer * 0.985),
      scale.at(front + wheelbaseM - reach, side * body.tubHalf * 0.96),
    ];
    return [polygon(board, { fill: inks.paper, stroke: middle }), ...guards];
  });
}

/** Hood before the dash, with its hinge and its louvres. */
function hood(body: Body, scale: CarScale): readonly Shape[] {
  const wide = body.noseHalf * 1.28;
  const shape = mirrored(scale, [
    { to: [body.dash, wide] },
    { to: [body.nose + 0.2, body.noseHalf] },
    { to: [body.nose, 0], by: [body.nose + 0.03, body.noseHalf * 0.98, body.nose, body.noseHalf * 0.55] },
  ]);
  const length = body.dash - body.nose;
  const louvres = [-1, 1].flatMap((side) =>
    [0.52, 0.58, 0.64, 0.7, 0.76, 0.82].map((share) => {
      const back = body.nose + length * share;
      return polyline(
        [scale.at(back, side * body.noseHalf * 0.82), scale.at(back, side * body.noseHalf * 1.02)],
        fine,
      );
    }),
  );
  return [
    { kind: 'path', pieces: shape, paint: { fill: inks.body, stroke: heavy } },
    polyline([scale.at(body.nose + 0.02, 0), scale.at(body.dash, 0)], fine),
    ...louvres,
  ];
}

/** The body from the dash to the tail. */
function tub({ steering }: OutlineInput, body: Body, scale: CarScale): Shape {
  const { dash, tail, tubHalf, noseHalf } = body;
  const neck = steering === 'wheel' ? noseHalf * 1.28 : tubHalf * 0.9;
  const round = Math.min(0.42, (tail - dash) * 0.3);
  const pieces = mirrored(scale, [
    { to: [tail, 0] },
    { to: [tail, tubHalf - round * 0.9] },
    { to: [tail - round, tubHalf], by: [tail, tubHalf * 0.97, tail - round * 0.4, tubHalf] },
    { to: [dash + 0.36, tubHalf] },
    { to: [dash, neck], by: [dash + 0.16, tubHalf, dash + 0.12, neck] },
    { to: [dash, 0] },
  ]);
  return { kind: 'path', pieces, paint: { fill: inks.body, stroke: heavy } };
}

/** The dash; before it, on a runabout, the curved front with its toe board. */
function cowl({ steering }: OutlineInput, body: Body, scale: CarScale): readonly Shape[] {
  const half = steering === 'wheel' ? body.noseHalf * 1.28 : body.tubHalf * 0.9;
  const dash = polyline([scale.at(body.dash, -half), scale.at(body.dash, half)], stroke(2.2, inks.line));
  if (steering === 'wheel') {
    const glass = body.dash + 0.1;
    return [dash, polyline([scale.at(glass, -half * 1.06), scale.at(glass, half * 1.06)], middle)];
  }
  const front = mirrored(scale, [
    { to: [body.dash, half] },
    { to: [body.nose, 0], by: [body.nose + 0.1, half, body.nose, half * 0.75] },
  ]);
  return [{ kind: 'path', pieces: front, paint: { fill: inks.body, stroke: heavy } }, dash];
}

function seats(input: OutlineInput, body: Body, scale: CarScale): readonly Shape[] {
  const deep = 0.46;
  const room = body.tubHalf * 2 * 0.9;
  return body.seatRows.flatMap(({ back, count }, row) => {
    const wide = Math.min(0.62, room / Math.max(2, count));
    const cushions = Array.from({ length: count }, (_, index) => (index - (count - 1) / 2) * wide);
    const places = cushions.map((right) =>
      box(
        scale.at(back, right),
        wide * 0.94 * scale.ptPerM,
        deep * scale.ptPerM,
        { fill: inks.seat, stroke: middle },
        5,
      ),
    );
    const rest = box(
      scale.at(back + deep / 2 + 0.05, 0),
      (count * wide + 0.06) * scale.ptPerM,
      0.1 * scale.ptPerM,
      { fill: inks.seat, stroke: middle },
      4,
    );
    return [...places, rest, ...(row === 0 ? driverMark(input, cushions, back, scale) : [])];
  });
}

function driverMark(
  input: OutlineInput,
  cushions: readonly number[],
  back: number,
  scale: CarScale,
): readonly Shape[] {
  const right = driverRight(input, cushions);
  const { x, y } = scale.at(back, right);
  return [
    text({ x, y: y + 3 }, 'driver', { face: 'narrow', sizePt: 9, colour: inks.line, anchor: 'middle' }),
  ];
}

/** The seat the driver takes: on the driver's side, or the middle one. */
function driverRight({ driverSide }: OutlineInput, cushions: readonly number[]): number {
  const sorted = [...cushions].sort((a, b) => a - b);
  if (driverSide === 'centre') return sorted[Math.floor(sorted.length / 2)] ?? 0;
  return (driverSide === 'left' ? sorted[0] : sorted.at(-1)) ?? 0;
}

function steering(input: OutlineInput, body: Body, scale: CarScale): readonly Shape[] {
  const [row] = body.seatRows;
  if (!row) return [];
  const wide = Math.min(0.62, (body.tubHalf * 1.8) / Math.max(2, row.count));
  const right = driverRight(
    input,
    Array.from({ length: row.count }, (_, index) => (index - (row.count - 1) / 2) * wide),
  );
  if (input.steering === 'tiller') {
    const post = scale.at(row.back - 0.3, 0);
    const bend = scale.at(row.back - 0.36, right * 0.55);
    const grip = scale.at(row.back - 0.22, right);
    return [
      polyline([post, bend, grip], stroke(2.2, inks.line)),
      circle(post, 3.2, { fill: inks.paper, stroke: middle }),
      circle(grip, 2.6, { fill: inks.line }),
    ];
  }
  const hub = scale.at(Math.max(body.dash + 0.24, row.back - 0.48), right);
  const foot = scale.at(body.dash, right * 0.92);
  const radius = 0.19 * scale.ptPerM;
  return [
    polyline([foot, hub], stroke(2, inks.line)),
    circle(hub, radius, { stroke: stroke(2.4, inks.line) }),
    ...[0, 1, 2].map((spoke) => {
      const angle = (Math.PI * 2 * spoke) / 3 + Math.PI / 6;
      return polyline(
        [hub, { x: hub.x + Math.cos(angle) * radius, y: hub.y + Math.sin(angle) * radius }],
        middle,
      );
    }),
    circle(hub, 2.4, { fill: inks.line }),
  ];
}

function lamps({ steering: by }: OutlineInput, body: Body, scale: CarScale): readonly Shape[] {
  const back = by === 'wheel' ? body.nose + 0.12 : body.dash - 0.02;
  const right = by === 'wheel' ? body.noseHalf + 0.13 : body.tubHalf + 0.05;
  return [-right, right].map((side) =>
    circle(scale.at(back, side), (by === 'wheel' ? 0.085 : 0.06) * scale.ptPerM, {
      fill: inks.paper,
      stroke: middle,
    }),
  );
}

/** A step along half an outline: straight, or by two handles (back, right, back, right). */
interface HalfStep {
  readonly to: readonly [back: number, right: number];
  readonly by?: readonly [number, number, number, number];
}

/** A closed path from its right half: there on the right, back on the left. */
function mirrored(scale: CarScale, half: readonly HalfStep[]): readonly PathPiece[] {
  const there = half.map((step, index) => stepPiece(step, scale, 1, index === 0));
  const back = half.slice(1).map(({ by }, index): PathPiece => {
    const to = half[index]?.to ?? [0, 0];
    const reversed = by && ([by[2], by[3], by[0], by[1]] as const);
    return stepPiece(reversed ? { to, by: reversed } : { to }, scale, -1, false);
  });
  return [...there, ...back.reverse(), { op: 'close' }];
}

function stepPiece({ to, by }: HalfStep, scale: CarScale, side: 1 | -1, first: boolean): PathPiece {
  const end = scale.at(to[0], side * to[1]);
  if (!by) return { op: first ? 'move' : 'line', ...end };
  const [one, two] = [scale.at(by[0], side * by[1]), scale.at(by[2], side * by[3])];
  return { op: 'curve', x1: one.x, y1: one.y, x2: two.x, y2: two.y, ...end };
}
