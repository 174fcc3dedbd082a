import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { conversionStep } from '../../src/quantity/conversion';
import { type PrintOptions, printBoth } from '../../src/quantity/print';
import { quantity } from '../../src/quantity/quantity';
import { roundTo } from '../../src/quantity/rounding';

const metresPerMile = 1609.344;
const miles = (count: number, options: Omit<PrintOptions, 'system'> = {}) =>
  printBoth(quantity('distance', count * metresPerMile), ['us', 'metric'], options).replaceAll('\u00a0', ' ');

describe('a conversion', () => {
  it('claims to be no sharper than what it was converted from, but keeps two digits', () => {
    // from: 1 mile = 1.609344 km exactly (international mile)
    expect(miles(200)).toBe('200 mi (320 km)');
    expect(miles(200, { rounding: 'down', decimals: 0 })).toBe('200 mi (320 km)');
    expect(miles(1000)).toBe('1000 mi (1600 km)');
    expect(miles(50)).toBe('50 mi (80 km)');
    expect(miles(123)).toBe('123 mi (198 km)');
    expect(printBoth(quantity('mass', 1000 * 0.45359237), ['us', 'metric']).replaceAll('\u00a0', ' ')).toBe(
      '1000 lb (450 kg)',
    );
  });

  it('is not moved far for that where it may only be moved one way', () => {
    // 99 mi are 159.3 km: 150 km would be 6 % too little
    expect(miles(99, { rounding: 'down', decimals: 0 })).toBe('99 mi (159 km)');
  });

  it('leaves scales with a nought of their own, and fractions, as they are', () => {
    const boiling = quantity('temperature', 373.15);
    expect(printBoth(boiling, ['us', 'metric']).replaceAll('\u00a0', ' ')).toBe('212 °F (100 °C)');
    const depth = quantity('length', 0.2794);
    expect(printBoth(depth, ['us', 'metric'], { fractions: 8 }).replaceAll('\u00a0', ' ')).toBe(
      '11 in (279 mm)',
    );
  });

  it('is never moved by more than half of the last digit its source says, nor to the wrong side', () => {
    const cases = fc.record({
      value: fc.double({ min: 0.5, max: 5000, noNaN: true }),
      factor: fc.double({ min: 0.1, max: 100, noNaN: true }),
      rounding: fc.constantFrom('nearest' as const, 'down' as const, 'up' as const),
    });
    fc.assert(
      fc.property(cases, ({ value, factor, rounding }) => {
        const source = { value, step: 1, rounding };
        const converted = { value: value * factor, step: 0.1, rounding };
        const step = conversionStep(source, converted);
        if (step === undefined) return;
        const steps = converted.value / step;
        const rounded = {
          nearest: Math.round(steps),
          down: Math.floor(steps + 1e-9),
          up: Math.ceil(steps - 1e-9),
        };
        const moved = rounded[rounding] * step - converted.value;
        let last = 1;
        const shown = roundTo(value, 1, rounding);
        while (shown % (10 * last) === 0) last *= 10;
        expect(Math.abs(moved)).toBeLessThanOrEqual(0.5 * last * factor * (1 + 1e-6) + 1e-6);
        if (rounding === 'down') expect(moved).toBeLessThanOrEqual(1e-6);
        if (rounding === 'up') expect(moved).toBeGreaterThanOrEqual(-1e-6);
      }),
    );
  });
});
