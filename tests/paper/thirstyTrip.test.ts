import { expect, test } from 'vitest';
import { setOnePaper, worldOf } from '../../src/kettlebook';
import { fuelAndWaterContext, rangeContext } from '../../src/paper/context/fuelAndWater';
import { demo, demoNames, goodOf, workshop } from '../whole/made';

const shop = await workshop();
const manual = shop.papers.find(({ name }) => name === 'owners-manual');

test.each(demoNames)(
  '%s: the trip that used most beyond the fit stands beside the range, by the same figure as in the workings',
  async (name) => {
    if (manual === undefined) throw new Error('there is no manual');
    const ready = await demo(name);
    const world = worldOf(ready, shop);
    const wild = [world.figures.water, world.figures.fuel].flatMap((range) => range?.use.fit?.wild ?? []);
    const said = fuelAndWaterContext(world).ranges.flatMap(({ thirsty }) =>
      thirsty === false ? [] : [thirsty],
    );
    expect(said.length > 0).toBe(wild.some(({ timesExpected }) => timesExpected > 1));
    const text = JSON.stringify(goodOf(setOnePaper(ready, manual, shop)).blocks).replaceAll(/\s/g, ' ');
    for (const { date, inHundred } of said) {
      expect(text).toContain(
        `One trip of the log, of ${date.replaceAll(/\s/g, ' ')}, used ${inHundred} parts in a hundred more`,
      );
      expect(text).toContain(`used ${inHundred} in 100 more than the fit says`);
    }
  },
);

test('a range that no log was fitted to speaks of no trip', async () => {
  const world = worldOf(await demo('thimble'), shop);
  const { water } = world.figures;
  if (water === undefined) throw new Error('there is no range');
  const { fit, ...use } = water.use;
  expect(fit?.wild.length).toBeGreaterThan(0);
  expect(rangeContext({ ...water, use }, world).thirsty).toBe(false);
});
