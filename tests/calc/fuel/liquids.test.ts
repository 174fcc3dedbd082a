import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Liquid, type Liquids, readLiquids } from '../../../src/calc/fuel/liquids';

const path = new URL('../../../shared/liquids.yaml', import.meta.url);
const outcome = readLiquids(readFileSync(path, 'utf8'), 'shared/liquids.yaml');
if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems, null, 2));
const liquids: Liquids = outcome.value;

function liquid(key: string): Liquid {
  const found = liquids.get(key);
  if (!found) throw new Error(`no ${key}`);
  return found;
}

const relative = (found: number, expected: number): number => Math.abs(found / expected - 1);
const btuPerGallon = 1055.05585262 / 3.785411784e-3;
const heatPerGallon = (key: string, value: 'lowerHeatingValue' | 'higherHeatingValue'): number =>
  (liquid(key)[value] * liquid(key).densityKgPerM3) / btuPerGallon;

describe('the liquids that come with the program', () => {
  it.each([
    ['gasoline', 116090, 124340],
    ['naphtha', 116920, 125080],
    ['diesel-winter', 128450, 137380],
    ['diesel', 129488, 138490],
    ['ethanol', 76330, 84530],
  ])(
    'GREET (DOE Hydrogen Analysis Resource Center): %s has %d (lower) and %d (higher) Btu/US gal',
    (key, lower, higher) => {
      expect(relative(heatPerGallon(key, 'lowerHeatingValue'), lower)).toBeLessThan(2e-3);
      expect(relative(heatPerGallon(key, 'higherHeatingValue'), higher)).toBeLessThan(2e-3);
    },
  );

  it('EIA Monthly Energy Review App. A: kerosene has 135,000 Btu/US gal (5.67 million Btu a barrel)', () => {
    expect(relative(heatPerGallon('kerosene', 'higherHeatingValue'), 135000)).toBeLessThan(1e-2);
  });

  it.each([
    ['gasoline', 741],
    ['diesel', 837],
    ['kerosene', 807],
  ])(
    'The Energy and Fuel Data Sheet (University of Birmingham, 2011): %s weighs %d kg/m³',
    (key, density) => {
      expect(relative(liquid(key).densityKgPerM3, density)).toBeLessThan(3e-2);
    },
  );

  it.each([
    ['kerosene', 43.8],
    ['gasoline', 44.3],
    ['diesel', 43.0],
    ['naphtha', 44.5],
  ])(
    'IPCC 2006 Guidelines vol. 2 Table 1.2 (from memory): %s, lower heating value %d MJ/kg',
    (key, value) => {
      expect(relative(liquid(key).lowerHeatingValue / 1e6, value)).toBeLessThan(2e-2);
    },
  );

  it('every liquid has a higher heating value 6 to 11 parts in a hundred above its lower, and a source', () => {
    for (const each of liquids.values()) {
      const ratio = each.higherHeatingValue / each.lowerHeatingValue;
      expect(ratio, each.key).toBeGreaterThan(1.06);
      expect(ratio, each.key).toBeLessThan(1.11);
      expect(each.source.length, each.key).toBeGreaterThan(20);
    }
  });
});

describe('a file of liquids with faults', () => {
  it('is refused with every fault at its line', () => {
    const text = [
      'liquids:',
      '  lamp-oil:',
      '    name: lamp oil',
      '    density: 6.7 lb/gal',
      '    flashpoint: 45 °C',
    ].join('\n');
    const read = readLiquids(text, 'my-liquids.yaml');
    if (read.ok) throw new Error('was read');
    expect(read.problems.map((problem) => problem.code)).toEqual(
      expect.arrayContaining(['spec-quantity', 'spec-missing', 'spec-unknown-key']),
    );
    expect(read.problems.find((problem) => problem.code === 'spec-quantity')).toMatchObject({
      at: { file: 'my-liquids.yaml', line: 4 },
      mend: expect.stringContaining('lb/US gal'),
    });
  });
});
