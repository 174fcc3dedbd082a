/** Tanks charged with air, worked by hand with Boyle's law in absolute pressures. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { enduranceOf } from '../../../src/calc/figures/endurance';
import { psi, usGallon } from '../../../src/quantity/base-units';
import { demoCar, demoNames, figureOf, measureOf, siOf, tiny } from './figured';

const air = 101325;
const absolute = (gauge: number): number => gauge * psi + air;

describe('worked by hand', () => {
  const car = tiny();

  test('8 gallons brim full, 6 in it, 60 down to 40 psi: what 2 gallons of air press out', () => {
    const delivered = 2 * usGallon * (absolute(60) / absolute(40) - 1);
    expect(siOf(car, 'delivered-fuel-tank')).toBeCloseTo(delivered, 12);
    expect(siOf(car, 'charge-lasts-fuel-tank-main-burner-full')).toBeCloseTo(
      delivered / ((3 * usGallon) / 3600),
      6,
    );
  });

  test('the fall of pressure ends at the floor of the band', () => {
    const { value } = figureOf(car, 'fall-fuel-tank-main-burner-full');
    const rows = value.kind === 'table' ? value.rows : [];
    expect(rows).toHaveLength(5);
    expect(rows[0]?.[1]).toBeCloseTo(60 * psi, 3);
    expect(rows[4]?.[1]).toBeCloseTo(40 * psi, 3);
  });

  test('a night at freezing, charged at 15 °C: Gay-Lussac’s law', () => {
    expect(siOf(car, 'cold-night-fuel-tank')).toBeCloseTo((absolute(60) * 273.15) / 288.15 - air, 3);
    expect(siOf(car, 'in-the-sun-fuel-tank')).toBeCloseTo((absolute(60) * 313.15) / 288.15 - air, 3);
  });

  test('1500 m up, where the standard atmosphere has 84,556 Pa (US Standard Atmosphere 1976)', () => {
    expect(siOf(car, 'up-high-fuel-tank')).toBeCloseTo(absolute(60) - 84_556, -1);
  });

  test('a tank of fuel at 3 gallons an hour', () => {
    expect(siOf(car, 'endurance-fuel-tank-main-burner-full')).toBeCloseTo((6 / 3) * 3600, 6);
  });
});

test('a burner of unknown rate promises no time, and says what to measure', () => {
  const ids = tiny().figures.all.map(({ id }) => id);
  expect(ids.filter((id) => /(endurance|fall)-pilot-tank/.test(id))).toEqual([]);
  expect(measureOf(tiny(), 'charge-lasts-pilot-tank-pilot-burner-full')).toContain(
    'burners.pilot-burner.full-rate',
  );
});

test('a tank that pumps fill again from another is not said to last', () => {
  const ids = demoCar('marigold').figures.all.map(({ id }) => id);
  expect(ids.filter((id) => id.startsWith('endurance-pressure-tank'))).toEqual([]);
  expect(ids).toContain('endurance-pilot-tank-pilot-burner-full');
});

test('pressure never rises as fuel leaves', () => {
  for (const name of demoNames)
    for (const { lasts } of demoCar(name).figures.charged)
      for (const { moments } of lasts)
        for (const [index, { gaugePa, seconds }] of moments.entries()) {
          expect(gaugePa).toBeLessThanOrEqual(moments[index - 1]?.gaugePa ?? Number.POSITIVE_INFINITY);
          expect(seconds).toBeGreaterThanOrEqual(moments[index - 1]?.seconds ?? 0);
        }
});

test('a wider band is pumped up no oftener, and the reserve is never counted in', () => {
  const tank = fc.record({
    capacity: fc.double({ min: 0.001, max: 0.1, noNaN: true }),
    fill: fc.double({ min: 0.3, max: 0.9, noNaN: true }),
    top: fc.double({ min: 100_000, max: 900_000, noNaN: true }),
    band: fc.double({ min: 0.05, max: 0.5, noNaN: true }),
  });
  fc.assert(
    fc.property(tank, ({ capacity, fill, top, band }) => {
      const full = { capacityM3: capacity, fuelM3: capacity * fill, gaugePa: top, ambientPa: air };
      const use = { floorGaugePa: top * (1 - band), keptM3: capacity * 0.1, rateM3PerS: 1e-7 };
      const narrow = enduranceOf(full, use);
      const wide = enduranceOf(full, { ...use, floorGaugePa: top * (1 - band) * 0.8 });
      expect(wide.pumpings).toBeLessThanOrEqual(narrow.pumpings);
      expect(narrow.seconds * use.rateM3PerS).toBeCloseTo(full.fuelM3 - use.keptM3, 9);
    }),
  );
});
