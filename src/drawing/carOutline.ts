/**
 * The car from above, in outline: frame, wheels, mudguards, body, seats, steering.
 */
import { type Body, bodyOf, type OutlineInput, type WheelSpot, wheelsOf } from './carBody';
import { roof } from './carRoof';
import { type CarScale, inks, lines, mirrored } from './carScale';
import { seats, steering } from './carSeats';
import type { Shape } from './drawing';
import { box, circle, type Point, polygon, polyline, stroke } from './shapes';

const { heavy, middle, fine } = lines;

/** The outline's shapes, from the lowest to the uppermost. */
export function carOutline(input: OutlineInput, scale: CarScale): readonly Shape[] {
  const body = bodyOf(input);
  const [single, pairs] = [
    wheelsOf(input, body).filter(({ right }) => right === 0),
    wheelsOf(input, body).filter(({ right }) => right !== 0),
  ];
  return [
    ...chassis(input, body, scale),
    ...(input.outline === 'bare' ? [] : mudguards(input, body, scale)),
    ...pairs.map((spot) => wheel(spot, input, body, scale)),
    ...(input.steering === 'wheel' ? hood(body, scale) : []),
    tub(input, body, scale),
    ...cowl(input, body, scale),
    // in the middle, where the body would hide it
    ...single.map((spot) => wheel(spot, input, body, scale)),
    ...seats(body, scale),
    ...steering(input, body, scale),
    ...roof(input, body, scale),
    ...lamps(input, body, scale),
  ];
}

/** Side members and axles; to a wheel that stands alone in front a fork, from the frame to its hub. */
function chassis(input: OutlineInput, body: Body, scale: CarScale): readonly Shape[] {
  const rail = body.tubHalf * (input.steering === 'wheel' ? 0.62 : 0.4);
  const { frontAxleBackM: front, wheelbaseM, singleWheel } = input;
  const beside = body.tyre * 0.9;
  const end = singleWheel === 'rear' ? lastSeatEnd(body) : body.tail;
  const rails = [-1, 1].map((side) => {
    const fork = singleWheel === 'front' ? [scale.at(front, side * beside)] : [];
    return polyline(
      [...fork, scale.at(body.nose, side * rail), scale.at(end, side * rail)],
      singleWheel === 'front' ? stroke(1.4, inks.line) : middle,
    );
  });
  const beams = [front, front + wheelbaseM].map((back, index) => {
    const half = singleWheel === (index === 0 ? 'front' : 'rear') ? beside : body.trackHalf;
    return polyline([scale.at(back, -half), scale.at(back, half)], stroke(2, inks.line));
  });
  return [...rails, ...beams];
}

/** A tyre: dashed where a mudguard or the body hides it. */
function wheel(spot: WheelSpot, input: OutlineInput, body: Body, scale: CarScale): Shape {
  const [width, length] = [body.tyre * scale.ptPerM, body.wheel * scale.ptPerM];
  const line = input.outline === 'bare' && spot.right !== 0 ? middle : stroke(0.6, inks.line, [2.4, 2]);
  return box(scale.at(spot.back, spot.right), width, length, { fill: inks.tyre, stroke: line }, width * 0.42);
}

/** Over each wheel; on a touring car joined by running boards. */
function mudguards(input: OutlineInput, body: Body, scale: CarScale): readonly Shape[] {
  const { frontAxleBackM: front, wheelbaseM, widthM, singleWheel } = input;
  const outer = widthM / 2;
  const inner = body.trackHalf - body.tyre * 0.9;
  const paint = { fill: inks.paper, stroke: middle };
  const reach = body.wheel * 0.56;
  const guard = (one: Point, other: Point): Shape => {
    const centre = { x: (one.x + other.x) / 2, y: (one.y + other.y) / 2 };
    const [width, length] = [Math.abs(other.x - one.x), Math.abs(other.y - one.y)];
    return box(centre, width, length, paint, width * 0.48);
  };
  const axle = (back: number, alone: boolean, fore: number, aft: number): readonly Shape[] => {
    const across = body.trackHalf - inner;
    const spans = alone ? [[-across, across]] : [-1, 1].map((side) => [side * inner, side * outer]);
    return spans.map(([from = 0, to = 0]) => guard(scale.at(back - fore, from), scale.at(back + aft, to)));
  };
  const boards = [-1, 1].map((side) =>
    polygon(
      [
        scale.at(front + reach, side * body.tubHalf * 0.96),
        scale.at(front + reach, side * outer * 0.985),
        scale.at(front + wheelbaseM - reach, side * outer * 0.985),
        scale.at(front + wheelbaseM - reach, side * body.tubHalf * 0.96),
      ],
      { fill: inks.paper, stroke: middle },
    ),
  );
  return [
    ...(input.steering === 'wheel' && singleWheel === undefined ? boards : []),
    ...axle(front, singleWheel === 'front', reach, reach * 1.15),
    ...axle(front + wheelbaseM, singleWheel === 'rear', reach * 1.1, reach),
  ];
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

/** The body from the dash to the tail: a van's square behind, one on a single rear wheel drawn in towards it. */
function tub({ steering, outline, singleWheel }: OutlineInput, body: Body, scale: CarScale): Shape {
  const { dash, tail, tubHalf, noseHalf } = body;
  const neck = steering === 'wheel' ? noseHalf * 1.28 : tubHalf * 0.9;
  const round = outline === 'van' ? 0.08 : Math.min(0.42, (tail - dash) * 0.3);
  const end = singleWheel === 'rear' ? Math.min(tubHalf, Math.max(tubHalf * 0.45, body.tyre * 1.6)) : tubHalf;
  const drawnIn = singleWheel === 'rear' ? Math.min(tail - round, lastSeatEnd(body)) : tail - round;
  const pieces = mirrored(scale, [
    { to: [tail, 0] },
    { to: [tail, end - Math.min(round * 0.9, end * 0.8)] },
    { to: [tail - round, end], by: [tail, end * 0.97, tail - round * 0.4, end] },
    { to: [drawnIn, tubHalf] },
    { to: [dash + 0.36, tubHalf] },
    { to: [dash, neck], by: [dash + 0.16, tubHalf, dash + 0.12, neck] },
    { to: [dash, 0] },
  ]);
  return { kind: 'path', pieces, paint: { fill: inks.body, stroke: heavy } };
}

function lastSeatEnd({ seatRows, dash }: Body): number {
  return (seatRows.at(-1)?.back ?? dash) + 0.35;
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
