/** Setting parts in the order of the flow. */
import type { PartId } from './car';
import type { Route } from './routes';

/**
 * All parts on the given routes, none before a part upstream of it. Where pipes run in a ring, so that each of two
 * parts is upstream of the other, and for parts in parallel, the order is that of the routes.
 */
export function partsInFlowOrder(routes: readonly Route[]): readonly PartId[] {
  const graph = joined(routes);
  const depth = depths(graph);
  return [...graph.keys()]
    .map((id, order) => ({ id, order, depth: depth.get(id) ?? 0 }))
    .sort((a, b) => a.depth - b.depth || a.order - b.order)
    .map(({ id }) => id);
}

/** Part → the parts right after it, in the order they are first met. */
type Graph = ReadonlyMap<PartId, ReadonlySet<PartId>>;

function joined(routes: readonly Route[]): Graph {
  const after = new Map<PartId, Set<PartId>>();
  for (const route of routes) {
    route.forEach((id, step) => {
      if (!after.has(id)) after.set(id, new Set());
      const before = route[step - 1];
      if (before !== undefined) after.get(before)?.add(id);
    });
  }
  return after;
}

/** How many rings and single parts at the most lie upstream of each part, on any one way. */
function depths(graph: Graph): ReadonlyMap<PartId, number> {
  const ringOf = rings(graph);
  const members = new Map<number, PartId[]>();
  for (const [id, ring] of ringOf) members.set(ring, [...(members.get(ring) ?? []), id]);
  const ringDepth = new Map<number, number>();
  const inOrder = [...members.keys()].sort((a, b) => a - b);
  for (const ring of inOrder) {
    const own = ringDepth.get(ring) ?? 0;
    for (const id of members.get(ring) ?? []) {
      for (const next of graph.get(id) ?? []) {
        const other = ringOf.get(next);
        if (other === undefined || other === ring) continue;
        ringDepth.set(other, Math.max(ringDepth.get(other) ?? 0, own + 1));
      }
    }
  }
  return new Map([...ringOf].map(([id, ring]) => [id, ringDepth.get(ring) ?? 0]));
}

/**
 * A number for each part, the same for parts that are upstream of each other, and never smaller than that of a part
 * upstream. (Strongly connected components by two searches: S. R. Kosaraju, in M. Sharir, Computers & Mathematics
 * with Applications 7 (1981) 67.)
 */
function rings(graph: Graph): ReadonlyMap<PartId, number> {
  const before = new Map<PartId, PartId[]>([...graph.keys()].map((id) => [id, []]));
  for (const [id, next] of graph) for (const each of next) before.get(each)?.push(id);
  const ringOf = new Map<PartId, number>();
  let ring = 0;
  for (const root of leavingOrder(graph).toReversed()) {
    if (ringOf.has(root)) continue;
    ringOf.set(root, ring);
    const waiting = [root];
    for (let id = waiting.pop(); id !== undefined; id = waiting.pop()) {
      for (const each of before.get(id) ?? []) {
        if (ringOf.has(each)) continue;
        ringOf.set(each, ring);
        waiting.push(each);
      }
    }
    ring += 1;
  }
  return ringOf;
}

/** The parts in the order in which a search with the flow is done with them. */
function leavingOrder(graph: Graph): readonly PartId[] {
  const seen = new Set<PartId>();
  const left: PartId[] = [];
  for (const root of graph.keys()) {
    if (seen.has(root)) continue;
    seen.add(root);
    const open = [{ id: root, next: (graph.get(root) ?? new Set<PartId>()).values() }];
    for (let top = open.at(-1); top !== undefined; top = open.at(-1)) {
      const next = top.next.next();
      if (next.done) {
        left.push(top.id);
        open.pop();
      } else if (!seen.has(next.value)) {
        seen.add(next.value);
        open.push({ id: next.value, next: (graph.get(next.value) ?? new Set<PartId>()).values() });
      }
    }
  }
  return left;
}
