/** How this car's papers say amounts and dates: in the keeper's units, the first and the second. */

import type { Language } from '../language/language';
import type { Words } from '../language/languageForm';
import type { Messages } from '../language/messages';
import { imperialGallon, litre, usGallon } from '../quantity/base-units';
import { printDay } from '../quantity/day';
import type { Dimension, UnitSystem } from '../quantity/dimension';
import { type PrintOptions, printBoth, printedUnit, printQuantity } from '../quantity/print';
import type { Quantity } from '../quantity/quantity';
import { type RoundingDirection, wholeSteps } from '../quantity/rounding';
import type { CarSpec } from '../spec/schema/carSpec';

/** How to print; the system is the phrase book's own business. */
export type AmountOptions = Omit<PrintOptions, 'system' | 'unit' | 'numbers'>;

/** Amounts and dates in one car's own units and language. */
export interface Phrases {
  readonly systems: readonly UnitSystem[];
  /** What stands where a figure is not known. */
  readonly notKnown: string;
  readonly messages: Messages;
  /** Words for what a figure rests on. */
  readonly basis: Words['basis'];
  /** A bare number, as the language writes it. */
  number(value: number): string;
  /** What a tank holds: a fuel by its own name, or the word for water or oil. */
  contents(holds: string): string;
  /** A sentence that the program has put together, in the language’s own words; the car’s words in it stay as they are. */
  told(sentence: string): string;
  /** An amount in a unit by name, with nothing said of how sure it is. */
  plain(quantity: Quantity, options: Omit<PrintOptions, 'numbers'>): string;
  /** The name of the unit an amount is printed in, for the head of a column. */
  unit(dimension: Dimension, system: UnitSystem): string;
  /** In the first units, the second in brackets: `25 US gal (95 L)`. An estimate says `about`. */
  both(quantity: Quantity | undefined, options?: AmountOptions): string;
  /** In the first units alone. */
  first(quantity: Quantity | undefined, options?: AmountOptions): string;
  /** In the second units alone; empty if the car prints in one. */
  second(quantity: Quantity | undefined, options?: AmountOptions): string;
  /** A small volume, such as a pump's stroke, in cubic inches or millilitres. */
  smallVolume(quantity: Quantity<'volume'> | undefined): string;
  /**
   * A volume that is poured with a measure: gallons, under half a gallon fluid ounces; litres, under one millilitres. A column is read
   * down with one measure in the hand: its smallest volume, `like`, decides for all of it.
   */
  poured(
    quantity: Quantity<'volume'> | undefined,
    rounding: RoundingDirection,
    like?: Quantity<'volume'>,
  ): string;
  /** A time in whole minutes, from two hours up in hours and minutes: `84 min`, `9 h 3 min`. */
  duration(quantity: Quantity<'time'> | undefined, rounding: 'up' | 'down'): string;
  /** A time that was worked out: the same, but under ten minutes in tenths of one, where whole ones would make several fall together. */
  workedOut(quantity: Quantity<'time'>, rounding: 'up' | 'down'): string;
  /** A length that is paced out, such as a distance to stand at, in whole feet or metres, rounded up. */
  paced(quantity: Quantity<'length'> | undefined): string;
  /** `14 March 2026`, by the language of the papers. */
  date(iso: string): string;
}

const pacedUnits: Readonly<Record<UnitSystem, string>> = { us: 'ft', imperial: 'ft', metric: 'm' };

const smallUnits: Readonly<Record<UnitSystem, string>> = { us: 'in3', imperial: 'in3', metric: 'mL' };

/** The measure for less than so much, m³: half a gallon, a litre. */
const pouredUnits: Readonly<Record<UnitSystem, { readonly unit: string; readonly belowM3: number }>> = {
  us: { unit: 'US fl oz', belowM3: usGallon / 2 },
  imperial: { unit: 'imp fl oz', belowM3: imperialGallon / 2 },
  metric: { unit: 'mL', belowM3: litre },
};

/** How a volume is poured out in one system of units. */
function pouredIn(si: number, system: UnitSystem): Pick<PrintOptions, 'unit' | 'decimals'> {
  const { unit, belowM3 } = pouredUnits[system];
  if (si >= belowM3) return { decimals: 2 };
  return { unit, decimals: unit === 'mL' ? 0 : 1 };
}

/** Under this a whole millilitre says too little, m³. */
const tinyVolumeM3 = 1e-5;

/** The phrase book of a car. */
export function phrasesFor(spec: CarSpec, { numbers, messages, tag, telling, words }: Language): Phrases {
  const { units } = spec.print;
  const systems: readonly UnitSystem[] =
    units.second === undefined || units.second === units.first ? [units.first] : [units.first, units.second];
  const [firstSystem = 'metric', secondSystem] = systems;
  const notKnown = messages.say('not-known', {});
  const about = (amount: string) => messages.say('about', { amount }).replace(' ', '\u00a0');
  const say = (quantity: Quantity | undefined, print: (known: Quantity) => string) => {
    if (quantity === undefined) return notKnown;
    return quantity.estimated ? about(print(quantity)) : print(quantity);
  };
  const plain = (quantity: Quantity, options: Omit<PrintOptions, 'numbers'>) =>
    printQuantity(quantity, { ...options, numbers });
  return {
    systems,
    notKnown,
    messages,
    basis: words.basis,
    number: (value) => String(value).replace('.', numbers.decimal),
    contents: (holds) =>
      spec.fuels[holds]?.name ?? (words.contents as Readonly<Record<string, string>>)[holds] ?? holds,
    told: telling(ownWords(spec)),
    plain,
    unit: (dimension, system) => printedUnit(dimension, { system, numbers }),
    both: (quantity, options) =>
      say(quantity, (known) => printBoth(known, systems, { ...forDimension(known, options), numbers })),
    first: (quantity, options) =>
      say(quantity, (known) => plain(known, { ...forDimension(known, options), system: firstSystem })),
    second: (quantity, options) =>
      secondSystem === undefined
        ? ''
        : say(quantity, (known) => plain(known, { ...forDimension(known, options), system: secondSystem })),
    smallVolume: (quantity) =>
      say(quantity, (known) => {
        const [first = '', second] = [
          ...new Set(
            systems.map((system) =>
              plain(known, {
                system,
                unit: smallUnits[system],
                ...(known.si < tinyVolumeM3 && smallUnits[system] === 'mL' ? { decimals: 1 } : {}),
              }),
            ),
          ),
        ];
        return second === undefined ? first : `${first} (${second})`;
      }),
    poured: (quantity, rounding, like = quantity) =>
      say(quantity, (known) => {
        const [first = '', second] = [
          ...new Set(
            systems.map((system) =>
              plain(known, { system, rounding, ...pouredIn(like?.si ?? known.si, system) }),
            ),
          ),
        ];
        return second === undefined ? first : `${first} (${second})`;
      }),
    duration: (quantity, rounding) => say(quantity, (known) => durationText(known.si, rounding)),
    workedOut: (time, rounding) =>
      say(time, (known) =>
        known.si < tenMinutes
          ? plain(known, { system: firstSystem, rounding, decimals: 1 })
          : durationText(known.si, rounding),
      ),
    paced: (quantity) =>
      say(quantity, (known) => {
        const [first = '', second] = [
          ...new Set(
            systems.map((system) =>
              plain(known, { system, unit: pacedUnits[system], decimals: 0, rounding: 'up' }),
            ),
          ),
        ];
        return second === undefined ? first : `${first} (${second})`;
      }),
    date: (iso) => printDay(iso, tag),
  };
}

const tenMinutes = 600;

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

/** What the spec says in the keeper's own words: names, and texts that are no fixed choice. */
function ownWords(spec: CarSpec): readonly string[] {
  const found = new Set<string>();
  const gather = (value: unknown, field = ''): void => {
    if (typeof value === 'string' && (field === 'name' || !/^[a-z-]+$/.test(value))) found.add(value);
    else if (typeof value === 'object' && value !== null)
      for (const [key, each] of Object.entries(value)) gather(each, key);
  };
  gather(spec);
  return [...found].filter((text) => text.length > 2);
}
