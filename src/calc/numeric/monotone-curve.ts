/**
 * A smooth curve through measured points that never falls where the points rise.
 *
 * Method: piecewise cubic Hermite interpolation with limited slopes (F. N. Fritsch and R. E. Carlson, "Monotone
 * Piecewise Cubic Interpolation", SIAM J. Numer. Anal. 17, 1980; slopes by the weighted harmonic mean of
 * F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5, 1984).
 */

/** One point of a curve. */
export interface CurvePoint {
  readonly x: number;
  readonly y: number;
}

/** The curve through `points` (x strictly rising, two or more); level beyond its ends. */
export function monotoneCurve(points: readonly CurvePoint[]): (x: number) => number {
  const [first, last] = [points[0], points.at(-1)];
  if (points.length < 2 || !first || !last) throw new RangeError('a curve needs two points or more');
  const slopes = limitedSlopes(points);
  return (x) => {
    if (Number.isNaN(x)) throw new RangeError('a curve was asked for a place that is not a number');
    if (x <= first.x) return first.y;
    if (x >= last.x) return last.y;
    const index = intervalOf(points, x);
    const [a, b] = [points[index] ?? first, points[index + 1] ?? last];
    return hermite(a, b, slopes[index] ?? 0, slopes[index + 1] ?? 0, x);
  };
}

/** The index of the interval that holds `x`, by halving. */
function intervalOf(points: readonly CurvePoint[], x: number): number {
  let [low, high] = [0, points.length - 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((points[middle]?.x ?? 0) <= x) low = middle;
    else high = middle;
  }
  return low;
}

function hermite(a: CurvePoint, b: CurvePoint, slopeA: number, slopeB: number, x: number): number {
  const width = b.x - a.x;
  const t = (x - a.x) / width;
  const rise = t * t * (3 - 2 * t);
  const bend = slopeA * t * (1 - t) ** 2 - slopeB * t * t * (1 - t);
  return a.y + (b.y - a.y) * rise + width * bend;
}

function limitedSlopes(points: readonly CurvePoint[]): readonly number[] {
  const widths: number[] = [];
  const chords: number[] = [];
  for (const [index, point] of points.entries()) {
    const next = points[index + 1];
    if (!next) break;
    if (!(next.x > point.x)) throw new RangeError('the points of a curve must go forward');
    widths.push(next.x - point.x);
    chords.push((next.y - point.y) / (next.x - point.x));
  }
  const at = (list: readonly number[], index: number): number => list[index] ?? 0;
  const n = chords.length;
  if (n === 1) return [at(chords, 0), at(chords, 0)];
  const inner = Array.from({ length: n - 1 }, (_, i) =>
    innerSlope(at(widths, i), at(widths, i + 1), at(chords, i), at(chords, i + 1)),
  );
  return [
    endSlope(at(widths, 0), at(widths, 1), at(chords, 0), at(chords, 1)),
    ...inner,
    endSlope(at(widths, n - 1), at(widths, n - 2), at(chords, n - 1), at(chords, n - 2)),
  ];
}

function innerSlope(widthBefore: number, widthAfter: number, before: number, after: number): number {
  if (before * after <= 0) return 0;
  const [w1, w2] = [2 * widthAfter + widthBefore, widthAfter + 2 * widthBefore];
  return (w1 + w2) / (w1 / before + w2 / after);
}

/** Three-point slope at an end, held to the sign and to three times the chord beside it. */
function endSlope(width: number, nextWidth: number, chord: number, nextChord: number): number {
  const slope = ((2 * width + nextWidth) * chord - width * nextChord) / (width + nextWidth);
  if (slope * chord <= 0) return 0;
  if (chord * nextChord <= 0 && Math.abs(slope) > 3 * Math.abs(chord)) return 3 * chord;
  return slope;
}
