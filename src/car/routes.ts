/**
 * Ways through the plant against the flow, from a part back to where its fluid comes from.
 *
 * A route never passes a part twice, so a return pipe back to a tank is not taken for a way to the burner.
 */
import type { PartId } from './car';
import type { Fluid, Pipe, Plant } from './plant';

/** One way through the plant, from where it begins to where it ends, both included. */
export type Route = readonly PartId[];

/** Whether a route may use this pipe. */
export type PipeFilter = (pipe: Pipe) => boolean;

/** Only pipes that carry one of these fluids. */
export function carrying(...fluids: readonly Fluid[]): PipeFilter {
  return (pipe) => fluids.includes(pipe.carries);
}

/** Pipes with fuel in them, main or pilot. */
export const carryingFuel: PipeFilter = carrying('main fuel', 'pilot fuel');

/** Routes listed one by one; a car has about a dozen. */
export const mostRoutes = 1000;

/** Parts entered while listing; keeps a maze of dead ends from taking for ever. */
const mostSteps = 50_000;

/**
 * Every route that ends at `to` and begins at a part for which `isStart` holds, in the order of the spec’s lines.
 * A route stops at the first start it meets on its way back, unless `goOnPastStart` lets it go on to others beyond;
 * then both are routes.
 *
 * Exact up to `mostRoutes`. Where parts in parallel follow each other so often that there are more, the first of them
 * are given and after these, for each pipe not yet on one, the shortest route through it: every part and pipe by which
 * something can come to `to` is then on some route, but not every combination is listed. (Where pipes also run in
 * rings, a pipe that no shortest way can take in may be left out.)
 */
export function routesTo(
  plant: Plant,
  to: PartId,
  isStart: (id: PartId) => boolean,
  use: PipeFilter,
  goOnPastStart = false,
): readonly Route[] {
  const ways = new Ways(plant, to, isStart, use, goOnPastStart);
  const { routes, complete } = ways.list();
  return complete ? routes : ways.cover(routes);
}

/** The starts from which something can come to `to`. Exact, and without listing routes. */
export function startsOf(
  plant: Plant,
  to: PartId,
  isStart: (id: PartId) => boolean,
  use: PipeFilter,
): ReadonlySet<PartId> {
  return new Set([...reachedFrom([to], againstFlow(plant, use))].filter((id) => id !== to && isStart(id)));
}

type Neighbours = (id: PartId) => readonly PartId[];

function againstFlow(plant: Plant, use: PipeFilter): Neighbours {
  return (id) => [...new Set((plant.into.get(id) ?? []).filter(use).map((pipe) => pipe.from))];
}

function withFlow(plant: Plant, use: PipeFilter): Neighbours {
  return (id) => [...new Set((plant.out.get(id) ?? []).filter(use).map((pipe) => pipe.to))];
}

function reachedFrom(from: Iterable<PartId>, next: Neighbours): ReadonlySet<PartId> {
  const reached = new Set(from);
  for (const id of reached) for (const each of next(id)) reached.add(each);
  return reached;
}

/** Every way to one part, within the parts that lie between it and some start. */
class Ways {
  private readonly above: Neighbours;
  private readonly below: Neighbours;
  private readonly between: ReadonlySet<PartId>;

  constructor(
    plant: Plant,
    private readonly to: PartId,
    private readonly isStart: (id: PartId) => boolean,
    use: PipeFilter,
    private readonly goOn: boolean,
  ) {
    const up = againstFlow(plant, use);
    const down = withFlow(plant, use);
    const feeding = reachedFrom([to], (id) => (this.stopsAt(id) ? [] : up(id)));
    const starts = [...feeding].filter((id) => id !== to && isStart(id));
    const within = (id: PartId) => feeding.has(id) && (goOn || id === to || !isStart(id));
    this.between = reachedFrom(starts, (id) => (id === to ? [] : down(id).filter(within)));
    this.above = (id) => (this.stopsAt(id) ? [] : up(id).filter((each) => this.between.has(each)));
    this.below = (id) => down(id).filter((each) => this.between.has(each));
  }

  /** A way back ends at a start, but for the part asked about itself. */
  private stopsAt(id: PartId): boolean {
    return !this.goOn && id !== this.to && this.isStart(id);
  }

  /** Routes one after the other, as far as the bounds allow. */
  list(): { readonly routes: Route[]; readonly complete: boolean } {
    const routes: Route[] = [];
    const path = [this.to];
    const onPath = new Set(path);
    const open = [this.above(this.to).values()];
    for (let steps = 0; open.length > 0; ) {
      const next = open.at(-1)?.next();
      if (next === undefined || next.done) {
        open.pop();
        onPath.delete(path.pop() ?? this.to);
        continue;
      }
      if (onPath.has(next.value)) continue;
      steps += 1;
      path.push(next.value);
      onPath.add(next.value);
      open.push(this.above(next.value).values());
      if (this.isStart(next.value)) routes.push(path.toReversed());
      if (steps > mostSteps || routes.length > mostRoutes) return { routes, complete: false };
    }
    return { routes, complete: true };
  }

  /** The routes, and more of them until each pipe between is on one. */
  cover(listed: readonly Route[]): readonly Route[] {
    const routes = [...listed];
    const covered = new Set<string>();
    const cover = (route: Route) => {
      route.slice(1).forEach((to, step) => {
        covered.add(`${route[step]} ${to}`);
      });
    };
    routes.forEach(cover);
    for (const to of this.between) {
      for (const from of this.above(to)) {
        if (covered.has(`${from} ${to}`)) continue;
        const route = this.through(from, to);
        if (route === undefined) continue;
        cover(route);
        routes.push(route, ...this.startingOn(route));
      }
    }
    return routes;
  }

  /** The parts of a route that begin at further starts on it. */
  private startingOn(route: Route): readonly Route[] {
    return route.flatMap((id, index) =>
      index > 0 && index < route.length - 1 && this.isStart(id) ? [route.slice(index)] : [],
    );
  }

  /** A short route that takes a given pipe. */
  private through(from: PartId, to: PartId): Route | undefined {
    const isEnd = (id: PartId) => id === this.to;
    const back = shortest(from, this.isStart, this.above, new Set([to, this.to]));
    const on = back && shortest(to, isEnd, this.below, new Set(back));
    if (back !== undefined && on !== undefined) return [...back.toReversed(), ...on];
    const onFirst = shortest(to, isEnd, this.below, new Set([from]));
    const backThen = onFirst && shortest(from, this.isStart, this.above, new Set(onFirst));
    return onFirst === undefined || backThen === undefined
      ? undefined
      : [...backThen.toReversed(), ...onFirst];
  }
}

/** The shortest way from a part to one for which `isEnd` holds, both included, past none of `shunned`. */
function shortest(
  from: PartId,
  isEnd: (id: PartId) => boolean,
  next: Neighbours,
  shunned: ReadonlySet<PartId>,
): Route | undefined {
  const cameFrom = new Map<PartId, PartId | undefined>([[from, undefined]]);
  for (const id of cameFrom.keys()) {
    if (isEnd(id)) return trail(id, cameFrom);
    for (const each of next(id)) if (!shunned.has(each) && !cameFrom.has(each)) cameFrom.set(each, id);
  }
  return undefined;
}

function trail(end: PartId, cameFrom: ReadonlyMap<PartId, PartId | undefined>): Route {
  const path: PartId[] = [];
  for (let id: PartId | undefined = end; id !== undefined; id = cameFrom.get(id)) path.push(id);
  return path.toReversed();
}
