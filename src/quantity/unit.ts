/**
 * What a unit is, and how units are combined into ratios such as `US gal/h`.
 */

/** One unit of a dimension. SI number = (number in this unit + `offset`) × `factor`; inverted: 1 / (number × `factor`). */
export interface Unit {
  /** The full name: what error messages tell the keeper to write. */
  readonly name: string;
  /** How it is printed, where that is shorter than `name` or differs in letters (`psi`, `ft²`). */
  readonly printed?: string;
  /** Printed for exactly one of them (`turn`). */
  readonly one?: string;
  /** Other spellings that are read. Capitals never matter. */
  readonly also: readonly string[];
  /** SI units in one of this unit. For an inverted unit: the SI amount of 1/x when x = 1, turned over. */
  readonly factor: number;
  /** Added before the factor is applied (°F, °C). */
  readonly offset?: number;
  /** True where more of it means less of the quantity: `mi/US gal` for liquid used per distance. */
  readonly inverted?: true;
  /** Printed close to its number, without a space (degrees of angle). */
  readonly close?: true;
  /** Decimals printed if nobody asks for others: for numbers under 10, under 100, from 100; and under 1, where that differs. */
  readonly decimals: readonly [number, number, number, number?];
}

/** How a unit can be named in a ratio. */
interface Part {
  readonly name: string;
  readonly printed?: string;
  readonly also: readonly string[];
  readonly factor: number;
}

/** The unit `over`/`under`, readable by every spelling of both. */
export function ratio(
  over: Part,
  under: Part,
  decimals: Unit['decimals'],
  also: readonly string[] = [],
): Unit {
  const spellings = [over.name, ...over.also].flatMap((a) =>
    [under.name, ...under.also].map((b) => `${a}/${b}`),
  );
  const name = `${over.name}/${under.name}`;
  const printed = `${over.printed ?? over.name}/${under.printed ?? under.name}`;
  return {
    name,
    ...(printed === name ? {} : { printed }),
    also: [...spellings.slice(1), ...also],
    factor: over.factor / under.factor,
    decimals,
  };
}

/** The unit `distance`/`liquid`, for a quantity kept as liquid per distance: more of it is less of the quantity. */
export function invertedRatio(
  distance: Part,
  liquid: Part,
  decimals: Unit['decimals'],
  also: readonly string[] = [],
): Unit {
  return { ...ratio(distance, liquid, decimals, also), inverted: true };
}

/** The SI number for `value` of `unit`. */
export function toSi(value: number, unit: Unit): number {
  if (unit.inverted) return 1 / (value * unit.factor);
  return (value + (unit.offset ?? 0)) * unit.factor;
}

/** The number in `unit` for the SI number `si`. */
export function fromSi(si: number, unit: Unit): number {
  if (unit.inverted) return 1 / (si * unit.factor);
  return si / unit.factor - (unit.offset ?? 0);
}
