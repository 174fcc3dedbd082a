/**
 * Questions about the plant: what feeds what, which valves lie between, and what is live in a given state.
 *
 * All answers follow the direction of flow.
 */
import type { Car, PartId } from './car';
import { carryingFuel, type PipeFilter, type Route, routesTo, startsOf } from './routes';

export { partsInFlowOrder } from './order';
export { carrying, carryingFuel, type PipeFilter, type Route, routesTo } from './routes';

/** As much of a car as flow depends on. */
export type Piped = Pick<Car, 'parts' | 'plant'>;

function isTank(car: Piped): (id: PartId) => boolean {
  return (id) => car.parts.get(id)?.kind === 'tank';
}

/** Every route by which fuel comes to a burner or vaporizer, from each tank on the way, nearest tank first within a branch. */
export function fuelRoutes(car: Piped, to: PartId): readonly Route[] {
  return routesTo(car.plant, to, isTank(car), carryingFuel, true);
}

/** The tanks from which fuel can come to a burner, in the order of the spec. */
export function tanksFeeding(car: Piped, burner: PartId): readonly PartId[] {
  const starts = startsOf(car.plant, burner, isTank(car), carryingFuel);
  return [...car.parts.keys()].filter((id) => starts.has(id));
}

/** A set that is asked only whether a part is in it, and only for parts that the flow comes to. */
type Asked = Pick<ReadonlySet<PartId>, 'has'>;

/** How the plant stands: which hand valves are open, which devices pass, which pumps are worked, which parts hold something to give. */
export interface Standing {
  readonly open: Asked;
  /** Devices that pass in the direction of flow: check valves, an automatic below its figure… */
  readonly passing: Asked;
  readonly pumping: Asked;
  /** Parts from which flow starts: tanks with something in them, the boiler under steam. */
  readonly sources: Asked;
}

/** The same as lists. */
export type FlowState = { readonly [K in keyof Standing]: ReadonlySet<PartId> };

/** What a flow reaches. */
export interface Reached {
  readonly parts: ReadonlySet<PartId>;
  /** Indices of the pipes that are live. */
  readonly pipes: ReadonlySet<number>;
}

/** Everything that is live in a state, for the fluids that `use` allows. A shut part is reached, but nothing beyond it. */
export function live(car: Piped, state: Standing & Pick<FlowState, 'sources'>, use: PipeFilter): Reached {
  const parts = new Set<PartId>(state.sources);
  const pipes = new Set<number>();
  for (const id of parts) {
    if (!passes(car, state, id)) continue;
    for (const pipe of car.plant.out.get(id) ?? []) {
      if (!use(pipe)) continue;
      pipes.add(pipe.index);
      parts.add(pipe.to);
    }
  }
  return { parts, pipes };
}

/**
 * Whether a part is reached by what is live: the same as looking for it in `live`, but gone back from the part against the
 * flow, so that no more is asked of the state than decides it. Behind a shut valve nothing is asked at all.
 */
export function isReached(car: Piped, state: Standing, part: PartId, use: PipeFilter): boolean {
  if (state.sources.has(part)) return true;
  const behind = new Set([part]);
  for (const id of behind) {
    for (const pipe of car.plant.into.get(id) ?? []) {
      if (!use(pipe) || behind.has(pipe.from) || !passes(car, state, pipe.from)) continue;
      if (state.sources.has(pipe.from)) return true;
      behind.add(pipe.from);
    }
  }
  return false;
}

/**
 * Whether what comes to a part goes on beyond it. A valve, a device or a pump must be open, pass or be worked, also
 * where it is a source itself. A tank gives only what it holds; nothing goes on from a burner or from the outside.
 * Everything else passes, a gauge too: a flow gauge stands in its pipe, and a glass has a drain below it.
 */
function passes(car: Piped, state: Standing, id: PartId): boolean {
  switch (car.parts.get(id)?.kind) {
    case 'valve':
      return state.open.has(id);
    case 'device':
      return state.passing.has(id);
    case 'pump':
      return state.pumping.has(id);
    case 'burner':
    case 'outside':
    case 'tank':
      return state.sources.has(id);
    default:
      return true;
  }
}
