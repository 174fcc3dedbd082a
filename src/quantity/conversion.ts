/** How far a conversion is rounded, so that it says no more than what it was converted from. */
import { type RoundingDirection, roundTo } from './rounding';

/** A number and the step and direction it is rounded to. */
export interface Rounded {
  readonly value: number;
  readonly step: number;
  readonly rounding: RoundingDirection;
}

/** A conversion keeps this many digits, even of a source with one: 5 mi is 8.0 km, not 10 km. */
const leastDigits = 2;

/** How far, in steps of the last digit the source says, rounding more coarsely may move the conversion. */
const mostShift: Readonly<Record<RoundingDirection, number>> = { nearest: 0.5, down: 0.1, up: 0.1 };

/**
 * The coarsest step, ten, a hundred... times the usual one of `converted`, at which it has no fewer digits than `source`
 * and is hardly moved; undefined if the usual step has no digits too many. Digits are those up to the last that is not
 * nought, so that 200 has one; noughts after the point count.
 */
export function conversionStep(source: Rounded, converted: Rounded): number | undefined {
  const said = lastDigitOf(source);
  if (said === undefined || converted.value === 0) return undefined;
  const shift = mostShift[converted.rounding] * said.step * Math.abs(converted.value / source.value);
  let coarsest: number | undefined;
  for (
    let step = 10 * converted.step;
    digitsAt(converted.value, step) >= Math.max(leastDigits, said.digits);
    step *= 10
  ) {
    const moved = Math.abs(roundTo(converted.value, step, converted.rounding) - converted.value);
    if (moved <= shift) coarsest = step;
  }
  return coarsest;
}

/** The last digit that a rounded number says, as the step it counts, and how many digits there are up to it. */
function lastDigitOf({ value, step, rounding }: Rounded): { step: number; digits: number } | undefined {
  const rounded = Math.abs(roundTo(value, step, rounding));
  if (!(rounded > 0)) return undefined;
  let last = step;
  while (last >= 1 && isWhole(rounded / (10 * last))) last *= 10;
  return { step: last, digits: digitsAt(rounded, last) };
}

/** How many digits a number has down to the given step. */
function digitsAt(value: number, step: number): number {
  return Math.floor(Math.log10(Math.abs(value) / step) + 1e-9) + 1;
}

function isWhole(value: number): boolean {
  return Math.abs(value - Math.round(value)) < 1e-9 * Math.max(1, value);
}
