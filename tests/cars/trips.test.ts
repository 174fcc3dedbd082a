/** The logs of the demo cars’ trips agree with the readings in their specs, and show what a log is good for: finding the odd day. */
import { describe, expect, test } from 'vitest';
import { liquidUse } from '../../src/calc/figures/use';
import { readTripLog, type TripLog } from '../../src/calc/range/trip-log';
import { demoCar, liquids, textOf } from './demo';

const logs = [
  // the right blow-down tap leaked: hot water was lost, and with it fuel
  { name: 'marigold', trips: 14, noFuel: 1, wild: '2025-08-16', wildFuel: ['2025-08-16'] },
  // the drain cock of the water tank was not quite shut: cold water was lost
  { name: 'thimble', trips: 13, noFuel: 1, wild: '2025-07-20', wildFuel: [] },
  // the belt of the condenser’s fan slipped: steam was lost that had done its work
  { name: 'heron', trips: 11, noFuel: 0, wild: '2025-07-12', wildFuel: [] },
] as const;

describe.each(logs)('the log of $name', ({ name, trips, noFuel, wild, wildFuel }) => {
  const car = demoCar(name);

  function log(): TripLog {
    const file = `cars/${car.spec.running.log}`;
    const outcome = readTripLog(textOf(file), file);
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
    expect(outcome.remarks).toEqual([]);
    return outcome.value;
  }

  test('is read without a fault: the trips of one year, in order', () => {
    const read = log().trips;
    expect(read).toHaveLength(trips);
    expect(read.every((trip) => trip.date.startsWith('2025-'))).toBe(true);
    expect(read.map(({ date }) => date)).toEqual(read.map(({ date }) => date).sort());
    expect(read.filter((trip) => trip.fuelM3 === undefined)).toHaveLength(noFuel);
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

  test('names the day on which water was lost as the only wild trip', () => {
    const wildOf = (liquid: 'water' | 'fuel') =>
      (liquidUse(car, liquid, log(), liquids()).fit?.wild ?? []).map(({ trip }) => trip.date);
    expect(wildOf('water')).toEqual([wild]);
    expect(wildOf('fuel')).toEqual(wildFuel);
  });
});
