/**
 * Layers in the direction of flow: each part below everything that flows into it, by longest path; pipes that flow
 * back to an earlier layer go up beside the parts. (Sugiyama, Tagawa and Toda, 1981: the first step; from memory.)
 */
import type { Chain, Item, Layered, PlumbingInput, PlumbingPart, PlumbingPipe } from './plumbing';

interface Edge {
  readonly pipe: PlumbingPipe;
  readonly from: Item;
  readonly to: Item;
}

/** Puts parts into layers and pipes into chains of bends. */
export function layered(input: PlumbingInput): Layered {
  const edges = edgesOf(input);
  const items = [...new Set(edges.flatMap(({ from, to }) => [from, to]))];
  const back = backEdges(items, edges);
  const levels = levelsOf(
    items,
    edges.filter((edge) => !back.has(edge)),
  );
  const layers: Item[][] = Array.from({ length: Math.max(-1, ...levels.values()) + 1 }, () => []);
  for (const item of items) layers[levels.get(item) ?? 0]?.push(item);
  const chains = edges.map((edge, index) => chainOf(edge, index, back.has(edge), levels, layers));
  return { layers, chains };
}

/** One edge for each pipe; what is outside the car is a new item each time. */
function edgesOf({ parts, pipes }: PlumbingInput): readonly Edge[] {
  const known = new Map(parts.map((part) => [part.id, part]));
  const items = new Map<string, Item>();
  const itemOf = (id: string, index: number): Item => {
    const part: PlumbingPart = known.get(id) ?? { id, symbol: 'plain', tag: '', name: id, gauges: [] };
    const outside = part.symbol === 'open-air' || part.symbol === 'ground';
    const key = outside ? `${id} ${index}` : id;
    const item = items.get(key) ?? { key, part, up: false };
    items.set(key, item);
    return item;
  };
  const seen = new Set<string>();
  return pipes.flatMap((pipe, index) => {
    const name = `${pipe.from} ${pipe.to} ${pipe.carries}`;
    if (seen.has(name) || pipe.from === pipe.to) return [];
    seen.add(name);
    return [{ pipe, from: itemOf(pipe.from, index * 2), to: itemOf(pipe.to, index * 2 + 1) }];
  });
}

/** Edges that close a ring, found by following the flow from the tanks first. */
function backEdges(items: readonly Item[], edges: readonly Edge[]): ReadonlySet<Edge> {
  const back = new Set<Edge>();
  const open = new Set<Item>();
  const done = new Set<Item>();
  const visit = (item: Item): void => {
    open.add(item);
    for (const edge of edges) {
      if (edge.from !== item) continue;
      if (open.has(edge.to)) back.add(edge);
      else if (!done.has(edge.to)) visit(edge.to);
    }
    open.delete(item);
    done.add(item);
  };
  const first = items.filter(({ part }) => part?.symbol === 'tank');
  for (const item of [...first, ...items]) if (!done.has(item)) visit(item);
  return back;
}

/** The longest way to each item; then items with more out than in, or none in, drawn down towards what they feed. */
function levelsOf(items: readonly Item[], edges: readonly Edge[]): Map<Item, number> {
  const levels = new Map<Item, number>(items.map((item) => [item, 0]));
  const at = (item: Item): number => levels.get(item) ?? 0;
  for (let round = 0; round < items.length; round += 1) {
    for (const { from, to } of edges) levels.set(to, Math.max(at(to), at(from) + 1));
  }
  for (let round = 0; round < items.length; round += 1) {
    for (const item of items) {
      const out = edges.filter(({ from }) => from === item);
      const into = edges.filter(({ to }) => to === item);
      if (out.length > 0 && into.length < out.length && (into.length > 0 || item.part?.symbol !== 'tank'))
        levels.set(item, Math.max(at(item), Math.min(...out.map(({ to }) => at(to) - 1))));
    }
  }
  return levels;
}

/** The bends of a pipe, put into the layers it passes; a pipe that goes up also passes those of its two ends. */
function chainOf(
  { pipe, from, to }: Edge,
  index: number,
  up: boolean,
  levels: ReadonlyMap<Item, number>,
  layers: readonly Item[][],
): Chain {
  const [above, below] = [levels.get(up ? to : from) ?? 0, levels.get(up ? from : to) ?? 0];
  const [first, last] = up ? [above, below] : [above + 1, below - 1];
  const bends: Item[] = [];
  for (let level = first; level <= last; level += 1) {
    const bend: Item = { key: `bend ${index} ${level}`, up };
    bends.push(bend);
    layers[level]?.push(bend);
  }
  return { pipe, from, to, bends, up };
}
