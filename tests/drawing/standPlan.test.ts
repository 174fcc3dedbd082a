/** How far people stand, drawn. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { meet } from '../../src/drawing/calloutColumn';
import { type Spot, standOff } from '../../src/drawing/standOff';
import { drawStandPlan, type StandLine } from '../../src/drawing/standPlan';
import { worldOf } from '../../src/kettlebook';
import { standPlanInput } from '../../src/paper/context/standPlan';
import { drawingFaults } from '../helpers/drawingFaults';
import { plexFonts } from '../helpers/fonts';
import { inventedTourer } from '../helpers/inventedTourer';
import { demo, demoNames, workshop } from '../whole/made';

const apart = (one: Spot, other: Spot) => Math.hypot(one.backM - other.backM, one.rightM - other.rightM);

const metres = (most: number) => fc.double({ min: -most, max: most, noNaN: true });
const spots = fc.array(fc.record({ backM: metres(6), rightM: metres(2) }), { minLength: 1, maxLength: 6 });

describe('a line at a distance', () => {
  test('is that far from the nearest of the spots, and from none nearer', () => {
    fc.assert(
      fc.property(spots, fc.double({ min: 0.5, max: 20, noNaN: true }), (from, distanceM) => {
        const line = standOff(from, distanceM);
        for (const point of line)
          expect(Math.min(...from.map((spot) => apart(spot, point)))).toBeCloseTo(distanceM, 6);
      }),
    );
  });

  test('around one spot is a circle, of nothing is nothing', () => {
    const line = standOff([{ backM: 1, rightM: 2 }], 5);
    expect(line).toHaveLength(90);
    expect(Math.max(...line.map(({ rightM }) => rightM))).toBeCloseTo(7);
    expect(standOff([], 5)).toEqual([]);
  });
});

const lineOf = (number: number, distanceM: number, around: StandLine['around']): StandLine => ({
  number,
  distanceM,
  distance: `${distanceM} m`,
  from: `thing ${number}, said at length`,
  short: `thing ${number}`,
  around,
});
const drawn = (lines: readonly StandLine[], lengthM = 4.4) =>
  drawStandPlan({ ...inventedTourer, lengthM, lines }, plexFonts);
/** The words of the labels, a string for each line of them. */
const labels = (drawing: ReturnType<typeof drawn>) =>
  drawing.shapes.flatMap((shape) =>
    shape.kind === 'text' && shape.x > 340 && shape.anchor === 'start' ? [shape] : [],
  );
const words = (drawing: ReturnType<typeof drawn>) => labels(drawing).map(({ text }) => text);
/** Where all that is drawn of lines ends on the right: the rings, not the leaders. */
const rightOfRings = (drawing: ReturnType<typeof drawn>) =>
  Math.max(
    ...drawing.shapes.flatMap((shape) =>
      shape.kind === 'path' && shape.pieces.some(({ op }) => op === 'close')
        ? shape.pieces.flatMap((piece) => ('x' in piece ? [piece.x] : []))
        : [],
    ),
  );
const leadersOf = (drawing: ReturnType<typeof drawn>) =>
  drawing.shapes.flatMap((shape) => {
    const points =
      shape.kind === 'path' ? shape.pieces.flatMap((piece) => ('x' in piece ? [piece] : [])) : [];
    const [from, to, end] = points;
    return shape.kind === 'path' && shape.pieces.length === 3 && from && to && end?.y === to.y
      ? [{ from, to }]
      : [];
  });

function expectClear(drawing: ReturnType<typeof drawn>, count: number): void {
  expect(drawingFaults(drawing)).toEqual([]);
  for (const { x } of labels(drawing)) expect(x).toBeGreaterThan(rightOfRings(drawing));
  const leaders = leadersOf(drawing);
  expect(leaders).toHaveLength(count);
  for (const [index, one] of leaders.entries())
    for (const other of leaders.slice(0, index))
      expect(meet(one.from, one.to, other.from, other.to)).toBe(false);
}

describe('the drawing', () => {
  test('has every line with its number and distance, in words too', () => {
    const drawing = drawn([
      lineOf(1, 3, 'car'),
      lineOf(2, 10, 'way'),
      lineOf(3, 8, [{ backM: 2, rightM: 0 }]),
    ]);
    expect(words(drawing)).toEqual([
      '1\u2002thing 1',
      '3 m',
      '2\u2002thing 2',
      '10 m',
      '3\u2002thing 3',
      '8 m',
    ]);
    expect(drawing.alt).toContain('2, 10 m: thing 2, said at length');
    expectClear(drawing, 3);
  });

  test('of any distances has no label over another or on a line, no leaders that cross, nothing outside its frame', () => {
    const around = fc.oneof(fc.constantFrom('car' as const, 'way' as const), spots);
    const some = fc.array(fc.tuple(fc.integer({ min: 2, max: 30 }), around), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(some, fc.double({ min: 2, max: 7, noNaN: true }), (wanted, lengthM) => {
        const lines = wanted.map(([distanceM, where], index) => lineOf(index + 1, distanceM, where));
        const drawing = drawn(lines, lengthM);
        expectClear(drawing, lines.length);
      }),
      { numRuns: 60 },
    );
  });

  test.each(demoNames)('of %s has no label over another or on a line', async (name) => {
    const input = standPlanInput(worldOf(await demo(name), await workshop()));
    expectClear(drawStandPlan(input, plexFonts), input.lines.length);
  });
});
