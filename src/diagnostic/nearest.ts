/**
 * Finding the name that was meant.
 */

/** Least number of letters added, dropped, changed or swapped with their neighbour to get from `a` to `b`. */
export function editDistance(a: string, b: string): number {
  let before: number[] = [];
  let last: number[] = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row += 1) {
    const next = [row];
    for (let column = 1; column <= b.length; column += 1) {
      const same = a[row - 1] === b[column - 1];
      let best = Math.min(
        (last[column] ?? 0) + 1,
        (next[column - 1] ?? 0) + 1,
        (last[column - 1] ?? 0) + (same ? 0 : 1),
      );
      const swapped = row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1];
      if (swapped) best = Math.min(best, (before[column - 2] ?? 0) + 1);
      next.push(best);
    }
    before = last;
    last = next;
  }
  return last[b.length] ?? 0;
}

/** The candidate nearest to `word`, if one is near enough to have been meant; the first of equals. */
export function nearest(word: string, candidates: Iterable<string>): string | undefined {
  const limit = Math.max(1, Math.floor(word.length / 3));
  let best: { name: string; edits: number } | undefined;
  for (const name of candidates) {
    if (Math.abs(name.length - word.length) > limit) continue;
    const edits = editDistance(word.toLowerCase(), name.toLowerCase());
    if (edits <= limit && (!best || edits < best.edits)) best = { name, edits };
  }
  return best?.name;
}
