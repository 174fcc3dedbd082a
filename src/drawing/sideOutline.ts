/**
 * The car from its left side, in outline: wheels, mudguards, frame, body, seats, steering. Length, wheelbase and front
 * axle are measured; the rest is the usual shape of its kind of car (common practice, no source).
 */

import { isRoofed } from '../spec/schema/identity';
import { type Body, bodyOf, type OutlineInput } from './carBody';
import { roofFromSide } from './carRoof';
import { inks, lines } from './carScale';
import type { PathPiece, Shape } from './drawing';
import { circle, type Point, polygon, polyline, stroke } from './shapes';

const { heavy, middle, fine } = lines;

/** From metres along and above the ground to points. */
export interface SideScale {
  readonly ptPerM: number;
  at(backM: number, upM: number): Point;
}

/** The outline's shapes, from the farthest to the nearest. */
export function sideOutline(
  input: OutlineInput & { readonly heightM?: number },
  scale: SideScale,
): readonly Shape[] {
  const body = bodyOf(input);
  const frameUp = body.wheel * 0.62;
  const beltUp = frameUp + (input.steering === 'wheel' ? 0.62 : 0.4);
  const roofUp = isRoofed(input.outline) ? input.heightM : undefined;
  return [
    ...steering(input, body, scale, frameUp, beltUp),
    ...(input.steering === 'wheel' ? hood(body, scale, frameUp, beltUp) : []),
    tub(input, body, scale, frameUp, beltUp),
    ...seats(body, scale, beltUp),
    ...(roofUp === undefined ? [] : roofFromSide(input, body, scale, { beltUp, topM: roofUp })),
    frame(body, scale, frameUp),
    ...(input.singleWheel === 'front' ? [fork(input, body, scale, frameUp, beltUp)] : []),
    ...axles(input).flatMap((back) => wheel(back, body, scale)),
    ...(input.outline === 'bare' ? [] : axles(input).map((back) => mudguard(back, body, scale))),
  ];
}

/** Holds a front wheel that stands alone. */
function fork(
  { frontAxleBackM }: OutlineInput,
  { nose, wheel: across }: Body,
  scale: SideScale,
  low: number,
  belt: number,
): Shape {
  const [head, hub] = [scale.at(nose, belt), scale.at(frontAxleBackM, across / 2)];
  return polyline([scale.at(nose, low), head, hub], stroke(2.2, inks.line));
}

function axles({ frontAxleBackM, wheelbaseM }: OutlineInput): readonly number[] {
  return [frontAxleBackM, frontAxleBackM + wheelbaseM];
}

function frame({ nose, tail }: Body, scale: SideScale, up: number): Shape {
  return polyline([scale.at(nose, up), scale.at(tail, up)], stroke(3, inks.line));
}

function wheel(back: number, { wheel: across, tyre }: Body, scale: SideScale): readonly Shape[] {
  const hub = scale.at(back, across / 2);
  const rim = (across / 2) * scale.ptPerM;
  const inner = rim - tyre * 0.8 * scale.ptPerM;
  const spokes = Array.from({ length: 12 }, (_, index) => {
    const turn = (Math.PI * index) / 6;
    return polyline([hub, { x: hub.x + Math.cos(turn) * inner, y: hub.y + Math.sin(turn) * inner }], fine);
  });
  return [
    circle(hub, rim, { fill: inks.tyre, stroke: middle }),
    circle(hub, inner, { fill: inks.paper, stroke: middle }),
    ...spokes,
    circle(hub, 0.07 * scale.ptPerM, { fill: inks.paper, stroke: middle }),
  ];
}

/** A part of a circle over the wheel. */
function mudguard(back: number, { wheel: across }: Body, scale: SideScale): Shape {
  const reach = across * 0.58;
  const steps = 16;
  const arc = Array.from({ length: steps + 1 }, (_, index) => {
    const turn = Math.PI * (0.06 + (0.86 * index) / steps);
    return scale.at(back - Math.cos(turn) * reach, across / 2 + Math.sin(turn) * reach);
  });
  return polyline(arc, stroke(2.2, inks.line));
}

function hood({ nose, dash }: Body, scale: SideScale, low: number, belt: number): readonly Shape[] {
  const high = belt + 0.02;
  const pieces: readonly PathPiece[] = [
    { op: 'move', ...scale.at(dash, low) },
    { op: 'line', ...scale.at(dash, high) },
    { op: 'line', ...scale.at(nose + 0.3, high - 0.06) },
    curve(scale.at(nose + 0.08, high - 0.08), scale.at(nose, high - 0.2), scale.at(nose, (low + high) / 2)),
    { op: 'line', ...scale.at(nose, low) },
    { op: 'close' },
  ];
  const louvres = [0.5, 0.57, 0.64, 0.71, 0.78].map((share) => {
    const back = nose + (dash - nose) * share;
    return polyline([scale.at(back, low + 0.2), scale.at(back, low + 0.4)], fine);
  });
  return [{ kind: 'path', pieces, paint: { fill: inks.body, stroke: heavy } }, ...louvres];
}

function curve(one: Point, two: Point, to: Point): PathPiece {
  return { op: 'curve', x1: one.x, y1: one.y, x2: two.x, y2: two.y, ...to };
}

/** The body from the dash to the tail; a runabout's dash curves up before its open floor. */
function tub(
  { steering: by }: OutlineInput,
  { dash, tail, nose, seatRows }: Body,
  scale: SideScale,
  low: number,
  belt: number,
): Shape {
  const open = by === 'tiller';
  const seatAt = (seatRows[0]?.back ?? dash) - 0.3;
  const floor = low + 0.12;
  const front: readonly PathPiece[] = open
    ? [
        { op: 'move', ...scale.at(nose + 0.05, belt + 0.12) },
        curve(scale.at(nose, belt - 0.1), scale.at(nose + 0.05, floor), scale.at(nose + 0.3, floor)),
        { op: 'line', ...scale.at(seatAt, floor) },
        { op: 'line', ...scale.at(seatAt, belt) },
      ]
    : [
        { op: 'move', ...scale.at(dash, belt + 0.02) },
        { op: 'line', ...scale.at(dash + 0.18, belt + 0.08) },
        curve(scale.at(dash + 0.5, belt - 0.2), scale.at(seatAt, belt - 0.2), scale.at(seatAt + 0.2, belt)),
      ];
  const rear: readonly PathPiece[] = [
    { op: 'line', ...scale.at(tail - 0.12, belt) },
    curve(scale.at(tail, belt), scale.at(tail, low + 0.2), scale.at(tail - 0.12, low)),
    { op: 'line', ...scale.at(open ? nose + 0.15 : dash, low) },
    { op: 'close' },
  ];
  return { kind: 'path', pieces: [...front, ...rear], paint: { fill: inks.body, stroke: heavy } };
}

/** Backs of the seats above the belt. */
function seats({ seatRows }: Body, scale: SideScale, belt: number): readonly Shape[] {
  return seatRows.map(({ back }) =>
    polygon(
      [
        scale.at(back + 0.12, belt),
        scale.at(back + 0.24, belt + 0.26),
        scale.at(back + 0.36, belt + 0.24),
        scale.at(back + 0.32, belt),
      ],
      { fill: inks.seat, stroke: middle },
    ),
  );
}

/** Windscreen up to the measured height and steering wheel, or tiller. */
function steering(
  { steering: by, heightM }: OutlineInput & { readonly heightM?: number },
  { dash, seatRows }: Body,
  scale: SideScale,
  low: number,
  belt: number,
): readonly Shape[] {
  const seat = seatRows[0]?.back ?? dash + 0.8;
  if (by === 'tiller') {
    const way = [
      scale.at(seat - 0.45, low),
      scale.at(seat - 0.42, belt + 0.3),
      scale.at(seat - 0.12, belt + 0.34),
    ];
    return [polyline(way, stroke(2.2, inks.line))];
  }
  const hub = { back: Math.max(dash + 0.3, seat - 0.42), up: belt + 0.18 };
  const glass =
    heightM === undefined
      ? []
      : [polyline([scale.at(dash + 0.1, belt), scale.at(dash + 0.16, heightM)], heavy)];
  return [
    ...glass,
    polyline([scale.at(dash + 0.05, low + 0.15), scale.at(hub.back, hub.up)], stroke(2, inks.wheel)),
    polyline(
      [scale.at(hub.back - 0.1, hub.up + 0.17), scale.at(hub.back + 0.1, hub.up - 0.17)],
      stroke(2.6, inks.wheel),
    ),
  ];
}
