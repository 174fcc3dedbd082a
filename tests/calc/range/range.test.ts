import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rangeM, rangeTable, runsOutFirst, turnBackAt, usableM3 } from '../../../src/calc/range/range';
import type { Trip } from '../../../src/calc/range/trip-log';
import { fitUse, meanUse, nextTripUse } from '../../../src/calc/range/use-fit';
import { tankOf } from '../../../src/calc/tank/tank';

const mile = 1609.344;
const usGallon = 3.785411784e-3;
const ratios = { level: 1, rolling: 1.2, hilly: 1.5 };
const trip = (line: number, miles: number, gallons: number, terrain: Trip['terrain'] = 'level'): Trip => ({
  line,
  date: '2025-06-01',
  distanceM: miles * mile,
  waterM3: gallons * usGallon,
  terrain,
});

describe('use by distance from a log', () => {
  const perMile = usGallon / mile;

  it('finds the level use behind trips over all terrains', () => {
    const trips = [trip(2, 10, 9), trip(3, 20, 21.6, 'rolling'), trip(4, 10, 13.5, 'hilly')];
    const fit = fitUse(trips, 'water', ratios);
    expect(fit?.levelUse).toBeCloseTo(0.9 * perMile, 12);
    expect(fit?.trips).toBe(3);
    expect(fitUse(trips, 'fuel', ratios)).toBeUndefined();
    expect(fitUse(trips.slice(0, 2), 'water', ratios)).toBeUndefined();
  });

  it('counts stops: a trip of 10 miles with 4 stops of a quarter mile each is one of 11 miles', () => {
    const trips = [9, 9, 9].map((gallons, i) => ({ ...trip(i, 10, gallons), stops: 4 }));
    expect((fitUse(trips, 'water', ratios, mile / 4)?.levelUse ?? 0) / perMile).toBeCloseTo(9 / 11, 12);
    const silent = [...trips, trip(9, 10, 9)];
    // one that does not say has the mean of the others
    expect((fitUse(silent, 'water', ratios, mile / 4)?.levelUse ?? 0) / perMile).toBeCloseTo(9 / 11, 12);
  });

  it('is the total used over the total distance when nothing is wild', () => {
    const trips = [trip(2, 10, 9.5), trip(3, 30, 26), trip(4, 20, 18.5), trip(5, 15, 13)];
    expect((fitUse(trips, 'water', ratios)?.levelUse ?? 0) / perMile).toBeCloseTo(
      (9.5 + 26 + 18.5 + 13) / 75,
      12,
    );
  });

  it('names a wild trip and does not follow it', () => {
    const trips = [9.1, 8.9, 9.05, 8.95, 9, 9.1]
      .map((gallons, i) => trip(i + 2, 10, gallons))
      .concat(trip(20, 10, 30));
    const fit = fitUse(trips, 'water', ratios);
    expect(fit?.wild.map(({ trip: one }) => one.line)).toEqual([20]);
    expect(fit?.wild[0]?.timesExpected).toBeCloseTo(3.33, 1);
    expect((fit?.levelUse ?? 0) / perMile).toBeCloseTo(0.9, 1);
  });

  it('gives Student’s interval: by hand for NIST StRD NoInt2 turned into trips of even length', () => {
    const trips = [3, 4, 4].map((gallons, i) => trip(i, 1, gallons));
    const fit = fitUse(trips, 'water', ratios);
    if (!fit) throw new Error('no fit');
    const half = 4.302653 * Math.sqrt(1 / 3 / 3);
    expect(meanUse(fit, 1).high / perMile).toBeCloseTo(11 / 3 + half, 5);
    expect(meanUse(fit, 1).low / perMile).toBeCloseTo(11 / 3 - half, 5);
  });

  it('is surer of a mean than of a trip, and surer of a long trip than of a short one', () => {
    const fit = fitUse(
      [9.3, 8.7, 9.2, 8.8, 9, 9.1].map((gallons, i) => trip(i, 10, gallons)),
      'water',
      ratios,
    );
    if (!fit) throw new Error('no fit');
    const [mean, long, short] = [
      meanUse(fit, 1, 0.9),
      nextTripUse(fit, 1, 50 * mile),
      nextTripUse(fit, 1, 5 * mile),
    ];
    expect(mean.high).toBeLessThan(long.high);
    expect(long.high).toBeLessThan(short.high);
  });
});

describe('range', () => {
  it('keeps the reserve back and rounds down: 30 gallons, 1 unusable, 4 kept, 0.9 a mile, are 27 miles', () => {
    const usable = usableM3(30 * usGallon, { unusableM3: usGallon, reserveM3: 4 * usGallon });
    expect(rangeM(usable, (0.9 * usGallon) / mile, mile) / mile).toBeCloseTo(27, 9);
    expect(rangeM(0.9 * 10 * usGallon, (0.9 * usGallon) / mile, mile) / mile).toBeCloseTo(10, 9);
    expect(usableM3(3 * usGallon, { unusableM3: usGallon, reserveM3: 4 * usGallon })).toBe(0);
  });

  it('says what runs out first and where to turn back', () => {
    const water = { name: 'water', usableM3: 0.1, usePerM: 2e-6 };
    const fuel = { name: 'fuel', usableM3: 0.05, usePerM: 0.3e-6 };
    expect(runsOutFirst([fuel, water]).map((one) => one.name)).toEqual(['water', 'fuel']);
    const back = turnBackAt([{ name: 'water', usableM3: 0.1, useOutPerM: 3e-6, useHomePerM: 2e-6 }], 1000);
    expect(back).toEqual({ name: 'water', rangeM: 20000 });
    expect(turnBackAt([], 1000)).toBeUndefined();
  });

  it('refuses a use of nothing', () => {
    expect(() => rangeM(1, 0, 1)).toThrow(RangeError);
  });

  it('never rises with a harder terrain nor falls with a fuller tank, and never promises more than there is', () => {
    const part = fc.double({ min: 0.01, max: 1, noNaN: true });
    fc.assert(
      fc.property(part, part, part, part, part, (size, reserve, use, harder, hardest) => {
        const tank = tankOf({ kind: 'rectangular', lengthM: size, widthM: 0.5, heightM: 0.3 });
        const usePerM = {
          level: use * 1e-6,
          rolling: use * 1e-6 * (1 + harder),
          hilly: use * 1e-6 * (1 + harder) * (1 + hardest),
        };
        const kept = { unusableM3: 0.001, reserveM3: reserve * 0.02 };
        const rows = rangeTable({ tank, ...kept, usePerM, stickStepM: 0.0254, rangeStepM: mile });
        for (const [index, row] of rows.entries()) {
          expect(row.rangeM.rolling).toBeLessThanOrEqual(row.rangeM.level);
          expect(row.rangeM.hilly).toBeLessThanOrEqual(row.rangeM.rolling);
          expect(row.rangeM.level).toBeGreaterThanOrEqual(rows[index - 1]?.rangeM.level ?? 0);
          expect(row.rangeM.level * usePerM.level).toBeLessThanOrEqual(row.usableM3 * (1 + 1e-9));
        }
        expect(rows.at(-1)?.volumeM3).toBeCloseTo(tank.capacityM3, 12);
      }),
    );
  });

  it('stops at the fill mark', () => {
    const tank = tankOf({ kind: 'rectangular', lengthM: 1, widthM: 0.5, heightM: 0.3 });
    const rows = rangeTable({
      tank,
      fillToM3: 0.1,
      unusableM3: 0,
      reserveM3: 0,
      usePerM: { level: 1e-6, rolling: 1e-6, hilly: 1e-6 },
      stickStepM: 0.05,
      rangeStepM: 1000,
    });
    expect(rows.map((row) => row.depthM)).toEqual([
      0,
      0.05,
      0.1,
      expect.closeTo(0.15, 12),
      expect.closeTo(0.2, 12),
    ]);
  });
});
