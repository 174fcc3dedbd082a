import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ColumnNeed, shareWidth } from '../../../src/layout/table/columns';

const column = (minPt: number, maxPt: number, weight = 1): ColumnNeed => ({ minPt, maxPt, weight });

describe('shareWidth', () => {
  it('gives spare width to the columns that ask for it, by weight', () => {
    const { widthsPt } = shareWidth([column(10, 20, 0), column(10, 30, 1), column(10, 50, 3)], [], 140);
    expect(widthsPt).toEqual([20, 40, 80]);
  });

  it('leaves a table narrower than its room if no column asks for more', () => {
    expect(shareWidth([column(10, 20, 0), column(10, 30, 0)], [], 200).widthsPt).toEqual([20, 30]);
  });

  it('keeps columns without weight at their natural width while the others can give way', () => {
    expect(shareWidth([column(10, 40, 0), column(20, 100, 1)], [], 90).widthsPt).toEqual([40, 50]);
  });

  it('lets all give way if the others cannot give enough', () => {
    const { widthsPt, breaksWords } = shareWidth([column(10, 60, 0), column(40, 50, 1)], [], 70);
    expect(widthsPt.reduce((sum, width) => sum + width, 0)).toBeCloseTo(70, 6);
    expect(widthsPt[0]).toBeGreaterThanOrEqual(10);
    expect(widthsPt[1]).toBeGreaterThanOrEqual(40);
    expect(breaksWords).toBe(false);
  });

  it('breaks words only in the widest columns, and says so', () => {
    const { widthsPt, breaksWords } = shareWidth([column(10, 10), column(100, 100), column(60, 60)], [], 110);
    expect(widthsPt).toEqual([10, 50, 50]);
    expect(breaksWords).toBe(true);
  });

  it('follows the weights where that makes the table less tall', () => {
    const needs = [column(20, 400, 1), column(20, 400, 3)];
    const tallAt = ([, second = 0]: readonly number[]) => -second;
    expect(shareWidth(needs, [], 160, tallAt).widthsPt).toEqual([50, 110]);
  });

  it('gives what a column has no use for to the others', () => {
    const needs = [column(20, 30, 1), column(20, 400, 1)];
    const tallAt = ([, second = 0]: readonly number[]) => -second;
    const { widthsPt } = shareWidth(needs, [], 160, tallAt);
    expect(widthsPt.reduce((sum, width) => sum + width, 0)).toBeCloseTo(160, 6);
    expect(widthsPt[0]).toBeLessThanOrEqual(30);
  });

  it('widens columns for a cell over several of them', () => {
    const span = { from: 0, count: 2, minPt: 100, maxPt: 100 };
    const { widthsPt } = shareWidth([column(10, 10), column(10, 10), column(10, 10, 0)], [span], 110);
    expect(widthsPt).toEqual([50, 50, 10]);
  });

  it('lets a long cell take less where the table is then less tall', () => {
    const columns = [column(40, 1000), column(40, 160)];
    const plain = shareWidth(columns, [], 300).widthsPt;
    expect(plain[1]).toBeLessThan(70);
    // one long cell beside many of 160: their lines count
    const tallAt = ([long = 1, short = 1]: readonly number[]) =>
      Math.ceil(1000 / long) + 20 * Math.ceil(160 / short);
    const { widthsPt } = shareWidth(columns, [], 300, tallAt);
    expect(widthsPt[1]).toBeGreaterThan(80);
    expect(tallAt(widthsPt)).toBeLessThan(tallAt(plain));
    expect(widthsPt.reduce((sum, width) => sum + width, 0)).toBeCloseTo(300, 6);
  });

  it('shares as ever where no other way is less tall', () => {
    const columns = [column(10, 300), column(10, 200)];
    expect(shareWidth(columns, [], 200, () => 7)).toEqual(shareWidth(columns, [], 200));
  });

  it('never uses more than the room, nor less than what no word is broken by, if there is that much', () => {
    const anyColumn = fc
      .record({
        minPt: fc.integer({ min: 1, max: 80 }),
        more: fc.integer({ min: 0, max: 200 }),
        weight: fc.integer({ min: 0, max: 4 }),
      })
      .map(({ minPt, more, weight }) => column(minPt, minPt + more, weight));
    fc.assert(
      fc.property(
        fc.array(anyColumn, { minLength: 1, maxLength: 9 }),
        fc.integer({ min: 20, max: 600 }),
        (columns, room) => {
          const { widthsPt, breaksWords } = shareWidth(columns, [], room);
          expect(widthsPt.reduce((sum, width) => sum + width, 0)).toBeLessThanOrEqual(room + 0.001);
          const least = columns.reduce((sum, { minPt }) => sum + minPt, 0);
          expect(breaksWords).toBe(least > room);
          if (breaksWords) return;
          for (const [index, width] of widthsPt.entries()) {
            expect(width + 0.001).toBeGreaterThanOrEqual(columns[index]?.minPt ?? 0);
          }
        },
      ),
    );
  });
});
