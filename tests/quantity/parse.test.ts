import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Dimension } from '../../src/quantity/dimension';
import { parseQuantity } from '../../src/quantity/parse';
import { units } from '../../src/quantity/units';
import { dimensionWords } from '../../src/quantity/wording';

const dimensions = Object.keys(dimensionWords) as Dimension[];
const inch = 0.0254;
const usGallon = 3.785411784e-3;

function si(text: string, dimension: Dimension): number {
  const parsed = parseQuantity(text, dimension);
  if (!parsed.ok) throw new Error(`${text}: ${parsed.mend}`);
  return parsed.quantity.si;
}

function mend(text: string, dimension: Dimension): string {
  const parsed = parseQuantity(text, dimension);
  if (parsed.ok) throw new Error(`${text} was read as ${parsed.quantity.si}`);
  expect(parsed.expected).toContain(dimensionWords[dimension].name);
  return parsed.mend;
}

describe('numbers and units that are read', () => {
  it.each<[string, Dimension, number]>([
    ['11 1/2 in', 'length', 11.5 * inch],
    ['11-1/2 in', 'length', 11.5 * inch],
    ['11½ in', 'length', 11.5 * inch],
    ['11 ½in.', 'length', 11.5 * inch],
    ['3/8 in', 'length', 0.375 * inch],
    ['11\u00a01/2\u00a0in', 'length', 11.5 * inch],
    ['4 ft 8 1/2 in', 'length', 56.5 * inch],
    ['4ft2in', 'length', 50 * inch],
    ['4\' 8 1/2"', 'length', 56.5 * inch],
    ['.5 in', 'length', 0.5 * inch],
    ['1,450 mm', 'length', 1.45],
    ['25 US gal', 'volume', 25 * usGallon],
    ['25 us gallons', 'volume', 25 * usGallon],
    ['1 US gal 2 US qt', 'volume', 1.5 * usGallon],
    ['2 imperial pints', 'volume', 4.54609e-3 / 4],
    ['600 psi gauge', 'gaugePressure', 600 * 6894.757293168361],
    ['600 psig', 'gaugePressure', 600 * 6894.757293168361],
    ['-5 psi gauge', 'gaugePressure', -5 * 6894.757293168361],
    ['38 bar gauge', 'gaugePressure', 3.8e6],
    ['90 lb/in2 gauge', 'gaugePressure', 90 * 6894.757293168361],
    ['60 °F', 'temperature', 288.7055555555556],
    ['60 deg F', 'temperature', 288.7055555555556],
    ['60 degF', 'temperature', 288.7055555555556],
    ['60 F', 'temperature', 288.7055555555556],
    ['−40 °C', 'temperature', 233.15],
    ['2 1/2 turns', 'turns', 2.5],
    ['1/4 turn', 'turns', 0.25],
    ['12 miles per US gal', 'volumePerDistance', usGallon / 1609.344 / 12],
    ['12 US mpg', 'volumePerDistance', usGallon / 1609.344 / 12],
    ['24 L/100 km', 'volumePerDistance', 24e-8],
    ['24 L per 100 km', 'volumePerDistance', 24e-8],
    ['1 US qt/100 mi', 'volumePerDistance', usGallon / 4 / 160934.4],
    ['1 US qt per 100 miles', 'volumePerDistance', usGallon / 4 / 160934.4],
    ['1h30min', 'time', 5400],
    ['5 gal (US)', 'volume', 5 * usGallon],
    ['30 psi g', 'gaugePressure', 30 * 6894.757293168361],
    ['1 h 30 min', 'time', 5400],
    ['4.43 ft3/lb', 'specificVolume', (4.43 * 0.3048 ** 3) / 0.45359237],
    ['95 %', 'share', 0.95],
    ['0.95', 'share', 0.95],
    ['900,000 Btu/h', 'power', (900000 * 1055.05585262) / 3600],
  ])('%s', (text, dimension, expected) => {
    expect(si(text, dimension)).toBeCloseTo(
      expected,
      9 - Math.floor(Math.log10(Math.abs(expected) + 1e-300)),
    );
  });

  it.each(
    dimensions.flatMap((dimension) =>
      dimensionWords[dimension].examples.map((text) => [text, dimension] as const),
    ),
  )('the example `%s` shown for %s is itself read', (text, dimension) => {
    expect(parseQuantity(text, dimension)).toMatchObject({ ok: true });
  });

  it('keeps what was written, and whether it was an estimate', () => {
    expect(parseQuantity(' about 12 lb ', 'mass')).toEqual({
      ok: true,
      quantity: { dimension: 'mass', si: 12 * 0.45359237, written: 'about 12 lb', estimated: true },
    });
    expect(parseQuantity('12 lb', 'mass')).toMatchObject({ quantity: { estimated: false } });
  });
});

describe('what is refused, and what the keeper is told', () => {
  it.each<[string, Dimension, string[]]>([
    ['25', 'volume', ['25 US gal', '25 imp gal', '25 L']],
    ['25 gal', 'volume', ['25 US gal', '25 imp gal', '4.546 L']],
    ['3 pints', 'volume', ['3 US pt', '3 imp pt']],
    ['600 psi', 'gaugePressure', ['600 psi gauge']],
    ['600 lb', 'gaugePressure', ['600 psi gauge']],
    ['40 bar', 'gaugePressure', ['40 bar gauge']],
    ['600 psi absolute', 'gaugePressure', ['counted from vacuum', 'psi gauge']],
    ['14.7 psi gauge', 'absolutePressure', ['as a gauge shows it', 'psi absolute']],
    ['14.7 psi', 'absolutePressure', ['14.7 psi absolute']],
    ['5 ft', 'volume', ['`ft` measures a length', '25 US gal']],
    ['12 mpg', 'volumePerDistance', ['12 mi/US gal', '12 mi/imp gal']],
    ['5 gal/h', 'volumeFlow', ['5 US gal/h', '5 imp gal/h']],
    ['5 gph', 'volumeFlow', ['5 US gal/h']],
    ['2 tons', 'mass', ['in pounds or kilograms', '2000 lb']],
    ['60 °', 'temperature', ['60 °F', '60 °C']],
    ['9 US gla', 'volume', ['did you mean `9 US gal`']],
    ['9 lirtes', 'volume', ['did you mean `9 L`']],
    ['9 furlongs', 'volume', ['`furlongs` is not a unit']],
    ['2,5 L', 'volume', ['decimals with a point']],
    ['1e3 L', 'volume', ['in full']],
    ['ca. 4 L', 'volume', ['about 4 L']],
    ['3-4 L', 'volume', ['not a range']],
    ['3 L - 4 L', 'volume', ['not a range']],
    ['4 ft to 5 ft', 'length', ['not a range']],
    ['3 to 4 L', 'volume', ['not a range']],
    ['', 'volume', ['25 US gal']],
    ['plenty', 'volume', ['a number first']],
    ['NaN L', 'volume', ['a number first']],
    ['1/0 in', 'length', ['a number first']],
    ['4 ft 14 in', 'length', ['1 ft']],
    ['4.5 ft 2 in', 'length', ['broken']],
    ['8 in 4 ft', 'length', ['larger unit comes first']],
    ['4 ft 3', 'length', ['every number needs its unit']],
    ['1 US gal 1 imp pt', 'volume', ['do not go together']],
    ['-5 US gal', 'volume', ['minus']],
    ['-500 °F', 'temperature', ['absolute zero']],
    ['12 500 L', 'volume', ['`12,500`']],
    ['-20 psi gauge', 'gaugePressure', ['vacuum']],
    ['0 mi/US gal', 'volumePerDistance', ['more than nothing']],
    ['120 %', 'share', ['100 %']],
    ['95', 'share', ['100 %']],
    ['-0.1', 'share', ['0 %']],
  ])('%s', (text, dimension, words) => {
    const told = mend(text, dimension);
    for (const word of words) expect(told).toContain(word);
  });

  it('says what was found and what was expected', () => {
    expect(parseQuantity('25 gal', 'volume')).toMatchObject({
      ok: false,
      found: '25 gal',
      expected: 'a volume, such as `25 US gal`, `20 imp gal` or `95 L`',
    });
  });

  it('never throws and never reads a number that is not finite, whatever is written', () => {
    const text = fc.oneof(
      fc.string(),
      fc.string({ unit: fc.constantFrom(...'0123456789./, -½gaLUSpsift°F%'.split('')) }),
    );
    fc.assert(
      fc.property(text, fc.constantFrom(...dimensions), (written, dimension) => {
        const parsed = parseQuantity(written, dimension);
        return parsed.ok ? Number.isFinite(parsed.quantity.si) : parsed.mend.length > 0;
      }),
      { numRuns: 2000 },
    );
  });

  it('reads every unit by every one of its spellings', () => {
    for (const dimension of dimensions) {
      for (const unit of units[dimension]) {
        for (const word of [unit.name, ...unit.also]) {
          expect(parseQuantity(`1 ${word}`, dimension), `1 ${word} as ${dimension}`).toMatchObject({
            ok: true,
          });
        }
      }
    }
  });
});
