/** The example of the trip card is one that the tank can hold. */
import { expect, test } from 'vitest';
import { worldOf } from '../../src/kettlebook';
import { tripCardContext } from '../../src/paper/context/tripCard';
import { parseQuantity } from '../../src/quantity/parse';
import { terrains } from '../../src/spec/schema/running';
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

const siOf = (printed: string, dimension: 'length' | 'distance'): number => {
  const read = parseQuantity(printed.replaceAll('\u00a0', ' '), dimension);
  if (!read.ok) throw new Error(`no ${dimension}: ${printed}`);
  return read.quantity.si;
};

test.each(demoNames)(
  '%s: the example as printed is enough, and says why where the step of the stick gives less',
  async (name) => {
    const world = worldOf(await demo(name), shop);
    const { faces } = tripCardContext(world);
    const { water } = world.figures;
    if (water === undefined) throw new Error('no water tank');
    expect(faces.length).toBe(2);
    for (const { example, rules, step, reserves } of faces) {
      if (example === null) throw new Error('no example');
      const rule = rules.find(({ road }) => road === example.road);
      const legM = siOf(example.distance, 'distance');
      const [startM, endM] = [siOf(example.start, 'length'), siOf(example.end, 'length')];
      // a reader who multiplies what is printed comes to the distance, or is told why he does not
      const gives = ((startM - endM) / siOf(step, 'length')) * siOf(rule?.water ?? '', 'distance');
      expect(example.overLeast, `${example.start} to ${example.end}: ${gives / legM}`).toBe(
        gives < legM - 1e-6,
      );
      // it ends where the card says that the reserve begins
      expect(reserves.map(({ at }) => at)).toContain(example.end);
      // and what is in the tank between the two does it
      const { model, use } = water;
      const terrain = terrains.find((each) => world.words.terrain[each] === example.road);
      const neededM3 = (use.byTerrain[terrain ?? 'hilly'].planPerM ?? Number.NaN) * legM;
      const between = model.tank.volumeAtDepthM3(startM) - model.tank.volumeAtDepthM3(endM);
      expect(between).toBeGreaterThanOrEqual(neededM3 - 1e-9);
    }
  },
);

test('of the demo cars some say so and some need not', async () => {
  const overLeast = new Set<boolean | undefined>();
  for (const name of demoNames)
    for (const { example } of tripCardContext(worldOf(await demo(name), shop)).faces)
      overLeast.add(example?.overLeast);
  expect([...overLeast].sort()).toEqual([false, true]);
});
