/** Each rule fires on a procedure that breaks it and is quiet on the demo cars as they are. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { connect } from '../../src/car/build';
import { facts } from '../../src/procedure/facts';
import { breachesOfCar, ruleBook } from '../../src/proof/check';
import { modelOf } from '../../src/proof/model';
import { rules } from '../../src/proof/rules';
import type { Quantity } from '../../src/quantity/quantity';
import type { CarSpec } from '../../src/spec/schema/carSpec';
import { demoCars } from '../cars/demo';
import { altered, brokenIn, type Edit, forgetting, putIn, step, without } from './edits';
import { demo, fixture } from './library';

const demos = Object.fromEntries(demoCars.map((name) => [name, demo(name)]));

function rulesBroken(name: string, ...edits: readonly Edit[]): ReadonlySet<string> {
  const { car, procedures } = demos[name] ?? demo(name);
  return brokenIn(
    car,
    edits.reduce((all, edit) => edit(all), procedures),
  ).rules;
}

const open = (part: string, more = {}) => step({ id: `open-${part}`, action: 'open', part, ...more });
const shut = (part: string, more = {}) => step({ id: `shut-${part}`, action: 'shut', part, ...more });

/** A day of Marigold in which the matter itself goes wrong, for each rule that is about more than knowing. */
const wrongs: Readonly<Record<string, readonly Edit[]>> = {
  'flame-without-level': [putIn('pilot', 'light-torch', step({ id: 'leak', sets: { level: 'low' } }))],
  'fire-on-low-water': [putIn('running', 'road-listen', step({ id: 'leak', sets: { level: 'low' } }))],
  'water-into-dry-boiler': [putIn('running', 'road-hand-pump', step({ id: 'leak', sets: { level: 'low' } }))],
  'boiler-opened-under-pressure': [putIn('running', undefined, open('boiler-fill-valve'))],
  'boiler-taps-shut': [without('level', 'second-shut-level-tap')],
  'tube-off-before-flame': [without('level', 'second-take-off-tube')],
  'blow-down-pressure': [without('blow-down', 'blow-wait')],
  'fires-out-for-blow-down': [putIn('running', undefined, open('blow-down-left-tap'))],
  'level-known-again': [putIn('running', undefined, step({ id: 'lost', sets: { level: 'not-known' } }))],
  'feed-before-main': [putIn('main-burner', 'main-look-in', shut('water-tank-valve'))],
  'fuel-to-unlit-burner': [altered('pilot', 'crack-pilot-valve', (each) => ({ ...each, sets: {} }))],
  'igniter-proven': [putIn('main-burner', 'clear-front', shut('pilot-needle-valve'))],
  'main-outlives-pilot': [putIn('coming-in', 'in-main-burner', shut('pilot-stop-valve'))],
  'vaporizer-hot': [without('pilot', 'warm-pilot-vaporizer')],
  'pressure-before-flame': [putIn('pilot', 'light-torch', open('pilot-vent-valve'))],
  'no-filling-with-flame': [
    putIn(
      'running',
      undefined,
      step({ id: 'fill', action: 'fill', part: 'main-tank', sets: { cap: 'off' } }),
    ),
  ],
  'vent-before-opening': [without('fuel', 'open-tank-vent', 'vent-tank')],
  'vapour-in-burner': [
    putIn('pilot', 'light-torch', step({ id: 'gas', sets: { 'vapour-in-burner': true } })),
  ],
  'spilt-fuel': [putIn('pilot', 'light-torch', open('pilot-needle-valve'), shut('pilot-needle-valve'))],
  'two-fuels': [without('main-burner', 'shut-starting-valve')],
  'torch-out': [without('pilot', 'put-out-torch')],
  'parked-fuel-cut': [putIn('overnight', undefined, open('pilot-tank-valve'), open('pilot-stop-valve'))],
  'ends-parked': [putIn('overnight', undefined, open('pilot-tank-valve'))],
  'ends-cold': [putIn('overnight', undefined, step({ id: 'free', action: 'unlock', part: 'throttle-lock' }))],
  'superheater-flow': [without('raising-steam', 'flow-crack')],
  'throttle-with-drips-shut': [
    without('raising-steam', 'flow-drips'),
    putIn('raising-steam', 'flow-crack', shut('drip-valve')),
  ],
  'chest-drained': [forgetting('chest-drained'), putIn('moving-off', 'first-motion', shut('drip-valve'))],
  'car-held': [without('short-stop', 'stop-brake')],
  'reverse-at-stand': [without('backward', 'back-stop'), without('backward', 'back-stand')],
  'throttle-locked': [without('short-stop', 'stop-lock')],
  'pressure-to-move': [altered('moving-off', 'off-steam', (each) => ({ ...each, sets: { steam: 'low' } }))],
  'main-outdoors': [without('main-burner', 'main-outdoors'), without('walk-round', 'stand-outdoors')],
  'burner-front-clear': [
    putIn(
      'main-burner',
      'crack-starting-valve',
      step({ id: 'walk-up', who: 'helper', place: 'burner-front', sets: { 'burner-front': 'somebody' } }),
    ),
  ],
  'blow-down-clear': [
    putIn('blow-down', 'crack-blow-down', step({ id: 'walk-up', sets: { 'blow-down-outlets': 'somebody' } })),
  ],
  'one-place-at-once': [altered('main-burner', 'open-main-valve', (each) => ({ ...each, place: 'tail' }))],
  'fuel-valves-shut-down': [without('shut-down', 'down-supply-valve')],
  'came-in': [without('coming-in', 'in-main-burner')],
  'gloves-for-blow-down': [without('blow-down', 'blow-gloves')],
  'blow-down-taps-shut': [without('blow-down', 'shut-blow-down')],
  'outlets-shut': [without('air', 'shut-air-valve')],
  'laid-up-dry': [without('drain-water', 'drain-open-drain')],
  'driver-in-seat': [putIn('running', 'road-listen', step({ id: 'walk', place: 'tail' }))],
};

describe('the demo cars as they are', () => {
  test.each(demoCars)('%s breaks no rule, and every step goes as it is written', (name) => {
    const { car, procedures } = demo(name);
    const broken = brokenIn(car, procedures);
    expect([...broken.rules]).toEqual([]);
    expect(broken.snags).toEqual([]);
  });
});

describe('a rule fires when the car stands wrong', () => {
  test.each(Object.entries(wrongs))('%s', (rule, edits) => {
    expect(rulesBroken('marigold', ...edits)).toContain(rule);
  });
});

describe('a rule about what only some cars have fires on such a car', () => {
  test.each([
    ['blower-first', without('main-burner', 'blower-on')],
    ['monotube-feed', without('main-burner', 'feed-pump-on')],
    ['monotube-feed', without('main-burner', 'feed-pump-moves')],
    ['monotube-feed', without('going-on', 'feed-pump-moves')],
    ['coil-fed', without('short-stop', 'stop-feed-on')],
    ['coil-not-flooded', without('short-stop', 'stop-feed-pump')],
  ] as const)('%s', (rule, edit) => {
    expect(rulesBroken('heron', edit)).toContain(rule);
    expect(rules.find((each) => each.id === rule)?.appliesTo(modelOf(demo('marigold').car))).toBe(false);
  });

  test.each([
    ['main-burner', 'man-coil-pump'],
    ['going-on', 'man-coil-pump'],
    ['short-stop', 'stop-hand-feed-on'],
  ])('coil-fed by hand in %s', (id, step) => {
    const { car, procedures } = fixture('dragonfly');
    expect([...brokenIn(car, procedures).rules]).toEqual([]);
    expect([...brokenIn(car, without(id, step)(procedures)).rules]).toContain('coil-fed');
  });
});

describe('a step of draining that is left out', () => {
  // the model keeps no water in these, nor what is asked, read, hung up or written
  const unseen = new Set([
    ...['drain-ask', 'drain-zero', 'drain-tag', 'drain-log'],
    ...['drain-water-strainer', 'drain-feed-heater', 'drain-condenser', 'drain-muffler'],
    ...['drain-oil-tank', 'drain-oiler'],
  ]);
  const cars = [
    ...demoCars.map((name) => [name, demos[name] ?? demo(name)] as const),
    ...(['bramble', 'merganser'] as const).map((name) => [name, fixture(name)] as const),
  ];

  test.each(cars)('leaves water in %s, and the rule says so', (_, { car, procedures }) => {
    const steps = procedures.find(({ id }) => id === 'drain-water')?.steps ?? [];
    const ids = [...new Set(steps.map(({ id }) => id.split('/')[0] ?? ''))];
    expect(ids.length).toBeGreaterThan(10);
    const silent = ids.filter(
      (id) => !brokenIn(car, without('drain-water', id)(procedures)).rules.has('laid-up-dry'),
    );
    // what is parked open stands open without the step
    const idle = (id: string) =>
      steps
        .filter((each) => each.id.split('/')[0] === id)
        .every(({ action, part }) => action === 'open' && car.spec.valves[part ?? '']?.parked === 'open');
    expect(silent).toEqual(ids.filter((id) => unseen.has(id) || idle(id)));
  });
});

describe('a burner that burns on', () => {
  const { car, procedures } = fixture('lapwing');

  test('is waited for wherever its fire has to be out', () => {
    expect([...brokenIn(car, procedures).rules]).toEqual([]);
    expect(brokenIn(car, procedures).snags).toEqual([]);
    expect(rules.find(({ id }) => id === 'burnt-out')?.appliesTo(modelOf(demo('marigold').car))).toBe(false);
  });

  test.each([
    ['burnt-out', without('shut-down', 'down-burnt-out')],
    ['burnt-out', without('short-stop', 'stop-burnt-out')],
  ] as const)('%s, where nobody waits', (rule, edit) => {
    expect([...brokenIn(car, edit(procedures)).rules]).toContain(rule);
  });
});

describe('a rule fires when nobody knows what it asks for', () => {
  // A drained chest excuses shut drips; not knowing of it alone breaks nothing. That rule is shown firing above.
  const asking = rules.filter((rule) => rule.asks.length > 0 && rule.id !== 'throttle-with-drips-shut');
  test.each(asking.map((rule) => [rule.id, rule.asks] as const))('%s', (id, asks) => {
    const firing = demoCars.filter((name) => rulesBroken(name, forgetting(...asks)).has(id));
    const applying = demoCars.filter(
      (name) =>
        rules.find((rule) => rule.id === id)?.appliesTo(modelOf((demos[name] ?? demo(name)).car)) === true,
    );
    expect(applying.length).toBeGreaterThan(0);
    expect(firing).toEqual(applying);
  });
});

describe('the car itself', () => {
  const { car } = demo('marigold');
  const broken = (spec: Partial<CarSpec>, plant = car.plant) => {
    const model = modelOf({ ...car, plant, spec: { ...car.spec, ...spec } });
    return breachesOfCar(model, ruleBook(model)).map((breach) => breach.rule.id);
  };
  const { boiler, devices, tanks, gauges } = car.spec;
  const at = (quantity: Quantity<'gaugePressure'>, times: number) => ({
    ...quantity,
    si: quantity.si * times,
    written: `${quantity.si * times} Pa`,
  });
  const { 'safety-valve': valve, 'fuel-relief-valve': relief } = devices;
  const tank = tanks['pressure-tank'];
  const gauge = gauges['steam-gauge'];
  if (
    valve?.set === undefined ||
    relief?.set === undefined ||
    tank?.pressure === undefined ||
    gauge?.from === undefined
  )
    throw new Error('Marigold has changed');
  const { set } = valve;
  const { set: reliefSet } = relief;
  const { pressure } = tank;

  test('breaks nothing as it is', () => {
    expect(broken({})).toEqual([]);
  });

  test('the safety valve is held against the cut-out and the allowed pressure', () => {
    const withSet = (to: Quantity<'gaugePressure'>) =>
      broken({ devices: { ...devices, 'safety-valve': { ...valve, set: to } } });
    expect(withSet(at(boiler['allowed-pressure'], 1.01))).toEqual(['safety-valve-setting']);
    expect(withSet(boiler['burner-cuts-out'])).toEqual(['safety-valve-setting']);
    expect(withSet(set)).toEqual([]);
  });

  test('bands agree with their gauges, relief valves and cut-ins', () => {
    const only = ['bands-agree'];
    expect(
      broken({
        tanks: { ...tanks, 'pressure-tank': { ...tank, pressure: { ...pressure, to: at(pressure.to, 2) } } },
      }),
    ).toEqual(only);
    expect(
      broken({
        tanks: {
          ...tanks,
          'pressure-tank': { ...tank, pressure: { ...pressure, from: at(pressure.from, 0.5) } },
        },
      }),
    ).toEqual(only);
    expect(
      broken({ devices: { ...devices, 'fuel-relief-valve': { ...relief, set: at(reliefSet, 0.5) } } }),
    ).toEqual(only);
    expect(
      broken({ devices: { ...devices, 'fuel-relief-valve': { ...relief, set: at(reliefSet, 2) } } }),
    ).toEqual(only);
    expect(
      broken({ boiler: { ...boiler, 'working-pressure': at(boiler['working-pressure'], 0.5) } }),
    ).toEqual(only);
  });

  test('a check valve stands between pumps and boiler', () => {
    const pipes = car.plant.pipes.map((pipe) =>
      pipe.from === 'left-feed-pump' && pipe.to === 'left-feed-check-valve'
        ? { ...pipe, to: 'boiler' }
        : pipe,
    );
    expect(broken({}, connect(pipes))).toEqual(['check-valve-at-boiler']);
  });
});

describe('the catalogue', () => {
  test('every rule is shown firing', () => {
    const shown = new Set([
      ...Object.keys(wrongs),
      ...rules.filter((rule) => rule.asks.length > 0 || rule.ofCar !== undefined).map((rule) => rule.id),
      'monotube-feed',
      'coil-fed',
      'coil-not-flooded',
      'burnt-out',
    ]);
    expect(rules.filter((rule) => !shown.has(rule.id)).map((rule) => rule.id)).toEqual([]);
  });

  test('names are unique, texts are plain clauses', () => {
    expect(new Set(rules.map((rule) => rule.id)).size).toBe(rules.length);
    for (const rule of rules) {
      expect(rule.code).toBe(`rule-${rule.id}`);
      for (const text of [rule.title, rule.reason, rule.mend]) expect(text).toMatch(/^[a-z][^.]*$/);
    }
  });

  test('a rule asks for every fact its source looks up', () => {
    const folder = new URL('../../src/proof/rules/', import.meta.url);
    const source = readFileSync(new URL('index.ts', folder), 'utf8');
    const files = [...source.matchAll(/import \{ (\w+) \} from '\.\/(\w+)'/g)].map((found) => found[2] ?? '');
    expect(files.length).toBe(rules.length);
    for (const file of files) {
      const text = readFileSync(new URL(`${file}.ts`, folder), 'utf8');
      const asks = /asks: \[([^\]]*)\]/s.exec(text)?.[1] ?? '';
      const body = text.replace(/\b(id|code): '[^']*'/g, '').replace(/asks: \[[^\]]*\]/s, '');
      const looked = Object.keys(facts).filter((fact) => body.includes(`'${fact}'`));
      expect(
        looked.filter((fact) => !asks.includes(`'${fact}'`)),
        file,
      ).toEqual([]);
    }
  });
});
