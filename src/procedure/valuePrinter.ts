/** How the values of a car are printed in the words of steps. */
import type { Language } from '../language/language';
import type { UnitSystem } from '../quantity/dimension';
import { printQuantity } from '../quantity/print';
import type { Quantity } from '../quantity/quantity';

/** How quantities are printed in the words of steps. */
export interface PrintStyle {
  readonly system: UnitSystem;
}

/** To which side a value may be rounded in print: `from` values up, `to` values down, so that print is never laxer than the spec. */
type Side = 'up' | 'down' | 'nearest';

/** Writes quantities, and gives nothing for those the spec has not got. */
export class Printer {
  constructor(
    private readonly style: PrintStyle,
    private readonly language: Language,
  ) {}

  /** The quantity in print; nothing for what the spec has not got. */
  show(quantity: Quantity | undefined, rounding: Side = 'nearest'): string | undefined {
    if (quantity === undefined) return undefined;
    const fractions = quantity.dimension === 'turns' ? { fractions: 8 as const } : {};
    return printQuantity(quantity, { ...this.style, rounding, ...fractions, numbers: this.language.numbers });
  }

  /** A long time in whole hours, rounded down. */
  hours(time: Quantity<'time'> | undefined): string | undefined {
    return time === undefined
      ? undefined
      : printQuantity(time, {
          ...this.style,
          unit: 'h',
          decimals: 0,
          rounding: 'down',
          numbers: this.language.numbers,
        });
  }
}
