/** Long strips in pieces. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { worldOf } from '../../src/kettlebook';
import { piecesOf, stripSheets } from '../../src/paper/context/strips';
import { demo, demoNames, workshop } from '../whole/made';

const levels = { cannotBeDrawnM: 0.01, reserveM: 0.06, fullM: 0.3 };

describe('a strip in pieces', () => {
  test('is one piece if a sheet has room for it', () => {
    expect(piecesOf(190, levels, 197)).toEqual([{ fromMm: 0, toMm: 190, joins: [] }]);
  });

  test('pieces follow each other without a gap, share two centimetres around each join, and fit', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 20, max: 2000, noNaN: true }),
        fc.double({ min: 60, max: 400, noNaN: true }),
        (lengthMm, roomMm) => {
          const pieces = piecesOf(lengthMm, levels, roomMm);
          expect(pieces[0]?.fromMm).toBe(0);
          expect(pieces.at(-1)?.toMm).toBe(lengthMm);
          for (const { fromMm, toMm } of pieces) expect(toMm - fromMm).toBeLessThanOrEqual(roomMm + 1e-6);
          for (const [index, piece] of pieces.slice(1).entries()) {
            const below = pieces[index];
            expect((below?.toMm ?? 0) - piece.fromMm).toBeCloseTo(20, 6);
            const [join] = piece.joins;
            expect(below?.joins.at(-1)).toEqual(join);
            expect((join?.depthMm ?? 0) - piece.fromMm).toBeCloseTo(10, 6);
          }
        },
      ),
      { numRuns: 200 },
    );
  });

  test('are not joined where the reserve begins or the tank is full', () => {
    for (const lengthMm of [120, 600]) {
      const [piece] = piecesOf(
        lengthMm,
        { ...levels, reserveM: 0.06, fullM: 0.3 },
        lengthMm === 120 ? 90 : 330,
      );
      const join = piece?.joins[0]?.depthMm ?? Number.NaN;
      for (const level of [10, 60, 300]) expect(Math.abs(join - level)).toBeGreaterThanOrEqual(7);
    }
  });

  test('a sheet with no room is refused', () => {
    expect(() => piecesOf(100, levels, 30)).toThrow(RangeError);
  });
});

describe.each(demoNames)('the strips of %s', (name) => {
  test('have a figure at the line to fill to on both edges', async () => {
    const shop = await workshop();
    const world = worldOf(await demo(name), shop);
    const strips = stripSheets(world, '').flatMap((sheet) => sheet.strips);
    const tops = strips.filter(
      ({ levels: all, toMm }) => Math.max(...all.map(({ depthMm }) => depthMm)) <= toMm,
    );
    expect(tops.length).toBe(world.figures.sticks.length);
    for (const { tank, levels: all, left, right } of tops) {
      const full = Math.max(...all.map(({ depthMm }) => depthMm));
      for (const scale of right === undefined ? [left] : [left, right]) {
        const beside = scale.marks.filter(({ depthMm, words }) => words !== '' && full - depthMm < 3);
        expect(beside.length, `${tank}, ${scale.unit}`).toBeGreaterThan(0);
      }
    }
  });
});
