/** Which things were set in another order. */

/**
 * The entries of `now` that have to be moved to get from the order of `before` to that of `now`; both hold the same
 * entries. As few as can be: all but the longest run that kept its order (patience sorting; C. Schensted, Canadian
 * Journal of Mathematics 13 (1961) 179).
 */
export function movedEntries(before: readonly string[], now: readonly string[]): ReadonlySet<string> {
  const rank = new Map(before.map((entry, index) => [entry, index]));
  const tops: number[] = [];
  const previous: (number | undefined)[] = [];
  const rankAt = (index: number | undefined) =>
    index === undefined ? -1 : (rank.get(now[index] ?? '') ?? Number.POSITIVE_INFINITY);
  now.forEach((_, index) => {
    const place = firstAtLeast(tops, rankAt, rankAt(index));
    previous[index] = tops[place - 1];
    tops[place] = index;
  });
  const kept = new Set<string>();
  for (let index = tops.at(-1); index !== undefined; index = previous[index]) kept.add(now[index] ?? '');
  return new Set(now.filter((entry) => !kept.has(entry)));
}

/** How many of the piles, whose ranks rise, have a lower rank. */
function firstAtLeast(
  tops: readonly number[],
  rankAt: (index: number | undefined) => number,
  rank: number,
): number {
  let [low, high] = [0, tops.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (rankAt(tops[middle]) < rank) low = middle + 1;
    else high = middle;
  }
  return low;
}
