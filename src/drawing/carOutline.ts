/**
 * The car from above, in outline: frame, wheels, mudguards, body, seats, steering.
 */
import { type Body, bodyOf, type OutlineInput } from './carBody';
import { type CarScale, inks, lines, mirrored } from './carScale';
import { seats, steering } from './carSeats';
import type { Shape } from './drawing';
import { box, circle, polygon, polyline, stroke } from './shapes';

const { heavy, middle, fine } = lines;

/** The outline's shapes, from the lowest to the uppermost. */
export function carOutline(input: OutlineInput, scale: CarScale): readonly Shape[] {
  const body = bodyOf(input);
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
