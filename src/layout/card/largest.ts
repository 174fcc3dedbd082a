/** Finds the largest type that still fits. */

/** Steps in which type is tried, in points. */
export const sizeStepPt = 0.25;

/**
 * The largest size from `leastPt` up to `mostPt`, in steps of a quarter point, at which `fitsAt` holds; `leastPt`
 * is taken to fit. Larger type never fits better, so halving the range finds it.
 */
export function largestSize(leastPt: number, mostPt: number, fitsAt: (sizePt: number) => boolean): number {
  let low = 0;
  let high = Math.max(0, Math.floor((mostPt - leastPt) / sizeStepPt + 1e-9));
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (fitsAt(leastPt + middle * sizeStepPt)) low = middle;
    else high = middle - 1;
  }
  return leastPt + low * sizeStepPt;
}
