import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ColumnLabel, meet, placeColumn } from '../../src/drawing/calloutColumn';

/** Too short for its labels, so that the first port is always at 340, 25. */
const column = { edge: 340, top: 20, bottom: 60, gapPt: 4, portDown: 5 };
const label = (x: number, y: number): ColumnLabel => ({ anchor: { x, y }, heightPt: 30 });

/** Pairs of labels whose leaders meet. */
function crossings(labels: readonly ColumnLabel[]): readonly string[] {
  const tops = placeColumn(labels, column);
  const port = (index: number) => ({ x: column.edge, y: (tops[index] ?? Number.NaN) + column.portDown });
  return labels.flatMap(({ anchor }, index) =>
    labels
      .slice(0, index)
      .flatMap((other, before) =>
        meet(port(index), anchor, port(before), other.anchor) ? [`${before} and ${index}`] : [],
      ),
  );
}

describe('a column of labels', () => {
  it('holds each label once, none over another', () => {
    const tops = placeColumn([label(300, 40), label(310, 30), label(320, 50)], column);
    expect([...tops].sort((a, b) => a - b)).toEqual([20, 54, 88]);
  });

  it('has the nearer of two points first where both are in one line with the port but for the last digit', () => {
    const labels = [
      [321, 23.812500000000007],
      [322, 26.800000000000004],
      [291, 23.52999999999999],
      [319, 23.68750000000001],
      [234, 18.374999999999993],
      [289, 30.099999999999998],
      [217, 21.30999999999999],
      [334, 35.19999999999999],
      [332, 24.759999999999998],
      [315, 23.437499999999993],
      [215, 17.18750000000001],
      [338, 28.400000000000006],
      [219, 17.437499999999993],
    ].map(([x = 0, y = 0]) => label(x, y));
    expect(crossings(labels)).toEqual([]);
  });

  it('has no leaders that cross, for points in a few lines through the first port', () => {
    const point = fc.record({
      run: fc.integer({ min: 1, max: 130 }),
      slope: fc.constantFrom(-0.0625, -0.03, 0.1, 1.7),
      last: fc.integer({ min: -3, max: 3 }),
    });
    const apart = (points: readonly ColumnLabel[]) =>
      points.filter(
        ({ anchor: a }, index) =>
          !points.slice(0, index).some(({ anchor: b }) => Math.hypot(a.x - b.x, a.y - b.y) < 1),
      );
    fc.assert(
      fc.property(fc.array(point, { maxLength: 16 }), (points) => {
        expect(
          crossings(
            apart(points.map(({ run, slope, last }) => label(340 - run, 25 + run * slope + last * 4e-15))),
          ),
        ).toEqual([]);
      }),
      { numRuns: 400 },
    );
  });
});
