/**
 * The proportions of a body: what is measured, and the usual shape of its kind of car for the rest.
 *
 * Only what is measured is to scale: length, width, wheelbase, front axle. The rest is common practice, no source: with
 * a steering wheel a long hood before the dash, with a tiller a short open front.
 */

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

/** The body of the kind of car that is steered so. */
export function bodyOf(input: OutlineInput): Body {
  return input.steering === 'wheel' ? touringBody(input) : runaboutBody(input);
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
