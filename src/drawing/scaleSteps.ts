/**
 * Round steps for scales and axes.
 */

/** The smallest of 1, 2, 5, 10, 20… (or a tenth of one) that cuts `most` into no more than `count` steps. */
export function roundStep(most: number, count: number): number {
  if (!(most > 0) || !Number.isFinite(most)) throw new RangeError(`a scale cannot end at ${most}`);
  const least = most / count;
  const ten = 10 ** Math.floor(Math.log10(least));
  return [1, 2, 5].map((step) => step * ten).find((step) => step >= least * (1 - 1e-9)) ?? 10 * ten;
}

/** From nought to the first step at or past `most`. */
export function stepsTo(most: number, step: number): readonly number[] {
  const count = Math.ceil(most / step - 1e-9);
  return Array.from({ length: count + 1 }, (_, index) => index * step);
}

/** A number of a scale, as it is printed: no more decimals than the step has; `decimal` stands between whole and parts. */
export function scaleNumber(value: number, step: number, decimal: string): string {
  return value.toFixed(Math.max(0, -Math.floor(Math.log10(step) + 1e-9))).replace('.', decimal);
}
