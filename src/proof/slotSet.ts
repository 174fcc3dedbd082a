/** Which bytes of a state are meant, one bit for each. */
export class SlotSet {
  private constructor(private readonly words: number[]) {}

  /** None yet of so many. */
  static none(size: number): SlotSet {
    return new SlotSet(new Array<number>((size + 31) >> 5).fill(0));
  }

  has(slot: number): boolean {
    return (((this.words[slot >> 5] ?? 0) >> (slot & 31)) & 1) === 1;
  }

  add(slot: number): void {
    const at = slot >> 5;
    this.words[at] = (this.words[at] ?? 0) | (1 << (slot & 31));
  }

  /** Add all of a set that are not in another. */
  addAll({ words }: SlotSet, { words: without }: SlotSet): void {
    for (let at = 0; at < words.length; at += 1)
      this.words[at] = (this.words[at] ?? 0) | ((words[at] ?? 0) & ~(without[at] ?? 0));
  }

  /** Add all slots from one up to but not another. */
  addRange(from: number, to: number): void {
    for (let slot = from; slot < to; ) {
      if ((slot & 31) === 0 && slot + 32 <= to) {
        this.words[slot >> 5] = -1;
        slot += 32;
      } else {
        this.add(slot);
        slot += 1;
      }
    }
  }

  copy(): SlotSet {
    return new SlotSet(this.words.slice());
  }

  /** These and those of another. */
  with({ words }: SlotSet): SlotSet {
    const both = this.words.slice();
    for (let at = 0; at < words.length; at += 1) both[at] = (both[at] ?? 0) | (words[at] ?? 0);
    return new SlotSet(both);
  }

  /** Whether another has the very same. */
  isSame({ words }: SlotSet): boolean {
    for (let at = 0; at < words.length; at += 1) if (words[at] !== this.words[at]) return false;
    return true;
  }

  /** In rising order. */
  slots(): number[] {
    const found: number[] = [];
    for (let at = 0; at < this.words.length; at += 1) {
      for (let rest = this.words[at] ?? 0; rest !== 0; rest &= rest - 1)
        found.push((at << 5) + 31 - Math.clz32(rest & -rest));
    }
    return found;
  }
}
