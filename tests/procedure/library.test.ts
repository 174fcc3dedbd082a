/** The step library: its form, the names it uses, and that nothing in it is idle. */

import { describe, expect, test } from 'vitest';
import type { Car } from '../../src/car/car';
import { duties } from '../../src/procedure/duties';
import { facts, settings } from '../../src/procedure/facts';
import { readLibrary } from '../../src/procedure/library';
import type { ConditionForm, EntryForm, SelectorForm } from '../../src/procedure/libraryForm';
import { phases } from '../../src/procedure/procedure';
import { relations } from '../../src/procedure/relations';
import { carTraits, partTraits } from '../../src/procedure/traits';
import { demoCar, demoCars, fixtureCar } from '../cars/demo';
import { burningOn } from '../helpers/burningOn';
import { english } from '../helpers/english';
import { electric, smallCar, smallCars } from '../helpers/smallCars';
import { libraryFiles, proceduresOf, sharedText, theLibrary } from './shared';

const library = theLibrary();

/** The library with some words of one file changed; they must stand in it. */
function spoilt(file: string, from: string, to: string) {
  const files = libraryFiles();
  const text = files.get(file) ?? '';
  expect(text).toContain(from);
  files.set(
    file,
    text.replace(from, () => to),
  );
  return { outcome: readLibrary(files, english), line: text.slice(0, text.indexOf(from)).split('\n').length };
}

function allEntries(entries: readonly EntryForm[]): readonly EntryForm[] {
  return entries.flatMap((entry) => [entry, ...allEntries(entry.steps ?? [])]);
}

const entries = library.procedures.flatMap(({ form }) => allEntries(form.steps));

/** The same car with one more gauge, beside one that it has. */
function withGauge(car: Car, reads: 'pressure' | 'flow', of: string): Car {
  const [[beside, gauge] = []] = Object.entries(car.spec.gauges);
  const part = car.parts.get(beside ?? '');
  if (gauge === undefined || part === undefined) return car;
  const id = `more-${reads}`;
  const { tag: _, ...untagged } = part;
  return {
    ...car,
    parts: new Map([...car.parts, [id, { ...untagged, id, name: 'one more gauge' }]]),
    spec: { ...car.spec, gauges: { ...car.spec.gauges, [id]: { ...gauge, reads, of } } },
  };
}

/** The same car with a gauge of its oil, and with one of a condenser. */
const watched = (car: Car) => [withGauge(car, 'flow', 'engine'), withGauge(car, 'pressure', 'condenser')];

describe('the library', () => {
  test('has at least one procedure for every phase', () => {
    const there = new Set(library.procedures.map(({ form }) => form.phase));
    expect(phases.filter((phase) => !there.has(phase))).toEqual([]);
  });

  test('has every emergency of the trade', () => {
    const ids = library.procedures
      .filter(({ form }) => form.phase === 'emergency')
      .map(({ form }) => form.id);
    expect(ids).toEqual(
      expect.arrayContaining([
        'shut-everything',
        'low-water',
        'glass-full',
        'fire-outside',
        'pilot-out',
        'lit-back',
        'throttle-sticks',
        'pressure-high',
        'glass-broken',
        'feed-fails',
        'fuel-pressure-falls',
        'steam-in-burner',
        'brakes-fade',
        'burn-or-scald',
      ]),
    );
  });

  test('gives a result to every step', () => {
    const steps = entries.filter((entry) => entry.steps === undefined);
    expect(steps.length).toBeGreaterThan(300);
    expect(
      steps.filter((entry) => entry.result === undefined || entry.say === undefined).map((entry) => entry.id),
    ).toEqual([]);
  });

  test('has no step that no car is given', () => {
    const cars = [
      ...Object.values(smallCars).map((patches) => smallCar(...patches)),
      ...demoCars.map(demoCar),
      ...['bramble', 'dragonfly'].map(fixtureCar),
      reversing(fixtureCar('dragonfly')),
      ...moreShapes(),
      fixtureCar('quartet'),
      fixtureCar('lapwing'),
      ...['bramble', 'quartet'].map((name) => burningOn(fixtureCar(name))),
      burningOn(smallCar(...(smallCars['one pilot valve'] ?? []))),
    ];
    const given = new Set(
      [...cars, ...cars.flatMap(watched)].flatMap((car) =>
        proceduresOf(car, library).flatMap((procedure) =>
          procedure.steps.map((step) => `${procedure.id} ${step.id.split('/')[0]}`),
        ),
      ),
    );
    const idle = library.procedures.flatMap(({ form }) =>
      allEntries(form.steps).flatMap((entry) =>
        entry.id === undefined || given.has(`${form.id} ${entry.id}`) ? [] : [`${form.id} ${entry.id}`],
      ),
    );
    expect(idle).toEqual([]);
  });

  test('uses every caution, and every caution it uses exists', () => {
    const used = new Set([
      ...entries.flatMap((entry) => entry.cautions ?? []),
      ...library.procedures.flatMap(({ form }) => form.cautions ?? []),
    ]);
    const front = [...library.cautions].flatMap(([id, { form }]) => (form.front === true ? [id] : []));
    expect([...library.cautions.keys()].filter((id) => !used.has(id) && !front.includes(id))).toEqual([]);
    expect([...used].filter((id) => !library.cautions.has(id))).toEqual([]);
  });

  test('proves every fact and sets every setting somewhere', () => {
    const proven = new Set(entries.flatMap((entry) => entry.proves ?? []));
    expect(Object.keys(facts).filter((fact) => !proven.has(fact))).toEqual([]);
    const set = new Set(entries.flatMap((entry) => Object.keys(entry.sets ?? {})));
    expect(Object.keys(settings).filter((setting) => !set.has(setting))).toEqual([]);
  });

  test('uses every duty, relation and trait', () => {
    const selectors: SelectorForm[] = [];
    const conditions: ConditionForm[] = [];
    const gather = (condition: ConditionForm | undefined): void => {
      if (condition === undefined) return;
      conditions.push(condition);
      if (condition.has !== undefined) selectors.push(condition.has);
      for (const inner of [...(condition.all ?? []), ...(condition.any ?? [])]) gather(inner);
      gather(condition.not);
    };
    for (const entry of entries) {
      for (const selector of [
        entry.on,
        entry.each,
        entry.for,
        entry.beside,
        ...Object.values(entry.with ?? {}),
      ])
        if (selector !== undefined) selectors.push(selector);
      gather(entry.when);
    }
    for (const { form } of library.procedures) {
      gather(form.when);
      for (const need of form.needs ?? []) {
        gather(need.car);
        gather(need.when);
        if (need.for !== undefined) selectors.push(need.for);
      }
    }
    for (const { form } of library.cautions.values()) gather(form['applies-when']);
    // reference data speaks of duties and traits in the same words
    const reference = ['faults.yaml', 'glossary.yaml', 'readings.yaml', 'upkeep.yaml']
      .map(sharedText)
      .join('');
    const named = new Set([
      ...selectors.flatMap((selector) => [
        selector.duty,
        selector.its,
        selector.except,
        ...(selector.where ?? []),
        ...(selector['where-not'] ?? []),
      ]),
      ...conditions.flatMap((condition) => [condition.trait, condition['it-is']]),
      ...[...reference.matchAll(/(?:duty|trait): ([a-z-]+)/g)].map((match) => match[1]),
      ...[...reference.matchAll(/where: \[([a-z-]+)\]/g)].map((match) => match[1]),
    ]);
    const names = [
      ...Object.keys(duties),
      ...Object.keys(relations),
      ...Object.keys(partTraits),
      ...Object.keys(carTraits),
    ];
    // steps reach these through a tank; the duty tells that the valve is known
    const toldApart = ['tank-vent-valve', 'air-valve'];
    expect(names.filter((name) => !named.has(name) && !toldApart.includes(name))).toEqual([]);
  });
});

/** The same car with a lever of it that sets forward and back. */
function reversing(car: Car): Car {
  const [lever] = Object.keys(car.spec.controls);
  return { ...car, spec: { ...car.spec, engine: { ...car.spec.engine, reverse: lever } } };
}

/** Shapes that only a few steps are for. */
function moreShapes() {
  const piped = (electric[0] ?? {}) as {
    readonly lines?: readonly { readonly through: readonly string[] }[];
  };
  const fedByMotor = (piped.lines ?? []).map((line) => ({
    ...line,
    through: line.through.map((id) => (id === 'hand-pump' ? 'feed-motor' : id)),
  }));
  const steamPump = {
    pumps: { 'hand-pump': { name: 'hand water pump', place: 'dash', moves: 'water', drive: 'hand' } },
  };
  return [
    // the valve nearest to the burner is out of the seat's reach, so that another one is worked on the road
    smallCar(...(smallCars['three pilot valves and a starting branch'] ?? []), {
      valves: { 'main-needle': { place: 'underneath' } },
    }),
    // the switch of the spark is out of the seat's reach
    smallCar(...(smallCars['electric ignition, monotube, condenser'] ?? []), {
      controls: { spark: { place: 'underneath' } },
    }),
    // a torch lights the main burner and heats its vaporizer; nothing is a pilot
    smallCar(...(smallCars['one pilot valve'] ?? []), {
      tanks: { 'pilot-tank': null },
      gauges: { 'pilot-gauge': null },
      fuels: { spirit: null },
      valves: { 'pilot-valve': null },
      burners: { 'pilot-burner': null, 'main-burner': { 'lit-by': 'torch' } },
      vaporizers: { coil: { 'heated-by': ['torch'], 'warm-first': '5 min' } },
      lines: [
        {
          carries: 'main fuel',
          through: ['fuel-tank', 'strainer', 'fuel-stop-valve', 'automatic', 'coil', 'main-burner'],
        },
        ...steamLines,
      ],
      ...steamPump,
    }),
    // a torch lights the main burner, which has no vaporizer; the glass is not seen from the seat
    smallCar(...(smallCars['one pilot valve'] ?? []), {
      tanks: { 'pilot-tank': null },
      gauges: { 'pilot-gauge': null, 'water-glass': { place: 'underneath' } },
      fuels: { spirit: null },
      valves: { 'pilot-valve': null },
      burners: { 'pilot-burner': null, 'main-burner': { 'lit-by': 'torch', vaporizer: null } },
      vaporizers: { coil: null },
      lines: [
        {
          carries: 'main fuel',
          through: ['fuel-tank', 'strainer', 'fuel-stop-valve', 'automatic', 'main-burner'],
        },
        ...steamLines,
      ],
    }),
    // drips out of reach of the seat behind a superheater in the fire; motor feed pumps in reach of it and out of it; a pump
    // between tanks with steam of its own
    ...['dash', 'underneath'].map((place) =>
      smallCar(...(smallCars['one pilot valve'] ?? []), {
        superheater: { name: 'superheater', place: 'underneath', 'in-the-fire': true },
        tanks: {
          'side-tank': {
            name: 'side tank',
            place: 'underneath',
            holds: 'water',
            capacity: '10 US gal',
            vent: 'lid',
            filler: { place: 'underneath' },
            read: 'not-read',
          },
        },
        pumps: {
          'hand-pump': null,
          'feed-motor': { name: 'motor feed pump', place, moves: 'water', drive: 'electric' },
          lifter: { name: 'water lifter', place: 'underneath', moves: 'water', drive: 'steam' },
        },
        valves: { 'drip-cock': { place: 'underneath' }, 'lifter-valve': small('lifter valve', 'W9') },
        lines: [
          {
            carries: 'main fuel',
            through: ['fuel-tank', 'strainer', 'fuel-stop-valve', 'automatic', 'coil', 'main-burner'],
          },
          { carries: 'pilot fuel', through: ['pilot-tank', 'pilot-valve', 'pilot-burner'] },
          { carries: 'steam', through: ['boiler', 'throttle', 'superheater', 'engine'] },
          { carries: 'steam', through: ['boiler', 'lifter-valve', 'lifter'] },
          { carries: 'water', through: ['side-tank', 'lifter', 'water-tank'] },
          { carries: 'water', through: ['water-tank', 'feed-motor', 'check-valve', 'boiler'] },
          ...steamLines.filter(({ through }) => through[1] !== 'throttle' && !through.includes('hand-pump')),
        ],
      }),
    ),
    // injectors and other pumps with steam of their own, their valves in reach of the seat and out of it, alone and beside a hand pump
    ...['dash', 'underneath'].flatMap((place) =>
      [{}, steamPump.pumps].map((others) =>
        smallCar(...(smallCars['one pilot valve'] ?? []), {
          pumps: {
            'hand-pump': null,
            ...others,
            donkey: { name: 'donkey pump', place: 'underneath', moves: 'water', drive: 'steam' },
          },
          valves: {
            'donkey-valve': { ...small('donkey valve', 'W9'), place },
            'donkey-water': { ...small('donkey water valve', 'W10'), place },
          },
          boiler: { 'fill-by': 'fill-joint' },
          fittings: {
            'fill-joint': { name: 'hose joint', place: 'underneath', kind: 'hose-joint' },
            overflow: { name: 'overflow', place: 'underneath', kind: 'outlet' },
          },
          lines: [
            { carries: 'water', through: ['open-air', 'fill-joint', 'boiler'] },
            {
              carries: 'main fuel',
              through: ['fuel-tank', 'strainer', 'fuel-stop-valve', 'automatic', 'coil', 'main-burner'],
            },
            { carries: 'pilot fuel', through: ['pilot-tank', 'pilot-valve', 'pilot-burner'] },
            { carries: 'steam', through: ['boiler', 'donkey-valve', 'donkey'] },
            { carries: 'water', through: ['water-tank', 'donkey-water', 'donkey', 'check-valve', 'boiler'] },
            { carries: 'water', through: ['donkey', 'overflow', 'ground'] },
            ...steamLines.filter((line) => 'hand-pump' in others || !line.through.includes('hand-pump')),
          ],
        }),
      ),
    ),
    // an electric heater for the vaporizer, a spark for the pilot, oil by a hand pump through a valve, a stop valve and a whistle
    smallCar(...(smallCars['one pilot valve'] ?? []), {
      controls: {
        heater: { name: 'heater switch', place: 'dash', kind: 'switch', does: 'Heats the vaporizer.' },
        spark: { name: 'spark switch', place: 'dash', kind: 'switch', does: 'Makes a spark at the pilot.' },
        brake: { name: 'foot brake', place: 'dash', kind: 'brake', does: 'Stops the car.' },
        bell: { name: 'bell', place: 'dash', kind: 'horn', does: 'Rings.' },
        lamps: { name: 'lamp switch', place: 'dash', kind: 'lamps', does: 'Lights the lamps.' },
        tiller: { name: 'tiller', place: 'dash', kind: 'steering', does: 'Steers.' },
        reverse: { name: 'reverse lever', place: 'dash', kind: 'reverse', does: 'Sets forward and reverse.' },
      },
      burners: { 'pilot-burner': { 'lit-by': 'spark' } },
      vaporizers: { coil: { 'heated-by': ['heater'], 'warm-first': '5 min' } },
      engine: { reverse: 'reverse', oil: { pump: 'oil-pump', tank: 'oil-tank' } },
      tanks: {
        'oil-tank': {
          name: 'oil tank',
          place: 'dash',
          holds: 'cylinder-oil',
          capacity: '1 US qt',
          vent: 'lid',
          filler: { place: 'dash' },
          read: 'not-read',
        },
        'water-tank': { read: 'not-read' },
        'fuel-tank': { pressure: null, 'fill-to': null },
      },
      pumps: {
        ...steamPump.pumps,
        'oil-pump': { name: 'oil pump', place: 'dash', moves: 'oil', drive: 'hand' },
        'feed-motor': { name: 'motor feed pump', place: 'dash', moves: 'water', drive: 'electric' },
      },
      valves: {
        'oil-cock': small('oil cock', 'O1'),
        'steam-stop': small('steam stop valve', 'S4'),
        whistle: small('whistle valve', 'S5'),
        'tank-drain': small('tank drain', 'W8'),
      },
      equipment: {
        chocks: { name: 'chocks', kind: 'chocks', place: 'dash' },
        gloves: { name: 'gloves', kind: 'gloves', place: 'dash' },
      },
      superheater: { name: 'superheater', place: 'underneath', 'in-the-fire': false },
      lines: [
        {
          carries: 'main fuel',
          through: ['fuel-tank', 'strainer', 'fuel-stop-valve', 'automatic', 'coil', 'main-burner'],
        },
        { carries: 'pilot fuel', through: ['pilot-tank', 'pilot-valve', 'pilot-burner'] },
        { carries: 'oil', through: ['oil-tank', 'oil-pump', 'oil-cock', 'engine'] },
        { carries: 'steam', through: ['boiler', 'steam-stop', 'throttle', 'superheater', 'engine'] },
        { carries: 'steam', through: ['boiler', 'whistle', 'open-air'] },
        { carries: 'water', through: ['water-tank', 'tank-drain', 'ground'] },
        { carries: 'water', through: ['water-tank', 'feed-motor', 'check-valve', 'boiler'] },
        ...steamLines.filter((line) => line.through[1] !== 'throttle'),
      ],
    }),
    // a pilot, but a motor pump for the main fuel, with a bypass and a drain; water read on a glass
    smallCar(...(smallCars['one pilot valve'] ?? []), {
      pumps: {
        ...steamPump.pumps,
        'fuel-motor': {
          name: 'motor fuel pump',
          place: 'underneath',
          moves: 'fuel',
          drive: 'electric',
          bypass: 'fuel-bypass',
        },
      },
      tanks: { 'water-tank': { read: 'glass' }, 'fuel-tank': { pressure: null, 'fill-to': null } },
      valves: { 'fuel-bypass': small('fuel bypass valve', 'F8'), 'fuel-drain': small('fuel drain', 'F9') },
      lines: [
        {
          carries: 'main fuel',
          through: [
            'fuel-tank',
            'strainer',
            'fuel-motor',
            'fuel-stop-valve',
            'automatic',
            'coil',
            'main-burner',
          ],
        },
        { carries: 'main fuel', through: ['fuel-motor', 'fuel-bypass', 'fuel-tank'] },
        { carries: 'main fuel', through: ['fuel-tank', 'fuel-drain', 'ground'] },
        { carries: 'pilot fuel', through: ['pilot-tank', 'pilot-valve', 'pilot-burner'] },
        ...steamLines,
      ],
    }),
    // a coil fed by a motor pump alone
    smallCar(...(smallCars['electric ignition, monotube, condenser'] ?? []), {
      pumps: {
        'hand-pump': null,
        'feed-motor': { name: 'motor feed pump', place: 'underneath', moves: 'water', drive: 'electric' },
      },
      controls: {
        'main-switch': { name: 'main switch', place: 'dash', kind: 'main-switch', does: 'Cuts all current.' },
      },
      lines: fedByMotor,
    }),
    // a spark lights the main burner, a torch heats its vaporizer first, and no fuel is stopped from the seat
    smallCar(...(smallCars['electric ignition, monotube, condenser'] ?? []), {
      equipment: { torch: { name: 'torch', kind: 'torch', place: 'dash' } },
      burners: { 'main-burner': { vaporizer: 'coil' } },
      vaporizers: {
        coil: {
          name: 'vaporizer',
          place: 'underneath',
          'heated-by': ['torch'],
          'hot-when': 'water dances off it',
          'warm-first': '5 min',
        },
      },
      valves: { 'fuel-stop-valve': { place: 'underneath' } },
      lines: [
        {
          carries: 'main fuel',
          through: [
            'fuel-tank',
            'strainer',
            'fuel-pump',
            'fuel-stop-valve',
            'automatic',
            'coil',
            'main-burner',
          ],
        },
        { carries: 'air', through: ['open-air', 'blower', 'main-burner'] },
        { carries: 'exhaust', through: ['engine', 'condenser'] },
        { carries: 'water', through: ['condenser', 'water-tank'] },
        ...steamLines.filter(
          (line) =>
            !['blow-down-tap', 'water-glass'].includes(line.through[1] ?? '') && line.carries !== 'exhaust',
        ),
      ],
    }),
    // nothing stops the fuel from the seat; a glass is the only reading
    smallCar(...(smallCars['one pilot valve'] ?? []), {
      places: { rear: { name: 'rear', at: { back: '6 ft', right: '0 in' }, reach: 'standing' } },
      valves: { 'fuel-stop-valve': { place: 'rear' }, 'pilot-valve': { place: 'rear' } },
    }),
  ];
}

function small(name: string, tag: string) {
  return {
    name,
    tag,
    place: 'dash',
    kind: 'needle',
    opens: 'anticlockwise',
    parked: 'shut',
    does: 'Is there for the tests.',
  };
}

const steamLines = [
  { carries: 'water', through: ['water-tank', 'feed-pump', 'check-valve', 'boiler'] },
  { carries: 'water', through: ['water-tank', 'hand-pump', 'check-valve', 'boiler'] },
  { carries: 'water', through: ['feed-pump', 'bypass-valve', 'water-tank'] },
  { carries: 'water', through: ['boiler', 'blow-down-tap', 'ground'] },
  { carries: 'water', through: ['boiler', 'water-glass'] },
  { carries: 'steam', through: ['boiler', 'throttle', 'engine'] },
  { carries: 'steam', through: ['boiler', 'safety-valve', 'open-air'] },
  { carries: 'steam', through: ['engine', 'drip-cock', 'ground'] },
  { carries: 'exhaust', through: ['engine', 'open-air'] },
];

describe('a library that is spoilt says where', () => {
  const fire = 'procedures/40-fire.yaml';
  test.each([
    [
      'a duty that does not exist',
      fire,
      'each: { duty: pilot-feed-valve, order: from-source }',
      'each: { duty: pilot-fed-valve, order: from-source }',
      'library-unknown',
      'pilot-feed-valve',
    ],
    [
      'a relation that does not exist',
      fire,
      'each: { its: last-valve }',
      'each: { its: last-valves }',
      'library-unknown',
      'last-valve',
    ],
    [
      'a trait that does not exist',
      fire,
      'where: [heats-main-vaporizer] }\n        car: { it-is: soak-said }',
      'where: [heats-main-vaporiser] }\n        car: { it-is: soak-said }',
      'library-unknown',
      'heats-main-vaporizer',
    ],
    [
      'a caution that does not exist',
      fire,
      'cautions: [torch, soak-hurried]',
      'cautions: [torch, soak-huried]',
      'library-unknown',
      'soak-hurried',
    ],
    [
      'a fact that does not exist',
      fire,
      'proves: [flame-good, igniter-proven]',
      'proves: [flame-good, igniter-prooven]',
      'library-unknown',
      'igniter-proven',
    ],
    [
      'a phrase that does not exist',
      fire,
      '{{> crack-how}}',
      '{{> crack-hw}}',
      'library-unknown',
      'crack-how',
    ],
  ])('%s', (_, file, from, to, code, expected) => {
    const { outcome, line } = spoilt(file, from, to);
    const problems = outcome.ok ? [] : outcome.problems;
    expect(problems.map((problem) => problem.code)).toContain(code);
    const found = problems.find((problem) => problem.code === code);
    expect(found?.expected).toBe(`\`${expected}\``);
    expect(found?.at?.file).toBe(file);
    expect(Math.abs((found?.at?.line ?? 0) - line)).toBeLessThanOrEqual(3);
  });

  test('braces that do not close', () => {
    const { outcome } = spoilt(fire, '{{> level-good}}', '{{> level-good}');
    expect(outcome.ok ? [] : outcome.problems.map((problem) => problem.code)).toContain('library-words');
  });

  test('a key of a step written wrong', () => {
    const { outcome, line } = spoilt(
      fire,
      '        result: dry from end to end',
      '        resultt: dry from end to end',
    );
    const problems = outcome.ok ? [] : outcome.problems;
    expect(problems.map((problem) => [problem.code, problem.at?.file, problem.at?.line])).toEqual([
      ['library-form', fire, line],
    ]);
  });

  test('a beginning or an end in a procedure that is no emergency, or one that there is not', () => {
    const codes = (from: string, to: string) => {
      const { outcome } = spoilt(fire, from, to);
      return outcome.ok ? [] : outcome.problems.map(({ code, found }) => [code, found]);
    };
    const [first] = codes(
      '    title: Light the main burner\n',
      '    title: Light the main burner\n    leaves: [standing]\n',
    );
    expect(first?.[0]).toBe('library-form');
    expect(
      codes(
        '    title: Light the main burner\n',
        '    title: Light the main burner\n    leaves: [sitting]\n',
      ).join(),
    ).toContain('library-form');
  });

  test('a step key that stands twice', () => {
    const { outcome } = spoilt(fire, 'id: pilot-joints', 'id: pilot-pressure');
    expect(outcome.ok ? [] : outcome.problems.map((problem) => problem.code)).toEqual(['library-twice']);
  });

  test('a setting of the wrong kind', () => {
    const { outcome } = spoilt(fire, 'sets: { lighting: it }', 'sets: { lighting: 3 }');
    expect(outcome.ok ? [] : outcome.problems.map((problem) => problem.code)).toEqual(['library-unknown']);
  });

  test('a file that is not there', () => {
    const files = libraryFiles();
    files.delete('cautions.yaml');
    const outcome = readLibrary(files, english);
    expect(outcome.ok ? [] : outcome.problems.map((problem) => problem.message)).toEqual([
      'the library has no file `cautions.yaml`',
    ]);
  });
});
