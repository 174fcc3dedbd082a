/**
 * Turning a rising function back.
 */

/** The x between `low` and `high` at which `rising` reaches `target`; the nearer bound if it lies outside. */
export function solveRising(
  rising: (x: number) => number,
  target: number,
  low: number,
  high: number,
): number {
  if (target <= rising(low)) return low;
  if (target >= rising(high)) return high;
  let [below, above] = [low, high];
  while (true) {
    const middle = (below + above) / 2;
    if (middle <= below || middle >= above) return middle;
    if (rising(middle) < target) below = middle;
    else above = middle;
  }
}
