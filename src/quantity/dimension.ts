/**
 * The kinds of physical quantity the program knows, each with its SI unit.
 *
 * Inside the program a number is always in the SI unit of its dimension; units of a keeper appear only
 * where text is read (`parse.ts`) and printed (`print.ts`).
 */

/** Dimension → the SI unit its numbers are in. */
export const siUnits = {
  length: 'm',
  distance: 'm',
  area: 'm2',
  volume: 'm3',
  mass: 'kg',
  time: 's',
  angle: 'rad',
  turns: 'turns',
  /** Pressure above the air's; the spec says `psi gauge`. */
  gaugePressure: 'Pa',
  /** Pressure above vacuum; the spec says `psi absolute`. */
  absolutePressure: 'Pa',
  temperature: 'K',
  temperatureDifference: 'K',
  speed: 'm/s',
  /** Turns or strokes in a time. */
  frequency: '1/s',
  density: 'kg/m3',
  energy: 'J',
  power: 'W',
  force: 'N',
  specificEnergy: 'J/kg',
  energyDensity: 'J/m3',
  volumeFlow: 'm3/s',
  massFlow: 'kg/s',
  /** Liquid used for a distance gone: US gal/mi, L/100 km; `mi/US gal` is read too and turned over. */
  volumePerDistance: 'm3/m',
  specificVolume: 'm3/kg',
  specificHeat: 'J/(kg K)',
  /** Hardness of water, as calcium carbonate: mg/L, grains per US gal. */
  hardness: 'kg/m3',
  /** A plain share of a whole, 0 to 1; written `95 %` or `0.95`. */
  share: '1',
} as const;

/** One kind of physical quantity. */
export type Dimension = keyof typeof siUnits;

/** The customary units to print in. US and imperial gallons differ, so they are two systems. */
export type UnitSystem = 'us' | 'imperial' | 'metric';
