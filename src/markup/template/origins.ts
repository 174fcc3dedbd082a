/**
 * The way back from filled-in markup to the templates it came from.
 */
import type { BlockOrigin } from '../block';

interface Stretch {
  /** Where the stretch begins in the markup. */
  readonly start: number;
  readonly template: string;
  readonly line: number;
  readonly column: number;
  /** The stretch's own text, if it stands in the template letter for letter; empty for a value. */
  readonly text: string;
}

/** Tells for every letter of the markup which template, line and column made it. */
export class Origins {
  private readonly stretches: Stretch[] = [];

  /** Notes that the markup from `start` on came from this place. Call in the order of the markup. */
  add(stretch: Stretch): void {
    this.stretches.push(stretch);
  }

  /** The origin of the letter at `offset`; a letter of a value has the place where the value was asked for. */
  at(offset: number): BlockOrigin | undefined {
    const stretch = this.stretches[this.lastAtOrBefore(offset)];
    if (!stretch) return undefined;
    const before = stretch.text.slice(0, offset - stretch.start);
    const lines = before.split('\n');
    const last = lines.at(-1) ?? '';
    const column = lines.length === 1 ? stretch.column + last.length : last.length + 1;
    return { template: stretch.template, line: stretch.line + lines.length - 1, column };
  }

  private lastAtOrBefore(offset: number): number {
    let low = 0;
    let high = this.stretches.length - 1;
    while (low <= high) {
      const middle = (low + high) >> 1;
      if ((this.stretches[middle]?.start ?? 0) <= offset) low = middle + 1;
      else high = middle - 1;
    }
    return high;
  }
}
