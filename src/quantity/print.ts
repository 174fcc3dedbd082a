/**
 * Writing a quantity for people, in the units they use, rounded to the side that is safe.
 */

import { conversionStep } from './conversion';
import type { Dimension, UnitSystem } from './dimension';
import { houseUnits } from './house-units';
import type { Quantity } from './quantity';
import { decimalsOfStep, type RoundingDirection, wholeSteps } from './rounding';
import { findUnit } from './spelling';
import { fromSi, type Unit } from './unit';

/** How a language writes numbers and the units that are words in it. */
export interface NumberWriting {
  /** Between whole and parts. */
  readonly decimal: string;
  /** Between thousands, from 10,000 up. */
  readonly thousands: string;
  /** Units by the name the program knows, as they are printed for one (or a part of one) and for more. */
  readonly units: Readonly<Record<string, { readonly one: string; readonly many: string }>>;
}

/** How a quantity is to be written. */
export interface PrintOptions {
  readonly system: UnitSystem;
  /** How the language of the papers writes it; as in English if left out. */
  readonly numbers?: NumberWriting;
  /** To which side of the quantity the printed one may lie; `nearest` if left out. */
  readonly rounding?: RoundingDirection;
  /** Round to whole steps of this many units (5 for 25, 30, 35). */
  readonly step?: number;
  /** Exactly this many decimals, zeros kept; without it, the unit's usual number and no idle zeros. */
  readonly decimals?: number;
  /** A unit of the dimension by name, instead of the house unit of the system. */
  readonly unit?: string;
  /** Write broken numbers as fractions to this denominator: 8 gives `11 1/2 in`. Not used for metric units. */
  readonly fractions?: 2 | 4 | 8 | 16 | 32;
  /** Write `psi gauge` in full, where `psi` is the rule. */
  readonly inFull?: boolean;
}

/** Between number and unit, so that they are never parted at the end of a line. */
const noBreakSpace = '\u00a0';
const minus = '\u2212';

/** English numbers; its unit names are those the program knows. */
const english: NumberWriting = { decimal: '.', thousands: ',', units: {} };

/**
 * `quantity` as text such as `25 US gal`, with a no-break space and a true minus sign.
 *
 * `rounding` speaks of the quantity, not of the printed number: liquid used per distance rounded `up` and
 * written in `mi/US gal` gives the lower number of miles.
 */
export function printQuantity<D extends Dimension>(quantity: Quantity<D>, options: PrintOptions): string {
  const unit = unitFor(quantity.dimension, options);
  const value = fromSi(quantity.si, unit);
  if (!Number.isFinite(value))
    throw new RangeError(`a ${quantity.dimension} of ${quantity.si} cannot be printed`);
  const number =
    options.fractions && !isMetric(unit)
      ? fractionText(value, options.fractions, directionFor(unit, options), options.numbers ?? english)
      : decimalText(value, unit, options);
  return `${number}${unit.close ? '' : noBreakSpace}${unitName(unit, number, options)}`;
}

/**
 * `quantity` in each system in turn: `25 US gal (95 L)`. What would be said twice is said once. What stands in brackets
 * claims to be no sharper than what stands before it: `200 mi (320 km)`.
 */
export function printBoth<D extends Dimension>(
  quantity: Quantity<D>,
  systems: readonly UnitSystem[],
  options: Omit<PrintOptions, 'system' | 'unit' | 'step'> = {},
): string {
  const [leading] = systems;
  const printed = systems.map((system, index) => {
    const own = { ...options, system };
    if (index === 0 || leading === undefined) return printQuantity(quantity, own);
    if (isAsWritten(quantity, { ...options, system: leading }))
      return printQuantity(quantity, { ...own, rounding: 'nearest' });
    const step = conversionStepOf(quantity, { ...options, system: leading }, own);
    return printQuantity(quantity, step === undefined ? own : { ...own, step });
  });
  const [first = '', ...others] = [...new Set(printed)];
  return others.length > 0 ? `${first} (${others.join(', ')})` : first;
}

/**
 * Whether it is a pressure that stands as it was written in the first units. It is one pressure, whether it is a least or a
 * most, so that a book says the same of it everywhere: what it comes to in the second units is rounded to the nearest,
 * and no further than usual, so that a most is passed by less than a gauge shows.
 */
function isAsWritten({ dimension, si }: Quantity, options: PrintOptions): boolean {
  if (dimension !== 'gaugePressure') return false;
  const unit = unitFor(dimension, options);
  const value = fromSi(si, unit);
  const steps = value * 10 ** (options.decimals ?? usualDecimals(value, unit));
  return Math.abs(steps - Math.round(steps)) < isWhole;
}

/** How near to a whole step of the first units an amount is that was written in them. */
const isWhole = 1e-6;

/** The step to which a conversion is rounded, if that is coarser than usual. Scales with a nought of their own, and fractions, stay. */
function conversionStepOf(
  { dimension, si }: Quantity,
  first: PrintOptions,
  second: PrintOptions,
): number | undefined {
  const [from, to] = [unitFor(dimension, first), unitFor(dimension, second)];
  const isScale = from.inverted || to.inverted || dimension === 'temperature';
  if (isScale || (first.fractions !== undefined && !isMetric(from))) return undefined;
  const [source, value] = [fromSi(si, from), fromSi(si, to)];
  const rounding = directionFor(to, second);
  const sourceStep = 10 ** -(first.decimals ?? usualDecimals(source, from));
  const usualStep = 10 ** -(second.decimals ?? usualDecimals(value, to));
  const said = { value: source, step: sourceStep, rounding: directionFor(from, first) };
  return conversionStep(said, { value, step: usualStep, rounding });
}

/** The number of `quantity` in the unit `printQuantity` would use, unrounded: for scales and charts. */
export function inPrintedUnit<D extends Dimension>(
  quantity: Quantity<D>,
  options: Pick<PrintOptions, 'system' | 'unit'>,
): number {
  return fromSi(quantity.si, unitFor(quantity.dimension, options));
}

/** The name of the unit `printQuantity` would use: for the head of a column. */
export function printedUnit(
  dimension: Dimension,
  options: Pick<PrintOptions, 'system' | 'unit' | 'inFull' | 'numbers'>,
): string {
  const unit = unitFor(dimension, options);
  return unitName(unit, '', options);
}

function unitFor(dimension: Dimension, options: Pick<PrintOptions, 'system' | 'unit'>): Unit {
  const name = options.unit ?? houseUnits[dimension][options.system];
  const unit = findUnit(dimension, name);
  if (!unit) throw new RangeError(`\`${name}\` is not a unit of ${dimension}`);
  return unit;
}

function isMetric(unit: Unit): boolean {
  return /^(?:[mck]?m|[mk]?L|k?g)$/.test(unit.name);
}

/** The direction for the printed number: turned over where more of the unit is less of the quantity. */
function directionFor(unit: Unit, { rounding = 'nearest' }: PrintOptions): RoundingDirection {
  if (!unit.inverted || rounding === 'nearest') return rounding;
  return rounding === 'down' ? 'up' : 'down';
}

function decimalText(value: number, unit: Unit, options: PrintOptions): string {
  const direction = directionFor(unit, options);
  const usual = options.decimals ?? usualDecimals(value, unit);
  const step = options.step ?? 10 ** -usual;
  const decimals = options.step === undefined ? usual : Math.max(options.decimals ?? 0, decimalsOfStep(step));
  const rounded = (wholeSteps(value, step, direction) * step).toFixed(decimals);
  return withSignAndMarks(
    options.decimals === undefined ? withoutIdleZeros(rounded) : rounded,
    options.numbers ?? english,
  );
}

function usualDecimals(value: number, unit: Unit): number {
  const size = Math.abs(value);
  const [under10, under100, more, under1 = under10] = unit.decimals;
  if (size < 1) return under1;
  return size < 10 ? under10 : size < 100 ? under100 : more;
}

function withoutIdleZeros(text: string): string {
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

/** Thousands marked off from 10,000 up; a true minus; no minus before nought. */
function withSignAndMarks(text: string, { decimal, thousands }: NumberWriting): string {
  const [, sign, whole = '', rest = ''] = /^(-?)(\d+)(.*)$/.exec(text) ?? [];
  const grouped = whole.length > 4 ? whole.replace(/\B(?=(\d{3})+$)/g, thousands) : whole;
  const nought = /^[0.]+$/.test(`${whole}${rest}`);
  return `${sign && !nought ? minus : ''}${grouped}${rest.replace('.', decimal)}`;
}

function fractionText(
  value: number,
  denominator: number,
  direction: RoundingDirection,
  numbers: NumberWriting,
): string {
  const parts = wholeSteps(value, 1 / denominator, direction);
  const size = Math.abs(parts);
  const whole = Math.floor(size / denominator);
  let over = size % denominator;
  let under = denominator;
  while (over > 0 && over % 2 === 0) {
    over /= 2;
    under /= 2;
  }
  const broken = over > 0 ? `${over}/${under}` : '';
  const inWhole = withSignAndMarks(String(whole), numbers);
  const text = whole > 0 && broken ? `${inWhole}${noBreakSpace}${broken}` : broken || inWhole;
  return parts < 0 ? `${minus}${text}` : text;
}

/** The singular is used for one and for a part of one: `1 turn`, `1/4 turn`. */
function unitName(
  unit: Unit,
  number: string,
  { inFull = false, numbers = english }: Pick<PrintOptions, 'inFull' | 'numbers'>,
): string {
  const said = numbers.units[unit.name];
  const one = said?.one ?? unit.one;
  if (one !== undefined && /^(?:1|\d+\/\d+)$/.test(number)) return one;
  return said?.many ?? (inFull ? unit.name : (unit.printed ?? unit.name));
}
