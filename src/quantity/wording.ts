/**
 * How each dimension is spoken of to a keeper, and what is known to go wrong when one is written.
 */
import type { Dimension } from './dimension';

/** The words of one dimension. */
export interface DimensionWords {
  /** With its article: `a volume`. */
  readonly name: string;
  /** Texts that are read, the likeliest first. A test reads every one. */
  readonly examples: readonly [string, ...string[]];
  /** True where less than nothing has a meaning (a vacuum, a frost, a place below the sea). */
  readonly mayBeNegative?: true;
}

/** Dimension → its words. */
export const dimensionWords: { readonly [D in Dimension]: DimensionWords } = {
  length: { name: 'a length', examples: ['11 1/2 in', '4 ft 8 1/2 in', '292 mm'], mayBeNegative: true },
  distance: { name: 'a distance', examples: ['12 mi', '19 km', '300 ft', '90 m'], mayBeNegative: true },
  area: { name: 'an area', examples: ['66 ft2', '6.1 m2', '12 in2'] },
  volume: { name: 'a volume', examples: ['25 US gal', '20 imp gal', '95 L'] },
  mass: { name: 'a weight', examples: ['12 lb', '5.4 kg', '6 oz'] },
  time: { name: 'a time', examples: ['20 min', '1 h 30 min', '45 s', '2 days'] },
  angle: { name: 'an angle', examples: ['12 degrees', '12°'], mayBeNegative: true },
  turns: { name: 'a number of turns', examples: ['2 1/2 turns', '1/4 turn'] },
  gaugePressure: {
    name: 'a pressure as a gauge shows it',
    examples: ['550 psi gauge', '38 bar gauge', '3800 kPa gauge'],
    mayBeNegative: true,
  },
  absolutePressure: {
    name: 'a pressure counted from vacuum',
    examples: ['14.7 psi absolute', '1.013 bar absolute', '101.3 kPa absolute'],
  },
  temperature: { name: 'a temperature', examples: ['60 °F', '15 °C', '60 deg F'], mayBeNegative: true },
  temperatureDifference: {
    name: 'a difference of temperatures',
    examples: ['30 °F', '17 °C', '17 K'],
    mayBeNegative: true,
  },
  speed: { name: 'a speed', examples: ['25 mph', '40 km/h'] },
  frequency: { name: 'turns or strokes in a time', examples: ['360 a minute', '360 rpm', '6 a second'] },
  density: { name: 'a density', examples: ['0.8 kg/L', '6.7 lb/US gal', '8 lb/imp gal'] },
  energy: { name: 'an amount of energy', examples: ['900 Btu', '950 kJ', '12 kWh'] },
  power: { name: 'a power or rate of heating', examples: ['900,000 Btu/h', '20 hp', '15 kW'] },
  force: { name: 'a force', examples: ['40 lbf', '180 N'] },
  specificEnergy: { name: 'energy for a weight', examples: ['1170 Btu/lb', '43.4 MJ/kg'] },
  energyDensity: { name: 'energy for a volume', examples: ['135,000 Btu/US gal', '37.6 MJ/L'] },
  volumeFlow: {
    name: 'a volume used or moved in a time',
    examples: ['5 US gal/h', '4 imp gal/h', '19 L/h', '1 US pt/h'],
  },
  massFlow: { name: 'a weight used or moved in a time', examples: ['600 lb/h', '270 kg/h'] },
  volumePerDistance: {
    name: 'liquid used for a distance, or a distance for the liquid used',
    examples: ['1 US gal/mi', '12 mi/US gal', '10 mi/imp gal', '24 L/100 km', '4 km/L'],
  },
  specificVolume: { name: 'a volume for a weight', examples: ['4.43 ft3/lb', '0.277 m3/kg'] },
  specificHeat: { name: 'a specific heat', examples: ['0.12 Btu/(lb °F)', '0.49 kJ/(kg K)'] },
  hardness: { name: 'a hardness of water', examples: ['170 mg/L', '10 grains/US gal'] },
  share: { name: 'a share of the whole', examples: ['95 %', '0.95'] },
};

/** Something often written that must be said more exactly. `pattern` is tried on the plain spelling of the unit. */
export interface Vagueness {
  readonly dimensions: readonly Dimension[];
  readonly pattern: RegExp;
  /** Texts to write instead; `#` stands for the number that was written. Empty where the number would change too. */
  readonly instead: readonly string[];
  readonly why: string;
}

const gallonsDiffer = 'a US gallon is 3.785 L and an imperial gallon 4.546 L';
const gaugeOrAbsolute = 'a gauge reads from the air around it, an absolute pressure counts from vacuum';

/** The vague writings that are known. */
export const vaguenesses: readonly Vagueness[] = [
  {
    dimensions: ['gaugePressure'],
    pattern: /^(?:psi|lbs?|pounds|lbs?\/in[2²]|lbs?\/sq in|#)$/,
    instead: ['# psi gauge'],
    why: gaugeOrAbsolute,
  },
  {
    dimensions: ['gaugePressure'],
    pattern: /^(?:bars?|at)$/,
    instead: ['# bar gauge'],
    why: gaugeOrAbsolute,
  },
  { dimensions: ['gaugePressure'], pattern: /^kpa$/, instead: ['# kPa gauge'], why: gaugeOrAbsolute },
  { dimensions: ['gaugePressure'], pattern: /^mpa$/, instead: ['# MPa gauge'], why: gaugeOrAbsolute },
  {
    dimensions: ['absolutePressure'],
    pattern: /^(?:psi|lbs?|pounds|lbs?\/in[2²])$/,
    instead: ['# psi absolute'],
    why: gaugeOrAbsolute,
  },
  { dimensions: ['absolutePressure'], pattern: /^bars?$/, instead: ['# bar absolute'], why: gaugeOrAbsolute },
  { dimensions: ['absolutePressure'], pattern: /^kpa$/, instead: ['# kPa absolute'], why: gaugeOrAbsolute },
  ...(['gal', 'qt', 'pt', 'fl oz'] as const).flatMap((measure): Vagueness[] => {
    const words = {
      gal: 'gals?|gallons?|g',
      qt: 'qts?|quarts?',
      pt: 'pts?|pints?',
      'fl oz': 'fl\\.? oz|fluid ounces?|oz|ounces?',
    }[measure];
    return [
      {
        dimensions: ['volume'],
        pattern: new RegExp(`^(?:${words})$`),
        instead: [`# US ${measure}`, `# imp ${measure}`],
        why: gallonsDiffer,
      },
      {
        dimensions: ['volumeFlow'],
        pattern: new RegExp(`^(?:${words})/(?:h|hr|hour)$|^${measure === 'gal' ? 'gph' : '$'}$`),
        instead: [`# US ${measure}/h`, `# imp ${measure}/h`],
        why: gallonsDiffer,
      },
    ];
  }),
  {
    dimensions: ['volumePerDistance'],
    pattern: /^(?:mpg|(?:mi|miles?)\/(?:gal|gals|gallons?))$/,
    instead: ['# mi/US gal', '# mi/imp gal'],
    why: gallonsDiffer,
  },
  {
    dimensions: ['volumePerDistance'],
    pattern: /^(?:gal|gals|gallons?)\/(?:mi|miles?)$/,
    instead: ['# US gal/mi', '# imp gal/mi'],
    why: gallonsDiffer,
  },
  {
    dimensions: ['density'],
    pattern: /^(?:lbs?|pounds?)\/(?:gal|gallon)$/,
    instead: ['# lb/US gal', '# lb/imp gal'],
    why: gallonsDiffer,
  },
  {
    dimensions: ['energyDensity'],
    pattern: /^btus?\/(?:gal|gallon)$/,
    instead: ['# Btu/US gal', '# Btu/imp gal'],
    why: gallonsDiffer,
  },
  {
    dimensions: ['hardness'],
    pattern: /^(?:gr|grains?)(?:\/(?:gal|gallon))?$/,
    instead: ['# grains/US gal', '# grains/imp gal'],
    why: gallonsDiffer,
  },
  {
    dimensions: ['mass'],
    pattern: /^(?:t|tons?|tonnes?|cwt)$/,
    instead: [],
    why: 'write the weight in pounds or kilograms: a ton may be 2000 lb, 2240 lb or 1000 kg',
  },
  {
    dimensions: ['temperature', 'temperatureDifference'],
    pattern: /^(?:°|deg|degrees?)$/,
    instead: ['# °F', '# °C'],
    why: 'degrees may be Fahrenheit or Celsius',
  },
  {
    dimensions: ['power'],
    pattern: /^btus?$/,
    instead: ['# Btu/h'],
    why: 'a rate of heating says in what time',
  },
];
