/** What was found out about one state, kept for every state that is like it in the bytes it depends on. */
import type { SlotSet } from './slotSet';
import { copyOf, Notes, State } from './state';

/** Some bytes of a state, with what each is. */
class Bytes {
  constructor(
    readonly slots: readonly number[],
    private readonly values: Uint8Array,
  ) {}

  areIn(bytes: Uint8Array): boolean {
    const { slots, values } = this;
    for (let index = 0; index < slots.length; index += 1) {
      const slot = slots[index] ?? 0;
      if (bytes[slot] !== values[slot]) return false;
    }
    return true;
  }

  putInto(bytes: Uint8Array): void {
    const { slots, values } = this;
    for (let index = 0; index < slots.length; index += 1) {
      const slot = slots[index] ?? 0;
      bytes[slot] = values[slot] ?? 0;
    }
  }
}

/** Something found out about a state. */
export interface Learnt<T> {
  /** The bytes it depends on. */
  readonly asked: SlotSet;
  readonly answer: T;
}

/** The answers to one question, for states that differ in what the answer depends on. */
export class Lessons<T> {
  private readonly learnt: { readonly like: Bytes; readonly lesson: Learnt<T> }[] = [];

  /** What is known of states that are like this one; worked out, from a state that takes notes, if nothing is. */
  about({ bytes, notes }: State, work: (state: State) => T): Learnt<T> {
    const lesson = this.known(bytes) ?? this.learn(bytes, work);
    notes?.askAll(lesson.asked);
    return lesson;
  }

  private known(bytes: Uint8Array): Learnt<T> | undefined {
    const { learnt } = this;
    for (let index = 0; index < learnt.length; index += 1)
      if (learnt[index]?.like.areIn(bytes) === true) return learnt[index]?.lesson;
    return undefined;
  }

  private learn(bytes: Uint8Array, work: (state: State) => T): Learnt<T> {
    const notes = Notes.empty(bytes.length);
    const answer = work(new State(bytes, notes));
    // most lessons ask for the same bytes as another
    const twin = this.learnt.find(({ lesson }) => lesson.asked.isSame(notes.asked));
    const { asked } = twin?.lesson ?? notes;
    const lesson = { answer, asked };
    this.learnt.push({ like: new Bytes(twin?.like.slots ?? asked.slots(), bytes), lesson });
    return lesson;
  }
}

/** What was done to a state, to be done to another. */
export class Deed {
  private readonly set: Bytes;

  constructor(
    made: Uint8Array,
    /** The bytes it sets. */
    readonly given: SlotSet,
  ) {
    this.set = new Bytes(given.slots(), made);
  }

  /** The state that it makes of one: that very state, if all is as it makes it and nobody takes notes. */
  doneTo(state: State): State {
    const { bytes, notes } = state;
    if (!this.set.areIn(bytes)) return this.madeOf(state);
    return notes === undefined ? state : new State(bytes, notes.further(this.given));
  }

  /** A state of its own that it makes of one. */
  madeOf({ bytes, notes }: State): State {
    const made = copyOf(bytes);
    this.set.putInto(made);
    return new State(made, notes?.further(this.given));
  }
}
