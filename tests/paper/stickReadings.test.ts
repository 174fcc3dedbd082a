/** Every paper tells the depths of a tank by the same marks of its stick, rounded to the safe side. */
import { describe, expect, test } from 'vitest';
import { rangeChart } from '../../src/calc/figures/rangeChart';
import { depthOnStick, markWidthM, stickMarkM } from '../../src/calc/figures/stickReading';
import { worldOf } from '../../src/kettlebook';
import { rangeContext } from '../../src/paper/context/fuelAndWater';
import { logContext } from '../../src/paper/context/logSheet';
import { readingsContext } from '../../src/paper/context/readings';
import { tripCardContext } from '../../src/paper/context/tripCard';
import { parseQuantity } from '../../src/quantity/parse';
import { demo, demoNames, workshop } from '../whole/made';

const shop = await workshop();

/** The one depth in a text, m. */
function depthIn(text: string): number {
  const [, depth = ''] = /((?:\d+ )?\d+(?:\/\d+)? (?:in|mm))\b/.exec(text.replaceAll('\u00a0', ' ')) ?? [];
  const read = parseQuantity(depth, 'length');
  if (!read.ok) throw new Error(`no depth in “${text}”`);
  return read.quantity.si;
}

test('a depth to be reached is told by the mark above it, one not to be passed by the mark below it', () => {
  const inch = 0.0254;
  expect(depthOnStick(4.05 * inch, 'reach', 'us') / inch).toBeCloseTo(4.125, 9);
  expect(depthOnStick(11.7 * inch, 'keep-under', 'us') / inch).toBeCloseTo(11.625, 9);
  // within the width of a scribed line of its mark it is that mark
  expect(depthOnStick(1.5006 * inch, 'reach', 'us') / inch).toBeCloseTo(1.5, 9);
  expect(depthOnStick(0.2958, 'keep-under', 'metric')).toBeCloseTo(0.296, 9);
  expect(depthOnStick(0.2956, 'keep-under', 'metric')).toBeCloseTo(0.295, 9);
  expect(depthOnStick(0.0463, 'reach', 'metric')).toBeCloseTo(0.047, 9);
});

describe.each(demoNames)('%s', (name) => {
  test('full, least to start with and reserve stand at one mark each on all papers', async () => {
    const world = worldOf(await demo(name), shop);
    const { gauges, tanks } = readingsContext(world);
    const log = logContext(world).gauges;
    const [system = 'metric'] = world.phrases.systems;
    const byStick = world.figures.sticks.filter(({ model }) => model.byStick);
    expect(byStick.length).toBeGreaterThan(0);
    for (const { model } of byStick) {
      const spec = world.car.spec.tanks[model.id];
      const tank = tanks.find(({ id }) => id === model.id);
      const full = depthIn(tank?.full ?? '');
      const start = depthIn(tank?.start ?? '');
      const least = depthIn(tank?.least ?? '');
      for (const depth of [full, start, least]) {
        const marks = depth / stickMarkM[system];
        expect(Math.abs(marks - Math.round(marks)), model.name).toBeLessThan(1e-6);
      }

      const fullM = model.tank.depthAtVolumeM(Math.min(model.fillToM3, model.tank.capacityM3));
      const startM = model.tank.depthAtVolumeM(spec?.['least-to-start']?.si ?? model.fillToM3);
      const leastM = model.tank.depthAtVolumeM(model.unusableM3 + model.reserveM3);
      expect(full, model.name).toBeLessThanOrEqual(fullM + markWidthM);
      expect(fullM - full, model.name).toBeLessThan(stickMarkM[system]);
      if (spec?.['least-to-start'] === undefined) expect(start, model.name).toBe(full);
      else expect(start, model.name).toBeGreaterThanOrEqual(startM - markWidthM);
      expect(least, model.name).toBeGreaterThanOrEqual(leastM - markWidthM);

      const gauge = gauges.find(({ kind, id }) => kind === 'gauge' && id === spec?.gauge);
      expect(depthIn(gauge?.ready ?? ''), gauge?.ready).toBe(start);
      expect(depthIn(gauge?.stop ?? ''), gauge?.stop).toBe(least);
      const road = log.find(({ id }) => id === spec?.gauge)?.road;
      expect(road).toBe(gauge?.road);
      if (spec?.pressure === undefined) expect(depthIn(road ?? ''), road).toBe(least);
      else expect(road).toBe('not dipped: there is air over it');

      const reserves = tripCardContext(world).faces[0]?.reserves ?? [];
      for (const { at } of reserves.filter((reserve) => reserve.tank === model.name))
        expect(depthIn(at), model.name).toBe(least);
      for (const chart of [world.figures.water, world.figures.fuel]) {
        if (chart?.model.id !== model.id) continue;
        const last = rangeContext(rangeChart(chart, system), world, 'first').rows.at(-1);
        expect(depthIn(last?.depth ?? ''), model.name).toBeLessThanOrEqual(full);
      }
    }
  });

  test.each(['us', 'metric'] as const)(
    'no row of the range table stands over the line to fill to, %s',
    async (system) => {
      const { figures } = worldOf(await demo(name), shop);
      for (const chart of [figures.water, figures.fuel]) {
        if (chart?.model.byStick !== true) continue;
        const { rows, model } = rangeChart(chart, system);
        const fullM = model.tank.depthAtVolumeM(Math.min(model.fillToM3, model.tank.capacityM3));
        const perM = chart.use.byTerrain.level.planPerM ?? Number.NaN;
        for (const row of rows) {
          expect(row.depthM).toBeLessThanOrEqual(fullM + markWidthM);
          // and the distance beside it is no farther than what is below that mark
          const usableM3 =
            model.tank.volumeAtDepthM3(row.depthM + markWidthM) - model.unusableM3 - model.reserveM3;
          expect((row.rangeM.level ?? 0) * perM).toBeLessThanOrEqual(Math.max(0, usableM3) + 1e-9);
        }
      }
    },
  );
});

test('a main tank that may be filled to 16 gal is read at 11 5/8 in, begins a day at 4 1/8 in, stops at 2 3/4 in', async () => {
  const { tanks } = readingsContext(worldOf(await demo('marigold'), shop));
  const main = tanks.find(({ id }) => id === 'main-tank');
  const clean = (text = '') => text.replaceAll('\u00a0', ' ');
  expect(clean(main?.full)).toBe('16 US gal, 11 5/8 in on the stick');
  expect(clean(main?.start)).toBe('4.5 US gal, 4 1/8 in on the stick');
  expect(clean(main?.least)).toContain('2 3/4 in on the stick');
});
