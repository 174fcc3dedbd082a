/** What is planned with is kept: many logs and next trips made up by a seeded generator, and how often the plan was enough. */
import { describe, expect, test } from 'vitest';
import type { Trip } from '../../../src/calc/range/trip-log';
import { fitUse, meanUse, nextTripUse } from '../../../src/calc/range/use-fit';

const seed = 20260314;

/** Numbers even between 0 and 1 (P. L'Ecuyer's multiplicative generator, modulus 2^31 − 1, factor 48271), always the same. */
function generator(start: number): () => number {
  let state = start % 2147483647;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

/** Normal numbers from even ones (Box and Muller). */
const normalFrom = (even: () => number) => (): number =>
  Math.sqrt(-2 * Math.log(even())) * Math.cos(2 * Math.PI * even());

const ratios = { level: 1, rolling: 1.2, hilly: 1.5 } as const;
const kinds = ['level', 'rolling', 'hilly'] as const;
/** True use, m³ per m of level road, scatter of a trip, m³ per √m, and what a stop takes, in level road. */
const truth = { perM: 2e-6, scatter: 3e-5, stopM: 250 } as const;

function made(count: number, even: () => number, normal: () => number): readonly Trip[] {
  return Array.from({ length: count }, (_, line): Trip => {
    const distanceM = 8000 + 50_000 * even();
    const terrain = kinds[Math.floor(3 * even())] ?? 'level';
    const stops = Math.floor(5 * even());
    const levelM = distanceM * ratios[terrain] + stops * truth.stopM;
    const waterM3 = truth.perM * levelM + truth.scatter * Math.sqrt(levelM) * normal();
    return { line, date: '2025-06-01', distanceM, terrain, stops, waterM3 };
  });
}

describe.each([4, 8, 20])('logs of %d trips, seed 20260314', (count) => {
  const even = generator(seed + count);
  const normal = normalFrom(even);
  const logs = 3000;
  const tally = { mean: 0, next: 0 };
  for (let log = 0; log < logs; log++) {
    const fit = fitUse(made(count, even, normal), 'water', ratios, truth.stopM);
    if (fit === undefined) throw new Error('there are trips enough');
    const { low, high } = meanUse(fit, 1, 0.9);
    if (truth.perM >= low && truth.perM <= high) tally.mean += 1;
    const ratio = 1.2;
    const planned = nextTripUse(fit, ratio, 30_000, 0.9).high;
    const levelM = 30_000 * ratio;
    const used = truth.perM * levelM + truth.scatter * Math.sqrt(levelM) * normal();
    if (used <= planned * 30_000) tally.next += 1;
  }
  // Standard error of a share of 0.9 over 3000 is 0.55 in 100. Naming honest trips wild narrows the interval of short logs.
  test('nine intervals in ten hold the true mean', () => {
    expect(tally.mean / logs).toBeGreaterThan(0.86);
    expect(tally.mean / logs).toBeLessThan(0.94);
  });

  test('about 95 next trips in 100 use no more than was planned', () => {
    expect(tally.next / logs).toBeGreaterThan(0.92);
    expect(tally.next / logs).toBeLessThan(0.98);
  });
});
