/**
 * The order of parts and bends within each layer, so that few pipes cross: sweeps by barycentre down and up, then
 * neighbours change places as long as that helps. (Sugiyama, Tagawa and Toda, 1981: the second step; from memory.)
 */
import type { Chain, Item, Layered } from './plumbing';

/** Two items of neighbouring layers that a pipe joins. */
export interface Link {
  readonly upper: Item;
  readonly lower: Item;
}

/** The joined pairs of neighbouring layers along a chain. */
export function linksOf({ from, to, bends, up }: Chain): readonly Link[] {
  const way = up ? bends : [from, ...bends, to];
  return way.slice(1).flatMap((lower, index) => {
    const upper = way[index];
    return upper ? [{ upper, lower }] : [];
  });
}

/** Items of one layer that a pipe joins by a turn above or below it: where a pipe begins and ends to go up. */
export function turnsOf({ from, to, bends, up }: Chain): readonly (readonly [Item, Item])[] {
  const [first, last] = [bends[0], bends.at(-1)];
  return up && first && last
    ? [
        [to, first],
        [from, last],
      ]
    : [];
}

/** The layers, each in its best order found. */
export function ordered({ layers, chains }: Layered): Layered {
  const links = chains.flatMap(linksOf);
  const turns = chains.flatMap(turnsOf);
  let best = layers.map((layer) => [...layer]);
  let least = cost(best, links, turns);
  const current = best.map((layer) => [...layer]);
  for (let sweep = 0; sweep < 12; sweep += 1) {
    sweepOnce(current, links, turns, sweep % 2 === 0);
    const now = cost(current, links, turns);
    if (now < least) {
      best = current.map((layer) => [...layer]);
      least = now;
    }
  }
  return { layers: exchanged(best, links, turns), chains };
}

function sweepOnce(
  layers: Item[][],
  links: readonly Link[],
  turns: readonly (readonly [Item, Item])[],
  down: boolean,
): void {
  const numbers = down ? [...layers.keys()] : [...layers.keys()].reverse();
  for (const number of numbers) {
    const layer = layers[number] ?? [];
    const place = placesOf(layers);
    const wish = new Map(
      layer.map((item) => {
        const joined = [...links.filter((link) => (down ? link.lower : link.upper) === item)].map((link) =>
          down ? link.upper : link.lower,
        );
        const beside = turns.flatMap(([a, b]) => (a === item ? [b] : b === item ? [a] : []));
        const at = [...joined, ...(joined.length > 0 ? [] : beside)].map((other) => place.get(other) ?? 0);
        const own = place.get(item) ?? 0;
        return [item, at.length === 0 ? own : at.reduce((sum, each) => sum + each, 0) / at.length] as const;
      }),
    );
    layer.sort((a, b) => (wish.get(a) ?? 0) - (wish.get(b) ?? 0));
  }
}

/** Where each item stands in its layer, as a share from 0 to 1. */
function placesOf(layers: readonly (readonly Item[])[]): ReadonlyMap<Item, number> {
  return new Map(
    layers.flatMap((layer) => layer.map((item, index) => [item, (index + 0.5) / layer.length] as const)),
  );
}

/** Neighbours change places while pipes cross less or run shorter for it. */
function exchanged(
  layers: Item[][],
  links: readonly Link[],
  turns: readonly (readonly [Item, Item])[],
): readonly (readonly Item[])[] {
  const around = layers.map((layer, number) => {
    const own = new Set(layer);
    const nearLayers = layers.slice(Math.max(0, number - 1), number + 2);
    const nearLinks = links.filter(({ upper, lower }) => own.has(upper) || own.has(lower));
    const nearTurns = turns.filter(([item]) => own.has(item));
    return { layer, costNow: () => cost(nearLayers, nearLinks, nearTurns) };
  });
  for (let round = 0, bettered = true; bettered && round < 8; round += 1) {
    bettered = false;
    for (const { layer, costNow } of around) if (exchangeIn(layer, costNow)) bettered = true;
  }
  return layers;
}

/** Whether any two of the layer have changed places for the better. What they do not touch costs the same as before. */
function exchangeIn(layer: Item[], costNow: () => number): boolean {
  let least = costNow();
  let bettered = false;
  for (let gap = 1; gap <= 2; gap += 1) {
    for (let index = gap; index < layer.length; index += 1) {
      swap(layer, index - gap, index);
      const now = costNow();
      if (now < least - 1e-9) [least, bettered] = [now, true];
      else swap(layer, index - gap, index);
    }
  }
  return bettered;
}

function swap(layer: Item[], a: number, b: number): void {
  const [one, other] = [layer[a], layer[b]];
  if (one && other) [layer[a], layer[b]] = [other, one];
}

/** Crossings between neighbouring layers count most, then what stands between the ends of a turn, then length. */
function cost(
  layers: readonly (readonly Item[])[],
  links: readonly Link[],
  turns: readonly (readonly [Item, Item])[],
): number {
  const index = new Map(layers.flatMap((layer) => layer.map((item, at) => [item, at] as const)));
  const share = placesOf(layers);
  const byUpper = new Map<number, (readonly [number, number])[]>();
  const level = new Map(layers.flatMap((layer, at) => layer.map((item) => [item, at] as const)));
  let length = 0;
  for (const { upper, lower } of links) {
    const at = level.get(upper) ?? 0;
    const pairs = byUpper.get(at) ?? [];
    pairs.push([index.get(upper) ?? 0, index.get(lower) ?? 0]);
    byUpper.set(at, pairs);
    length += Math.abs((share.get(upper) ?? 0) - (share.get(lower) ?? 0));
  }
  const between = turns.reduce(
    (sum, [a, b]) => sum + Math.abs((index.get(a) ?? 0) - (index.get(b) ?? 0)) - 1,
    0,
  );
  return (
    [...byUpper.values()].reduce((sum, pairs) => sum + crossings(pairs), 0) + between * 0.6 + length * 0.2
  );
}

function crossings(pairs: readonly (readonly [number, number])[]): number {
  let count = 0;
  const sorted = [...pairs].sort(([a, b], [c, d]) => a - c || b - d);
  // each pair crosses those before it whose lower end is further right: seen so far, in order
  const lowers: number[] = [];
  for (const [, lower] of sorted) {
    const place = placeAfter(lowers, lower);
    count += lowers.length - place;
    lowers.splice(place, 0, lower);
  }
  return count;
}

/** Where a number goes in a sorted list: after all that are no larger. */
function placeAfter(sorted: readonly number[], value: number): number {
  let [from, to] = [0, sorted.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if ((sorted[middle] ?? 0) <= value) from = middle + 1;
    else to = middle;
  }
  return from;
}
