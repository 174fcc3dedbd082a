/** Long strips in pieces. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawDipstick, stripWidthPt } from '../../src/drawing/dipstick';
import { lineLengths, placeScale } from '../../src/drawing/dipstickScale';
import { worldOf } from '../../src/kettlebook';
import { piecesOf, stripSheets } from '../../src/paper/context/strips';
import { measuredRoom } from '../../src/paper/sheets';
import { drawingFaults } from '../helpers/drawingFaults';
import { carFrom, demo, demoNames, goodOf, root, workshop } from '../whole/made';

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

/** The number of a figure such as `1 1/2`. */
const numberIn = (figure: string): number =>
  figure.split(/\s/).reduce((sum, part) => {
    const [over = Number.NaN, under = 1] = part.split('/').map(Number);
    return sum + over / under;
  }, 0);

/** Every car that the tests know, but for those that are in another language. */
const specs = ['cars', 'tests/fixtures/cars'].flatMap((folder) =>
  readdirSync(join(root, folder))
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => `${folder}/${name}`),
);

describe.each(specs)('the strips of %s', (file) => {
  const read = async () => {
    const shop = await workshop();
    const world = worldOf(goodOf(await carFrom(readFileSync(join(root, file), 'utf8'))), shop);
    const sheets = stripSheets(world, 'XXXX·XXXX');
    return { world, strips: sheets.flatMap((sheet) => sheet.strips), sheets };
  };

  test('say every figure of every scale on one of their pieces, no word on another', async () => {
    const { world, strips } = await read();
    const said = new Map<string, string[]>();
    const wanted = new Map<string, string[]>();
    for (const strip of strips) {
      const drawing = drawDipstick(strip, world.fonts);
      expect(drawingFaults(drawing), strip.name).toEqual([]);
      const words = drawing.shapes.flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));
      said.set(strip.tank, [...(said.get(strip.tank) ?? []), ...words]);
      const scales = [strip.left, strip.right, strip.depths, strip.secondDepths];
      const figures = scales.flatMap((scale) => scale?.marks ?? []).map((mark) => mark.words);
      wanted.set(
        strip.tank,
        figures.filter((figure) => figure !== ''),
      );
      for (const { words: name, depthMm } of strip.levels)
        if (depthMm > strip.fromMm && depthMm < strip.toMm) expect(words.join(' ')).toContain(name);
    }
    for (const [tank, figures] of wanted) {
      expect(figures.length).toBeGreaterThan(5);
      expect(said.get(tank)).toEqual(expect.arrayContaining(figures));
    }
  });

  test('have each figure near its mark and in order, and no two that say the same', async () => {
    const { world, strips } = await read();
    let moved = 0;
    for (const strip of strips) {
      const { edge, depth } = lineLengths;
      const scales = [
        [strip.left, edge],
        [strip.right, edge],
        [strip.depths, depth],
        [strip.secondDepths, depth],
      ] as const;
      for (const [scale, lengths] of scales) {
        if (scale === undefined) continue;
        const figures = placeScale(scale, lengths, strip, world.fonts)
          .marks.flatMap(({ y, figure }) => (figure === undefined ? [] : [{ y, ...figure }]))
          .toSorted((one, other) => other.y - one.y);
        expect(figures.length).toBeGreaterThan(0);
        for (const [index, { y, middleY, words }] of figures.entries()) {
          const of = `${strip.tank}, ${words} ${scale.unit}`;
          expect(Math.abs(y - middleY), of).toBeLessThan(10);
          if (Math.abs(y - middleY) > 0.5) moved += 1;
          const below = figures[index - 1];
          if (below === undefined) continue;
          expect(below.middleY - middleY, of).toBeGreaterThan(6);
          expect(numberIn(words), of).toBeGreaterThan(numberIn(below.words));
        }
      }
    }
    expect(moved).toBeGreaterThan(0);
  });

  test('stand three to a sheet', async () => {
    const { world, sheets } = await read();
    const { widthPt } = measuredRoom(world);
    for (const [index, { strips }] of sheets.entries()) {
      const widths = strips.map((strip) => drawDipstick(strip, world.fonts).widthPt);
      expect(widths).toEqual(strips.map(() => stripWidthPt));
      expect(widths.reduce((sum, width) => sum + width, 0)).toBeLessThan(widthPt);
      if (index < sheets.length - 1) expect(strips).toHaveLength(3);
    }
  });
});
