/**
 * Small cars of many shapes, made from the smallest spec by laying patches over it. All are invented.
 *
 * Each shape is here because the step library must come out right for it.
 */
import { parse, stringify } from 'yaml';
import { buildCar } from '../../src/car/build';
import type { Car } from '../../src/car/car';
import { loadSpec } from '../../src/spec/load';
import { tinyLiquids, tinySpec } from './tinySpec';

/** A patch: keys to set, `null` to take a key out; lists and single values are put in whole. */
export type Patch = { readonly [key: string]: unknown };

function isPatch(value: unknown): value is Patch {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function laidOver(base: unknown, patch: Patch): Patch {
  const made: Record<string, unknown> = { ...(isPatch(base) ? base : {}) };
  for (const [key, value] of Object.entries(patch)) {
    if (value === null) delete made[key];
    else made[key] = isPatch(value) ? laidOver(made[key], value) : value;
  }
  return made;
}

/** What the step library needs of every car that has blow-down taps. */
const always: Patch = { boiler: { 'blow-down-pressure': '60 psi gauge' } };

/** The text of the smallest spec with patches laid over it, one after another. */
export function smallSpec(...patches: readonly Patch[]): string {
  return stringify([always, ...patches].reduce<Patch>(laidOver, parse(tinySpec) as Patch));
}

/** A car from the smallest spec with patches laid over it; an error that lists what is wrong if it does not load. */
export function smallCar(...patches: readonly Patch[]): Car {
  const outcome = loadSpec(smallSpec(...patches), 'small.yaml', tinyLiquids);
  if (outcome.ok) return buildCar(outcome.value);
  throw new Error(
    outcome.problems.map((each) => `${each.at?.path ?? ''}: ${each.code} ${each.message}`).join('\n'),
  );
}

const lines = (parse(tinySpec) as { lines: readonly { carries: string; through: readonly string[] }[] })
  .lines;

/** The lines of the smallest car less those that `drop` holds for, and some more. */
function linesWith(
  drop: (through: readonly string[]) => boolean,
  ...more: readonly Patch[]
): readonly unknown[] {
  return [...lines.filter((line) => !drop(line.through)), ...more];
}

function valve(name: string, tag: string, place: string, more: Patch = {}): Patch {
  return {
    name,
    tag,
    place,
    kind: 'needle',
    opens: 'anticlockwise',
    parked: 'shut',
    does: 'Is there for the tests.',
    ...more,
  };
}

/** A hand pump for water, which every one of these cars has; the smallest spec has only an engine pump. */
export const handPump: Patch = {
  pumps: { 'hand-pump': { name: 'hand water pump', place: 'dash', moves: 'water', drive: 'hand' } },
  lines: linesWith(() => false, {
    carries: 'water',
    through: ['water-tank', 'hand-pump', 'check-valve', 'boiler'],
  }),
};

/** One pilot valve, its own pilot tank, a fire-tube boiler read on a glass. */
export const oneValve = [handPump];

/** Three pilot valves in a row, and a branch that sends pilot fuel to the vaporizer first. */
export const threeValvesAndStarting: readonly Patch[] = [
  {
    places: { beside: { name: 'beside the car', at: { back: '5 ft', right: '10 in' }, reach: 'standing' } },
    valves: {
      'pilot-tank-valve': valve('pilot tank valve', 'F3', 'beside'),
      'pilot-needle': valve('pilot needle valve', 'F4', 'underneath', {
        'first-crack': '1/8 turn',
        turns: '1 turn',
      }),
      'starting-valve': valve('starting valve', 'F5', 'dash'),
      'main-needle': valve('main burner valve', 'F6', 'dash'),
    },
    pumps: handPump.pumps,
    lines: linesWith(
      (through) => through.includes('pilot-burner') || through.includes('main-burner'),
      {
        carries: 'main fuel',
        through: [
          'fuel-tank',
          'strainer',
          'fuel-stop-valve',
          'automatic',
          'main-needle',
          'coil',
          'main-burner',
        ],
      },
      {
        carries: 'pilot fuel',
        through: ['pilot-tank', 'pilot-tank-valve', 'pilot-valve', 'pilot-needle', 'pilot-burner'],
      },
      { carries: 'pilot fuel', through: ['pilot-valve', 'starting-valve', 'coil'] },
      { carries: 'water', through: ['water-tank', 'hand-pump', 'check-valve', 'boiler'] },
    ),
  },
];

/** No pilot tank: the pilot hangs on the main tank behind a stop valve that cuts both. */
export const pilotFromMain: readonly Patch[] = [
  {
    tanks: { 'pilot-tank': null },
    gauges: { 'pilot-gauge': null },
    fuels: { spirit: null },
    burners: { 'pilot-burner': { fuel: 'blend' } },
    valves: { 'main-needle': valve('main burner valve', 'F3', 'dash', { 'first-crack': '1/4 turn' }) },
    fittings: { tee: { name: 'pilot tee', place: 'underneath', kind: 'tee' } },
    pumps: handPump.pumps,
    lines: linesWith(
      (through) => through.includes('pilot-burner') || through.includes('main-burner'),
      {
        carries: 'main fuel',
        through: [
          'fuel-tank',
          'strainer',
          'fuel-stop-valve',
          'tee',
          'automatic',
          'main-needle',
          'coil',
          'main-burner',
        ],
      },
      { carries: 'main fuel', through: ['tee', 'pilot-valve', 'pilot-burner'] },
      { carries: 'water', through: ['water-tank', 'hand-pump', 'check-valve', 'boiler'] },
    ),
  },
];

/** No pilot at all: a spark, a motor fuel pump with a switch, a blower, a monotube read on an indicator, a condenser. */
export const electric: readonly Patch[] = [
  {
    tanks: { 'pilot-tank': null, 'fuel-tank': { pressure: null, 'fill-to': null } },
    fuels: { spirit: null },
    equipment: { torch: null },
    burners: { 'pilot-burner': null, 'main-burner': { 'lit-by': 'spark', vaporizer: null } },
    vaporizers: null,
    boiler: {
      kind: 'monotube',
      'blow-down': [],
      level: [{ gauge: 'flow', when: 'both', how: 'the pointer moves with each stroke' }],
      'working-level': 'the pointer moves',
      'draws-full': 'no',
    },
    gauges: {
      'water-glass': null,
      'fuel-gauge': null,
      'pilot-gauge': null,
      flow: { name: 'feed indicator', place: 'dash', kind: 'indicator', reads: 'flow', of: 'boiler' },
    },
    condenser: { name: 'condenser', place: 'dash' },
    engine: { exhaust: 'condenser' },
    controls: {
      spark: { name: 'spark switch', place: 'dash', kind: 'switch', does: 'Makes the spark.' },
      'pump-switch': { name: 'fuel pump switch', place: 'dash', kind: 'switch', does: 'Runs the fuel pump.' },
    },
    pumps: {
      'hand-pump': { name: 'hand water pump', place: 'dash', moves: 'water', drive: 'hand' },
      'fuel-pump': {
        name: 'motor fuel pump',
        place: 'underneath',
        moves: 'fuel',
        drive: 'electric',
        'switched-by': 'pump-switch',
      },
      blower: {
        name: 'blower',
        place: 'underneath',
        moves: 'air',
        drive: 'electric',
        'switched-by': 'pump-switch',
      },
    },
    valves: { 'pilot-valve': null, 'blow-down-tap': null },
    lines: linesWith(
      (through) =>
        ['pilot-burner', 'main-burner', 'blow-down-tap', 'water-glass'].some((id) => through.includes(id)) ||
        (through[0] === 'engine' && through[1] === 'open-air'),
      {
        carries: 'main fuel',
        through: ['fuel-tank', 'strainer', 'fuel-pump', 'fuel-stop-valve', 'automatic', 'main-burner'],
      },
      { carries: 'air', through: ['open-air', 'blower', 'main-burner'] },
      { carries: 'exhaust', through: ['engine', 'condenser'] },
      { carries: 'water', through: ['condenser', 'water-tank'] },
      { carries: 'water', through: ['water-tank', 'hand-pump', 'check-valve', 'boiler'] },
    ),
  },
];

/** Two main burners, each with its own valve, behind two stop valves in parallel; main fuel falls by its own weight. */
export const twoBurnersByGravity: readonly Patch[] = [
  {
    tanks: { 'fuel-tank': { pressure: null, 'fill-to': null } },
    gauges: { 'fuel-gauge': null },
    burners: {
      'second-burner': {
        name: 'rear burner',
        job: 'main',
        place: 'underneath',
        fuel: 'blend',
        'full-rate': '1 US gal/h',
        'lit-by': 'pilot-burner',
        vaporizer: 'coil',
      },
      'main-burner': { name: 'front burner' },
    },
    valves: {
      'by-stop-valve': valve('second fuel stop valve', 'F3', 'underneath'),
      'front-valve': valve('front burner valve', 'F4', 'dash'),
      'rear-valve': valve('rear burner valve', 'F5', 'dash'),
    },
    fittings: { manifold: { name: 'fuel manifold', place: 'underneath', kind: 'tee' } },
    pumps: handPump.pumps,
    lines: linesWith(
      (through) => through.includes('main-burner'),
      {
        carries: 'main fuel',
        through: [
          'fuel-tank',
          'strainer',
          'fuel-stop-valve',
          'automatic',
          'manifold',
          'front-valve',
          'main-burner',
        ],
      },
      { carries: 'main fuel', through: ['strainer', 'by-stop-valve', 'automatic'] },
      { carries: 'main fuel', through: ['manifold', 'rear-valve', 'coil', 'second-burner'] },
      { carries: 'water', through: ['water-tank', 'hand-pump', 'check-valve', 'boiler'] },
    ),
  },
];

/** Only hand pumps; level by clear tube cold and try cock steaming; several drips; two blow-down taps; boiler filled by hose. */
export const handPumpsAndTaps: readonly Patch[] = [
  {
    boiler: {
      level: [
        { gauge: 'tube-tap', when: 'cold' },
        { gauge: 'try-cock', when: 'steaming' },
      ],
      'blow-down': ['blow-down-tap', 'second-tap'],
      'draws-full': 'yes',
      'fill-by': 'fill-valve',
      'lets-air-out-by': 'vent-valve',
    },
    gauges: { 'water-glass': null },
    equipment: { tube: { name: 'clear tube', kind: 'tube', place: 'dash' } },
    engine: { drips: ['drip-cock', 'chest-drip'] },
    pumps: {
      'feed-pump': null,
      'hand-pump': {
        name: 'hand water pump',
        place: 'dash',
        moves: 'water',
        drive: 'hand',
        bypass: 'bypass-valve',
      },
    },
    valves: {
      'tube-tap': valve('level tap', 'W3', 'underneath', { kind: 'cock', opens: 'handle-along-pipe' }),
      'try-cock': valve('try cock', 'W4', 'dash', { kind: 'cock', opens: 'handle-along-pipe' }),
      'second-tap': valve('second blow-down tap', 'W5', 'underneath', { kind: 'plug' }),
      'fill-valve': valve('fill valve', 'W6', 'underneath'),
      'vent-valve': valve('boiler vent valve', 'W7', 'underneath'),
      'chest-drip': valve('chest drip valve', 'S3', 'dash'),
    },
    lines: linesWith(
      (through) => through.includes('feed-pump') || through.includes('water-glass'),
      { carries: 'water', through: ['water-tank', 'hand-pump', 'check-valve', 'boiler'] },
      { carries: 'water', through: ['hand-pump', 'bypass-valve', 'water-tank'] },
      { carries: 'water', through: ['boiler', 'tube-tap', 'open-air'] },
      { carries: 'water', through: ['boiler', 'try-cock', 'ground'] },
      { carries: 'water', through: ['boiler', 'second-tap', 'ground'] },
      { carries: 'water', through: ['open-air', 'fill-valve', 'boiler'] },
      { carries: 'steam', through: ['boiler', 'vent-valve', 'open-air'] },
      { carries: 'steam', through: ['engine', 'chest-drip', 'ground'] },
    ),
  },
];

/** A pressure tank pumped up by hand behind its own valve, with an air cushion, relief and return; a superheater in the fire. */
export const pressureTank: readonly Patch[] = [
  {
    tanks: {
      'fuel-tank': { pressure: null, 'fill-to': null },
      cushion: {
        name: 'pressure tank',
        place: 'underneath',
        holds: 'blend',
        capacity: '2 US gal',
        'fill-to': '1 US gal',
        pressure: { from: '100 psi gauge', to: '120 psi gauge' },
        vent: 'open the return valve',
        'vent-valve': 'return-valve',
        filler: { place: 'underneath' },
        read: 'not-read',
      },
    },
    gauges: {
      'fuel-gauge': {
        name: 'fuel pressure gauge',
        of: 'cushion',
        from: '100 psi gauge',
        to: '120 psi gauge',
      },
    },
    superheater: { name: 'superheater', place: 'underneath', 'in-the-fire': true },
    pumps: {
      'hand-pump': { name: 'hand water pump', place: 'dash', moves: 'water', drive: 'hand' },
      'fuel-hand-pump': { name: 'hand fuel pump', place: 'dash', moves: 'fuel', drive: 'hand' },
      'air-pump': { name: 'air pump', place: 'underneath', moves: 'air', drive: 'hand', charges: 'cushion' },
    },
    devices: {
      relief: {
        name: 'fuel relief valve',
        place: 'underneath',
        kind: 'relief-valve',
        set: '120 psi gauge',
        does: 'Sends fuel back.',
      },
    },
    valves: {
      'tank-valve': valve('fuel tank valve', 'F3', 'underneath'),
      'return-valve': valve('fuel return valve', 'F4', 'underneath'),
      'air-valve': valve('air valve', 'F5', 'underneath'),
      'main-needle': valve('main burner valve', 'F6', 'dash'),
    },
    lines: linesWith(
      (through) => through.includes('main-burner') || (through[0] === 'boiler' && through[1] === 'throttle'),
      {
        carries: 'main fuel',
        through: [
          'fuel-tank',
          'tank-valve',
          'strainer',
          'fuel-hand-pump',
          'cushion',
          'fuel-stop-valve',
          'automatic',
          'main-needle',
          'coil',
          'main-burner',
        ],
      },
      { carries: 'main fuel', through: ['cushion', 'relief', 'fuel-tank'] },
      { carries: 'main fuel', through: ['cushion', 'return-valve', 'fuel-tank'] },
      { carries: 'air', through: ['open-air', 'air-pump', 'air-valve', 'cushion'] },
      { carries: 'steam', through: ['boiler', 'throttle', 'superheater', 'engine'] },
      { carries: 'water', through: ['water-tank', 'hand-pump', 'check-valve', 'boiler'] },
    ),
  },
];

/** Every shape, by name. */
export const smallCars: Readonly<Record<string, readonly Patch[]>> = {
  'one pilot valve': oneValve,
  'three pilot valves and a starting branch': threeValvesAndStarting,
  'pilot fed from the main tank': pilotFromMain,
  'electric ignition, monotube, condenser': electric,
  'two burners fed by gravity': twoBurnersByGravity,
  'hand pumps, taps and try cocks': handPumpsAndTaps,
  'pressure tank and superheater': pressureTank,
};
