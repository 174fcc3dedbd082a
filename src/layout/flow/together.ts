/**
 * A book laid out by two at once, each its part of the chapters. After each round they tell each other what they found, until both know
 * the number of every page; then each finishes its own pages. Nothing here knows how what is told gets from one to the other.
 */
import type { Destination } from '../frame';
import { mostRounds } from '../pages/settle';
import { type Book, type LaidStretch, pageNumbers, type WholeBook } from './book';

/** What one of two found in a round. Plain data. */
export interface PartFound {
  readonly pageCount: number;
  /** Named places; pages are counted from the first of the part. */
  readonly destinations: readonly Destination[];
  /** Something is to be told of these chapters. Then no book comes of two parts: whoever lays out all of it tells everything in one. */
  readonly troubled: boolean;
}

/** A finished part, and what is known of the whole book. */
export interface LaidPart extends LaidStretch, WholeBook {}

/** Which of the two. */
export type PartOfBook = 'first' | 'second';

/**
 * Lays out one part of a book that has two. Yields what each round found and is given what the other found in the same round; ends
 * with the finished part, or with nothing if somebody has to lay out the book alone.
 */
export function* layoutPart(
  book: Book,
  which: PartOfBook,
): Generator<PartFound, LaidPart | undefined, PartFound> {
  const [first, second] = book.parts ?? [];
  const stretch = which === 'first' ? first : second;
  if (stretch === undefined) return undefined;
  let known: ReadonlyMap<string, string> = new Map();
  for (let round = 1; round <= mostRounds; round += 1) {
    const filled = book.fill(stretch, known);
    const { boxes, destinations, problems } = filled;
    const own: PartFound = { pageCount: boxes.length, destinations, troubled: problems.length > 0 };
    const other = yield own;
    if (own.troubled || other.troubled) return undefined;
    const whole = which === 'first' ? joined(own, other) : joined(other, own);
    const numbers = pageNumbers(whole);
    // both ask for the same of the same numbers, so that they end in the same round
    if (areSame(numbers, known))
      return { ...book.finish(filled, whole, which === 'first' ? 0 : other.pageCount), ...whole };
    known = numbers;
  }
  return undefined;
}

function joined(first: PartFound, second: PartFound): WholeBook {
  const moved = second.destinations.map((each) => ({ ...each, page: each.page + first.pageCount }));
  return {
    destinations: [...first.destinations, ...moved],
    pageCount: first.pageCount + second.pageCount,
  };
}

function areSame(numbers: ReadonlyMap<string, string>, known: ReadonlyMap<string, string>): boolean {
  return numbers.size === known.size && [...numbers].every(([name, number]) => known.get(name) === number);
}
