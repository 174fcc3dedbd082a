/**
 * Where each item stands across the diagram: items that follow each other in the flow share one upright line as far
 * as they can, so that pipes run straight. (After Brandes and Köpf, 2001, with one alignment and the mean of the
 * leftmost and the rightmost placing; from memory.)
 */

import type { Link } from './order';
import type { Item } from './plumbing';

/** How far an item reaches left and right of its own line. */
export interface Extent {
  readonly left: number;
  readonly right: number;
}

/** The line of each item, and the width of all. */
export interface Columns {
  readonly at: ReadonlyMap<Item, number>;
  readonly widthPt: number;
}

/** Items that share one upright line. */
type Block = Item[];

/** Places the items so that they stand in their order, `gapPt` apart, in no more width than that needs. */
export function columns(
  layers: readonly (readonly Item[])[],
  links: readonly Link[],
  extentOf: (item: Item) => Extent,
  gapPt: number,
): Columns {
  const blockOf = blocks(layers, links);
  const apart = (a: Item, b: Item): number => extentOf(a).right + gapPt + extentOf(b).left;
  const start = (item: Item): number => extentOf(item).left;
  const leftmost = compact(layers, blockOf, apart, start);
  const end = (item: Item): number => extentOf(item).right;
  const mirrored = compact(
    layers.map((layer) => [...layer].reverse()),
    blockOf,
    (a, b) => apart(b, a),
    end,
  );
  const items = layers.flat();
  const widthPt = Math.max(0, ...items.map((item) => (leftmost.get(item) ?? 0) + extentOf(item).right));
  const at = new Map(
    items.map(
      (item) => [item, ((leftmost.get(item) ?? 0) + widthPt - (mirrored.get(item) ?? 0)) / 2] as const,
    ),
  );
  return { at, widthPt };
}

/** Aligns each item with the middle one of those joined to it in the layer above, where no alignment is crossed. */
function blocks(layers: readonly (readonly Item[])[], links: readonly Link[]): ReadonlyMap<Item, Block> {
  const blockOf = new Map<Item, Block>(layers.flat().map((item) => [item, [item]]));
  const index = new Map(layers.flatMap((layer) => layer.map((item, at) => [item, at] as const)));
  const joined = (item: Item, other: Item): boolean => !item.part && !other.part;
  for (const layer of layers.slice(1)) {
    const taken: { readonly upper: number; readonly lower: number }[] = [];
    const bends = layer.filter((item) =>
      links.some(({ upper, lower }) => lower === item && joined(upper, lower)),
    );
    for (const item of [...bends, ...layer.filter((each) => !bends.includes(each))]) {
      const lower = index.get(item) ?? 0;
      const above = links
        .filter((link) => link.lower === item)
        .map(({ upper }) => upper)
        .sort((a, b) => (index.get(a) ?? 0) - (index.get(b) ?? 0));
      const wished = [above[(above.length - 1) >> 1], above[above.length >> 1]];
      const found = wished.find((other) => {
        const upper = other && index.get(other);
        return (
          upper !== undefined &&
          taken.every((pair) => pair.upper !== upper && pair.upper < upper === pair.lower < lower)
        );
      });
      const block = found && blockOf.get(found);
      if (!found || !block) continue;
      taken.push({ upper: index.get(found) ?? 0, lower });
      block.push(item);
      blockOf.set(item, block);
    }
  }
  return blockOf;
}

/** Every block as far to the left as the items before it in their layers allow. */
function compact(
  layers: readonly (readonly Item[])[],
  blockOf: ReadonlyMap<Item, Block>,
  apart: (a: Item, b: Item) => number,
  start: (item: Item) => number,
): ReadonlyMap<Item, number> {
  const before = new Map(
    layers.flatMap((layer) => layer.map((item, index) => [item, layer[index - 1]] as const)),
  );
  const placed = new Map<Block, number>();
  const place = (block: Block): number => {
    const known = placed.get(block);
    if (known !== undefined) return known;
    const at = Math.max(
      ...block.map((item) => {
        const previous = before.get(item);
        const other = previous && blockOf.get(previous);
        return previous && other ? place(other) + apart(previous, item) : start(item);
      }),
    );
    placed.set(block, at);
    return at;
  };
  return new Map([...blockOf].map(([item, block]) => [item, place(block)]));
}
