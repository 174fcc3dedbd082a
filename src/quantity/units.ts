/**
 * Every unit the program reads and prints, by dimension.
 */
import {
  atmosphere,
  btu,
  cubicFoot,
  energies,
  foot,
  hundredKilometres,
  hundredMiles,
  imperial,
  imperialGallon,
  inch,
  lengths,
  litre,
  masses,
  metricVolumes,
  mile,
  pound,
  poundForce,
  psi,
  standardGravity,
  times,
  us,
  usGallon,
} from './base-units';
import type { Dimension } from './dimension';
import { invertedRatio, ratio, type Unit } from './unit';

/** Old metric gauges, Pa: standard gravity on a kilogram over 10⁻⁴ m² (NIST SP 811, 2008, Appendix B). */
const kilogramForcePerSquareCentimetre = standardGravity * 1e4;

const kelvin = { name: 'K', also: [], factor: 1 };
const fahrenheitStep = { name: '°F', also: ['deg F', 'degF', 'F', 'degrees F'], factor: 1 / 1.8 };
const celsiusStep = { name: '°C', also: ['deg C', 'degC', 'C', 'degrees C'], factor: 1 };
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
      `${word} ${letter}`,
      `${word} (${letter})`,
      `${word} (${reference})`,
      ...(short ? [`${word} ${short}`] : []),
    ]),
    factor,
    decimals,
  });
  return [
    make('psi', psi, [1, 0, 0, 2], ['lb/in2', 'lb/in²', 'lbf/in2']),
    make('bar', 1e5, [1, 1, 0, 2], ['bars']),
    make('kPa', 1e3, [1, 0, 0], []),
    make('MPa', 1e6, [2, 1, 1], []),
    make('Pa', 1, [0, 0, 0], []),
    make('atm', atmosphere, [2, 1, 0], []),
    make('kgf/cm2', kilogramForcePerSquareCentimetre, [2, 1, 0], ['kg/cm2', 'kgf/cm²', 'kg/cm²', 'kp/cm2']),
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
  frequency: [
    {
      name: 'a minute',
      printed: '/min',
      close: true,
      also: ['/min', 'per minute', 'rpm', 'turns/min', 'strokes/min'],
      factor: 1 / 60,
      decimals: [1, 0, 0],
    },
    {
      name: 'a second',
      printed: '/s',
      close: true,
      also: ['/s', 'per second', 'Hz'],
      factor: 1,
      decimals: [2, 1, 0],
    },
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
      ratio(cubicFoot, times.minute, [1, 0, 0]),
      ratio(metricVolumes.cubicMetre, times.hour, [1, 0, 0]),
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
  share: [{ name: '%', also: ['percent', 'per cent', 'pct'], factor: 0.01, decimals: [1, 1, 0] }],
};
