/**
 * The way back from filled-in markup to the templates it came from.
 */
import type { BlockOrigin } from '../block';

/** What made a stretch of markup. */
export interface Source {
  readonly template: string;
  readonly line: number;
  readonly column: number;
  /** The stretch's own text, if it stands in the template letter for letter; empty for a value. */
  readonly text: string;
}

/** Tells for every letter of the markup which template, line and column made it. */
export class Origins {
  private readonly starts: number[] = [];
  private readonly sources: Source[] = [];

  /** Notes that the markup from `start` on came from this place. Call in the order of the markup. */
  add(start: number, source: Source): void {
    this.starts.push(start);
    this.sources.push(source);
  }

  /** The origin of the letter at `offset`; a letter of a value has the place where the value was asked for. */
  at(offset: number): BlockOrigin | undefined {
    const index = this.lastAtOrBefore(offset);
    const source = this.sources[index];
    if (!source) return undefined;
    const { template, text } = source;
    const length = Math.min(offset - (this.starts[index] ?? 0), text.length);
    let { line, column } = source;
    let from = 0;
    for (let end = text.indexOf('\n'); end !== -1 && end < length; end = text.indexOf('\n', from)) {
      line += 1;
      column = 1;
      from = end + 1;
    }
    return { template, line, column: column + length - from };
  }

  private lastAtOrBefore(offset: number): number {
    let low = 0;
    let high = this.starts.length - 1;
    while (low <= high) {
      const middle = (low + high) >> 1;
      if ((this.starts[middle] ?? 0) <= offset) low = middle + 1;
      else high = middle - 1;
    }
    return high;
  }
}
