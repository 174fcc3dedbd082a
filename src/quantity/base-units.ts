/**
 * The units that others are made of, with exact factors.
 *
 * Exact definitions: NIST SP 811 (2008) Appendix B and NIST Handbook 44 Appendix C; the imperial gallon is
 * 4.54609 L (UK Weights and Measures Act 1985, Schedule 1). Btu is the International Table Btu.
 */
import type { Unit } from './unit';

/** Exact measures in SI units. */
export const inch = 0.0254;
export const foot = 0.3048;
export const mile = 1609.344;
export const pound = 0.45359237;
/** The gravity that makes a pound-mass weigh a pound-force, m/s². */
export const standardGravity = 9.80665;
export const poundForce = pound * standardGravity;
export const psi = poundForce / (inch * inch);
/** One mechanical horsepower (550 ft lbf/s) for an hour, J. */
export const mechanicalHorsepowerHourJ = 550 * foot * poundForce * 3600;
export const litre = 1e-3;
export const usGallon = 231 * inch ** 3;
export const imperialGallon = 4.54609 * litre;
export const btu = 2326 * pound;
export const atmosphere = 101325;

/** Units of length. */
export const lengths = {
  inch: { name: 'in', also: ['inch', 'inches', '"', '″'], factor: inch, decimals: [2, 1, 0] },
  foot: { name: 'ft', also: ['foot', 'feet', "'", '′'], factor: foot, decimals: [1, 1, 0] },
  yard: { name: 'yd', also: ['yard', 'yards'], factor: 3 * foot, decimals: [1, 0, 0] },
  millimetre: {
    name: 'mm',
    also: ['millimetre', 'millimetres', 'millimeter', 'millimeters'],
    factor: 1e-3,
    decimals: [1, 0, 0],
  },
  centimetre: {
    name: 'cm',
    also: ['centimetre', 'centimetres', 'centimeter', 'centimeters'],
    factor: 1e-2,
    decimals: [1, 1, 0],
  },
  metre: { name: 'm', also: ['metre', 'metres', 'meter', 'meters'], factor: 1, decimals: [2, 1, 0] },
  kilometre: {
    name: 'km',
    also: ['kilometre', 'kilometres', 'kilometer', 'kilometers'],
    factor: 1000,
    decimals: [1, 0, 0],
  },
  mile: { name: 'mi', also: ['mile', 'miles'], factor: mile, decimals: [1, 0, 0] },
} as const satisfies Record<string, Unit>;

/** The gallon, quart, pint and fluid ounce of one country. */
function measures(country: 'US' | 'imp', gallon: number, ouncesInGallon: number) {
  const long = country === 'US' ? ['US', 'U.S.'] : ['imperial', 'imp.', 'UK'];
  const spell = (words: readonly string[]): string[] => [
    ...words.slice(1).map((word) => `${country} ${word}`),
    ...long.flatMap((prefix) => words.map((word) => `${prefix} ${word}`)),
    ...[country, ...long].flatMap((place) =>
      words.flatMap((word) => [`${word} ${place}`, `${word} (${place})`]),
    ),
  ];
  return {
    gallon: {
      name: `${country} gal`,
      also: spell(['gal', 'gallon', 'gallons', 'gals']),
      factor: gallon,
      decimals: [1, 1, 0, 2],
    },
    quart: {
      name: `${country} qt`,
      also: spell(['qt', 'quart', 'quarts', 'qts']),
      factor: gallon / 4,
      decimals: [1, 1, 0],
    },
    pint: {
      name: `${country} pt`,
      also: spell(['pt', 'pint', 'pints', 'pts']),
      factor: gallon / 8,
      decimals: [1, 1, 0],
    },
    ounce: {
      name: `${country} fl oz`,
      also: spell(['fl oz', 'fl. oz', 'fl. oz.', 'fluid ounce', 'fluid ounces']),
      factor: gallon / ouncesInGallon,
      decimals: [1, 0, 0],
    },
  } as const satisfies Record<string, Unit>;
}

/** US measures of liquids. */
export const us = measures('US', usGallon, 128);
/** Imperial measures of liquids. */
export const imperial = measures('imp', imperialGallon, 160);

/** Metric measures of liquids. */
export const metricVolumes = {
  litre: {
    name: 'L',
    also: ['litre', 'litres', 'liter', 'liters', 'dm3', 'dm³'],
    factor: litre,
    decimals: [1, 0, 0],
  },
  millilitre: {
    name: 'mL',
    also: ['millilitre', 'millilitres', 'milliliter', 'milliliters', 'cc', 'cm3', 'cm³'],
    factor: 1e-6,
    decimals: [0, 0, 0],
  },
  cubicMetre: { name: 'm3', printed: 'm³', also: ['m³', 'cubic m'], factor: 1, decimals: [3, 2, 1] },
} as const satisfies Record<string, Unit>;

/** For large volumes and for gases. */
export const cubicFoot: Unit = {
  name: 'ft3',
  printed: 'ft³',
  also: ['ft³', 'cu ft', 'cubic ft', 'cubic feet'],
  factor: foot ** 3,
  decimals: [2, 1, 0],
};

/** Units of mass. */
export const masses = {
  pound: { name: 'lb', also: ['lbs', 'pound', 'pounds'], factor: pound, decimals: [1, 0, 0] },
  ounce: { name: 'oz', also: ['ounce', 'ounces'], factor: pound / 16, decimals: [1, 0, 0] },
  kilogram: { name: 'kg', also: ['kilogram', 'kilograms', 'kilo', 'kilos'], factor: 1, decimals: [1, 0, 0] },
  gram: { name: 'g', also: ['gram', 'grams'], factor: 1e-3, decimals: [1, 0, 0] },
} as const satisfies Record<string, Unit>;

/** Units of time. */
export const times = {
  second: { name: 's', also: ['sec', 'secs', 'second', 'seconds'], factor: 1, decimals: [0, 0, 0] },
  minute: { name: 'min', also: ['mins', 'minute', 'minutes'], factor: 60, decimals: [0, 0, 0] },
  hour: { name: 'h', also: ['hr', 'hrs', 'hour', 'hours'], factor: 3600, decimals: [1, 1, 0] },
  day: { name: 'days', one: 'day', also: ['day', 'd'], factor: 86400, decimals: [1, 0, 0] },
} as const satisfies Record<string, Unit>;

/** Units of energy. */
export const energies = {
  btu: { name: 'Btu', also: ['Btus', 'Btu_IT'], factor: btu, decimals: [1, 0, 0] },
  joule: { name: 'J', also: ['joule', 'joules'], factor: 1, decimals: [1, 0, 0] },
  kilojoule: { name: 'kJ', also: [], factor: 1e3, decimals: [1, 0, 0] },
  megajoule: { name: 'MJ', also: [], factor: 1e6, decimals: [2, 1, 0] },
  kilowattHour: { name: 'kWh', also: ['kW h'], factor: 3.6e6, decimals: [2, 1, 0] },
  horsepowerHour: {
    name: 'hp h',
    also: ['hph'],
    factor: mechanicalHorsepowerHourJ,
    decimals: [2, 1, 0],
  },
} as const satisfies Record<string, Unit>;

/** Distances that liquids of slow use are stated for. */
export const hundredMiles = { name: '100 mi', also: ['100 miles'], factor: 100 * mile };
export const hundredKilometres = { name: '100 km', also: ['100km'], factor: 1e5 };
