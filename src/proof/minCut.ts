/**
 * The cheapest set of nodes that cuts a target from every source in a directed graph, exactly: the largest flow through
 * nodes of limited capacity (L. R. Ford and D. R. Fulkerson, "Maximal flow through a network", Canadian Journal of
 * Mathematics 8, 1956; shortest augmenting paths after J. Edmonds and R. M. Karp, Journal of the ACM 19, 1972).
 */

/** A graph whose nodes are numbered from 0. */
export interface CutProblem {
  readonly nodes: number;
  /** Directed edges. */
  readonly edges: readonly (readonly [from: number, to: number])[];
  readonly sources: readonly number[];
  readonly targets: readonly number[];
  /** What it costs to cut at a node; `Infinity` where that cannot be done. Costs are whole numbers. */
  readonly cost: readonly number[];
}

/** More than any sum of costs. */
const endless = 2 ** 50;

class Network {
  private readonly head: number[] = [];
  private readonly capacity: number[] = [];
  private readonly from: number[][];

  constructor(readonly size: number) {
    this.from = Array.from({ length: size }, () => []);
  }

  join(a: number, b: number, capacity: number): void {
    this.from[a]?.push(this.head.length);
    this.head.push(b);
    this.capacity.push(capacity);
    this.from[b]?.push(this.head.length);
    this.head.push(a);
    this.capacity.push(0);
  }

  /** Nodes that can still be reached, with the edge by which each was. */
  reach(start: number): Int32Array {
    const by = new Int32Array(this.size).fill(-1);
    by[start] = -2;
    const queue = [start];
    for (let index = 0; index < queue.length; index += 1) {
      for (const edge of this.from[queue[index] ?? 0] ?? []) {
        const to = this.head[edge] ?? 0;
        if ((this.capacity[edge] ?? 0) <= 0 || by[to] !== -1) continue;
        by[to] = edge;
        queue.push(to);
      }
    }
    return by;
  }

  /** Push as much as goes along one path; how much that was. */
  push(start: number, end: number): number {
    const by = this.reach(start);
    if (by[end] === -1) return 0;
    let most = endless;
    for (let at = end; at !== start; at = this.tail(by[at] ?? 0))
      most = Math.min(most, this.capacity[by[at] ?? 0] ?? 0);
    for (let at = end; at !== start; at = this.tail(by[at] ?? 0)) {
      const edge = by[at] ?? 0;
      this.capacity[edge] = (this.capacity[edge] ?? 0) - most;
      this.capacity[edge ^ 1] = (this.capacity[edge ^ 1] ?? 0) + most;
    }
    return most;
  }

  private tail(edge: number): number {
    return this.head[edge ^ 1] ?? 0;
  }
}

/** The nodes of a cheapest cut, in rising order; nothing if no set of nodes that can be cut parts targets from sources. */
export function cheapestCut({
  nodes,
  edges,
  sources,
  targets,
  cost,
}: CutProblem): readonly number[] | undefined {
  const [start, end] = [2 * nodes, 2 * nodes + 1];
  const network = new Network(2 * nodes + 2);
  // a node that no edge touches is neither on a way nor in a cut
  const touched = new Uint8Array(nodes);
  for (const node of [...sources, ...targets]) touched[node] = 1;
  for (const edge of edges) for (const node of edge) touched[node] = 1;
  for (let node = 0; node < nodes; node += 1)
    if (touched[node] === 1)
      network.join(2 * node, 2 * node + 1, Number.isFinite(cost[node]) ? (cost[node] ?? 0) : endless);
  for (const edge of edges) network.join(2 * edge[0] + 1, 2 * edge[1], endless);
  for (const source of sources) network.join(start, 2 * source, endless);
  for (const target of targets) network.join(2 * target + 1, end, endless);
  let flow = 0;
  for (let pushed = network.push(start, end); pushed > 0; pushed = network.push(start, end)) {
    flow += pushed;
    if (flow >= endless) return undefined;
  }
  const reached = network.reach(start);
  return Array.from({ length: nodes }, (_, node) => node).filter(
    (node) => reached[2 * node] !== -1 && reached[2 * node + 1] === -1,
  );
}
