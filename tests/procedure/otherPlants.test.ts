/** What the library says to cars it was not first written for: steps that are there, in their order, and steps that are not. */
import { describe, expect, test } from 'vitest';
import type { Step } from '../../src/procedure/procedure';
import { demoCar, fixtureCar } from '../cars/demo';
import { type Patch, smallCar, smallCars } from '../helpers/smallCars';
import { procedure, proceduresOf } from './shared';

const stepsOf = (car: Parameters<typeof proceduresOf>[0], id: string): readonly Step[] =>
  procedure(proceduresOf(car), id).steps;
const ids = (steps: readonly Step[]): readonly string[] =>
  steps.map((step) => step.id.split('/')[0] ?? step.id);
const small = (...patches: readonly Patch[]) => smallCar(...(smallCars['one pilot valve'] ?? []), ...patches);

describe('a van with a transfer pump and an injector', () => {
  const car = fixtureCar('bramble');

  test('water is moved over before the tank that feeds is down to its reserve, and no stop is made for that tank', () => {
    const running = stepsOf(car, 'running');
    expect(running.find((step) => step.id.startsWith('road-transfer'))?.say).toBe(
      'Before the service water tank (T2) is down to its reserve, move water over with the transfer pump (P3) from the rear water tank (T3).',
    );
    const stops = running.filter((step) => step.id.startsWith('road-water'));
    expect(stops.map((step) => step.part)).toEqual(['rear-water']);
  });

  test('the transfer pump is not tried as a feed pump', () => {
    expect(ids(stepsOf(car, 'level'))).not.toContain('work-feed-pump');
    const pumped = proceduresOf(car).flatMap((each) =>
      ids(each.steps.filter((step) => step.part === 'transfer-pump')),
    );
    expect(new Set(pumped)).toEqual(new Set(['road-transfer', 'stop-transfer', 'drain-transfer-pump']));
  });

  test('the water of an injector is opened before its steam and shut after it, and not for the whole day', () => {
    expect(stepsOf(car, 'water').map((step) => step.part)).not.toContain('injector-water');
    const worked = ids(stepsOf(car, 'raising-steam')).filter((id) => /injector|^feed/.test(id));
    expect(worked).toEqual([
      'injector-water-on',
      'feed-steam-on',
      'feed-against-pressure',
      'feed-steam-off',
      'injector-water-off',
    ]);
  });

  test('try cocks beside the car are not read while it rolls', () => {
    const running = ids(stepsOf(car, 'running'));
    expect(running).toContain('road-level-stop');
    expect(running).not.toContain('road-level-called');
  });

  test('a cock is cracked for a reading and shut again', () => {
    const before = stepsOf(car, 'moving-off').find((step) => step.id === 'off-level');
    expect(before?.result).toBe(
      'cracked, gloved, and shut again: water; steam alone, fires out, feed nothing',
    );
  });
});

describe('a one-seat car whose coil is fed by hand while it stands', () => {
  const car = fixtureCar('dragonfly');

  test('somebody is at the pump before the flame, pumps on after it, and until the coil is cool', () => {
    const lighting = ids(stepsOf(car, 'main-burner'));
    expect(lighting.indexOf('man-coil-pump')).toBeGreaterThan(-1);
    expect(lighting.indexOf('man-coil-pump')).toBeLessThan(lighting.indexOf('crack-main-valve'));
    expect(lighting.indexOf('coil-pump-goes-on')).toBeGreaterThan(lighting.indexOf('crack-main-valve'));
    expect(ids(stepsOf(car, 'short-stop'))).toContain('stop-hand-feed');
    expect(ids(stepsOf(car, 'shut-down'))).toContain('down-hand-feed');
  });

  test('with one seat, nobody but the driver is told to pump while the car rolls', () => {
    const who = (seats: number) => {
      const seated = { ...car, spec: { ...car.spec, car: { ...car.spec.car, seats } } };
      return stepsOf(seated, 'short-stop').find(({ id }) => id.startsWith('stop-hand-feed-on'))?.who;
    };
    expect(car.spec.car.seats).toBe(1);
    expect([who(1), who(2)]).toEqual(['driver', 'helper']);
  });

  test('the level of a cold coil is read the way that works cold', () => {
    expect(stepsOf(car, 'level').find((step) => step.id.startsWith('read-level'))?.part).toBe('coil-tap');
  });

  test('drips out of reach are opened before anybody sits, and shut by a helper before the car moves', () => {
    const off = ids(stepsOf(car, 'moving-off'));
    const inOrder = ['off-drips-standing', 'sit', 'off-shut-drips-standing', 'off-release', 'first-motion'];
    expect(off.filter((id) => inOrder.includes(id))).toEqual(inOrder);
    expect(off).not.toContain('off-drips');
  });

  test('without a reverse no steam is let on when the brakes fade', () => {
    expect(ids(stepsOf(car, 'brakes-fade'))).not.toContain('fade-steam');
    expect(ids(stepsOf(demoCar('marigold'), 'brakes-fade'))).toContain('fade-steam');
  });

  test('without an automatic a hand turns the fire down', () => {
    expect(ids(stepsOf(car, 'running'))).toContain('road-fire-by-hand');
    expect(procedure(proceduresOf(car), 'raising-steam').good).not.toContain('itself');
    expect(ids(stepsOf(demoCar('marigold'), 'running'))).not.toContain('road-fire-by-hand');
  });

  test('a control of the feed is set by the heat of the coil', () => {
    expect(stepsOf(car, 'running').find((step) => step.id.startsWith('road-feed-less'))?.say).toBe(
      'When the coil thermometer gauge falls below its band, set the feed cam lever for less feed.',
    );
  });
});

describe('small differences', () => {
  test('what only keeps a brake on is not braked with when the brakes fade', () => {
    expect(ids(stepsOf(demoCar('thimble'), 'brakes-fade'))).not.toContain('fade-parking-brake');
    expect(ids(stepsOf(demoCar('thimble'), 'brakes-fade'))).toContain('fade-hold');
    expect(ids(stepsOf(demoCar('marigold'), 'brakes-fade'))).toContain('fade-parking-brake');
  });

  test('a boiler that draws itself full has air let in before it is read, and is let down if it is too full', () => {
    const level = ids(stepsOf(demoCar('marigold'), 'level'));
    const order = [
      'level-air-in',
      'read-level',
      'too-high-look',
      'too-high-open',
      'too-high-shut',
      'level-air-shut',
    ];
    expect(level.filter((id) => order.includes(id))).toEqual(order);
    // neither draws itself full nor has a limit
    expect(ids(stepsOf(fixtureCar('merganser'), 'level')).filter((id) => order.includes(id))).toEqual([
      'read-level',
    ]);
  });

  test('fuel that falls by its own weight: nobody is sent to a part on its pressure', () => {
    const said = stepsOf(
      smallCar(...(smallCars['two burners fed by gravity'] ?? []), {
        tanks: { 'pilot-tank': { pressure: null } },
      }),
      'taking-fuel',
    ).map(({ say }) => say);
    expect(said.join(' ')).not.toContain('Pressure over the fuel');
    expect(said.join(' ')).toContain('Begin again with “Light the pilot”');
  });

  test('a glass without a drain is not blown through; broken, with no cocks, it is left to blow', () => {
    expect(stepsOf(small(), 'raising-steam').find((step) => step.id.startsWith('blow-glass'))?.say).toBe(
      'Watch the water in the water glass: it must not stand still.',
    );
    expect(ids(stepsOf(small(), 'glass-broken'))).toContain('glass-blows');
    expect(ids(stepsOf(demoCar('thimble'), 'glass-broken'))).not.toContain('glass-blows');
  });

  test('where only motor pumps feed, they are switched on for water on the road and off again', () => {
    const running = ids(stepsOf(fixtureCar('quartet'), 'running'));
    expect(running.filter((id) => id.startsWith('road-motor'))).toEqual([
      'road-motor-pump-on',
      'road-motor-pump-off',
    ]);
  });

  test.each([
    [
      'a parking brake',
      { controls: { 'hand-brake': { kind: 'brake' } } },
      'something that holds the car once nobody holds the brake',
    ],
    [
      'a way to fill cold',
      { pumps: { 'hand-pump': { drive: 'engine' } } },
      'a way to bring up the level of the boiler while it is cold',
    ],
  ] as const)('%s is asked for at once', (_, patch, lacking) => {
    expect(() => proceduresOf(small(patch))).toThrow(lacking);
  });
});
