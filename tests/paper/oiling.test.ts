/** The oiling chart: what the car has, what its keeper adds, and what it must not name. */
import { describe, expect, test } from 'vitest';
import { worldOf } from '../../src/kettlebook';
import { oilingContext } from '../../src/paper/context/oiling';
import { unknownOilingPoints } from '../../src/paper/guide/oilingPoints';
import { demo, demoNames, workshop } from '../whole/made';

describe.each(demoNames)('the oiling chart of %s', (name) => {
  test('says all of every point, and begins with the round of every day', async () => {
    const ready = await demo(name);
    const rows = oilingContext(worldOf(ready, await workshop()));
    expect(rows.length).toBeGreaterThan(8);
    for (const row of rows) {
      expect([row.point, row.lubricant, row.amount, row.state, row.who]).not.toContain('');
      expect(`${row.days}${row.distance}${row.seasons}`).not.toBe('');
    }
    const days = rows.map((row) => (row.days === '' ? Number.POSITIVE_INFINITY : Number(row.days)));
    expect(days).toEqual([...days].sort((a, b) => a - b));
  });

  test('has the points of its keeper, each in the place of what it says better', async () => {
    const ready = await demo(name);
    const own = ready.car.spec.oiling ?? [];
    expect(own.length).toBeGreaterThan(1);
    const shown = oilingContext(worldOf(ready, await workshop())).map(({ point }) => point);
    expect(own.map(({ point }) => point).filter((point) => !shown.includes(point))).toEqual([]);
    const replaced = new Set(own.map((point) => point['instead-of']));
    const gone = ready.guide.upkeep.oiling.filter(({ id }) => replaced.has(id)).map(({ point }) => point);
    expect(gone.length).toBeGreaterThan(0);
    expect(gone.filter((point) => shown.includes(point))).toEqual([]);
  });

  test('says what oil its cylinders want, as the spec has it', async () => {
    const ready = await demo(name);
    const row = ready.guide.upkeep.oiling.find(({ id }) => id === 'cylinder-oil');
    expect(row?.lubricant).toContain(ready.car.spec.engine.oil.kind);
    expect(row?.point).toContain(ready.car.spec.tanks[ready.car.spec.engine.oil.tank ?? '']?.name);
  });
});

test('no part is named that a car lacks', async () => {
  const said = async (name: (typeof demoNames)[number]) =>
    (await demo(name)).guide.upkeep.oiling.map(({ id }) => id);
  expect(await said('heron')).toContain('blower');
  expect(await said('marigold')).not.toContain('blower');
  expect(await said('marigold')).toContain('oil-pump');
  expect(await said('thimble')).not.toContain('oil-pump');
});

test('a point in the place of one that the chart has not got is told, with its line', async () => {
  const { car } = await demo('thimble');
  const ids = (await workshop()).guideFiles.upkeep.form.oiling.map(({ id }) => id);
  expect(unknownOilingPoints(car, ids)).toEqual([]);
  const [first, ...others] = unknownOilingPoints(
    car,
    ids.map((id) => (id === 'drive' ? 'drives' : id)),
  );
  expect(others).toEqual([]);
  expect(first).toMatchObject({ code: 'spec-oiling', severity: 'error', expected: '`drives`' });
  expect(first?.at?.line).toBe(car.spotOf('oiling.0.instead-of').line);
});
