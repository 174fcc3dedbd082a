/**
 * Classes of flammable liquids, by flash point and first boiling point.
 *
 * Sources: GHS chapter 2.6, as in EU CLP (Regulation 1272/2008) Annex I Table 2.6.1 and OSHA 29 CFR 1910.106(a)(19),
 * whose category 4 the EU does not have; NFPA 30 liquid classes.
 */

/** The two temperatures a class is told by. */
export interface Volatility {
  readonly flashPointK: number;
  readonly startsBoilingK: number;
}

/** GHS category of a flammable liquid, and what stands on its label. */
export interface GhsClass {
  readonly category: 1 | 2 | 3 | 4;
  readonly signalWord: 'Danger' | 'Warning';
  readonly statementCode: 'H224' | 'H225' | 'H226' | 'H227';
  readonly statement: string;
}

const ghsClasses: Readonly<Record<GhsClass['category'], GhsClass>> = {
  1: {
    category: 1,
    signalWord: 'Danger',
    statementCode: 'H224',
    statement: 'Extremely flammable liquid and vapour',
  },
  2: {
    category: 2,
    signalWord: 'Danger',
    statementCode: 'H225',
    statement: 'Highly flammable liquid and vapour',
  },
  3: { category: 3, signalWord: 'Warning', statementCode: 'H226', statement: 'Flammable liquid and vapour' },
  4: { category: 4, signalWord: 'Warning', statementCode: 'H227', statement: 'Combustible liquid' },
};

/** Limits are met to a millionth of a kelvin, so that 140 °F is 60 °C whatever the last bits say. */
const exactK = 1e-6;
const celsius = (degrees: number): number => degrees + 273.15;
const fahrenheit = (degrees: number): number => (degrees + 459.67) / 1.8;
const below = (value: number, limit: number): boolean => value < limit - exactK;
const upTo = (value: number, limit: number): boolean => value <= limit + exactK;

/** GHS (and OSHA) category; undefined above 93 °C. */
export function ghsClass({ flashPointK, startsBoilingK }: Volatility): GhsClass | undefined {
  if (below(flashPointK, celsius(23))) return ghsClasses[upTo(startsBoilingK, celsius(35)) ? 1 : 2];
  if (upTo(flashPointK, celsius(60))) return ghsClasses[3];
  if (upTo(flashPointK, celsius(93))) return ghsClasses[4];
  return undefined;
}

/** How a liquid is to be handled when it is heated. */
export type HeatedHandling =
  /** As it is classed cold. */
  | 'as-classed'
  /** OSHA: handled as category 3 with a flash point below 100 °F. */
  | 'as-category-3-below-100-F'
  /** OSHA: handled as category 3 with a flash point of 100 °F or above. */
  | 'as-category-3-from-100-F';

/**
 * The heating rule of 29 CFR 1910.106(a)(19): a liquid used within 30 °F of its flash point is handled as a more
 * dangerous one. A vaporizing burner always heats its fuel so far.
 */
export function heatedHandling(liquid: Volatility, temperatureK: number): HeatedHandling {
  const category = ghsClass(liquid)?.category;
  if (below(temperatureK, liquid.flashPointK - 30 / 1.8)) return 'as-classed';
  if (category === 3 && !below(liquid.flashPointK, fahrenheit(100))) return 'as-category-3-below-100-F';
  return category === 4 ? 'as-category-3-from-100-F' : 'as-classed';
}

/** NFPA 30 class. */
export type NfpaClass = 'IA' | 'IB' | 'IC' | 'II' | 'IIIA' | 'IIIB';

/** NFPA 30 class of a liquid. */
export function nfpaClass({ flashPointK, startsBoilingK }: Volatility): NfpaClass {
  if (below(flashPointK, fahrenheit(73))) return below(startsBoilingK, fahrenheit(100)) ? 'IA' : 'IB';
  if (below(flashPointK, fahrenheit(100))) return 'IC';
  if (below(flashPointK, fahrenheit(140))) return 'II';
  return below(flashPointK, fahrenheit(200)) ? 'IIIA' : 'IIIB';
}
