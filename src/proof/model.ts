/**
 * A car made ready for simulation: every thing of it that can change has a byte of its own in a state.
 *
 * A state is one short run of bytes, so that copying, comparing and remembering states costs next to nothing.
 * The bytes on which flow depends come first; whoever asks what is live is answered from those alone.
 */
import type { Car, PartId } from '../car/car';
import { feedPumps } from '../car/waterPumps';
import { type FactKey, facts } from '../procedure/facts';
import { burnersFor, fuelTanks } from '../procedure/fuelWay';
import { burnsOnOf } from '../spec/burnsOn';
import { vaporizerNeeds } from './heat';
import { askedFacts } from './rules';

/** Which byte of a state belongs to each part. */
export type SlotsByPart = ReadonlyMap<PartId, number>;

/** Bytes of a state, by what they stand for. The values each may have are in `values.ts`. */
export interface Slots {
  readonly valve: SlotsByPart;
  readonly pump: SlotsByPart;
  readonly content: SlotsByPart;
  readonly motion: number;
  readonly steam: number;
  readonly level: number;
  readonly pressure: SlotsByPart;
  readonly cap: SlotsByPart;
  /** Burners and torches. */
  readonly flame: SlotsByPart;
  /** Minutes for which each vaporizer has been heated, up to the time it needs. */
  readonly heat: SlotsByPart;
  readonly lock: SlotsByPart;
  readonly control: SlotsByPart;
  readonly placed: SlotsByPart;
  readonly seat: number;
  readonly driverAt: number;
  readonly helperAt: number;
  readonly burnerFront: number;
  readonly outlets: number;
  readonly chocked: number;
  readonly outdoors: number;
  readonly vapour: number;
  readonly spilt: number;
  readonly ranDry: number;
  /** Steam has gone through the superheater since the main burner was lit. */
  readonly flowed: number;
  readonly away: number;
  /** `fact` or `fact/part`. */
  readonly fact: ReadonlyMap<string, number>;
}

/** One car, ready to be simulated. */
export interface Model {
  readonly car: Car;
  readonly slots: Slots;
  /** Bytes in a state; an even number, so that states make short keys. */
  readonly size: number;
  /** How many of the first bytes decide what flows where. */
  readonly flowSize: number;
  /** First byte of the facts; all bytes from here on are knowledge, not matter. */
  readonly factsFrom: number;
  readonly valves: readonly PartId[];
  readonly burners: readonly PartId[];
  readonly mains: readonly PartId[];
  readonly pilots: readonly PartId[];
  /** Burners that burn on for a while after their fuel is shut. */
  readonly burnOn: ReadonlySet<PartId>;
  /** What lights the main burners: pilots, switches, torches. */
  readonly igniters: readonly PartId[];
  readonly torches: readonly PartId[];
  readonly fuelTanks: readonly PartId[];
  readonly waterTanks: readonly PartId[];
  /** Pumps whose water comes to the boiler; those that only move it from tank to tank are none. */
  readonly feedPumps: readonly PartId[];
  readonly chargedTanks: readonly PartId[];
  readonly places: readonly string[];
  /** Minutes of heat each vaporizer needs before fuel. */
  readonly heatNeeded: ReadonlyMap<PartId, number>;
  /** Slots of a fact, one for each part it can be about. */
  readonly factSlots: ReadonlyMap<
    FactKey,
    readonly { readonly part: PartId | undefined; readonly slot: number }[]
  >;
}

class Allocator {
  private next = 0;
  one(): number {
    this.next += 1;
    return this.next - 1;
  }
  each(ids: readonly PartId[]): SlotsByPart {
    return new Map(ids.map((id) => [id, this.one()]));
  }
  get size(): number {
    return this.next;
  }
}

/** Lay out a car. `asked` are the facts worth keeping: those that some rule asks for. */
export function modelOf(car: Car, asked: ReadonlySet<FactKey> = askedFacts): Model {
  const { spec } = car;
  const bytes = new Allocator();
  const torches = Object.entries(spec.equipment).flatMap(([id, each]) => (each.kind === 'torch' ? [id] : []));
  const valves = Object.keys(spec.valves);
  const burners = Object.keys(spec.burners);
  const flow = {
    valve: bytes.each(valves),
    pump: bytes.each(Object.keys(spec.pumps)),
    content: bytes.each(Object.keys(spec.tanks)),
    motion: bytes.one(),
    steam: bytes.one(),
    level: bytes.one(),
  };
  const flowSize = bytes.size;
  const matter = {
    pressure: bytes.each(Object.keys(spec.tanks)),
    cap: bytes.each(Object.keys(spec.tanks)),
    flame: bytes.each([...burners, ...torches]),
    heat: bytes.each(Object.keys(spec.vaporizers ?? {})),
    lock: bytes.each(Object.keys(spec.locks)),
    control: bytes.each(Object.keys(spec.controls)),
    placed: bytes.each(Object.keys(spec.equipment)),
    seat: bytes.one(),
    driverAt: bytes.one(),
    helperAt: bytes.one(),
    burnerFront: bytes.one(),
    outlets: bytes.one(),
    chocked: bytes.one(),
    outdoors: bytes.one(),
    vapour: bytes.one(),
    spilt: bytes.one(),
    ranDry: bytes.one(),
    flowed: bytes.one(),
    away: bytes.one(),
  };
  const factsFrom = bytes.size;
  const { fact, factSlots } = layFacts(car, bytes, asked);
  if (bytes.size % 2 === 1) bytes.one();
  return {
    car,
    slots: { ...flow, ...matter, fact },
    size: bytes.size,
    flowSize,
    factsFrom,
    factSlots,
    valves,
    burners,
    torches,
    mains: burnersFor(car, 'main'),
    pilots: burnersFor(car, 'pilot'),
    burnOn: new Set(burners.filter((id) => burnsOnOf(spec.burners[id]) !== undefined)),
    igniters: [...new Set(burnersFor(car, 'main').flatMap((id) => spec.burners[id]?.['lit-by'] ?? []))],
    fuelTanks: fuelTanks(car),
    waterTanks: Object.entries(spec.tanks).flatMap(([id, tank]) => (tank.holds === 'water' ? [id] : [])),
    feedPumps: feedPumps(car),
    chargedTanks: fuelTanks(car).filter((id) => spec.tanks[id]?.pressure !== undefined),
    places: [...car.places.keys()],
    heatNeeded: vaporizerNeeds(car),
  };
}

function layFacts(car: Car, bytes: Allocator, asked: ReadonlySet<FactKey>) {
  const fact = new Map<string, number>();
  const factSlots = new Map<FactKey, { part: PartId | undefined; slot: number }[]>();
  for (const key of Object.keys(facts) as FactKey[]) {
    if (!asked.has(key)) continue;
    const { of } = facts[key];
    const about =
      of === 'car'
        ? [undefined]
        : [...car.parts.values()].flatMap((part) => (part.kind === of ? [part.id] : []));
    const slots = about.map((part) => ({ part, slot: bytes.one() }));
    for (const { part, slot } of slots) fact.set(part === undefined ? key : `${key}/${part}`, slot);
    factSlots.set(key, slots);
  }
  return { fact, factSlots };
}
