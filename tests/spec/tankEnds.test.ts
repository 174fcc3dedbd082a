/** Ends of round tanks: every kind with its measures, and none without them. */
import { describe, expect, test } from 'vitest';
import { shapeFromSpec } from '../../src/calc/figures/tankModel';
import { tankOf } from '../../src/calc/tank/tank';
import { loadTiny, spoiled } from '../helpers/tinySpec';
import { told } from './told';

const shaped = (ends: string): string =>
  spoiled([
    '    unusable: 1 US gal\n',
    `    shape: { kind: lying-cylinder, diameter: 14 in, length: 36 in${ends} }\n    unusable: 1 US gal\n`,
  ]);

const volumeOf = (ends: string): number => {
  const outcome = loadTiny(shaped(ends));
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  const shapes = Object.values(outcome.value.spec.tanks).flatMap(({ shape }) =>
    shape === undefined ? [] : [shape],
  );
  const [shape] = shapes;
  if (shape === undefined) throw new Error('no tank has a shape');
  return tankOf(shapeFromSpec(shape)).capacityM3;
};

const flat = (Math.PI / 4) * (14 * 0.0254) ** 2 * 36 * 0.0254;
const radius = 7 * 0.0254;

describe('each kind holds what elementary geometry says of it', () => {
  test.each([
    ['', 0],
    [', ends: flat', 0],
    [', ends: elliptical-2-to-1', (Math.PI * (2 * radius) ** 3) / 24],
    [', ends: hemispherical', (2 * Math.PI * radius ** 3) / 3],
    [', ends: dished, end-depth: 2 in', ((Math.PI * 0.0508) / 6) * (3 * radius ** 2 + 0.0508 ** 2)],
    [', ends: conical, end-depth: 3 in', (Math.PI * radius ** 2 * 0.0762) / 3],
  ])('ends “%s”', (ends, oneEnd) => {
    expect(volumeOf(ends)).toBeCloseTo(flat + 2 * oneEnd, 9);
  });

  test('a torispherical end holds less than one of 2:1, more than a flat one', () => {
    const volume = volumeOf(', ends: torispherical, crown-radius: 14 in, corner-radius: 1 in');
    expect(volume).toBeGreaterThan(flat);
    expect(volume).toBeLessThan(volumeOf(', ends: elliptical-2-to-1'));
  });
});

describe('what cannot be', () => {
  test.each([
    [', ends: dished', 'are not measured'],
    [', ends: conical', 'are not measured'],
    [', ends: torispherical, crown-radius: 14 in', 'are not measured'],
    [', ends: flat, end-depth: 2 in', 'have no `end-depth`'],
    [', end-depth: 2 in', 'have no `end-depth`'],
    [', ends: dished, end-depth: 9 in', 'deeper than half a sphere'],
    [', ends: torispherical, crown-radius: 5 in, corner-radius: 1 in', 'rounder than its tank'],
    [', ends: torispherical, crown-radius: 14 in, corner-radius: 9 in', 'wider than the tank'],
  ])('ends “%s”', (ends, message) => {
    expect(told(shaped(ends))).toContain(message);
  });
});
