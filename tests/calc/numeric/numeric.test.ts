import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveRising } from '../../../src/calc/numeric/bisection';
import { monotoneCurve } from '../../../src/calc/numeric/monotone-curve';
import { integrate } from '../../../src/calc/numeric/quadrature';

describe('integrate', () => {
  it('finds the area of a quarter circle, whose slope is endless at one end', () => {
    expect(Math.abs(integrate((x) => Math.sqrt(1 - x * x), 0, 1) - Math.PI / 4)).toBeLessThan(1e-13);
  });
});

describe('solveRising', () => {
  it('finds the cube root, and gives the bound beyond it', () => {
    expect(solveRising((x) => x ** 3, 27, 0, 10)).toBeCloseTo(3, 12);
    expect(solveRising((x) => x ** 3, 5000, 0, 10)).toBe(10);
    expect(solveRising((x) => x ** 3, -1, 0, 10)).toBe(0);
  });
});

describe('monotoneCurve (Fritsch and Carlson, 1980)', () => {
  const rising = fc
    .array(
      fc.tuple(fc.double({ min: 0.01, max: 10, noNaN: true }), fc.double({ min: 0, max: 10, noNaN: true })),
      {
        minLength: 2,
        maxLength: 15,
      },
    )
    .map((steps) => {
      let [x, y] = [0, 0];
      return steps.map(([dx, dy]) => {
        x += dx;
        y += dy;
        return { x, y };
      });
    });

  it('passes the points, never falls, never overshoots the two points beside it', () => {
    fc.assert(
      fc.property(rising, fc.double({ min: 0, max: 1, noNaN: true }), (points, share) => {
        const curve = monotoneCurve(points);
        for (const [index, point] of points.entries()) {
          expect(curve(point.x)).toBeCloseTo(point.y, 9);
          const next = points[index + 1];
          if (!next) continue;
          const between = curve(point.x + share * (next.x - point.x));
          expect(between).toBeGreaterThanOrEqual(point.y - 1e-9);
          expect(between).toBeLessThanOrEqual(next.y + 1e-9);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('follows a straight line exactly, even with uneven points', () => {
    const curve = monotoneCurve([0, 1, 4, 5, 9].map((x) => ({ x, y: 3 * x + 1 })));
    expect(curve(7.3)).toBeCloseTo(22.9, 12);
  });

  it('refuses points that do not go forward', () => {
    expect(() => monotoneCurve([{ x: 1, y: 1 }])).toThrow(RangeError);
    expect(() =>
      monotoneCurve([
        { x: 1, y: 1 },
        { x: 1, y: 2 },
      ]),
    ).toThrow(RangeError);
  });
});
