/**
 * The proportions of a body: what is measured, and the usual shape of its kind of car for the rest.
 *
 * Only what is measured is to scale: length, width, wheelbase, front axle. The rest is common practice, no source: with
 * a steering wheel a long hood before the dash, with a tiller a short open front; in a van the driver sits far forward;
 * a wheel that stands alone in front has the body behind it.
 */
import type { Outline } from '../spec/schema/identity';

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
  readonly outline: Outline;
  /** Of three wheels, the one in the middle; of four, none. */
  readonly singleWheel: 'front' | 'rear' | undefined;
}

/** Where the main parts of a body of this kind stand, in metres. */
export interface Body {
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

/** The body of the kind of car that is steered so, on its wheels. */
export function bodyOf(input: OutlineInput): Body {
  const body = input.steering === 'wheel' ? touringBody(input) : runaboutBody(input);
  if (input.singleWheel !== 'front') return body;
  const nose = input.frontAxleBackM + body.wheel * 0.5;
  const dash = Math.max(body.dash, nose + 0.3);
  const shift = Math.max(0, dash + 0.35 - (body.seatRows[0]?.back ?? dash));
  return { ...body, nose, dash, seatRows: body.seatRows.map((row) => ({ ...row, back: row.back + shift })) };
}

/** A wheel's middle: back from the foremost point, right of the middle. */
export interface WheelSpot {
  readonly back: number;
  readonly right: number;
}

/** The wheels of the front axle and of the rear one; the one that stands alone is in the middle. */
export function wheelsOf(
  { frontAxleBackM, wheelbaseM, singleWheel }: OutlineInput,
  { trackHalf }: Body,
): readonly WheelSpot[] {
  const axle = (back: number, alone: boolean): readonly WheelSpot[] =>
    (alone ? [0] : [-trackHalf, trackHalf]).map((right) => ({ back, right }));
  return [
    ...axle(frontAxleBackM, singleWheel === 'front'),
    ...axle(frontAxleBackM + wheelbaseM, singleWheel === 'rear'),
  ];
}

function touringBody({
  lengthM,
  widthM,
  wheelbaseM: base,
  frontAxleBackM: axle,
  seats: count,
  outline,
}: OutlineInput): Body {
  const van = outline === 'van';
  const rows = van ? cabRow(count) : rowsOf(count);
  const first = axle + base * (van ? 0.36 : 0.52);
  const last = axle + base * 0.92;
  const step = rows.length > 1 ? (last - first) / (rows.length - 1) : 0;
  return {
    dash: axle + base * (van ? 0.12 : 0.27),
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

/** Whoever else rides in a van sits among the load. */
function cabRow(count: number): readonly number[] {
  return [Math.min(count, 3)];
}

function rowsOf(count: number): readonly number[] {
  if (count <= 2) return [count];
  return count <= 5 ? [2, count - 2] : [2, count - 5, 3];
}

function runaboutBody({
  lengthM,
  widthM,
  wheelbaseM: base,
  frontAxleBackM: axle,
  seats: count,
  outline,
}: OutlineInput): Body {
  const van = outline === 'van';
  const rows = van ? cabRow(count) : count <= 3 ? [count] : [2, count - 2];
  const first = axle + base * (rows.length > 1 ? 0.3 : van ? 0.42 : 0.62);
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
