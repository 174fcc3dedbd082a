/** Letting the water out against frost: every pocket that a car has, none that it has not; fuel at lay-up; the way back. */
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import type { Car } from '../../src/car/car';
import { duties } from '../../src/procedure/duties';
import { demoCar, demoCars, fixtureCar } from '../cars/demo';
import { partsOf, procedure, proceduresOf, sharedText, theLibrary } from './shared';

const library = theLibrary();
const stepsOf = (car: Car, id: string) => procedure(proceduresOf(car, library), id).steps;

/** What holds water without a valve of its own, by the step that empties it. */
const pockets = [
  ['drain-water-strainer', 'drained-strainer'],
  ['drain-feed-heater', 'feed-heater'],
  ['drain-condenser', 'condenser'],
  ['drain-muffler', 'muffler'],
  ['drain-oil-tank', 'oil-tank'],
] as const;

describe.each([
  ['marigold', demoCar('marigold'), ['water-strainer', 'exhaust-muffler', 'oil-tank']],
  ['thimble', demoCar('thimble'), ['water-strainer', 'feed-heater', 'exhaust-muffler', 'oil-cup']],
  ['heron', demoCar('heron'), ['water-strainer', 'oil-separator', 'condenser', 'oil-tank']],
  ['lapwing', fixtureCar('lapwing'), []],
  ['etourneau', fixtureCar('etourneau'), []],
] as const)('%s', (_, car, wanted) => {
  test('each pocket that the spec knows is emptied by its own name, and no other is spoken of', () => {
    const steps = stepsOf(car, 'drain-water');
    const emptied = pockets.flatMap(([id]) => partsOf(steps, id));
    expect(emptied).toEqual(wanted);
    for (const [id, duty] of pockets) expect(partsOf(steps, id)).toEqual(duties[duty]?.parts(car) ?? []);
    expect(steps.some(({ id }) => id === 'drain-oiler')).toBe(
      !wanted.some((id) => id.startsWith('oil-t') || id === 'oil-cup'),
    );
  });

  test('every valve that has water behind it is opened, and felt again before the car is laid up', () => {
    const open = duties['open-when-drained']?.parts(car) ?? [];
    expect(open.length).toBeGreaterThan(0);
    const opened = stepsOf(car, 'drain-water').filter(({ action }) => action === 'open');
    expect(new Set(opened.map(({ part }) => part))).toEqual(new Set(open));
    expect(partsOf(stepsOf(car, 'lay-up'), 'lay-dry-open')).toEqual(open);
  });
});

test.each(demoCars)(
  '%s: flames are out before a fuel tank is vented, and its valve is shut again',
  (name) => {
    const car = demoCar(name);
    const steps = stepsOf(car, 'lay-up');
    const first = (id: string) => steps.findIndex((step) => step.id.split('/')[0] === id);
    const tanks = duties['charged-tank']?.parts(car) ?? [];
    const vents = tanks.flatMap((tank) => car.spec.tanks[tank]?.['vent-valve'] ?? []);
    expect(partsOf(steps, 'lay-vent-tank')).toEqual(tanks);
    expect(partsOf(steps, 'lay-open-vent')).toEqual(vents);
    expect(partsOf(steps, 'lay-shut-vent')).toEqual(vents);
    for (const id of tanks.length === 0 ? [] : ['lay-vent-tank', 'lay-fuel'])
      expect(first(id)).toBeGreaterThan(first('lay-no-flame'));
    for (const id of vents.length === 0 ? [] : ['lay-open-vent', 'lay-fuel', 'lay-fuel-pipes'])
      expect(first('lay-shut-vent')).toBeGreaterThan(first(id));
  },
);

test('who is told to leave the boiler brim-full is sent to the job that says how, by its title', () => {
  const { jobs } = parse(sharedText('upkeep.yaml')) as { jobs: { id: string; title: string }[] };
  const title = jobs.find(({ id }) => id === 'stand-full')?.title;
  const ask = stepsOf(demoCar('marigold'), 'drain-water').find(({ id }) => id === 'drain-ask');
  expect(ask?.result).toContain(`“${title}”`);
});

test.each(demoCars)('%s: after one night of frost nothing is asked for that was never taken away', (name) => {
  const steps = stepsOf(demoCar(name), 'out-of-lay-up');
  const unless = ['out-axle', 'out-battery', 'out-shut-fuel-drain', 'out-fuel'];
  const asked = steps.filter(({ id }) => unless.includes(id.split('/')[0] ?? ''));
  expect(asked.length).toBeGreaterThan(1);
  for (const { say } of asked) expect(say).toMatch(/^If it (is|was) /);
});
