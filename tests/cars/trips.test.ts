/** Marigold's log of trips agrees with the readings in her spec, and shows what a log is good for: finding the odd day. */
import { describe, expect, test } from 'vitest';
import { liquidUse } from '../../src/calc/figures/use';
import { readTripLog, type TripLog } from '../../src/calc/range/trip-log';
import { demoCar, liquids, textOf } from './demo';

const car = demoCar('marigold');

function log(): TripLog {
  const file = `cars/${car.spec.running.log}`;
  const outcome = readTripLog(textOf(file), file);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  expect(outcome.remarks).toEqual([]);
  return outcome.value;
}

describe('the log of Marigold’s trips', () => {
  test('is read without a fault, fourteen trips of 2025', () => {
    const { trips } = log();
    expect(trips).toHaveLength(14);
    expect(trips.every((trip) => trip.date.startsWith('2025-'))).toBe(true);
    expect(trips.filter((trip) => trip.fuelM3 === undefined)).toHaveLength(1);
  });

  test.each(['water', 'fuel'] as const)(
    'gives the %s use that the spec has measured, within 3 %%',
    (liquid) => {
      const fitted = liquidUse(car, liquid, log(), liquids());
      for (const { terrain, use } of car.spec.running[`${liquid}-use`] ?? []) {
        const mean = fitted.byTerrain[terrain].meanPerM ?? Number.NaN;
        expect(Math.abs(mean / use.si - 1), terrain).toBeLessThan(0.03);
      }
    },
  );

  test('names the day the blow-down tap leaked as the only wild trip', () => {
    const wild = liquidUse(car, 'water', log(), liquids()).fit?.wild ?? [];
    expect(wild.map(({ trip }) => trip.date)).toEqual(['2025-08-16']);
  });
});
