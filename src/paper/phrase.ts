/** How this car's papers say amounts and dates: in the keeper's units, the first and the second. */
import { printDay } from '../quantity/day';
import type { UnitSystem } from '../quantity/dimension';
import { type PrintOptions, printBoth, printQuantity } from '../quantity/print';
import type { Quantity } from '../quantity/quantity';
import { wholeSteps } from '../quantity/rounding';
import type { CarSpec } from '../spec/schema/carSpec';

/** What stands where a figure is not known. */
export const notKnown = 'not known';

/** How to print; the system is the phrase book's own business. */
export type AmountOptions = Omit<PrintOptions, 'system' | 'unit' | 'step'>;

/** Amounts and dates in one car's own units and language. */
export interface Phrases {
  readonly systems: readonly UnitSystem[];
  /** In the first units, the second in brackets: `25 US gal (95 L)`. An estimate says `about`. */
  both(quantity: Quantity | undefined, options?: AmountOptions): string;
  /** In the first units alone. */
  first(quantity: Quantity | undefined, options?: AmountOptions): string;
  /** In the second units alone; empty if the car prints in one. */
  second(quantity: Quantity | undefined, options?: AmountOptions): string;
  /** A small volume, such as a pump's stroke, in cubic inches or millilitres. */
  smallVolume(quantity: Quantity<'volume'> | undefined): string;
  /** A time in whole minutes, from two hours up in hours and minutes: `84 min`, `9 h 3 min`. */
  duration(quantity: Quantity<'time'> | undefined, rounding: 'up' | 'down'): string;
  /** A length that is paced out, such as a distance to stand at, in whole feet or metres, rounded up. */
  paced(quantity: Quantity<'length'> | undefined): string;
  /** `14 March 2026`, by the language of the papers. */
  date(iso: string): string;
}

const pacedUnits: Readonly<Record<UnitSystem, string>> = { us: 'ft', imperial: 'ft', metric: 'm' };

const smallUnits: Readonly<Record<UnitSystem, string>> = { us: 'in3', imperial: 'in3', metric: 'mL' };

/** The phrase book of a car. */
export function phrasesFor({ units, language }: CarSpec['print']): Phrases {
  const systems: readonly UnitSystem[] =
    units.second === undefined || units.second === units.first ? [units.first] : [units.first, units.second];
  const [firstSystem = 'metric', secondSystem] = systems;
  const say = (quantity: Quantity | undefined, print: (known: Quantity) => string) =>
    quantity === undefined ? notKnown : `${quantity.estimated ? 'about\u00a0' : ''}${print(quantity)}`;
  return {
    systems,
    both: (quantity, options) =>
      say(quantity, (known) => printBoth(known, systems, forDimension(known, options))),
    first: (quantity, options) =>
      say(quantity, (known) =>
        printQuantity(known, { ...forDimension(known, options), system: firstSystem }),
      ),
    second: (quantity, options) =>
      secondSystem === undefined
        ? ''
        : say(quantity, (known) =>
            printQuantity(known, { ...forDimension(known, options), system: secondSystem }),
          ),
    smallVolume: (quantity) =>
      say(quantity, (known) => {
        const [first = '', second] = [
          ...new Set(systems.map((system) => printQuantity(known, { system, unit: smallUnits[system] }))),
        ];
        return second === undefined ? first : `${first} (${second})`;
      }),
    duration: (quantity, rounding) => say(quantity, (known) => durationText(known.si, rounding)),
    paced: (quantity) =>
      say(quantity, (known) => {
        const [first = '', second] = [
          ...new Set(
            systems.map((system) =>
              printQuantity(known, { system, unit: pacedUnits[system], decimals: 0, rounding: 'up' }),
            ),
          ),
        ];
        return second === undefined ? first : `${first} (${second})`;
      }),
    date: (iso) => printDay(iso, language),
  };
}

/** From here on hours are told beside the minutes. */
const longMinutes = 120;

function durationText(seconds: number, rounding: 'up' | 'down'): string {
  const minutes = wholeSteps(seconds, 60, rounding);
  if (minutes < longMinutes) return `${minutes}\u00a0min`;
  const rest = minutes % 60;
  return `${Math.floor(minutes / 60)}\u00a0h${rest === 0 ? '' : ` ${rest}\u00a0min`}`.replaceAll(
    ' ',
    '\u00a0',
  );
}

/** Below this a volume of one decimal says too little, m³: about a tenth of a gallon. */
const littleVolumeM3 = 0.0004;

/** Lengths that are measured with a rule are printed in fractions of an inch; little volumes with two decimals. */
function forDimension(quantity: Quantity, options: AmountOptions = {}): AmountOptions {
  if (options.fractions !== undefined || options.decimals !== undefined) return options;
  if (quantity.dimension === 'length') return { fractions: 16, ...options };
  const little = quantity.dimension === 'volume' && quantity.si > 0 && quantity.si < littleVolumeM3;
  return little ? { decimals: 2, ...options } : options;
}
