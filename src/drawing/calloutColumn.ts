/**
 * One column of labels: an order and heights for them, so that the straight leaders to their points do not cross, and none
 * runs over the point of another if that can be helped.
 *
 * Two ways are tried and the one with the fewest points run over is kept; of several, that with the shortest leaders. Labels near their points: the order is by
 * height, and pairs whose leaders cross change places until none do; this may fail. Labels one under the
 * other: each next port takes the point that all other points lie below of, seen from it; this cannot fail, since
 * the leader taken then has everything that follows on one side of it.
 */
import type { Point } from './shapes';

/** A label to be placed. */
export interface ColumnLabel {
  readonly anchor: Point;
  readonly heightPt: number;
}

/** The column: leaders begin on the line x = `edge`, `portDown` below the top of their label. */
export interface Column {
  readonly edge: number;
  readonly top: number;
  readonly bottom: number;
  readonly gapPt: number;
  readonly portDown: number;
}

type Tops = readonly number[];

/** An area (square points) so small that three points are taken to be in one line. */
const straight = 1e-9;

/** The top of each label. If they are too tall together they run over the bottom. Points must not lie on the edge. */
export function placeColumn(labels: readonly ColumnLabel[], column: Column): Tops {
  if (labels.length === 0) return [];
  const underEachOther = oneUnderTheOther(labels, column);
  const candidates = [nearTheirPoints(labels, column) ?? [], ...underEachOther];
  const sound = candidates.filter((tops) => tops.length > 0 && !crossing(labels, tops, column));
  const costs = sound.map(
    (tops) => runOver(labels, tops, column) * overPt + totalLength(labels, tops, column),
  );
  const best = sound[costs.indexOf(Math.min(...costs))] ?? underEachOther[0];
  if (!best) throw new Error('a column of labels could not be placed');
  return nudged(labels, best, column);
}

/** A leader closer to another's point than this reads as one that ends there. */
export const clearOfPointPt = 3;
/** So much longer leaders are taken into account, all together, for one point that none runs over. */
const overPt = 500;

/** How many points other leaders run over. Of points close together, a leader can keep only half of their distance. */
function runOver(labels: readonly ColumnLabel[], tops: Tops, column: Column): number {
  return labels.reduce((sum, label, index) => {
    const port = { x: column.edge, y: (tops[index] ?? 0) + column.portDown };
    return (
      sum + labels.filter((other) => other !== label && isRunOver(other.anchor, port, label.anchor)).length
    );
  }, 0);
}

/** Whether a leader from `port` to `end` runs over another's point. */
export function isRunOver(point: Point, port: Point, end: Point): boolean {
  const clear = Math.min(clearOfPointPt, 0.5 * Math.hypot(point.x - end.x, point.y - end.y));
  return distanceTo(point, port, end) < clear;
}

function distanceTo(point: Point, from: Point, to: Point): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const along = ((point.x - from.x) * dx + (point.y - from.y) * dy) / (dx * dx + dy * dy);
  const held = Math.min(1, Math.max(0, along));
  return Math.hypot(point.x - from.x - held * dx, point.y - from.y - held * dy);
}

/** Labels moved up or down, alone or with all that follow or go before, where leaders then run over fewer points. */
function nudged(labels: readonly ColumnLabel[], placed: Tops, column: Column): Tops {
  let best = placed;
  let over = runOver(labels, best, column);
  const steps = [2, -2, 4, -4, 7, -7, 11, -11, 16, -16, 24, -24];
  for (let round = 0; over > 0 && round < labels.length; round += 1) {
    const now = best;
    const order = [...labels.keys()].sort((a, b) => (now[a] ?? 0) - (now[b] ?? 0));
    const moves = order.flatMap((_, from) =>
      [from + 1, order.length].flatMap((to) => steps.map((step) => ({ moved: order.slice(from, to), step }))),
    );
    const better = [
      ...moves,
      ...order.flatMap((_, to) => steps.map((step) => ({ moved: order.slice(0, to), step }))),
    ]
      .map(({ moved, step }) => now.map((top, index) => (moved.includes(index) ? top + step : top)))
      .filter((tops) => stands(labels, tops, column) && !crossing(labels, tops, column))
      .map((tops) => ({ tops, over: runOver(labels, tops, column) }))
      .sort((a, b) => a.over - b.over)[0];
    if (better === undefined || better.over >= over) break;
    best = better.tops;
    over = better.over;
  }
  return best;
}

/** Whether the labels stand in the column, none over another. */
function stands(labels: readonly ColumnLabel[], tops: Tops, column: Column): boolean {
  const order = [...labels.keys()].sort((a, b) => (tops[a] ?? 0) - (tops[b] ?? 0));
  return order.every((label, place) => {
    const [top = 0, before] = [tops[label], order[place - 1]];
    const end =
      before === undefined
        ? column.top
        : (tops[before] ?? 0) + (labels[before]?.heightPt ?? 0) + column.gapPt;
    const fits = top >= end - 0.001;
    return fits && top + (labels[label]?.heightPt ?? 0) <= column.bottom + 0.001;
  });
}

function nearTheirPoints(labels: readonly ColumnLabel[], column: Column): Tops | undefined {
  const order = [...labels.keys()].sort((a, b) => heightOfPoint(labels, a) - heightOfPoint(labels, b));
  for (let round = 0; round < labels.length * 4; round += 1) {
    const tops = spread(labels, order, column);
    const pair = crossing(labels, tops, column);
    if (!pair) return tops;
    const [a, b] = pair.map((label) => order.indexOf(label));
    if (a === undefined || b === undefined) return undefined;
    [order[a], order[b]] = [order[b] ?? 0, order[a] ?? 0];
  }
  return undefined;
}

/** From several heights to begin at; each as it is, and spread out towards the points. */
function oneUnderTheOther(labels: readonly ColumnLabel[], column: Column): readonly Tops[] {
  const total = labels.reduce((sum, { heightPt }) => sum + heightPt + column.gapPt, -column.gapPt);
  const slack = Math.max(0, column.bottom - column.top - total);
  return [0, 0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875, 1].flatMap((share) => {
    const { tops, order } = takeInTurn(labels, column, column.top + slack * share);
    return [tops, spread(labels, order, column)];
  });
}

function takeInTurn(
  labels: readonly ColumnLabel[],
  column: Column,
  start: number,
): { readonly tops: Tops; readonly order: readonly number[] } {
  const left = new Set(labels.keys());
  const tops: number[] = labels.map(() => 0);
  const order: number[] = [];
  let cursor = start;
  while (left.size > 0) {
    const next = uppermost(labels, left, { x: column.edge, y: cursor + column.portDown });
    left.delete(next);
    order.push(next);
    tops[next] = cursor;
    cursor += (labels[next]?.heightPt ?? 0) + column.gapPt;
  }
  return { tops, order };
}

/** The label whose point no other lies above of, seen from the port; of several in one line, the nearest. */
function uppermost(labels: readonly ColumnLabel[], among: ReadonlySet<number>, port: Point): number {
  let best = { index: -1, slope: 0, run: 0 };
  for (const index of among) {
    const { x, y } = labels[index]?.anchor ?? port;
    const run = Math.abs(x - port.x);
    const slope = (y - port.y) / run;
    // in one line with the port, as nearly as `meet` can tell
    const level = Math.abs(slope - best.slope) * run * best.run < straight;
    if (best.index < 0 || (level ? run < best.run : slope < best.slope)) best = { index, slope, run };
  }
  return best.index;
}

/** Labels in this order as near to level with their points as they can stand (least squares, by pooling neighbours). */
function spread(labels: readonly ColumnLabel[], order: readonly number[], column: Column): Tops {
  const pools: { sum: number; count: number }[] = [];
  const before: number[] = [];
  let above = 0;
  for (const index of order) {
    before.push(above);
    pools.push({ sum: heightOfPoint(labels, index) - column.portDown - above, count: 1 });
    above += (labels[index]?.heightPt ?? 0) + column.gapPt;
    for (let last = pools.length - 1; last > 0 && mean(pools[last - 1]) >= mean(pools[last]); last -= 1) {
      const { sum = 0, count = 0 } = pools.pop() ?? {};
      const pool = pools[last - 1];
      if (pool) Object.assign(pool, { sum: pool.sum + sum, count: pool.count + count });
    }
  }
  const lowest = Math.max(column.top, column.bottom - (above - column.gapPt));
  const shifts = pools.flatMap((pool) => new Array<number>(pool.count).fill(mean(pool)));
  const tops: number[] = labels.map(() => 0);
  for (const [place, index] of order.entries()) {
    tops[index] = Math.min(lowest, Math.max(column.top, shifts[place] ?? 0)) + (before[place] ?? 0);
  }
  return tops;
}

function mean(pool: { readonly sum: number; readonly count: number } | undefined): number {
  return pool ? pool.sum / pool.count : 0;
}

function heightOfPoint(labels: readonly ColumnLabel[], index: number): number {
  return labels[index]?.anchor.y ?? 0;
}

/** Two labels whose leaders meet, if there are any. */
function crossing(
  labels: readonly ColumnLabel[],
  tops: Tops,
  column: Column,
): readonly [number, number] | undefined {
  const ports = tops.map((top) => ({ x: column.edge, y: top + column.portDown }));
  for (const [a, { anchor }] of labels.entries()) {
    for (let b = 0; b < a; b += 1) {
      const [port, otherPort, other] = [ports[a], ports[b], labels[b]?.anchor];
      if (port && otherPort && other && meet(port, anchor, otherPort, other)) return [a, b];
    }
  }
  return undefined;
}

/** Whether two straight lines have a point in common. */
export function meet(a: Point, b: Point, c: Point, d: Point): boolean {
  const [abc, abd, cda, cdb] = [turn(a, b, c), turn(a, b, d), turn(c, d, a), turn(c, d, b)];
  if (abc * abd < 0 && cda * cdb < 0) return true;
  return (
    (abc === 0 && within(a, b, c)) ||
    (abd === 0 && within(a, b, d)) ||
    (cda === 0 && within(c, d, a)) ||
    (cdb === 0 && within(c, d, b))
  );
}

/** Which way one turns going from `a` by `b` to `c`: the sign says; 0 for straight on. */
function turn(a: Point, b: Point, c: Point): number {
  const area = (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
  return Math.abs(area) < straight ? 0 : area;
}

function within(a: Point, b: Point, p: Point): boolean {
  const near = 1e-9;
  return (
    p.x >= Math.min(a.x, b.x) - near &&
    p.x <= Math.max(a.x, b.x) + near &&
    p.y >= Math.min(a.y, b.y) - near &&
    p.y <= Math.max(a.y, b.y) + near
  );
}

function totalLength(labels: readonly ColumnLabel[], tops: Tops, column: Column): number {
  return labels.reduce((sum, { anchor }, index) => {
    const port = (tops[index] ?? 0) + column.portDown;
    return sum + Math.hypot(anchor.x - column.edge, anchor.y - port);
  }, 0);
}
