/** One moment of the car: how everything on it stands, and what the people working it know. */
import type { PartId } from '../car/car';
import type { FactKey } from '../procedure/facts';
import type { Model, SlotsByPart } from './model';
import { SlotSet } from './slotSet';
import { burningOut, content, level, no, open, pressure, shut, yes } from './values';

/**
 * Which bytes of a state something depended on: those that were asked for, less those that it had set itself before. One
 * list of what was asked for is shared by a state and everything that is made from it.
 */
export class Notes {
  constructor(
    /** What was asked for. */
    readonly asked: SlotSet,
    /** What was set since, so that asking for it depends on nothing. */
    readonly given: SlotSet,
  ) {}

  /** Notes of nothing yet, for states of a size. */
  static empty(size: number): Notes {
    return new Notes(SlotSet.none(size), SlotSet.none(size));
  }

  ask(slot: number): void {
    if (!this.given.has(slot)) this.asked.add(slot);
  }

  /** Note that an answer was used which depends on all of these. */
  askAll(slots: SlotSet): void {
    this.asked.addAll(slots, this.given);
  }

  /** The same list of what was asked for, and a list of its own of what was set: to begin with what was and these. */
  further(given?: SlotSet): Notes {
    return new Notes(this.asked, given === undefined ? this.given.copy() : this.given.with(given));
  }
}

/** Many short runs of bytes are made quickest as pieces of a long one. */
const longRun = 1 << 16;
let run = new Uint8Array(0);
let used = 0;

/** A copy of some bytes. */
export function copyOf(bytes: Uint8Array): Uint8Array {
  const { length } = bytes;
  if (used + length > run.length) {
    run = new Uint8Array(Math.max(longRun, length));
    used = 0;
  }
  const copy = run.subarray(used, used + length);
  used += length + (length & 1);
  copy.set(bytes);
  return copy;
}

/** The bytes of a state, to be read through `Model.slots`, and whoever takes notes of that. Never changed once it is made. */
export class State {
  constructor(
    readonly bytes: Uint8Array,
    readonly notes?: Notes,
  ) {}

  /** A copy to be changed. */
  draft(): Draft {
    return new Draft(copyOf(this.bytes), this.notes?.further());
  }
}

/** A state in the making. */
export class Draft extends State {
  set(slot: number, value: number): void {
    this.bytes[slot] = value;
    this.notes?.given.add(slot);
  }

  /** Set all bytes from a slot on. */
  setFrom(slot: number, value: number): void {
    this.bytes.fill(value, slot);
    this.notes?.given.addRange(slot, this.bytes.length);
  }

  /** Whether a byte is another than in the state this was drafted from. That is not asked of a byte that was not set. */
  hasChanged(slot: number | undefined, origin: State): boolean {
    if (slot === undefined || this.notes?.given.has(slot) === false) return false;
    return at(origin, slot) !== at(this, slot);
  }
}

/** The byte at a slot; a part without a slot is nothing. */
export function at(state: State, slot: number | undefined): number {
  if (slot === undefined) return 0;
  state.notes?.ask(slot);
  return state.bytes[slot] ?? 0;
}

/** The byte of a part. */
export function of(state: State, slots: SlotsByPart, part: PartId | undefined): number {
  return part === undefined ? 0 : at(state, slots.get(part));
}

/** Whether a fact is known, of the car or of a part. */
export function knows(model: Model, state: State, fact: FactKey, part?: PartId): boolean {
  return at(state, model.slots.fact.get(part === undefined ? fact : `${fact}/${part}`)) !== no;
}

/** Whether a fact is known of at least one part. */
export function knowsOfAny(model: Model, state: State, fact: FactKey): boolean {
  return (model.factSlots.get(fact) ?? []).some(({ slot }) => at(state, slot) !== no);
}

/**
 * The bits by which it is remembered which igniters were seen to work: that of one igniter, or all of them for a step that
 * is not about one.
 */
export function igniterBits(model: Model, igniter: PartId | undefined): number {
  const index = model.igniters.indexOf(igniter ?? '');
  return index < 0 ? 2 ** Math.min(8, Math.max(1, model.igniters.length)) - 1 : 2 ** Math.min(7, index);
}

/** Whether what lights a burner was seen to work. */
export function hasSeenIgniter(model: Model, state: State, igniter: PartId): boolean {
  return (at(state, model.slots.fact.get('igniter-proven')) & igniterBits(model, igniter)) !== 0;
}

/** Whether a burner or torch burns, or may still burn. */
export function burns(model: Model, state: State, burner: PartId | undefined): boolean {
  return of(state, model.slots.flame, burner) !== no;
}

/** Whether a burner or torch burns for certain: what is lit from it or kept hot by it can be counted on. */
export function isLit(model: Model, state: State, burner: PartId | undefined): boolean {
  return of(state, model.slots.flame, burner) === yes;
}

/** Whether a burner burns on with its fuel shut, until somebody has seen it out. */
export function burnsOn(model: Model, state: State, burner: PartId): boolean {
  return of(state, model.slots.flame, burner) === burningOut;
}

/** Every flame that burns, torches too. */
export function flamesIn(model: Model, state: State): readonly PartId[] {
  return [...model.slots.flame].flatMap(([id, slot]) => (at(state, slot) === no ? [] : [id]));
}

/** Whether anything burns at all. */
export function anyFlame(model: Model, state: State): boolean {
  for (const slot of model.slots.flame.values()) if (at(state, slot) !== no) return true;
  return false;
}

/** Whether a vaporizer has had the heat it needs and is still heated. */
export function isHot(model: Model, state: State, vaporizer: PartId): boolean {
  return of(state, model.slots.heat, vaporizer) >= (model.heatNeeded.get(vaporizer) ?? 1);
}

/** The same bytes. */
export function same(a: State, b: State): boolean {
  if (a === b) return true;
  for (let index = 0; index < a.bytes.length; index += 1) if (a.bytes[index] !== b.bytes[index]) return false;
  return true;
}

/** The same in everything that can be touched, whatever people know. */
export function sameMatter(model: Model, a: State, b: State): boolean {
  for (let index = 0; index < model.factsFrom; index += 1)
    if (a.bytes[index] !== b.bytes[index]) return false;
  return true;
}

/** Numbers as the letters of a key for maps. */
export function lettersOf(numbers: ArrayLike<number>): string {
  return Reflect.apply(String.fromCharCode, undefined, numbers);
}

/** A state as a key for maps. */
export function keyOf({ bytes }: State): string {
  return lettersOf(new Uint16Array(bytes.buffer, bytes.byteOffset, bytes.length >> 1));
}

/**
 * The car as it stands before the first procedure of a day: put away, cold, every valve as parked, tanks with some fuel
 * that nobody has read and perhaps some pressure left, nothing known.
 */
export function parkedState(model: Model): State {
  const { car, slots } = model;
  const bytes = new Uint8Array(model.size);
  for (const [id, slot] of slots.valve) bytes[slot] = car.spec.valves[id]?.parked === 'open' ? open : shut;
  for (const slot of slots.content.values()) bytes[slot] = content.doubtful;
  for (const id of model.chargedTanks) bytes[slots.pressure.get(id) ?? 0] = pressure.unknown;
  for (const slot of slots.cap.values()) bytes[slot] = yes;
  for (const [id, slot] of slots.lock) bytes[slot] = id === car.spec.engine['throttle-lock'] ? yes : no;
  for (const [id, slot] of slots.control)
    bytes[slot] = car.spec.controls[id]?.kind === 'parking-brake' ? yes : no;
  bytes[slots.level] = level.doubtful;
  return new State(bytes);
}

/**
 * A key for how the car stands as far as flow, fire, steam, locks and brakes go, whatever lies about and wherever people
 * are but for the driver’s seat.
 */
export function situationOf(model: Model, state: State): string {
  const situation = state.bytes.slice(0, model.factsFrom);
  for (const slot of model.slots.content.values())
    if (situation[slot] === content.enough) situation[slot] = content.doubtful;
  for (const slot of leftOutOfSituation(model)) situation[slot] = 0;
  return lettersOf(situation);
}

function leftOutOfSituation({ slots }: Model): Iterable<number> {
  return [slots.driverAt, slots.helperAt, slots.away, ...slots.heat.values(), ...slots.placed.values()];
}
