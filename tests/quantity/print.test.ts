import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Dimension, UnitSystem } from '../../src/quantity/dimension';
import { houseUnits } from '../../src/quantity/house-units';
import { parseQuantity } from '../../src/quantity/parse';
import {
  inPrintedUnit,
  type PrintOptions,
  printBoth,
  printedUnit,
  printQuantity,
} from '../../src/quantity/print';
import { type Quantity, quantity } from '../../src/quantity/quantity';
import { findUnit } from '../../src/quantity/spelling';
import { fromSi, toSi } from '../../src/quantity/unit';
import { units } from '../../src/quantity/units';

const nbsp = '\u00a0';
const dimensions = Object.keys(houseUnits) as Dimension[];
const systems: readonly UnitSystem[] = ['us', 'imperial', 'metric'];

function read<D extends Dimension>(text: string, dimension: D): Quantity<D> {
  const parsed = parseQuantity(text, dimension);
  if (!parsed.ok) throw new Error(parsed.mend);
  return parsed.quantity;
}

function shown(text: string, dimension: Dimension, options: PrintOptions): string {
  return printQuantity(read(text, dimension), options).replaceAll(nbsp, ' ');
}

describe('printing in house units', () => {
  it.each<[string, Dimension, UnitSystem, string]>([
    ['25 US gal', 'volume', 'us', '25 US gal'],
    ['25 US gal', 'volume', 'metric', '95 L'],
    ['25 US gal', 'volume', 'imperial', '20.8 imp gal'],
    ['550 psi gauge', 'gaugePressure', 'us', '550 psi'],
    ['550 psi gauge', 'gaugePressure', 'metric', '37.9 bar'],
    ['14.7 psi absolute', 'absolutePressure', 'us', '15 psi absolute'],
    ['60 °F', 'temperature', 'us', '60 °F'],
    ['-40 °F', 'temperature', 'metric', '\u221240 °C'],
    ['12 degrees', 'angle', 'us', '12°'],
    ['1 turn', 'turns', 'us', '1 turn'],
    ['2 1/2 turns', 'turns', 'us', '2.5 turns'],
    ['23,500 lb', 'mass', 'us', '23,500 lb'],
    ['12 1/2 %', 'share', 'us', '12.5 %'],
    ['0.0001 lb', 'mass', 'us', '0 lb'],
    ['-0.001 °C', 'temperatureDifference', 'metric', '0 °C'],
  ])('%s (%s) in %s units', (text, dimension, system, expected) => {
    expect(shown(text, dimension, { system })).toBe(expected);
  });

  it('keeps number and unit together with no-break spaces', () => {
    expect(printQuantity(read('25 US gal', 'volume'), { system: 'us' })).toBe(`25${nbsp}US gal`);
    expect(printQuantity(read('11 1/2 in', 'length'), { system: 'us', fractions: 8 })).toBe(
      `11${nbsp}1/2${nbsp}in`,
    );
  });

  it('prints a length for a rule in fractions, in lowest terms, and metric never so', () => {
    expect(shown('11 1/2 in', 'length', { system: 'us', fractions: 16 })).toBe('11 1/2 in');
    expect(shown('0.39 in', 'length', { system: 'us', fractions: 16, rounding: 'down' })).toBe('3/8 in');
    expect(shown('0.39 in', 'length', { system: 'us', fractions: 16, rounding: 'up' })).toBe('7/16 in');
    expect(shown('-1 1/2 in', 'length', { system: 'us', fractions: 8 })).toBe('\u22121 1/2 in');
    expect(shown('11 1/2 in', 'length', { system: 'metric', fractions: 16 })).toBe('292 mm');
    expect(shown('1/4 turn', 'turns', { system: 'us', fractions: 4 })).toBe('1/4 turn');
  });

  it('says gauge in full when asked', () => {
    expect(shown('550 psi gauge', 'gaugePressure', { system: 'us', inFull: true })).toBe('550 psi gauge');
  });

  it('keeps idle zeros only when decimals were asked for', () => {
    expect(shown('25 US gal', 'volume', { system: 'us', decimals: 2 })).toBe('25.00 US gal');
  });

  it('prints two systems, and says the same thing once', () => {
    expect(printBoth(read('25 US gal', 'volume'), ['us', 'metric']).replaceAll(nbsp, ' ')).toBe(
      '25 US gal (95 L)',
    );
    expect(printBoth(read('550 psi gauge', 'gaugePressure'), ['us', 'imperial']).replaceAll(nbsp, ' ')).toBe(
      '550 psi',
    );
  });

  it('gives the number and the unit apart for charts', () => {
    expect(inPrintedUnit(read('25 US gal', 'volume'), { system: 'us' })).toBeCloseTo(25, 12);
    expect(printedUnit('gaugePressure', { system: 'us' })).toBe('psi');
    expect(printedUnit('volume', { system: 'us', unit: 'US qt' })).toBe('US qt');
  });

  it('will not print what is not a number, nor in a unit of another dimension', () => {
    expect(() => printQuantity(quantity('volume', Number.NaN), { system: 'us' })).toThrow(RangeError);
    expect(() => printQuantity(quantity('volume', 1), { system: 'us', unit: 'ft' })).toThrow(RangeError);
  });
});

describe('rounding to the safe side', () => {
  it.each<[string, PrintOptions, string]>([
    ['29.9 US gal', { system: 'us', rounding: 'down', step: 5 }, '25 US gal'],
    ['25.1 US gal', { system: 'us', rounding: 'up', step: 5 }, '30 US gal'],
    ['0.3 US gal', { system: 'us', rounding: 'down', step: 0.1 }, '0.3 US gal'],
    ['0.7 US gal', { system: 'us', rounding: 'up', step: 0.1 }, '0.7 US gal'],
    ['0.6 US gal', { system: 'us', rounding: 'down', step: 0.25, decimals: 1 }, '0.50 US gal'],
  ])('%s %o', (text, options, expected) => {
    expect(shown(text, 'volume', options)).toBe(expected);
  });

  it('rounds the liquid used, not the miles: up gives fewer miles to the gallon', () => {
    expect(shown('1.29 mi/US gal', 'volumePerDistance', { system: 'us', rounding: 'up', decimals: 1 })).toBe(
      '1.2 mi/US gal',
    );
    expect(
      shown('1.21 mi/US gal', 'volumePerDistance', { system: 'us', rounding: 'down', decimals: 1 }),
    ).toBe('1.3 mi/US gal');
  });

  it('never prints more than there is when rounding down, nor less when rounding up', () => {
    const amount = fc.double({ min: 1e-3, max: 1e5, noNaN: true });
    const step = fc.constantFrom(0.1, 0.25, 0.5, 1, 5, 10);
    fc.assert(
      fc.property(amount, step, fc.constantFrom<'down' | 'up'>('down', 'up'), (gallons, by, rounding) => {
        const unit = findUnit('volume', 'US gal');
        if (!unit) throw new Error('no US gal');
        const text = printQuantity(quantity('volume', toSi(gallons, unit)), {
          system: 'us',
          rounding,
          step: by,
        });
        const printed = Number(text.replace(`${nbsp}US gal`, '').replaceAll(',', ''));
        const slack = 1e-9 * Math.max(1, gallons);
        if (rounding === 'down') return printed <= gallons + slack && printed > gallons - by - slack;
        return printed >= gallons - slack && printed < gallons + by + slack;
      }),
    );
  });
});

describe('round trips', () => {
  it('every unit: SI → unit → SI', () => {
    for (const dimension of dimensions) {
      for (const unit of units[dimension]) {
        fc.assert(
          fc.property(fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (si) => {
            return Math.abs(toSi(fromSi(si, unit), unit) / si - 1) < 1e-6;
          }),
          { numRuns: 20 },
        );
      }
    }
  });

  it('what is printed with decimals enough is read back as the same quantity', () => {
    const cases = dimensions.flatMap((dimension) => systems.map((system) => ({ dimension, system })));
    fc.assert(
      fc.property(
        fc.constantFrom(...cases),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        (theCase, value) => {
          const unit = findUnit(theCase.dimension, houseUnits[theCase.dimension][theCase.system]);
          if (!unit) throw new Error('no house unit');
          const amount = quantity(theCase.dimension, toSi(value, unit));
          const back = read(
            printQuantity(amount, { system: theCase.system, decimals: 9, inFull: true }),
            theCase.dimension,
          );
          return Math.abs(back.si - amount.si) <= 1e-6 * Math.abs(amount.si);
        },
      ),
      { numRuns: 500 },
    );
  });
});

describe('a pressure that stands as it was written', () => {
  const both = (psi: number, rounding: 'up' | 'down' | 'nearest') =>
    printBoth(
      { dimension: 'gaugePressure', si: psi * 6894.757293168361, estimated: false, written: '' },
      ['us', 'metric'],
      {
        rounding,
      },
    ).replaceAll('\u00a0', ' ');

  it.each(['up', 'down', 'nearest'] as const)('comes to the same in bar, rounded %s', (rounding) => {
    expect(both(530, rounding)).toBe('530 psi (36.5 bar)'); // 36.54 bar
    expect(both(600, rounding)).toBe('600 psi (41.4 bar)'); // 41.37 bar
  });

  it('one that was rounded in psi goes to its side in both', () => {
    expect(both(530.4, 'up')).toBe('531 psi (36.6 bar)');
    expect(both(529.6, 'down')).toBe('529 psi (36.5 bar)');
  });
});
