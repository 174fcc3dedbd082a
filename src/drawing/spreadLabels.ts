/**
 * Labels one under the other, each as near as can be to what it names.
 */

/** The top of each label, in the order given; the order is kept by height of `middle`. Runs over the bottom if they are too tall. */
export function spreadLabels(
  labels: readonly { readonly middle: number; readonly heightPt: number }[],
  room: { readonly top: number; readonly bottom: number; readonly gapPt: number },
): readonly number[] {
  const order = [...labels.keys()].sort((a, b) => (labels[a]?.middle ?? 0) - (labels[b]?.middle ?? 0));
  const tops = labels.map(({ middle, heightPt }) => middle - Math.min(heightPt, 10) / 2);
  let bound = room.bottom + room.gapPt;
  for (const index of [...order].reverse()) {
    const height = labels[index]?.heightPt ?? 0;
    tops[index] = Math.min(tops[index] ?? 0, bound - room.gapPt - height);
    bound = tops[index] ?? 0;
  }
  let least = room.top;
  for (const index of order) {
    tops[index] = Math.max(tops[index] ?? 0, least);
    least = (tops[index] ?? 0) + (labels[index]?.heightPt ?? 0) + room.gapPt;
  }
  return tops;
}

/**
 * The top of each label, in the order given, where all together are moved as little as can be: those that crowd each other stand closed up
 * about the middle of what they name. Kept within the room as far as they fit.
 */
export function spreadEvenly(
  labels: readonly { readonly middle: number; readonly heightPt: number }[],
  room: { readonly top: number; readonly bottom: number },
): readonly number[] {
  const order = [...labels.keys()].sort((a, b) => (labels[a]?.middle ?? 0) - (labels[b]?.middle ?? 0));
  const piles: { tops: readonly number[]; indices: readonly number[]; heightPt: number }[] = [];
  const inRoom = (top: number, heightPt: number) => Math.max(room.top, Math.min(top, room.bottom - heightPt));
  for (const index of order) {
    const { middle = 0, heightPt = 0 } = labels[index] ?? {};
    let pile = { tops: [middle - heightPt / 2], indices: [index], heightPt };
    for (let last = piles.at(-1); last !== undefined; last = piles.at(-1)) {
      if (inRoom(mean(last.tops), last.heightPt) + last.heightPt <= inRoom(mean(pile.tops), pile.heightPt))
        break;
      piles.pop();
      const below = last.heightPt;
      // where each wants the top of the whole pile to be
      const tops = [...last.tops, ...pile.tops.map((top) => top - below)];
      pile = { tops, indices: [...last.indices, ...pile.indices], heightPt: below + pile.heightPt };
    }
    piles.push(pile);
  }
  const found = labels.map(() => 0);
  for (const { tops, indices, heightPt } of piles) {
    let top = inRoom(mean(tops), heightPt);
    for (const index of indices) {
      found[index] = top;
      top += labels[index]?.heightPt ?? 0;
    }
  }
  return found;
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
