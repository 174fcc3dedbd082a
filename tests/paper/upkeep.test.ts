/** What the manual says of upkeep and faults: a way for each job, an answer for each cause, nothing asked for that a car has no use for. */
import { describe, expect, test } from 'vitest';
import { worldOf } from '../../src/kettlebook';
import { partsOfKind } from '../../src/paper/context/controls';
import { oilingContext } from '../../src/paper/context/oiling';
import { duties } from '../../src/procedure/duties';
import { demoCar } from '../cars/demo';
import { carFrom, demo, demoNames, goodOf, specText, workshop } from '../whole/made';

describe.each(demoNames)('the upkeep of %s', (name) => {
  test('each strainer is seen to once, by a job for what it strains', async () => {
    const { guide, car } = await demo(name);
    const strainers = Object.entries(car.spec.fittings ?? {}).filter(([, { kind }]) => kind === 'strainer');
    expect(strainers.length).toBeGreaterThan(1);
    const jobOf = {
      'fuel-strainer': 'clean-strainer',
      'water-strainer': 'clean-water-strainer',
      'condensate-strainer': 'change-separator',
    };
    for (const [id, { name: called }] of strainers) {
      const tasks = guide.upkeep.tasks.filter(({ what }) => what.startsWith(`Look into the ${called},`));
      const kinds = Object.entries(jobOf).filter(([duty]) => duties[duty]?.parts(car).includes(id));
      expect(kinds, called).toHaveLength(1);
      expect(
        tasks.map(({ job }) => job),
        called,
      ).toEqual(kinds.map(([, job]) => job));
      expect(guide.upkeep.jobs.map((job) => job.id)).toContain(kinds[0]?.[1]);
    }
    expect(duties['other-strainer']?.parts(car)).toEqual([]);
  });

  test('bearing oil is named with the grade that the spec gives', async () => {
    const ready = await demo(name);
    const oil = ready.car.spec.engine.oil.bearings ?? '';
    expect(oil).toMatch(/grade \d+/);
    const rows = oilingContext(worldOf(ready, await workshop())).filter(({ lubricant }) =>
      lubricant.includes('bearing oil'),
    );
    expect(rows.length).toBeGreaterThan(5);
    for (const { lubricant } of rows) expect(lubricant).toMatch(/bearing oil, ISO grade \d+/);
  });

  test('no long key is asked for beside what is carried', async () => {
    const { guide } = await demo(name);
    expect(guide.upkeep.carried.length).toBeGreaterThan(8);
    expect(guide.upkeep.carried.filter(({ name: thing }) => thing.includes('long key'))).toEqual([]);
  });

  test('what comes out of every drip valve and blow-down has its way in the spec', () => {
    const { spec } = demoCar(name);
    const ids = [...spec.engine.drips, ...spec.boiler['blow-down']];
    expect(ids.filter((id) => spec.valves[id]?.jet === undefined)).toEqual([]);
  });
});

test('without a grade in the spec the oiling chart sends to the keeper’s record', async () => {
  const { guide } = goodOf(await carFrom(specText('thimble').replace(/^ +bearings: .*\n/m, '')));
  const rows = guide.upkeep.oiling.filter(({ lubricant }) => lubricant.includes('bearing oil'));
  expect(rows.length).toBeGreaterThan(3);
  for (const { lubricant } of rows) expect(lubricant).toContain('of the grade in the keeper’s record');
});

test('what acts by temperature says at what temperature, as what acts by pressure says its pressure', async () => {
  const world = worldOf(await demo('heron'), await workshop());
  const set = new Map(partsOfKind(world, 'device').map((device) => [device.id, device.set]));
  expect(set.get('temperature-cut-off')).toMatch(/^450\s°C/);
  expect(set.get('safety-valve')).toMatch(/^57\sbar/);
});

test('the list of faults asks for nothing by a value: its words stand as they are printed', async () => {
  const { faults } = await workshop();
  expect(faults.length).toBeGreaterThan(30);
  for (const { id, causes, do: acts, never } of faults)
    expect(
      [...causes, ...acts, ...(never ?? [])].filter((each) => each.includes('{{')),
      id,
    ).toEqual([]);
});

test('each sign that the wrong fuel can give says how to be rid of it', async () => {
  const { faults } = await workshop();
  const wrong = faults.filter(({ causes }) =>
    causes.some((cause) => /wrong fuel|fuel too heavy/i.test(cause)),
  );
  expect(wrong.map(({ id }) => id)).toEqual(
    expect.arrayContaining(['pilot-yellow', 'pilot-sooty', 'main-smoky', 'main-smoky-by-spark']),
  );
  for (const { id, do: acts } of wrong) expect(acts.join(' '), id).toMatch(/drain .*fill it/);
});
