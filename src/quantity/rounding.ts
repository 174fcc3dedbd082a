/**
 * Rounding that never lands on the unsafe side because of noise in the last bits of a number.
 */

/** To which side a number may be rounded. */
export type RoundingDirection = 'nearest' | 'down' | 'up';

/** How far, in parts of a step, a number may lie from a whole step and still count as that step: far above
 * the noise of double arithmetic (about 1e-15), far below anything that can be measured. */
const noise = 1e-9;

/** How many whole steps `value` is, rounded to `direction`; a half goes away from nought, so that 36.5 and its noise are 37. */
export function wholeSteps(value: number, step: number, direction: RoundingDirection): number {
  const steps = value / step;
  const nearest = Math.sign(steps) * Math.floor(Math.abs(steps) + 0.5 + noise);
  if (direction === 'nearest' || Math.abs(steps - nearest) <= noise * Math.max(1, Math.abs(steps) * 1e-3)) {
    return nearest;
  }
  return direction === 'down' ? Math.floor(steps) : Math.ceil(steps);
}

/** `value` rounded to a whole number of steps. */
export function roundTo(value: number, step: number, direction: RoundingDirection): number {
  return wholeSteps(value, step, direction) * step;
}

/** The decimals needed to write every multiple of `step` without loss (at most 12). */
export function decimalsOfStep(step: number): number {
  for (let decimals = 0; decimals < 12; decimals++) {
    const scaled = step * 10 ** decimals;
    if (Math.abs(scaled - Math.round(scaled)) < 1e-9 * Math.max(1, scaled)) return decimals;
  }
  return 12;
}
