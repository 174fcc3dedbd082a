import { describe, expect, it } from 'vitest';
import type { Dimension } from '../../src/quantity/dimension';
import { siUnits } from '../../src/quantity/dimension';
import { houseUnits } from '../../src/quantity/house-units';
import { findUnit, plainSpelling } from '../../src/quantity/spelling';
import { toSi } from '../../src/quantity/unit';
import { units } from '../../src/quantity/units';

const dimensions = Object.keys(siUnits) as Dimension[];

function siOf(value: number, unitName: string, dimension: Dimension): number {
  const unit = findUnit(dimension, unitName);
  if (!unit) throw new Error(`no unit ${unitName}`);
  return toSi(value, unit);
}

describe('exact definitions', () => {
  it.each<[number, string, Dimension, number]>([
    [1, 'in', 'length', 0.0254],
    [1, 'ft', 'length', 0.3048],
    [1, 'yd', 'length', 0.9144],
    [1, 'mi', 'distance', 1609.344],
    [1, 'lb', 'mass', 0.45359237],
    [1, 'lbf', 'force', 4.4482216152605],
    [1, 'psi absolute', 'absolutePressure', 6894.757293168361],
    [1, 'psi gauge', 'gaugePressure', 6894.757293168361],
    [1, 'bar absolute', 'absolutePressure', 1e5],
    [1, 'atm absolute', 'absolutePressure', 101325],
    [1, 'kgf/cm2 gauge', 'gaugePressure', 98066.5],
    [1, 'kg/cm2 gauge', 'gaugePressure', 98066.5],
    [1, 'Btu', 'energy', 1055.05585262],
    [1, 'Btu/lb', 'specificEnergy', 2326],
    [1, 'hp', 'power', 745.6998715822702],
    [1, 'metric hp', 'power', 735.49875],
  ])('NIST SP 811 (2008) Appendix B: %d %s (%s) = %d SI', (value, unit, dimension, si) => {
    expect(Math.abs(siOf(value, unit, dimension) / si - 1)).toBeLessThan(1e-12);
  });

  it.each<[number, string, number]>([
    [1, 'US gal', 3.785411784e-3],
    [1, 'US qt', 3.785411784e-3 / 4],
    [1, 'US pt', 3.785411784e-3 / 8],
    [1, 'US fl oz', 3.785411784e-3 / 128],
    [1, 'ft3', 28.316846592e-3],
    [231, 'in3', 3.785411784e-3],
  ])('NIST Handbook 44 Appendix C: %d %s = %d m3', (value, unit, si) => {
    expect(Math.abs(siOf(value, unit, 'volume') / si - 1)).toBeLessThan(1e-12);
  });

  it('Weights and Measures Act 1985, Schedule 1: the imperial gallon is 4.54609 L, 8 pints, 160 fluid ounces', () => {
    expect(siOf(1, 'imp gal', 'volume')).toBeCloseTo(4.54609e-3, 15);
    expect(siOf(8, 'imp pt', 'volume')).toBeCloseTo(4.54609e-3, 15);
    expect(siOf(160, 'imp fl oz', 'volume')).toBeCloseTo(4.54609e-3, 15);
    expect(siOf(1, 'imp gal', 'volume') / siOf(1, 'US gal', 'volume')).toBeCloseTo(1.200949925504855, 12);
  });

  it('1 bar is 14.503773773020923 psi and 1 atm 14.695948775513 psi (from the SP 811 definitions)', () => {
    const psi = siOf(1, 'psi absolute', 'absolutePressure');
    expect(1e5 / psi).toBeCloseTo(14.503773773020923, 11);
    expect(101325 / psi).toBeCloseTo(14.695948775513, 11);
  });

  it('1 hp h is 2544.4335776 Btu and 1 kWh 3412.1416331 Btu (from the SP 811 definitions)', () => {
    const btu = siOf(1, 'Btu', 'energy');
    expect(siOf(1, 'hp h', 'energy') / btu).toBeCloseTo(2544.4335776, 6);
    expect(siOf(1, 'kWh', 'energy') / btu).toBeCloseTo(3412.1416331, 6);
  });

  it.each([
    [-40, -40],
    [32, 0],
    [212, 100],
    [98.6, 37],
  ])('%d °F is %d °C (definition of the scales)', (fahrenheit, celsius) => {
    expect(siOf(fahrenheit, '°F', 'temperature')).toBeCloseTo(siOf(celsius, '°C', 'temperature'), 10);
  });

  it('a difference of temperatures has no 32 in it', () => {
    expect(siOf(18, '°F', 'temperatureDifference')).toBeCloseTo(10, 12);
  });

  it.each([
    ['mi/US gal', 235.2145833],
    ['mi/imp gal', 282.4809363],
  ])('1 %s is %d L/100 km (from the definitions)', (unit, litres) => {
    expect(siOf(1, unit, 'volumePerDistance')).toBeCloseTo(siOf(litres, 'L/100 km', 'volumePerDistance'), 12);
  });

  it('1 grain per US gallon is 17.118 mg/L (7000 grains to the pound)', () => {
    expect(siOf(1, 'grains/US gal', 'hardness')).toBeCloseTo(siOf(17.118, 'mg/L', 'hardness'), 6);
  });
});

describe('the tables of units', () => {
  it.each(dimensions)('no two units of %s share a spelling', (dimension) => {
    const owners = new Map<string, string>();
    for (const unit of units[dimension]) {
      for (const word of [unit.name, ...unit.also]) {
        const key = plainSpelling(word);
        expect(owners.get(key) ?? unit.name, `${key} in ${dimension}`).toBe(unit.name);
        owners.set(key, unit.name);
      }
    }
  });

  it.each(dimensions)('the house units of %s are units of it', (dimension) => {
    for (const name of Object.values(houseUnits[dimension])) {
      expect(findUnit(dimension, name)?.name).toBe(name);
    }
  });
});
