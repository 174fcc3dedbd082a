/**
 * The pipes between two layers: every net gets a level track of its own wherever tracks would touch, ordered so that
 * few pipes cross and no two run on top of each other.
 */
import type { Fluid } from '../../car/plant';

/** An end of a net: at its upper or its lower edge of the channel. */
export interface NetEnd {
  readonly x: number;
  readonly side: 'above' | 'below';
}

/** Ends that are joined in this channel. */
export interface Net {
  readonly key: string;
  readonly carries: Fluid;
  readonly ends: readonly NetEnd[];
}

/** A net with its track, counted from the top; ends that had to step aside keep the line they run on. */
export interface RoutedNet {
  readonly net: Net;
  /** Undefined if the net runs straight down. */
  readonly track?: number;
  /** The upright line of each end, as `ends`. */
  readonly lines: readonly number[];
}

/** All nets of a channel. */
export interface Channel {
  readonly nets: readonly RoutedNet[];
  readonly tracks: number;
}

/** Uprights nearer than this would be taken for one. */
const near = 4;
/** What two nets on one line cost, counted in crossings: more than a channel can have. */
const mergedCost = 10_000;
/** Between the ends of two nets on one track. */
const clear = 8;

/** Gives each net its track. */
export function routeChannel(nets: readonly Net[]): Channel {
  const bent = nets.filter((net) => !isStraight(net));
  const asTheyAre: Lines = new Map(nets.map((net) => [net, net.ends.map(({ x }) => x)]));
  const merged = orderCost(bestOrder(bent, asTheyAre), asTheyAre) >= mergedCost;
  const lines = merged ? stepAside(nets) : asTheyAre;
  const order = bestOrder(bent, lines);
  const tracks = new Map<Net, number>();
  for (const net of order) tracks.set(net, firstTrack(net, order, tracks, lines));
  return {
    nets: nets.map((net) => {
      const track = tracks.get(net);
      return { net, lines: lines.get(net) ?? [], ...(track === undefined ? {} : { track }) };
    }),
    tracks: Math.max(0, ...[...tracks.values()].map((track) => track + 1)),
  };
}

function isStraight({ ends }: Net): boolean {
  return ends.every(({ x }) => x === ends[0]?.x);
}

type Lines = ReadonlyMap<Net, readonly number[]>;

/** Where a net comes down on the line that another goes down from, the lower end steps aside to a line that is free. */
function stepAside(nets: readonly Net[]): Lines {
  const lines = new Map<Net, number[]>(nets.map((net) => [net, net.ends.map(({ x }) => x)]));
  const used = (except: Net, ownIndex: number): readonly number[] =>
    [...lines].flatMap(([net, xs]) => xs.filter((_, index) => net !== except || index !== ownIndex));
  const upper = (except: Net): readonly number[] =>
    nets.flatMap((net) =>
      net === except
        ? []
        : net.ends.flatMap((end, index) => (end.side === 'above' ? [lines.get(net)?.[index] ?? end.x] : [])),
    );
  for (const net of nets) {
    for (const [index, { x, side }] of net.ends.entries()) {
      const xs = lines.get(net);
      if (side !== 'below' || !xs || !upper(net).some((other) => Math.abs(other - x) < near)) continue;
      const taken = used(net, index);
      const free = [5, -5, 9, -9, 13, -13].find((step) =>
        taken.every((other) => Math.abs(other - x - step) >= near),
      );
      if (free !== undefined) xs[index] = x + free;
    }
  }
  return lines;
}

function spanOf(net: Net, lines: Lines): readonly [number, number] {
  const xs = lines.get(net) ?? [];
  return [Math.min(...xs), Math.max(...xs)];
}

/** An order of the tracks from the top, bettered by moving one net at a time. */
function bestOrder(nets: readonly Net[], lines: Lines): readonly Net[] {
  const costOf = pairCosts(nets, lines);
  let order = [...nets].sort((a, b) => spanOf(a, lines)[0] - spanOf(b, lines)[0]);
  let least = sumOver(order, costOf);
  for (let round = 0; round < 6 && least > 0; round += 1) {
    const before = least;
    for (const net of nets) {
      const others = order.filter((other) => other !== net);
      const own = costsByPlace(net, others, costOf);
      const rest = least - (own[order.indexOf(net)] ?? 0);
      own.forEach((cost, place) => {
        if (rest + cost < least) [least, order] = [rest + cost, others.toSpliced(place, 0, net)];
      });
    }
    if (least === before) break;
  }
  return order;
}

/** What a net costs at each place among the others, from above the first to below the last. */
function costsByPlace(net: Net, others: readonly Net[], costOf: PairCosts): readonly number[] {
  let cost = others.reduce((sum, other) => sum + costOf(net, other), 0);
  return [
    cost,
    ...others.map((other) => {
      cost += costOf(other, net) - costOf(net, other);
      return cost;
    }),
  ];
}

/** The cost of one net above another. */
type PairCosts = (upper: Net, lower: Net) => number;

/** All of them, worked out once. */
function pairCosts(nets: readonly Net[], lines: Lines): PairCosts {
  const known = new Map(
    nets.map((upper) => [upper, new Map(nets.map((lower) => [lower, pairCost(upper, lower, lines)]))]),
  );
  return (upper, lower) => known.get(upper)?.get(lower) ?? 0;
}

function orderCost(order: readonly Net[], lines: Lines): number {
  return sumOver(order, (upper, lower) => pairCost(upper, lower, lines));
}

function sumOver(order: readonly Net[], costOf: PairCosts): number {
  return order.reduce(
    (sum, lower, at) => order.slice(0, at).reduce((part, upper) => part + costOf(upper, lower), sum),
    0,
  );
}

/** Uprights of one net through the level of the other; dear where both are on one line. */
function pairCost(upper: Net, lower: Net, lines: Lines): number {
  const within = (x: number, [from, to]: readonly [number, number]): boolean => x > from && x < to;
  const xs = (net: Net, side: NetEnd['side']): readonly number[] =>
    (lines.get(net) ?? []).filter((_, index) => net.ends[index]?.side === side);
  const [down, up] = [xs(upper, 'below'), xs(lower, 'above')];
  const crossed =
    down.filter((x) => within(x, spanOf(lower, lines))).length +
    up.filter((x) => within(x, spanOf(upper, lines))).length;
  const merged = down.flatMap((x) => up.filter((other) => Math.abs(other - x) < near)).length;
  return crossed + mergedCost * merged;
}

/** The uppermost track below those it may not be above, where no other level touches it. */
function firstTrack(net: Net, order: readonly Net[], tracks: ReadonlyMap<Net, number>, lines: Lines): number {
  const [from, to] = spanOf(net, lines);
  let least = 0;
  for (const other of order) {
    const track = tracks.get(other);
    if (track === undefined) continue;
    const [otherFrom, otherTo] = spanOf(other, lines);
    if (from < otherTo + clear && otherFrom < to + clear) least = Math.max(least, track + 1);
  }
  return least;
}
