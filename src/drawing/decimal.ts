/**
 * Coordinates as decimal numbers, to a thousandth of a point, as SVG and PDF write them.
 */

/** A number with at most three decimals, never in exponent form. Throws on what is not a finite number. */
export function decimal(value: number): string {
  return Math.abs(value) < mostPt ? thousandths(Math.round(value * 1000)) : longDecimal(value);
}

/** So many thousandths as a decimal number; the engine's own way to the shortest form of any number takes longer. */
export function thousandths(count: number): string {
  if (!Number.isInteger(count)) throw new RangeError(`a coordinate is ${count}`);
  if (count < 0) return `-${thousandths(-count)}`;
  const rest = count % 1000;
  const whole = String((count - rest) / 1000);
  return rest === 0 ? whole : whole + decimals(rest);
}

/** Far more than a coordinate, and few enough thousandths to be told exactly. */
const mostPt = 1e6;

function longDecimal(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`a coordinate is ${value}`);
  return String(Math.round(value * 1000) / 1000);
}

/** A decimal point and what stands behind it, each made once. */
function decimals(rest: number): string {
  const known = made[rest];
  if (known !== undefined) return known;
  const written = String(rest / 1000).slice(1);
  made[rest] = written;
  return written;
}

const made = new Array<string | undefined>(1000);
