/**
 * Questions about the plant: what feeds what, which valves lie between, and what is live in a given state.
 *
 * All answers follow the direction of flow. A route never passes a part twice, so a return pipe back to a tank
 * is not taken for a way to the burner.
 */
import type { Car, PartId } from './car';
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

/**
 * Every route that ends at `to` and begins at a part for which `isStart` holds, in the order of the spec's lines.
 * The walk goes against the flow and stops at the first start it meets unless `goOnPastStart` lets it go on to others beyond.
 */
export function routesTo(plant: Plant, to: PartId, isStart: (id: PartId) => boolean, use: PipeFilter, goOnPastStart = false): readonly Route[] {
  const routes: Route[] = [];
  const onRoute = new Set<PartId>([to]);
  const back = (id: PartId, tail: Route) => {
    if (tail.length > 1 && isStart(id)) {
      routes.push(tail);
      if (!goOnPastStart) return;
    }
    for (const pipe of plant.into.get(id) ?? []) {
      if (!use(pipe) || onRoute.has(pipe.from)) continue;
      onRoute.add(pipe.from);
      back(pipe.from, [pipe.from, ...tail]);
      onRoute.delete(pipe.from);
    }
  };
  back(to, [to]);
  return routes;
}

/** Every route by which fuel comes to a burner or vaporizer, from each tank on the way, nearest tank first within a branch. */
export function fuelRoutes(car: Car, to: PartId): readonly Route[] {
  return routesTo(car.plant, to, (id) => car.parts.get(id)?.kind === 'tank', carryingFuel, true);
}

/** The tanks from which fuel can come to a burner, in the order of the spec. */
export function tanksFeeding(car: Car, burner: PartId): readonly PartId[] {
  const starts = new Set(fuelRoutes(car, burner).map((route) => route[0]));
  return [...car.parts.keys()].filter((id) => starts.has(id));
}

/**
 * The hand valves on the given routes, in the order of flow: each comes after every valve upstream of it.
 * Valves in parallel keep the order of the spec's lines.
 */
export function valvesInFlowOrder(car: Car, routes: readonly Route[]): readonly PartId[] {
  return partsInFlowOrder(routes).filter((id) => car.parts.get(id)?.kind === 'valve');
}

/** All parts on the given routes in an order that never sets a part before one upstream of it. */
export function partsInFlowOrder(routes: readonly Route[]): readonly PartId[] {
  const depth = new Map<PartId, number>();
  const upstream = new Map<PartId, Set<PartId>>();
  for (const route of routes) {
    route.forEach((id, index) => {
      const before = upstream.get(id) ?? new Set<PartId>();
      const previous = route[index - 1];
      if (previous !== undefined) before.add(previous);
      upstream.set(id, before);
    });
  }
  const visiting = new Set<PartId>();
  const depthOf = (id: PartId): number => {
    const known = depth.get(id);
    if (known !== undefined) return known;
    if (visiting.has(id)) return 0;
    visiting.add(id);
    const above = [...(upstream.get(id) ?? [])].map(depthOf);
    visiting.delete(id);
    const own = above.length === 0 ? 0 : Math.max(...above) + 1;
    depth.set(id, own);
    return own;
  };
  const ids = [...upstream.keys()];
  return ids.map((id, order) => ({ id, order, depth: depthOf(id) })).sort((a, b) => a.depth - b.depth || a.order - b.order).map(({ id }) => id);
}

/** How the plant stands: which hand valves are open, which devices pass, which pumps are worked, which parts hold something to give. */
export interface FlowState {
  readonly open: ReadonlySet<PartId>;
  /** Devices that pass in the direction of flow: check valves, an automatic below its figure… */
  readonly passing: ReadonlySet<PartId>;
  readonly pumping: ReadonlySet<PartId>;
  /** Parts from which flow starts: tanks with something in them, the boiler under steam. */
  readonly sources: ReadonlySet<PartId>;
}

/** What a flow reaches. */
export interface Reached {
  readonly parts: ReadonlySet<PartId>;
  /** Indices of the pipes that are live. */
  readonly pipes: ReadonlySet<number>;
}

/** Everything that is live in a state, for the fluids that `use` allows. A shut part is reached, but nothing beyond it. */
export function live(car: Car, state: FlowState, use: PipeFilter): Reached {
  const parts = new Set<PartId>(state.sources);
  const pipes = new Set<number>();
  const waiting = [...state.sources];
  for (let id = waiting.pop(); id !== undefined; id = waiting.pop()) {
    if (!passes(car, state, id)) continue;
    for (const pipe of car.plant.out.get(id) ?? []) {
      if (!use(pipe) || pipes.has(pipe.index)) continue;
      pipes.add(pipe.index);
      if (parts.has(pipe.to)) continue;
      parts.add(pipe.to);
      waiting.push(pipe.to);
    }
  }
  return { parts, pipes };
}

/** Whether fuel reaches a burner in a state. */
export function isFed(car: Car, state: FlowState, burner: PartId): boolean {
  return live(car, state, carryingFuel).parts.has(burner);
}

function passes(car: Car, state: FlowState, id: PartId): boolean {
  switch (car.parts.get(id)?.kind) {
    case 'valve':
      return state.open.has(id);
    case 'device':
      return state.passing.has(id);
    case 'pump':
      return state.pumping.has(id);
    case 'burner':
    case 'gauge':
    case 'outside':
      return state.sources.has(id);
    case 'tank':
      return state.sources.has(id);
    default:
      return true;
  }
}
