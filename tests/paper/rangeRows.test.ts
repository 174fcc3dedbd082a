/** The rows of range tables are rounded to the safe side, by whatever they are looked up. */
import { expect, test } from 'vitest';
import { rangeChart } from '../../src/calc/figures/rangeChart';
import { worldOf } from '../../src/kettlebook';
import { rangeContext } from '../../src/paper/context/fuelAndWater';
import { demo, demoNames, workshop } from '../whole/made';

const shop = await workshop();
const number = (printed: string) => Number(/[\d.,]+/.exec(printed)?.[0].replace(',', ''));
const litres = (m3: number) => m3 * 1000;

test.each(demoNames)(
  '%s: what is printed of a tank is no less than what its distance was worked out from',
  async (name) => {
    const world = worldOf(await demo(name), shop);
    for (const each of [world.figures.water, world.figures.fuel]) {
      if (each === undefined) continue;
      const chart = rangeChart(each, 'metric');
      const context = rangeContext(chart, world, world.phrases.systems[0] === 'metric' ? 'first' : 'second');
      const printed = context.rows.map(({ volume }) => number(volume));
      const exact = chart.rows.slice(-printed.length).map(({ volumeM3 }) => litres(volumeM3));
      expect(printed.length).toBeGreaterThan(3);
      for (const [index, volume] of printed.entries()) {
        if (context.byStick || context.byMark) expect(volume).toBeLessThanOrEqual((exact[index] ?? 0) + 1e-6);
        else expect(volume).toBeGreaterThanOrEqual((exact[index] ?? 0) - 1e-6);
        expect(Math.abs(volume - (exact[index] ?? 0))).toBeLessThan(1.001);
      }
    }
  },
);
