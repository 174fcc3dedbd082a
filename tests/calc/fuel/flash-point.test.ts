import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Blend, blendOf } from '../../../src/calc/fuel/blend';
import {
  blendFlashPoint,
  blendingIndex,
  blendStartsBoilingK,
  flashPointOfIndexK,
} from '../../../src/calc/fuel/flash-point';
import { ghsClass, heatedHandling, nfpaClass } from '../../../src/calc/fuel/hazard';
import type { Liquid } from '../../../src/calc/fuel/liquids';

const kelvin = (celsius: number): number => celsius + 273.15;
const degF = (fahrenheit: number): number => (fahrenheit + 459.67) / 1.8;
const liquid = (flashCelsius: number, boilsCelsius = flashCelsius + 110): Liquid => ({
  key: `flash ${flashCelsius}`,
  name: 'invented',
  densityKgPerM3: 800,
  higherHeatingValue: 46e6,
  lowerHeatingValue: 43e6,
  flashPointK: kelvin(flashCelsius),
  startsBoilingK: kelvin(boilsCelsius),
  source: 'invented',
});
const blend = (...parts: [number, number][]): Blend =>
  blendOf(parts.map(([share, flash]) => ({ liquid: liquid(flash), volume: share })));

describe('Wickey and Chittenden (1963)', () => {
  it.each([
    [20, 3281],
    [25, 2126],
    [30, 1400],
    [35, 937],
    [40, 636],
    [45, 438],
    [50, 306],
    [55, 216],
    [60, 155],
    [70, 82],
    [80, 45],
    [100, 15],
  ])(
    'published table of flash-point indices (petroleum quality-control tables): %d °C has %d',
    (celsius, index) => {
      expect(Math.abs(blendingIndex(kelvin(celsius)) - index)).toBeLessThan(Math.max(0.0015 * index, 0.5));
    },
  );

  it.each<[string, [number, number][], number]>([
    [
      'half 40 °C, half 60 °C',
      [
        [0.5, 40],
        [0.5, 60],
      ],
      46.41,
    ],
    [
      'half 45 °C, half 60 °C',
      [
        [0.5, 45],
        [0.5, 60],
      ],
      50.44,
    ],
    [
      'a tenth of 20 °C in 50 °C',
      [
        [0.1, 20],
        [0.9, 50],
      ],
      40.7,
    ],
  ])('the same table, rule A × 100 = sum of V × A: %s', (_, parts, celsius) => {
    const estimate = blendFlashPoint(blend(...parts));
    expect(Math.abs(estimate.flashPointK - kelvin(celsius))).toBeLessThan(0.3);
    expect(estimate.basis).toBe('estimated');
  });

  it('one part in a hundred of gasoline takes 45 °C kerosene below the 23 °C limit (extrapolated)', () => {
    for (const share of [0.01, 0.05]) {
      const estimate = blendFlashPoint(blend([share, -43], [1 - share, 45]));
      expect(estimate.flashPointK).toBeLessThan(kelvin(23));
      expect(estimate.basis).toBe('extrapolated');
      expect(estimate.cautiousK).toBe(kelvin(-43));
    }
  });

  it('one liquid keeps its own flash point', () => {
    expect(blendFlashPoint(blend([1, 45]))).toEqual({
      flashPointK: kelvin(45),
      cautiousK: kelvin(45),
      basis: 'stated',
    });
    expect(blendFlashPoint(blend([0, -43], [1, 45])).basis).toBe('stated');
  });

  it('index and flash point turn each other back', () => {
    expect(flashPointOfIndexK(blendingIndex(kelvin(38)))).toBeCloseTo(kelvin(38), 9);
  });

  it('a blend lies between its liquids, at or below their average, and never rises with more of the light one', () => {
    const flash = fc.double({ min: -50, max: 100, noNaN: true });
    const share = fc.double({ min: 0.01, max: 0.99, noNaN: true });
    fc.assert(
      fc.property(flash, flash, share, share, (a, b, x, y) => {
        fc.pre(Math.abs(a - b) > 0.5);
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        const [less, more] = [Math.min(x, y), Math.max(x, y)];
        const at = (part: number): number =>
          blendFlashPoint(blend([part, low], [1 - part, high])).flashPointK;
        const average = less * low + (1 - less) * high;
        expect(at(less)).toBeGreaterThanOrEqual(kelvin(low) - 1e-9);
        expect(at(less)).toBeLessThanOrEqual(kelvin(average) + 1e-9);
        expect(at(more)).toBeLessThanOrEqual(at(less) + 1e-9);
        const estimate = blendFlashPoint(blend([less, low], [1 - less, high]));
        expect(estimate.cautiousK).toBeLessThanOrEqual(estimate.flashPointK);
      }),
    );
  });

  it('a blend begins to boil with its lightest liquid', () => {
    expect(blendStartsBoilingK(blend([0.1, -43], [0.9, 45]))).toBe(kelvin(67));
  });
});

describe('classes', () => {
  it.each<[string, number, number, number | undefined, string]>([
    ['ethanol', kelvin(12.8), kelvin(78), 2, 'IB'],
    ['kerosene', kelvin(38), kelvin(150), 3, 'II'],
    ['hexane', degF(-7), kelvin(69), 2, 'IB'],
    ['gasoline', degF(-45), kelvin(27), 1, 'IA'],
    ['flash point exactly 140 °F', degF(140), kelvin(180), 3, 'IIIA'],
    ['flash point exactly 73 °F', degF(73), kelvin(120), 2, 'IC'],
    ['flash point exactly 73.4 °F', degF(73.4), kelvin(120), 3, 'IC'],
    ['flash point exactly 100 °F', degF(100), kelvin(150), 3, 'II'],
    ['boiling at exactly 35 °C', kelvin(-20), kelvin(35), 1, 'IA'],
    ['boiling at exactly 100 °F', kelvin(-20), degF(100), 2, 'IB'],
    ['flash point exactly 93 °C', kelvin(93), kelvin(250), 4, 'IIIA'],
    ['flash point exactly 200 °F', degF(200), kelvin(250), undefined, 'IIIB'],
  ])(
    'CLP Table 2.6.1, 29 CFR 1910.106(a)(19), NFPA 30: %s',
    (_, flashPointK, startsBoilingK, category, nfpa) => {
      expect(ghsClass({ flashPointK, startsBoilingK })?.category).toBe(category);
      expect(nfpaClass({ flashPointK, startsBoilingK })).toBe(nfpa);
    },
  );

  it('CLP Table 2.6.2: what stands on the label', () => {
    expect(ghsClass({ flashPointK: 250, startsBoilingK: 300 })).toMatchObject({
      signalWord: 'Danger',
      statementCode: 'H224',
    });
    expect(ghsClass({ flashPointK: 250, startsBoilingK: 400 })).toMatchObject({
      signalWord: 'Danger',
      statementCode: 'H225',
    });
    expect(ghsClass({ flashPointK: 311, startsBoilingK: 420 })).toMatchObject({
      signalWord: 'Warning',
      statementCode: 'H226',
    });
  });

  it('29 CFR 1910.106(a)(19), heating: within 30 °F of its flash point a liquid is handled as a more dangerous one', () => {
    const kerosene = { flashPointK: degF(110), startsBoilingK: kelvin(150) };
    expect(heatedHandling(kerosene, degF(79))).toBe('as-classed');
    expect(heatedHandling(kerosene, degF(80))).toBe('as-category-3-below-100-F');
    expect(heatedHandling({ flashPointK: degF(180), startsBoilingK: kelvin(250) }, degF(400))).toBe(
      'as-category-3-from-100-F',
    );
    expect(heatedHandling({ flashPointK: degF(55), startsBoilingK: kelvin(78) }, degF(400))).toBe(
      'as-classed',
    );
  });
});
