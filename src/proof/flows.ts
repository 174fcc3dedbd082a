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
  readonly water: Reached;
  /** Steam, from the boiler. */
  readonly steam: Reached;
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
  private readonly passing: ReadonlySet<PartId>;

  constructor(private readonly model: Model) {
    this.passing = new Set(
      Object.entries(model.car.spec.devices).flatMap(([id, device]) => (device.kind === 'relief-valve' || device.kind === 'safety-valve' ? [] : [id])),
    );
  }

  /** How many different flow states have been met. */
  get size(): number {
    return this.known.size;
  }

  /** What is live in a state. */
  in(state: State): Flow {
    const key = String.fromCharCode(...state.subarray(0, this.model.flowSize));
    const known = this.known.get(key);
    if (known !== undefined) return known;
    const flow = this.work(state);
    this.known.set(key, flow);
    return flow;
  }

  private work(state: State): Flow {
    const { car, slots, burners } = this.model;
    const flowing = this.flowState(state);
    const tanks = (water: boolean) => new Set([...slots.content].flatMap(([id, slot]) => (at(state, slot) === content.empty || (car.spec.tanks[id]?.holds === 'water') !== water ? [] : [id])));
    const fuel = live(car, { ...flowing, sources: tanks(false) }, carryingFuel);
    const boiler = new Set<PartId>(at(state, slots.steam) === steam.none || at(state, slots.level) === level.empty ? [] : ['boiler']);
    return {
      fuel, fed: burners.filter((id) => fuel.parts.has(id)),
      water: live(car, { ...flowing, sources: tanks(true) }, waterOnly),
      steam: live(car, { ...flowing, sources: boiler }, steamOnly),
    };
  }

  /** Valves that stand open, devices that pass, pumps that turn. Engine pumps turn while the car moves. */
  private flowState(state: State): FlowState {
    const { car, slots } = this.model;
    const moving = at(state, slots.motion) !== motion.standing;
    return {
      open: new Set([...slots.valve].flatMap(([id, slot]) => (at(state, slot) === shut ? [] : [id]))),
      passing: this.passing,
      pumping: new Set([...slots.pump].flatMap(([id, slot]) => (at(state, slot) !== no || (moving && car.spec.pumps[id]?.drive === 'engine') ? [id] : []))),
      sources: new Set(),
    };
  }
}
