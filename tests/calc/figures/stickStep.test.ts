/** How far a step of the stick goes. */
import { describe, expect, test } from 'vitest';
import { rangeChart } from '../../../src/calc/figures/rangeChart';
import { stickStep } from '../../../src/calc/figures/stickStep';
import { terrains } from '../../../src/spec/schema/running';
import { demoCar, demoNames, figureOf } from './figured';

describe.each(demoNames)('%s', (name) => {
  const car = demoCar(name);

  test('steps from full to the reserve never add up to more than the range', () => {
    for (const chart of [car.figures.water, car.figures.fuel]) {
      if (chart === undefined) throw new Error('both are known');
      for (const system of ['us', 'metric'] as const) {
        const own = rangeChart(chart, system);
        const step = stickStep(own, system);
        if (step === undefined) throw new Error('the tank is deeper than a step');
        const { tank, unusableM3, reserveM3, fillToM3 } = own.model;
        const deep =
          tank.depthAtVolumeM(Math.min(fillToM3, tank.capacityM3)) -
          tank.depthAtVolumeM(unusableM3 + reserveM3);
        for (const terrain of terrains) {
          const perM = own.use.byTerrain[terrain].planPerM ?? Number.NaN;
          const usable = Math.min(fillToM3, tank.capacityM3) - unusableM3 - reserveM3;
          expect(step.rangeM[terrain] ?? 0).toBeGreaterThan(0);
          expect(Math.floor(deep / step.stepM) * (step.rangeM[terrain] ?? 0) * perM).toBeLessThanOrEqual(
            usable,
          );
        }
      }
    }
  });
});

test('a box of 700 by 400 mm holds 2.8 L in each centimetre, and that goes as far as 2.8 L go', () => {
  const { figures } = demoCar('heron');
  const chart = figures.water;
  if (chart === undefined) throw new Error('its water is known');
  const step = stickStep(chart, 'metric');
  expect((step?.leastM3 ?? 0) * 1000).toBeCloseTo(2.8, 9);
  for (const terrain of terrains) {
    const kmPerL = 0.001 / (chart.use.byTerrain[terrain].planPerM ?? Number.NaN) / 1000;
    expect((step?.rangeM[terrain] ?? 0) / 1000).toBeCloseTo(Math.floor(2.8 * kmPerL * 10 + 1e-9) / 10, 9);
  }
});

test('only a tank that is read by stick has the figure', () => {
  const ids = demoCar('heron').figures.all.map(({ id }) => id);
  expect(ids).toContain('water-stick-step');
  expect(ids).not.toContain('fuel-stick-step');
  expect(figureOf(demoCar('marigold'), 'fuel-stick-step').value.kind).toBe('table');
});
