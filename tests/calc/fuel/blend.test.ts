import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  amountsToMix,
  type Blend,
  blendOf,
  blendProperties,
  mixed,
  topUp,
} from '../../../src/calc/fuel/blend';
import type { Liquid } from '../../../src/calc/fuel/liquids';

const make = (key: string, densityKgPerM3: number, heat: number, flashPointK: number): Liquid => ({
  key,
  name: key,
  densityKgPerM3,
  higherHeatingValue: heat * 1.07,
  lowerHeatingValue: heat,
  flashPointK,
  startsBoilingK: flashPointK + 100,
  source: 'invented',
});
const heavy = make('heavy', 800, 43e6, 318.15);
const light = make('light', 700, 44e6, 233.15);
const middle = make('middle', 750, 43.5e6, 280);

describe('blends by volume', () => {
  it('weigh and burn as their parts do together', () => {
    const blend = blendOf([
      { liquid: heavy, volume: 19 },
      { liquid: light, volume: 1 },
    ]);
    const properties = blendProperties(blend);
    expect(properties.densityKgPerM3).toBeCloseTo(0.95 * 800 + 0.05 * 700, 9);
    expect(properties.lowerHeatPerM3).toBeCloseTo(0.95 * 800 * 43e6 + 0.05 * 700 * 44e6, 0);
    expect(properties.lowerHeatingValue * properties.densityKgPerM3).toBeCloseTo(
      properties.lowerHeatPerM3,
      0,
    );
  });

  it('say how much of each liquid to take', () => {
    const blend = blendOf([
      { liquid: heavy, volume: 0.9 },
      { liquid: light, volume: 0.1 },
    ]);
    const amounts = amountsToMix(blend, 0.05);
    expect(amounts.map((each) => each.volumeM3)).toEqual([
      expect.closeTo(0.045, 12),
      expect.closeTo(0.005, 12),
    ]);
    expect(amounts[0]?.massKg).toBeCloseTo(36, 9);
  });

  it('refuse amounts that are nothing or less', () => {
    expect(() => blendOf([])).toThrow(RangeError);
    expect(() =>
      blendOf([
        { liquid: heavy, volume: -1 },
        { liquid: light, volume: 2 },
      ]),
    ).toThrow(RangeError);
  });
});

describe('topping up a tank that holds something else', () => {
  const wanted = blendOf([
    { liquid: heavy, volume: 0.95 },
    { liquid: light, volume: 0.05 },
  ]);

  it('adds what is missing: 20 L of plain heavy to 60 L of the blend wants 37 L and 3 L', () => {
    const result = topUp({ blend: blendOf([{ liquid: heavy, volume: 1 }]), volumeM3: 0.02 }, wanted, 0.06);
    if (result.kind !== 'add') throw new Error('should do');
    expect(Object.fromEntries(result.amounts.map((each) => [each.liquid.key, each.volumeM3]))).toEqual({
      heavy: expect.closeTo(0.037, 12),
      light: expect.closeTo(0.003, 12),
    });
  });

  it('says when there is too much of a liquid, and the volume that would mend it', () => {
    const result = topUp({ blend: blendOf([{ liquid: light, volume: 1 }]), volumeM3: 0.01 }, wanted, 0.06);
    expect(result).toEqual({ kind: 'too-much', tooMuchOf: light, leastVolumeM3: expect.closeTo(0.2, 9) });
  });

  it('says when nothing mends it: a liquid that does not belong in the blend', () => {
    const result = topUp({ blend: blendOf([{ liquid: middle, volume: 1 }]), volumeM3: 0.01 }, wanted, 0.06);
    expect(result).toEqual({ kind: 'too-much', tooMuchOf: middle });
  });
});

const blendArbitrary: fc.Arbitrary<Blend> = fc
  .tuple(
    ...[heavy, light, middle].map((liquid) =>
      fc.double({ min: 0, max: 1, noNaN: true }).map((volume) => ({ liquid, volume })),
    ),
  )
  .filter((parts) => parts.reduce((sum, part) => sum + part.volume, 0) > 0.01)
  .map((parts) => blendOf(parts));
const volume = fc.double({ min: 0.001, max: 0.1, noNaN: true });

describe('invariants', () => {
  it('mixing keeps volume and mass', () => {
    fc.assert(
      fc.property(blendArbitrary, blendArbitrary, volume, volume, (a, b, va, vb) => {
        const both = mixed({ blend: a, volumeM3: va }, { blend: b, volumeM3: vb });
        expect(both.reduce((sum, portion) => sum + portion.share, 0)).toBeCloseTo(1, 12);
        const mass = blendProperties(both).densityKgPerM3 * (va + vb);
        expect(mass).toBeCloseTo(
          blendProperties(a).densityKgPerM3 * va + blendProperties(b).densityKgPerM3 * vb,
          9,
        );
      }),
    );
  });

  it('what is added makes exactly the wanted blend and volume', () => {
    fc.assert(
      fc.property(blendArbitrary, blendArbitrary, volume, volume, (now, wanted, have, more) => {
        const result = topUp({ blend: now, volumeM3: have }, wanted, have + more);
        if (result.kind === 'too-much') return;
        const added = result.amounts.reduce((sum, each) => sum + each.volumeM3, 0);
        expect(added).toBeCloseTo(more, 9);
        const end = mixed(
          { blend: now, volumeM3: have },
          {
            blend: blendOf(result.amounts.map((each) => ({ liquid: each.liquid, volume: each.volumeM3 }))),
            volumeM3: added,
          },
        );
        for (const portion of wanted) {
          expect(end.find((each) => each.liquid.key === portion.liquid.key)?.share ?? 0).toBeCloseTo(
            portion.share,
            6,
          );
        }
      }),
    );
  });
});
