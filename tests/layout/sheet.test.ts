import { describe, expect, it } from 'vitest';
import { makeSheet, readSheetSize, sheetSizes } from '../../src/layout/sheet';

function size(words: string) {
  const read = readSheetSize(words);
  if (!read.ok) throw new Error(words);
  return read.value;
}

describe('readSheetSize', () => {
  // ISO 216: A4 210 x 297 mm and each size half the one above, rounded down; 1 in = 72 pt
  it.each([
    ['A4', 595.276, 841.89],
    ['a5', 419.528, 595.276],
    ['A6', 297.638, 419.528],
    ['A7', 209.764, 297.638],
    ['letter', 612, 792],
    ['half letter', 396, 612],
    ['card 3 x 5', 216, 360],
    ['card 4x6', 288, 432],
    ['card 5 × 8', 360, 576],
  ])('knows %s', (words, widthPt, heightPt) => {
    expect(size(words).widthPt).toBeCloseTo(widthPt, 2);
    expect(size(words).heightPt).toBeCloseTo(heightPt, 2);
  });

  it('reads any width and height with a unit', () => {
    expect(size('25.4 x 50.8 mm')).toMatchObject({ widthPt: 72, heightPt: 144 });
    expect(size('3.5 × 5 in')).toMatchObject({ widthPt: 252, heightPt: 360 });
  });

  it('turns a sheet that is to lie across', () => {
    expect(size('letter landscape')).toMatchObject({ widthPt: 792, heightPt: 612 });
  });

  it.each(['quarto', '', '90 x 140', '4 x 6 furlongs'])('refuses %j', (words) => {
    const read = readSheetSize(words);
    expect(read.ok ? [] : read.problems.map(({ code }) => code)).toEqual(['sheet-unknown']);
  });

  it.each(['5 x 5 mm', '0 x 100 mm', '10000 x 100 in'])('refuses %j as impossible', (words) => {
    const read = readSheetSize(words);
    expect(read.ok ? [] : read.problems.map(({ code }) => code)).toEqual(['sheet-too-small']);
  });

  it('has every size upright, under a name of its own', () => {
    expect(sheetSizes.every(({ widthPt, heightPt }) => widthPt < heightPt)).toBe(true);
    expect(new Set(sheetSizes.map(({ name }) => name)).size).toBe(sheetSizes.length);
  });
});

describe('makeSheet', () => {
  it('keeps 3 mm clear for the pouch of a laminated card', () => {
    const made = makeSheet(size('A7'), 1, true);
    expect(made.ok && made.value.margins.left).toBeCloseTo(8.504, 3);
    const plain = makeSheet(size('A7'), 1, false);
    expect(plain.ok && plain.value.margins.left).toBeCloseTo(2.835, 3);
  });

  it('refuses edges that leave no room', () => {
    const made = makeSheet(size('A7'), 36, false);
    expect(made.ok ? [] : made.problems.map(({ code }) => code)).toEqual(['sheet-too-small']);
  });
});
