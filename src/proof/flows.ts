/** What is live in a state, worked out once for every way the valves, pumps, tanks and boiler can stand. */
import type { PartId } from '../car/car';
import { carrying, carryingFuel, type FlowState, live, type PipeFilter, type Reached } from '../car/flow';
import type { Model } from './model';
import { at, type State } from './state';
import { content, level, motion, no, shut, steam } from './values';

/** What reaches where. */
export interface Flow {
  /** Fuel of either kind, from every tank that is not empty. */
  readonly fuel: Reached;
  /** Burners that fuel reaches. */
  readonly fed: readonly PartId[];
  /** Water, from every water tank that is not empty. */
  readonly water: () => Reached;
  /** Steam, from the boiler. */
  readonly steam: () => Reached;
}

/** An answer worked out when it is first asked for. */
function once(work: () => Reached): () => Reached {
  let known: Reached | undefined;
  return () => {
    known ??= work();
    return known;
  };
}

/** The boiler, if it has steam to give. */
function steaming(model: Model, state: State): ReadonlySet<PartId> {
  const { slots } = model;
  return new Set(
    at(state, slots.steam) === steam.none || at(state, slots.level) === level.empty ? [] : ['boiler'],
  );
}

/** How many of the last answers are looked through first. */
const remembered = 4;

function sameStart(a: Uint8Array, b: Uint8Array, size: number): boolean {
  for (let index = 0; index < size; index += 1) if (a[index] !== b[index]) return false;
  return true;
}

const waterOnly: PipeFilter = carrying('water');
const steamOnly: PipeFilter = carrying('steam', 'exhaust');

/**
 * Answers about flow, remembered by the bytes they depend on.
 *
 * Devices that shut by themselves are never relied on: automatics and cut-offs are taken to pass, check valves to pass
 * forward; relief and safety valves are taken to be shut.
 */
export class Flows {
  private readonly known = new Map<string, Flow>();
  /** The answers given last, newest first; most questions repeat one of them. */
  private readonly recent: { readonly bytes: Uint8Array; readonly flow: Flow }[] = [];
  private readonly passing: ReadonlySet<PartId>;

  constructor(private readonly model: Model) {
    this.passing = new Set(
      Object.entries(model.car.spec.devices).flatMap(([id, device]) =>
        device.kind === 'relief-valve' || device.kind === 'safety-valve' ? [] : [id],
      ),
    );
  }

  /** How many different flow states have been met. */
  get size(): number {
    return this.known.size;
  }

  /** What is live in a state. */
  in(state: State): Flow {
    const size = this.model.flowSize;
    for (const each of this.recent) if (sameStart(each.bytes, state, size)) return each.flow;
    const bytes = state.slice(0, size);
    const key = String.fromCharCode(...bytes);
    const flow = this.known.get(key) ?? this.work(state);
    this.known.set(key, flow);
    this.recent.unshift({ bytes, flow });
    if (this.recent.length > remembered) this.recent.pop();
    return flow;
  }

  private work(state: State): Flow {
    const { car, burners } = this.model;
    const flowing = this.flowState(state);
    const fuel = live(car, { ...flowing, sources: this.tanksWith(state, 'fuel') }, carryingFuel);
    // The state may be a draft that changes before the answer is asked for.
    const kept = state.slice();
    return {
      fuel,
      fed: burners.filter((id) => fuel.parts.has(id)),
      water: once(() => live(car, { ...flowing, sources: this.tanksWith(kept, 'water') }, waterOnly)),
      steam: once(() => live(car, { ...flowing, sources: steaming(this.model, kept) }, steamOnly)),
    };
  }

  private tanksWith(state: State, what: 'water' | 'fuel'): ReadonlySet<PartId> {
    const { car, slots } = this.model;
    return new Set(
      [...slots.content].flatMap(([id, slot]) =>
        at(state, slot) !== content.empty && (car.spec.tanks[id]?.holds === 'water') === (what === 'water')
          ? [id]
          : [],
      ),
    );
  }

  /** Valves that stand open, devices that pass, pumps that turn. Engine pumps turn while the car moves. */
  private flowState(state: State): FlowState {
    const { car, slots } = this.model;
    const moving = at(state, slots.motion) !== motion.standing;
    return {
      open: new Set([...slots.valve].flatMap(([id, slot]) => (at(state, slot) === shut ? [] : [id]))),
      passing: this.passing,
      pumping: new Set(
        [...slots.pump].flatMap(([id, slot]) =>
          at(state, slot) !== no || (moving && car.spec.pumps[id]?.drive === 'engine') ? [id] : [],
        ),
      ),
      sources: new Set(),
    };
  }
}
