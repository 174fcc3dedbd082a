/** How often something is done, as printed text. */
import type { Quantity } from '../../quantity/quantity';
import type { Phrases } from '../phrase';

/** Days of steam, distance, seasons; whichever comes first. */
export interface Interval {
  readonly days?: number | undefined;
  readonly distance?: Quantity<'distance'> | undefined;
  readonly seasons?: number | undefined;
}

/** Each of the three as text; empty where it is not given. Distances are rounded down to tens, for a round sooner is no harm. */
export function intervalWords(
  { days, distance, seasons }: Interval,
  phrases: Pick<Phrases, 'both'>,
): { readonly days: string; readonly distance: string; readonly seasons: string } {
  return {
    days: days === undefined ? '' : String(days),
    distance:
      distance === undefined ? '' : phrases.both(distance, { rounding: 'down', decimals: 0, step: 10 }),
    seasons: seasons === undefined ? '' : String(seasons),
  };
}
