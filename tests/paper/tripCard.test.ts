/** The example of the trip card is one that the tank can hold. */
import { expect, test } from 'vitest';
import { worldOf } from '../../src/kettlebook';
import { tripCardContext } from '../../src/paper/context/tripCard';
import { parseQuantity } from '../../src/quantity/parse';
import { demo, demoNames, workshop } from '../whole/made';

const shop = await workshop();

test.each(demoNames)('%s: what the stick must show before the leg stands on the stick', async (name) => {
  const world = worldOf(await demo(name), shop);
  const { faces } = tripCardContext(world);
  const water = world.figures.water;
  if (water === undefined) throw new Error('no water tank');
  const fullM = water.model.tank.depthAtVolumeM(Math.min(water.model.fillToM3, water.model.tank.capacityM3));
  expect(faces.length).toBe(2);
  for (const { example } of faces) {
    const start = parseQuantity((example?.start ?? '').replaceAll('\u00a0', ' '), 'length');
    if (!start.ok) throw new Error(`no depth: ${example?.start}`);
    // printed rounded up, by a sixteenth of an inch at the most
    expect(start.quantity.si).toBeLessThanOrEqual(fullM + 0.0254 / 16);
    expect(start.quantity.si).toBeGreaterThan(0);
  }
});
