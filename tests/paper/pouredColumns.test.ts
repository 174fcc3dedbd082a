/** What is poured is told down a column in one measure. */
import { expect, test } from 'vitest';
import { worldOf } from '../../src/kettlebook';
import { fuelAndWaterContext } from '../../src/paper/context/fuelAndWater';
import { demo, demoNames, workshop } from '../whole/made';

const unitsOf = (amount: string) => amount.replace(/[\d.,\s]+/g, ' ').trim();

test.each(demoNames)('%s: every column of a mixing table has one measure', async (name) => {
  const { blends, toppingUp } = fuelAndWaterContext(worldOf(await demo(name), await workshop()));
  const tables = [...blends, ...toppingUp];
  for (const { id, liquids, rows } of tables) {
    liquids.forEach((_, column) => {
      const amounts = rows.flatMap((row) => row.amounts[column] ?? []);
      expect(amounts.length, id).toBeGreaterThan(2);
      expect(new Set(amounts.map(unitsOf)).size, `${id}: ${amounts.join('; ')}`).toBe(1);
    });
  }
});

test('a small part of a blend is told in the small measure throughout', async () => {
  const { blends } = fuelAndWaterContext(worldOf(await demo('marigold'), await workshop()));
  const [row] = blends.flatMap(({ rows }) => rows);
  expect(row?.amounts[0]).toMatch(/US gal/);
  expect(row?.amounts[1]).toMatch(/fl oz.*mL/);
});
