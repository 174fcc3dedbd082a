/** What was found out about one state, kept for every state that is like it in the bytes it depends on. */
import { Notes, State } from './state';

/** Bytes by slot, with what each is. */
class Bytes {
  private readonly slots: Uint16Array;
  private readonly values: Uint8Array;

  /** Those of a state that `mask` has 1 for. */
  constructor(mask: Uint8Array, bytes: Uint8Array) {
    const slots: number[] = [];
    for (let slot = 0; slot < mask.length; slot += 1) if (mask[slot] === 1) slots.push(slot);
    this.slots = Uint16Array.from(slots);
    this.values = Uint8Array.from(slots, (slot) => bytes[slot] ?? 0);
  }

  areIn(bytes: Uint8Array): boolean {
    const { slots, values } = this;
    for (let index = 0; index < slots.length; index += 1)
      if (bytes[slots[index] ?? 0] !== values[index]) return false;
    return true;
  }

  putInto(bytes: Uint8Array): void {
    const { slots, values } = this;
    for (let index = 0; index < slots.length; index += 1) bytes[slots[index] ?? 0] = values[index] ?? 0;
  }
}

/** Something found out about a state. */
export interface Learnt<T> {
  /** By slot, 1 where it depends on the byte. */
  readonly asked: Uint8Array;
  readonly answer: T;
}

/** The answers to one question, for states that differ in what the answer depends on. */
export class Lessons<T> {
  private readonly learnt: { readonly like: Bytes; readonly lesson: Learnt<T> }[] = [];

  /** What is known of states that are like this one; worked out, from a state that takes notes, if nothing is. */
  about({ bytes }: State, work: (state: State) => T): Learnt<T> {
    for (const { like, lesson } of this.learnt) if (like.areIn(bytes)) return lesson;
    const notes = Notes.empty(bytes.length);
    const lesson = { answer: work(new State(bytes, notes)), asked: notes.asked };
    this.learnt.push({ like: new Bytes(notes.asked, bytes), lesson });
    return lesson;
  }
}

/** What was done to a state, to be done to another. */
export class Deed {
  private readonly set: Bytes;
  /** By slot, 1 where the byte was set. */
  readonly given: Uint8Array;

  /** What has made a state that takes notes of what it was made from. */
  constructor({ bytes, notes }: State) {
    this.given = notes?.given ?? new Uint8Array(bytes.length);
    this.set = new Bytes(this.given, bytes);
  }

  /** The state that it makes of one. */
  doneTo({ bytes, notes }: State): State {
    const made = bytes.slice();
    this.set.putInto(made);
    return new State(made, notes === undefined ? undefined : new Notes(notes.asked, this.given));
  }
}
