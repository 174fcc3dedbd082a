/**
 * A figure: one worked-out number (or table of them) with everything needed to defend it.
 *
 * Papers print the value; `kettlebook explain` and the manual's workings print the rest from the same data.
 */
import type { Dimension } from '../quantity/dimension';
import type { Quantity } from '../quantity/quantity';

/** One thing a figure was worked out from. */
export interface FigureInput {
  /** Plain name, such as "water at working level". */
  readonly name: string;
  readonly value: Quantity | number | string;
  /** The spec path it came from (`boiler.water-at-working-level`), another figure's id, or a shared data file. */
  readonly from: string;
}

/** The value of a figure. */
export type FigureValue =
  | { readonly kind: 'quantity'; readonly quantity: Quantity; readonly rounding: Rounding }
  | { readonly kind: 'number'; readonly number: number; readonly rounding: Rounding }
  | { readonly kind: 'words'; readonly words: string }
  | {
      readonly kind: 'table';
      readonly columns: readonly FigureColumn[];
      readonly rows: readonly (readonly number[])[];
    }
  /** It cannot be known from the spec; `measure` says what to measure. Never guessed in silence. */
  | { readonly kind: 'unknown'; readonly measure: string };

/** One column of a table figure; its numbers are in the SI unit of `dimension`. */
export interface FigureColumn {
  readonly heading: string;
  readonly dimension: Dimension;
  readonly rounding: Rounding;
  /** Decimals to print, where the usual number says too little. */
  readonly decimals?: number;
  /** A volume that is poured out with a measure: little of it is told in ounces or millilitres. */
  readonly poured?: true;
}

/** To which side a printed value may be rounded: always the safe one. */
export type Rounding = 'nearest' | 'down' | 'up';

/** How sure a figure is. */
export interface Doubt {
  /** `measured` from the keeper's readings; `computed` from measured things; `estimated` if any input is. */
  readonly basis: 'measured' | 'computed' | 'estimated' | 'unknown';
  /** Half-width of the stated interval as a share of the value, if one can be given. */
  readonly share?: number;
  /** In words, what makes it unsure. */
  readonly words: string;
}

/** One worked-out figure. */
export interface Figure {
  /** Stable identifier, kebab-case, such as `water-range-level`. */
  readonly id: string;
  /** Plain name, as printed. */
  readonly name: string;
  readonly value: FigureValue;
  readonly inputs: readonly FigureInput[];
  /** The formula in plain notation. */
  readonly formula: string;
  /** Published source of the method, or `common practice, no source`, or `from memory`. */
  readonly source: string;
  /** The published values the method is tested against, or `nothing published found`. */
  readonly checkedAgainst: string;
  readonly doubt: Doubt;
}

/** A figure that cannot be known from the spec; `measure` says what to measure, with the field it is written into. */
export function notKnownFigure(
  told: Pick<Figure, 'id' | 'name' | 'formula' | 'source'>,
  measure: string,
): Figure {
  return {
    ...told,
    value: { kind: 'unknown', measure },
    inputs: [],
    checkedAgainst: 'nothing, as nothing is worked out',
    doubt: { basis: 'unknown', words: 'not measured' },
  };
}
