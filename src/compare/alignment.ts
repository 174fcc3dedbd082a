/** Two rows of things laid side by side: which entry of the one is which of the other. */
import { movedEntries } from './order';

/** A stretch of both rows, from an index up to another that is not in it. */
interface Stretch {
  readonly was: readonly [from: number, to: number];
  readonly is: readonly [from: number, to: number];
}

/** Largest table of a stretch without an entry of its own that is still searched for what it shares, in cells. */
const mostCells = 1_000_000;

/**
 * Pairs of equal entries, in the order of both rows. Entries that stand once in either row hold the rest in place: of them,
 * as many as keep their order. Between them the same again, and at the last the longest common run of entries (R. A.
 * Wagner and M. J. Fischer, Journal of the ACM 21 (1974) 168). Of rows without a repeated entry no more could be paired.
 */
export function commonPairs(
  was: readonly string[],
  is: readonly string[],
): readonly (readonly [was: number, is: number])[] {
  const pairs: (readonly [number, number])[] = [];
  const open: Stretch[] = [{ was: [0, was.length], is: [0, is.length] }];
  for (let stretch = open.pop(); stretch !== undefined; stretch = open.pop()) {
    const inner = withoutEnds(stretch, was, is, pairs);
    const anchors = anchorsIn(inner, was, is);
    if (anchors.length === 0) {
      pairs.push(...longestCommon(inner, was, is));
      continue;
    }
    pairs.push(...anchors);
    open.push(...between(inner, anchors));
  }
  return pairs.sort(([a], [b]) => a - b);
}

/** Takes the equal entries at both ends off. */
function withoutEnds(
  stretch: Stretch,
  was: readonly string[],
  is: readonly string[],
  pairs: (readonly [number, number])[],
): Stretch {
  let [oldFrom, oldTo] = stretch.was;
  let [newFrom, newTo] = stretch.is;
  while (oldFrom < oldTo && newFrom < newTo && was[oldFrom] === is[newFrom]) {
    pairs.push([oldFrom, newFrom]);
    oldFrom += 1;
    newFrom += 1;
  }
  while (oldFrom < oldTo && newFrom < newTo && was[oldTo - 1] === is[newTo - 1]) {
    oldTo -= 1;
    newTo -= 1;
    pairs.push([oldTo, newTo]);
  }
  return { was: [oldFrom, oldTo], is: [newFrom, newTo] };
}

/** Pairs of entries that stand once in each row, but for those that changed their order. */
function anchorsIn(
  stretch: Stretch,
  was: readonly string[],
  is: readonly string[],
): readonly (readonly [number, number])[] {
  const [old, now] = [singles(was, stretch.was), singles(is, stretch.is)];
  const shared = [...now.keys()].filter((entry) => old.has(entry));
  const moved = movedEntries(
    [...old.keys()].filter((entry) => now.has(entry)),
    shared,
  );
  return shared
    .filter((entry) => !moved.has(entry))
    .map((entry) => [old.get(entry) ?? 0, now.get(entry) ?? 0] as const);
}

/** Entries of a stretch that stand in it once, with their index, in order. */
function singles(row: readonly string[], [from, to]: readonly [number, number]): ReadonlyMap<string, number> {
  const found = new Map<string, number>();
  const twice = new Set<string>();
  for (let index = from; index < to; index += 1) {
    const entry = row[index] ?? '';
    if (found.has(entry)) twice.add(entry);
    else found.set(entry, index);
  }
  for (const entry of twice) found.delete(entry);
  return found;
}

function between(stretch: Stretch, anchors: readonly (readonly [number, number])[]): readonly Stretch[] {
  const ends = [...anchors, [stretch.was[1], stretch.is[1]] as const];
  let [oldFrom, newFrom] = [stretch.was[0], stretch.is[0]];
  return ends.map(([old, now]): Stretch => {
    const part: Stretch = { was: [oldFrom, old], is: [newFrom, now] };
    [oldFrom, newFrom] = [old + 1, now + 1];
    return part;
  });
}

function longestCommon(
  stretch: Stretch,
  was: readonly string[],
  is: readonly string[],
): readonly (readonly [number, number])[] {
  const gain = (old: number, now: number) => (was[old] === is[now] ? 1 : 0);
  return bestPairs(stretch, gain);
}

/**
 * The pairs of a stretch, in the order of both rows, whose gains add up to most; none that gains nothing, and none at
 * all where the stretch is too large to be searched. `gain` is never negative.
 */
export function bestPairs(
  { was: [oldFrom, oldTo], is: [newFrom, newTo] }: Stretch,
  gain: (was: number, is: number) => number,
): readonly (readonly [was: number, is: number])[] {
  const [rows, columns] = [oldTo - oldFrom, newTo - newFrom];
  if (rows === 0 || columns === 0 || rows * columns > mostCells) return [];
  const width = columns + 1;
  const best = new Float64Array((rows + 1) * width);
  const at = (row: number, column: number) => best[row * width + column] ?? 0;
  for (let row = rows - 1; row >= 0; row -= 1)
    for (let column = columns - 1; column >= 0; column -= 1)
      best[row * width + column] = Math.max(
        at(row + 1, column),
        at(row, column + 1),
        at(row + 1, column + 1) + gain(oldFrom + row, newFrom + column),
      );
  const pairs: (readonly [number, number])[] = [];
  for (let [row, column] = [0, 0]; row < rows && column < columns; ) {
    const own = gain(oldFrom + row, newFrom + column);
    if (own > 0 && at(row, column) === at(row + 1, column + 1) + own) {
      pairs.push([oldFrom + row, newFrom + column]);
      [row, column] = [row + 1, column + 1];
    } else if (at(row, column) === at(row + 1, column)) row += 1;
    else column += 1;
  }
  return pairs;
}
