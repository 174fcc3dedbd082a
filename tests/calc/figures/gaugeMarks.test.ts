/** A range table by the marks of a tank's gauge. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { figureRemarks } from '../../../src/calc/figures/remarks';
import { terrains } from '../../../src/spec/schema/running';
import { demoCar } from './figured';

const marks = /\n {4}marks:.*\n( {6}- .*\n)+/;

describe('a tank read on a gauge whose marks are known', () => {
  const { fuel } = demoCar('heron').figures;

  test('has a row for each mark, with what the keeper measured', () => {
    expect(fuel?.rows.map(({ mark, volumeM3 }) => [mark, Math.round(volumeM3 * 1e6) / 1e3])).toEqual([
      ['1/8', 8],
      ['1/4', 20],
      ['3/8', 28],
      ['1/2', 37],
      ['5/8', 46],
      ['3/4', 55],
      ['7/8', 63],
      ['Full', 71],
    ]);
  });

  test('goes farther at each mark than at the one below, and nowhere on the reserve', () => {
    for (const terrain of terrains) {
      const far = fuel?.rows.map(({ rangeM }) => rangeM[terrain] ?? Number.NaN) ?? [];
      expect(far[0]).toBe(0);
      for (const [index, each] of far.slice(1).entries()) expect(each).toBeGreaterThan(far[index] ?? 0);
    }
  });

  test('filled farther than its last mark, it has a row for what is filled in', () => {
    const short = demoCar('heron', ['      - { mark: Full, volume: 71 L }\n', '']).figures.fuel;
    expect(short?.rows.at(-1)?.mark).toBeUndefined();
    expect(short?.rows.at(-1)?.volumeM3).toBeCloseTo(0.071, 9);
  });
});

test('a gauge whose marks nobody has found out is told of, with what to do', () => {
  const [written] = marks.exec(specOfHeron()) ?? [''];
  expect(written).toContain('3/8');
  const without = demoCar('heron', [written, '\n']);
  const told = figureRemarks(without.car, without.figures).filter(
    ({ code }) => code === 'figure-marks-unknown',
  );
  expect(told).toHaveLength(1);
  expect(told[0]).toMatchObject({ severity: 'remark', mend: expect.stringContaining('from a measure') });
  expect(without.figures.fuel?.rows.every(({ mark }) => mark === undefined)).toBe(true);
});

function specOfHeron(): string {
  return readFileSync(new URL('../../../cars/heron.yaml', import.meta.url), 'utf8');
}
