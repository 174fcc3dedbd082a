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
