/**
 * The fewest stops for one thing that is used up at an even rate.
 *
 * Method: go on to the farthest stop in reach, each time filling up (a greedy choice that is always best; exercise in
 * T. H. Cormen et al., Introduction to Algorithms, chapter on greedy algorithms, from memory).
 */

/**
 * Which stops to use, by their place along the way, so as to go `lengthM` with a range of `rangeM` on each filling,
 * full at the start; undefined if it cannot be done.
 */
export function fewestStops(
  lengthM: number,
  rangeM: number,
  stopsM: readonly number[],
): readonly number[] | undefined {
  const along = [...stopsM.filter((at) => at > 0 && at < lengthM)].sort((a, b) => a - b);
  const used: number[] = [];
  let [filledAt, next] = [0, 0];
  while (lengthM - filledAt > rangeM) {
    let farthest: number | undefined;
    for (; next < along.length && (along[next] ?? Infinity) - filledAt <= rangeM; next++)
      farthest = along[next];
    if (farthest === undefined) return undefined;
    used.push(farthest);
    filledAt = farthest;
  }
  return used;
}

/** A place where only so much can be had. */
export interface LimitedStop {
  readonly atM: number;
  /** How much farther the car goes on what can be had there, m. */
  readonly givesM: number;
}

/**
 * The fewest stops where each gives only so much and the tank is large enough for all of it; `startM` is how far the
 * car goes on what it starts with. Method: go as far as it lasts, then take back the largest of the stops passed.
 */
export function fewestLimitedStops(
  lengthM: number,
  startM: number,
  stops: readonly LimitedStop[],
): number | undefined {
  const along = [...stops].sort((a, b) => a.atM - b.atM);
  const passed: number[] = [];
  let [reachM, next, count] = [startM, 0, 0];
  while (reachM < lengthM) {
    for (let stop = along[next]; stop && stop.atM <= reachM; stop = along[++next]) passed.push(stop.givesM);
    const most = passed.reduce((best, gives, index) => (gives > (passed[best] ?? -1) ? index : best), 0);
    const [gives] = passed.splice(most, 1);
    if (gives === undefined || gives <= 0) return undefined;
    reachM += gives;
    count += 1;
  }
  return count;
}
