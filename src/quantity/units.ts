/**
 * Every unit the program reads and prints, by dimension, with exact factors.
 *
 * Exact definitions: NIST SP 811 (2008) Appendix B and NIST Handbook 44 Appendix C; the imperial gallon is
 * 4.54609 L (UK Weights and Measures Act 1985, Schedule 1). Btu is the International Table Btu.
 */
import type { Dimension } from './dimension';
import { invertedRatio, ratio, type Unit } from './unit';

const inch = 0.0254;
const foot = 0.3048;
const mile = 1609.344;
const pound = 0.45359237;
const standardGravity = 9.80665;
const poundForce = pound * standardGravity;
const psi = poundForce / (inch * inch);
const litre = 1e-3;
const usGallon = 231 * inch ** 3;
const imperialGallon = 4.54609 * litre;
const btu = 2326 * pound;
const atmosphere = 101325;

const lengths = {
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
  ];
  return {
    gallon: {
      name: `${country} gal`,
      also: spell(['gal', 'gallon', 'gallons', 'gals']),
      factor: gallon,
      decimals: [1, 1, 0],
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

const us = measures('US', usGallon, 128);
const imperial = measures('imp', imperialGallon, 160);

const metricVolumes = {
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

const cubicFoot: Unit = {
  name: 'ft3',
  printed: 'ft³',
  also: ['ft³', 'cu ft', 'cubic ft', 'cubic feet'],
  factor: foot ** 3,
  decimals: [2, 1, 0],
};

const masses = {
  pound: { name: 'lb', also: ['lbs', 'pound', 'pounds'], factor: pound, decimals: [1, 0, 0] },
  ounce: { name: 'oz', also: ['ounce', 'ounces'], factor: pound / 16, decimals: [1, 0, 0] },
  kilogram: { name: 'kg', also: ['kilogram', 'kilograms', 'kilo', 'kilos'], factor: 1, decimals: [1, 0, 0] },
  gram: { name: 'g', also: ['gram', 'grams'], factor: 1e-3, decimals: [1, 0, 0] },
} as const satisfies Record<string, Unit>;

const times = {
  second: { name: 's', also: ['sec', 'secs', 'second', 'seconds'], factor: 1, decimals: [0, 0, 0] },
  minute: { name: 'min', also: ['mins', 'minute', 'minutes'], factor: 60, decimals: [0, 0, 0] },
  hour: { name: 'h', also: ['hr', 'hrs', 'hour', 'hours'], factor: 3600, decimals: [1, 1, 0] },
  day: { name: 'days', one: 'day', also: ['day', 'd'], factor: 86400, decimals: [1, 0, 0] },
} as const satisfies Record<string, Unit>;

const energies = {
  btu: { name: 'Btu', also: ['Btus', 'Btu_IT'], factor: btu, decimals: [1, 0, 0] },
  joule: { name: 'J', also: ['joule', 'joules'], factor: 1, decimals: [1, 0, 0] },
  kilojoule: { name: 'kJ', also: [], factor: 1e3, decimals: [1, 0, 0] },
  megajoule: { name: 'MJ', also: [], factor: 1e6, decimals: [2, 1, 0] },
  kilowattHour: { name: 'kWh', also: ['kW h'], factor: 3.6e6, decimals: [2, 1, 0] },
  horsepowerHour: {
    name: 'hp h',
    also: ['hph'],
    factor: 550 * foot * poundForce * 3600,
    decimals: [2, 1, 0],
  },
} as const satisfies Record<string, Unit>;

const kelvin = { name: 'K', also: [], factor: 1 };
const fahrenheitStep = { name: '°F', also: ['deg F', 'degF', 'F', 'degrees F'], factor: 1 / 1.8 };
const celsiusStep = { name: '°C', also: ['deg C', 'degC', 'C', 'degrees C'], factor: 1 };
const hundredMiles = { name: '100 mi', also: ['100 miles'], factor: 100 * mile };
const hundredKilometres = { name: '100 km', also: ['100km'], factor: 1e5 };
const coarseFlow = [1, 1, 0] as const;
const fineFlow = [2, 1, 0] as const;

/** `psi gauge` and its like, for one reference of pressure. */
function pressures(reference: 'gauge' | 'absolute'): readonly Unit[] {
  const letter = reference === 'gauge' ? 'g' : 'a';
  const short = reference === 'gauge' ? '' : 'abs';
  const make = (
    symbol: string,
    factor: number,
    decimals: Unit['decimals'],
    also: readonly string[],
  ): Unit => ({
    name: `${symbol} ${reference}`,
    ...(reference === 'gauge' ? { printed: symbol } : {}),
    also: [symbol, ...also].flatMap((word) => [
      `${word} ${reference}`,
      `${word}${letter}`,
      `${word}(${letter})`,
      `${word} (${letter})`,
      `${word} (${reference})`,
      ...(short ? [`${word} ${short}`] : []),
    ]),
    factor,
    decimals,
  });
  return [
    make('psi', psi, [1, 0, 0], ['lb/in2', 'lb/in²', 'lbf/in2']),
    make('bar', 1e5, [1, 0, 0], ['bars']),
    make('kPa', 1e3, [1, 0, 0], []),
    make('MPa', 1e6, [2, 1, 1], []),
    make('Pa', 1, [0, 0, 0], []),
    make('atm', atmosphere, [2, 1, 0], []),
  ];
}

const temperatureUnits: readonly Unit[] = [
  { ...fahrenheitStep, offset: 459.67, decimals: [0, 0, 0] },
  { ...celsiusStep, offset: 273.15, decimals: [0, 0, 0] },
  { ...kelvin, decimals: [0, 0, 0] },
];

const lengthUnits: readonly Unit[] = [
  lengths.inch,
  lengths.foot,
  lengths.yard,
  lengths.millimetre,
  lengths.centimetre,
  lengths.metre,
];

/** Dimension → its units, the commonest first. */
export const units: { readonly [D in Dimension]: readonly Unit[] } = {
  length: lengthUnits,
  distance: [lengths.mile, lengths.kilometre, lengths.foot, lengths.yard, lengths.metre],
  area: [
    {
      name: 'ft2',
      printed: 'ft²',
      also: ['ft²', 'sq ft', 'square ft', 'square feet'],
      factor: foot ** 2,
      decimals: [2, 1, 0],
    },
    {
      name: 'in2',
      printed: 'in²',
      also: ['in²', 'sq in', 'square in', 'square inches'],
      factor: inch ** 2,
      decimals: [2, 1, 0],
    },
    { name: 'm2', printed: 'm²', also: ['m²', 'sq m', 'square m'], factor: 1, decimals: [2, 1, 0] },
    { name: 'cm2', printed: 'cm²', also: ['cm²', 'sq cm'], factor: 1e-4, decimals: [1, 0, 0] },
  ],
  volume: [
    us.gallon,
    imperial.gallon,
    metricVolumes.litre,
    us.quart,
    us.pint,
    us.ounce,
    imperial.quart,
    imperial.pint,
    imperial.ounce,
    metricVolumes.millilitre,
    {
      name: 'in3',
      printed: 'in³',
      also: ['in³', 'cu in', 'cubic in', 'cubic inches'],
      factor: inch ** 3,
      decimals: [2, 1, 0],
    },
    cubicFoot,
    metricVolumes.cubicMetre,
  ],
  mass: [masses.pound, masses.kilogram, masses.ounce, masses.gram],
  time: [times.minute, times.hour, times.second, times.day],
  angle: [
    {
      name: 'degrees',
      printed: '°',
      also: ['°', 'deg', 'degree'],
      factor: Math.PI / 180,
      close: true,
      decimals: [1, 0, 0],
    },
    { name: 'rad', also: ['radians'], factor: 1, decimals: [2, 1, 0] },
  ],
  turns: [{ name: 'turns', one: 'turn', also: ['turn'], factor: 1, decimals: [2, 1, 0] }],
  gaugePressure: pressures('gauge'),
  absolutePressure: pressures('absolute'),
  temperature: temperatureUnits,
  temperatureDifference: [
    { ...fahrenheitStep, decimals: [0, 0, 0] },
    { ...celsiusStep, decimals: [0, 0, 0] },
    { ...kelvin, decimals: [0, 0, 0] },
  ],
  speed: [
    {
      name: 'mph',
      also: ['mi/h', 'miles/hour', 'miles/h', 'mile/h'],
      factor: mile / 3600,
      decimals: [1, 0, 0],
    },
    {
      name: 'km/h',
      also: ['kph', 'kmh', 'km/hr', 'kilometres/hour', 'kilometers/hour'],
      factor: 1 / 3.6,
      decimals: [1, 0, 0],
    },
    ratio(lengths.foot, times.minute, [0, 0, 0]),
    ratio(lengths.metre, times.second, [2, 1, 0]),
  ],
  density: [
    ratio(masses.kilogram, metricVolumes.litre, [3, 2, 1]),
    ratio(masses.pound, us.gallon, [2, 2, 1]),
    ratio(masses.pound, imperial.gallon, [2, 2, 1]),
    ratio(masses.pound, cubicFoot, [2, 1, 1]),
    ratio(masses.kilogram, metricVolumes.cubicMetre, [2, 1, 0]),
    ratio(masses.gram, metricVolumes.millilitre, [3, 2, 1]),
  ],
  energy: Object.values(energies),
  power: [
    ratio(energies.btu, times.hour, [0, 0, 0]),
    { name: 'hp', also: ['horsepower', 'bhp'], factor: 550 * foot * poundForce, decimals: [1, 1, 0] },
    { name: 'kW', also: ['kilowatt', 'kilowatts'], factor: 1e3, decimals: [1, 1, 0] },
    { name: 'W', also: ['watt', 'watts'], factor: 1, decimals: [0, 0, 0] },
    { name: 'metric hp', also: ['PS'], factor: 75 * standardGravity, decimals: [1, 1, 0] },
    ratio(energies.megajoule, times.hour, [1, 0, 0]),
  ],
  force: [
    { name: 'lbf', also: ['pounds force'], factor: poundForce, decimals: [1, 0, 0] },
    { name: 'N', also: ['newton', 'newtons'], factor: 1, decimals: [1, 0, 0] },
    { name: 'kgf', also: [], factor: standardGravity, decimals: [1, 0, 0] },
  ],
  specificEnergy: [
    ratio(energies.btu, masses.pound, [1, 0, 0]),
    ratio(energies.megajoule, masses.kilogram, [2, 1, 0]),
    ratio(energies.kilojoule, masses.kilogram, [1, 0, 0]),
  ],
  energyDensity: [
    ratio(energies.btu, us.gallon, [0, 0, 0]),
    ratio(energies.btu, imperial.gallon, [0, 0, 0]),
    ratio(energies.megajoule, metricVolumes.litre, [2, 1, 0]),
  ],
  volumeFlow: [us, imperial]
    .flatMap((country) => [
      ratio(country.gallon, times.hour, fineFlow),
      ratio(country.gallon, times.minute, fineFlow),
      ratio(country.quart, times.hour, fineFlow),
      ratio(country.pint, times.hour, coarseFlow),
      ratio(country.ounce, times.hour, coarseFlow),
    ])
    .concat([
      ratio(metricVolumes.litre, times.hour, fineFlow),
      ratio(metricVolumes.litre, times.minute, fineFlow),
      ratio(metricVolumes.millilitre, times.hour, [0, 0, 0]),
      ratio(metricVolumes.millilitre, times.minute, [1, 0, 0]),
    ]),
  massFlow: [ratio(masses.pound, times.hour, [1, 0, 0]), ratio(masses.kilogram, times.hour, [1, 0, 0])],
  volumePerDistance: [
    ratio(us.gallon, lengths.mile, [2, 1, 0]),
    ratio(imperial.gallon, lengths.mile, [2, 1, 0]),
    {
      name: 'L/100 km',
      also: ['L/100km', 'litres/100 km', 'liters/100 km'],
      factor: litre / 1e5,
      decimals: [1, 0, 0],
    },
    ratio(metricVolumes.litre, lengths.kilometre, [2, 1, 0]),
    ...[us, imperial].flatMap((country) => [
      ratio(country.quart, hundredMiles, [2, 1, 0]),
      ratio(country.pint, hundredMiles, [2, 1, 0]),
      ratio(country.ounce, hundredMiles, [1, 1, 0]),
    ]),
    ratio(metricVolumes.millilitre, hundredKilometres, [0, 0, 0]),
    invertedRatio(lengths.mile, us.gallon, [2, 1, 0], ['US mpg', 'mpg US', 'mpg (US)']),
    invertedRatio(lengths.mile, imperial.gallon, [2, 1, 0], ['imp mpg', 'mpg imp', 'mpg (imp)']),
    invertedRatio(lengths.kilometre, metricVolumes.litre, [2, 1, 0]),
  ],
  specificVolume: [
    ratio(cubicFoot, masses.pound, [3, 2, 1]),
    ratio(metricVolumes.cubicMetre, masses.kilogram, [4, 2, 1]),
  ],
  specificHeat: [
    {
      name: 'Btu/(lb °F)',
      also: ['Btu/lb °F', 'Btu/lb/°F', 'Btu/lb F'],
      factor: (btu / pound) * 1.8,
      decimals: [3, 2, 1],
    },
    {
      name: 'kJ/(kg K)',
      also: ['kJ/kg K', 'kJ/kg/K', 'kJ/(kg °C)', 'kJ/kg °C'],
      factor: 1e3,
      decimals: [3, 2, 1],
    },
    { name: 'J/(kg K)', also: ['J/kg K', 'J/kg/K'], factor: 1, decimals: [0, 0, 0] },
  ],
  hardness: [
    { name: 'mg/L', also: ['ppm', 'mg/litre', 'mg/liter'], factor: 1e-3, decimals: [0, 0, 0] },
    {
      name: 'grains/US gal',
      also: ['grain/US gal', 'gr/US gal', 'grains/US gallon', 'gpg'],
      factor: pound / 7000 / usGallon,
      decimals: [1, 0, 0],
    },
    {
      name: 'grains/imp gal',
      also: ['gr/imp gal', 'grain/imp gal'],
      factor: pound / 7000 / imperialGallon,
      decimals: [1, 0, 0],
    },
  ],
  share: [{ name: '%', also: ['percent', 'per cent', 'pct'], factor: 0.01, decimals: [1, 0, 0] }],
};

/** The gravity that makes a pound-mass weigh a pound-force, m/s² (NIST SP 811). */
export const standardGravityMPerS2 = standardGravity;
