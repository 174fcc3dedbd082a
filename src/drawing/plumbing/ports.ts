/**
 * Where pipes meet their parts, and which of them are joined between two layers.
 */
import type { Net, NetEnd } from './channel';
import { isVessel, portStepPt } from './extents';
import type { Chain, Item } from './plumbing';

/** A piece of a chain in one channel: from one item to the next. */
export interface Joint {
  readonly chain: Chain;
  /** Which channel: 0 is above the first layer. */
  readonly channel: number;
  readonly a: Terminal;
  readonly b: Terminal;
}

/** An end of a joint at an item, leaving it below (`above` in the channel) or entering it from above. */
export interface Terminal {
  readonly item: Item;
  readonly side: NetEnd['side'];
}

/** All joints of the chains. */
export function jointsOf(chains: readonly Chain[], levelOf: ReadonlyMap<Item, number>): readonly Joint[] {
  const level = (item: Item): number => levelOf.get(item) ?? 0;
  return chains.flatMap((chain) => {
    const { from, to, bends, up } = chain;
    const way = up ? bends : [from, ...bends, to];
    const down = way.slice(1).flatMap((lower, index): Joint[] => {
      const upper = way[index];
      if (!upper) return [];
      const ends = { a: { item: upper, side: 'above' }, b: { item: lower, side: 'below' } } as const;
      return [{ chain, channel: level(lower), ...ends }];
    });
    const [first, last] = [bends[0], bends.at(-1)];
    if (!up || !first || !last) return down;
    return [
      ...down,
      { chain, channel: level(to), a: { item: to, side: 'below' }, b: { item: first, side: 'below' } },
      { chain, channel: level(from) + 1, a: { item: from, side: 'above' }, b: { item: last, side: 'above' } },
    ];
  });
}

/** A place for pipes at one side of an item. A vessel has one for each pipe, anything else one for each fluid. */
function placeOf(joint: Joint, { item }: Terminal): unknown {
  return isVessel(item) ? joint : joint.chain.pipe.carries;
}

/** The number of places for pipes on the fuller side of each item. */
export function pipesAt(joints: readonly Joint[]): ReadonlyMap<Item, number> {
  const places = new Map<Item, Readonly<Record<NetEnd['side'], Set<unknown>>>>();
  for (const joint of joints) {
    for (const end of [joint.a, joint.b]) {
      const here = places.get(end.item) ?? { above: new Set(), below: new Set() };
      here[end.side].add(placeOf(joint, end));
      places.set(end.item, here);
    }
  }
  return new Map([...places].map(([item, { above, below }]) => [item, Math.max(above.size, below.size)]));
}

/** The line on which each joint meets its items. */
export type Ports = ReadonlyMap<Joint, { readonly a: number; readonly b: number }>;

/** Places stand apart in the order of where their pipes lead, straight above or below that where they can. */
export function portsOf(
  joints: readonly Joint[],
  at: ReadonlyMap<Item, number>,
  halfOf: (item: Item) => number,
): Ports {
  const x = (item: Item): number => at.get(item) ?? 0;
  const ports = new Map(joints.map((joint) => [joint, { a: x(joint.a.item), b: x(joint.b.item) }]));
  const items = new Set(joints.flatMap(({ a, b }) => [a.item, b.item]));
  for (const item of items) {
    for (const side of ['above', 'below'] as const) {
      const groups = endsByPlace(joints, item, side, x);
      if (groups.length < (isVessel(item) ? 1 : 2)) continue;
      const reach = halfOf(item) - 5;
      const wishes = groups.map(({ wish }) => wish);
      const places = spread(wishes, x(item) - reach, x(item) + reach);
      for (const [index, { ends }] of groups.entries()) {
        for (const { joint, end } of ends) {
          const port = ports.get(joint);
          if (port) port[end] = places[index] ?? x(item);
        }
      }
    }
  }
  return ports;
}

interface PlaceEnds {
  readonly ends: readonly { readonly joint: Joint; readonly end: 'a' | 'b' }[];
  /** Where the pipes of the place lead, in the mean. */
  readonly wish: number;
}

/** The ends at one side of an item, by place, from left to right by where they lead. */
function endsByPlace(
  joints: readonly Joint[],
  item: Item,
  side: NetEnd['side'],
  x: (item: Item) => number,
): readonly PlaceEnds[] {
  const groups = new Map<unknown, { readonly joint: Joint; readonly end: 'a' | 'b' }[]>();
  for (const joint of joints) {
    for (const end of ['a', 'b'] as const) {
      if (joint[end].item !== item || joint[end].side !== side) continue;
      const place = placeOf(joint, joint[end]);
      groups.set(place, [...(groups.get(place) ?? []), { joint, end }]);
    }
  }
  return [...groups.values()]
    .map((ends) => {
      const others = ends.map(({ joint, end }) => x(joint[end === 'a' ? 'b' : 'a'].item));
      return { ends, wish: others.reduce((sum, each) => sum + each, 0) / others.length };
    })
    .sort((one, two) => one.wish - two.wish);
}

/** Sorted wishes, moved apart inside the bounds. */
function spread(wishes: readonly number[], least: number, most: number): readonly number[] {
  const even = (most - least) / Math.max(1, wishes.length - 1);
  const step = Math.min(portStepPt * 1.6, even);
  const places = wishes.map((wish) => Math.min(most, Math.max(least, wish)));
  for (let index = 1; index < places.length; index += 1)
    places[index] = Math.max(places[index] ?? 0, (places[index - 1] ?? 0) + step);
  for (let index = places.length - 1, bound = most; index >= 0; index -= 1, bound -= step)
    places[index] = Math.min(places[index] ?? 0, bound);
  for (let index = places.length - 2; index >= 0; index -= 1)
    places[index] = Math.min(places[index] ?? 0, (places[index + 1] ?? 0) - step);
  return places;
}

/** A net and the joints in it, each net's end with the item it is at. */
export interface JointNet {
  readonly net: Net;
  readonly items: readonly Item[];
}

/** The nets of one channel: joints that carry the same and meet at an end are one. */
export function netsOf(joints: readonly Joint[], ports: Ports): readonly JointNet[] {
  const groups: Joint[][] = [];
  for (const joint of joints) {
    const met = groups.filter((group) => group.some((other) => meets(joint, other, ports)));
    const merged = [...met.flat(), joint];
    for (const group of met) groups.splice(groups.indexOf(group), 1);
    groups.push(merged);
  }
  return groups.map((group) => netOf(group, ports));
}

function netOf(group: readonly Joint[], ports: Ports): JointNet {
  const ends = new Map<string, { readonly end: NetEnd; readonly item: Item }>();
  for (const joint of group) {
    for (const which of ['a', 'b'] as const) {
      const { item, side } = joint[which];
      const x = ports.get(joint)?.[which] ?? 0;
      ends.set(`${item.key} ${side} ${x}`, { end: { x, side }, item });
    }
  }
  const [first] = group;
  const key = `${first?.channel ?? 0} ${[...ends.keys()].join(' ')}`;
  const all = [...ends.values()];
  const net = { key, carries: first?.chain.pipe.carries ?? 'water', ends: all.map(({ end }) => end) };
  return { net, items: all.map(({ item }) => item) };
}

function meets(one: Joint, other: Joint, ports: Ports): boolean {
  if (one.chain.pipe.carries !== other.chain.pipe.carries) return false;
  return (['a', 'b'] as const).some((mine) =>
    (['a', 'b'] as const).some(
      (its) =>
        one[mine].item === other[its].item &&
        one[mine].side === other[its].side &&
        ports.get(one)?.[mine] === ports.get(other)?.[its],
    ),
  );
}
