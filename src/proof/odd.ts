/** In what a state differs from the one it is held beside: most often a single byte. */
import type { SlotSet } from './slotSet';
import type { State } from './state';

/** The bytes of a state that are not those of another. */
export class Odd {
  private constructor(
    private readonly slots: readonly number[],
    private readonly values: readonly number[],
  ) {}

  /** What is odd in a state, beside the plain one. */
  static in({ bytes }: State, { bytes: plain }: State): Odd {
    const slots: number[] = [];
    const values: number[] = [];
    for (let slot = 0; slot < bytes.length; slot += 1) {
      const value = bytes[slot] ?? 0;
      if (value === plain[slot]) continue;
      slots.push(slot);
      values.push(value);
    }
    return new Odd(slots, values);
  }

  get isNothing(): boolean {
    return this.slots.length === 0;
  }

  /** Whether any of it is among these. */
  isAmong(these: SlotSet): boolean {
    return this.slots.some((slot) => these.has(slot));
  }

  /** Whether any of it can be touched, and is not only something somebody knows or does not. */
  isMatter(factsFrom: number): boolean {
    return this.slots.some((slot) => slot < factsFrom);
  }

  /** What is left of it where these bytes come to be as they are in the plain state. */
  without(these: SlotSet): Odd {
    if (!this.isAmong(these)) return this;
    const stays = (_: number, index: number) => !these.has(this.slots[index] ?? 0);
    return new Odd(this.slots.filter(stays), this.values.filter(stays));
  }

  /** The state that has it, beside the plain one. */
  beside(plain: State): State {
    const made = plain.draft();
    this.slots.forEach((slot, index) => {
      made.set(slot, this.values[index] ?? 0);
    });
    return made;
  }
}
