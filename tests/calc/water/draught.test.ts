/** Draught against a handbook, and the air of a fire against the chemistry of burning. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  airBlownKgPerS,
  airDrawnKgPerS,
  draughtPa,
  excessAir,
  fireFedByAirW,
  flowCoefficient,
  gasTemperatureK,
  heatPerKgAir,
} from '../../../src/calc/water/draught';

const psi = 6894.757293168361;
const kelvin = (degF: number): number => (degF + 459.67) / 1.8;
/** An inch of water column at 60 °F, Pa (NIST SP 811: 248.84). */
const inchOfWaterPa = 248.84;

describe('Steam, Its Generation and Use (Babcock & Wilcox), "Chimneys and draft", formula 24', () => {
  test.each([
    [14.7, 0.67],
    [10, 0.45],
  ])('100 ft, air at 60 °F, gas at 500 °F, air of %d psi: %d in of water', (air, inches) => {
    const pull = draughtPa(100 * 0.3048, {
      ambientPa: air * psi,
      airTemperatureK: kelvin(60),
      gasTemperatureK: kelvin(500),
    });
    expect(Math.abs(pull / inchOfWaterPa - inches)).toBeLessThan(0.011);
  });
});

describe('heat for each kilogram of air, by the oxygen that burning takes', () => {
  // Oxygen by the equation of burning, lower heating values as in the table of liquids.
  test.each([
    ['hexane, C6H14 + 9.5 O2 (CRC, from memory)', (9.5 * 31.998) / 86.175, 44.74e6],
    ['ethanol, C2H6O + 3 O2 (GREET)', (3 * 31.998) / 46.068, 26.945e6],
    [
      'octane, C8H18 + 12.5 O2 (lower heating value 44.43 MJ/kg, from memory)',
      (12.5 * 31.998) / 114.23,
      44.43e6,
    ],
  ])('%s: within the 5 in 100 that Huggett states', (_, oxygenPerKg, lowerHeat) => {
    const airPerKg = oxygenPerKg / 0.2314;
    expect(Math.abs(lowerHeat / airPerKg / heatPerKgAir - 1)).toBeLessThan(0.05);
  });
});

describe('what a boiler takes of the draught', () => {
  test('narrow tubes: Hagen and Poiseuille, 10 mm by 350 mm at Re 200, and going in and out', () => {
    const heads = 1.5 + (64 / 200) * (350 / 10) * 0.9;
    expect(1 / Math.sqrt(heads)).toBeCloseTo(flowCoefficient, 1);
  });

  test('flow balances: the draught is what the speed of the gas takes', () => {
    const at = { ambientPa: 101325, airTemperatureK: 288.15, efficiency: 0.7 };
    const gasK = gasTemperatureK(at.airTemperatureK, at.efficiency);
    const density = at.ambientPa / (287.053 * gasK);
    const air = airDrawnKgPerS({ heightM: 1, freeAreaM2: 0.05 }, at);
    const speed = (air / (density * 0.05)) * 1.047;
    const taken = (density * speed * speed) / 2 / flowCoefficient ** 2;
    expect(taken / draughtPa(1, { ...at, gasTemperatureK: gasK })).toBeCloseTo(1, 2);
  });
});

test('a blower of 100 m³/h feeds about 70 kW (by hand: 1.225 kg/m³ × 100 / 3600 × 3.03 MJ / 1.5)', () => {
  expect(fireFedByAirW(airBlownKgPerS(100 / 3600)) / 1e3).toBeCloseTo(
    ((1.225 * 100) / 3600) * (3031.34 / (1 + excessAir)),
    1,
  );
});

test('a higher and wider flue never draws less, and thin air never more', () => {
  const size = fc.double({ min: 0.01, max: 5, noNaN: true });
  const share = fc.double({ min: 0.2, max: 0.95, noNaN: true });
  fc.assert(
    fc.property(size, size, size, share, (height, area, more, efficiency) => {
      const at = { ambientPa: 101325, airTemperatureK: 288.15, efficiency };
      const drawn = airDrawnKgPerS({ heightM: height, freeAreaM2: area }, at);
      expect(airDrawnKgPerS({ heightM: height + more, freeAreaM2: area }, at)).toBeGreaterThanOrEqual(drawn);
      expect(airDrawnKgPerS({ heightM: height, freeAreaM2: area + more }, at)).toBeGreaterThanOrEqual(drawn);
      expect(
        airDrawnKgPerS({ heightM: height, freeAreaM2: area }, { ...at, ambientPa: 80_000 }),
      ).toBeLessThan(drawn);
    }),
  );
});
