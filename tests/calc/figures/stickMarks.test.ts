/** Marks on a stick, for tanks of any size and shape. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stickLevels, stickMarks } from '../../../src/calc/figures/stickMarks';
import type { TankModel } from '../../../src/calc/figures/tankModel';
import type { TankShape } from '../../../src/calc/tank/shape';
import { tankOf } from '../../../src/calc/tank/tank';

const gallonM3 = 231 * 0.0254 ** 3;

function model(shape: TankShape, more: Partial<TankModel> = {}): TankModel {
  const tank = tankOf(shape);
  return {
    id: 'tank',
    name: 'tank',
    tank,
    basis: 'computed',
    statedCapacityM3: tank.capacityM3,
    fillToM3: tank.capacityM3,
    unusableM3: tank.capacityM3 * 0.03,
    reserveM3: tank.capacityM3 * 0.1,
    byStick: true,
    estimated: false,
    ...more,
  };
}

const box = (lengthM: number, widthM: number, heightM: number) =>
  model({ kind: 'rectangular', lengthM, widthM, heightM });

describe('the marks of a stick', () => {
  test('of a box that holds a gallon to the inch: a mark at every inch and between', () => {
    // 231 cubic inches to the gallon (NIST Handbook 44), on a floor of 11 by 21 inches
    const marks = stickMarks(box(21 * 0.0254, 11 * 0.0254, 10 * 0.0254), 'us');
    for (let gallon = 1; gallon <= 10; gallon += 1) {
      const mark = marks.find(({ volumeM3 }) => Math.abs(volumeM3 - gallon * gallonM3) < 1e-12);
      expect(mark?.named, `${gallon} gal`).toBe(true);
      expect((mark?.depthM ?? 0) / 0.0254).toBeCloseTo(gallon, 9);
    }
    // quarters are 6.35 mm apart: each has its figure; eighths 3.2, without one
    expect(marks.filter(({ named }) => named)).toHaveLength(40);
  });

  const shapes: fc.Arbitrary<TankShape> = fc.oneof(
    fc.record({
      kind: fc.constant('rectangular' as const),
      lengthM: fc.double({ min: 0.1, max: 2, noNaN: true }),
      widthM: fc.double({ min: 0.1, max: 1, noNaN: true }),
      heightM: fc.double({ min: 0.05, max: 1, noNaN: true }),
    }),
    fc.record({
      kind: fc.constant('horizontal-cylinder' as const),
      diameterM: fc.double({ min: 0.06, max: 0.8, noNaN: true }),
      lengthM: fc.double({ min: 0.1, max: 2, noNaN: true }),
      ends: fc.constant([{ kind: 'flat' as const }, { kind: 'flat' as const }] as const),
    }),
  );

  test('stand where the tank holds what they say, far enough apart, up to full and no farther', () => {
    fc.assert(
      fc.property(shapes, fc.constantFrom('us', 'imperial', 'metric'), (shape, system) => {
        const tank = model(shape, {});
        const marks = stickMarks(tank, system);
        const named = marks.filter((mark) => mark.named);
        for (const { depthM, volumeM3 } of marks)
          expect(tank.tank.volumeAtDepthM3(depthM)).toBeCloseTo(volumeM3, 9);
        for (const [list, gap] of [
          [marks, 0.0015],
          [named, 0.0042],
        ] as const)
          for (const [index, { depthM }] of list.slice(1).entries())
            expect(depthM - (list[index]?.depthM ?? 0)).toBeGreaterThan(gap - 1e-9);
        expect(marks.at(-1)?.volumeM3 ?? 0).toBeLessThanOrEqual(tank.tank.capacityM3 + 1e-9);
      }),
      { numRuns: 60 },
    );
  });

  test('begin above what lies below the foot of the stick', () => {
    const tank = model({
      kind: 'measured',
      points: [
        { depthM: 0, volumeM3: 0.003 },
        { depthM: 0.1, volumeM3: 0.013 },
      ],
    });
    const marks = stickMarks(tank, 'metric');
    expect(Math.min(...marks.map(({ depthM }) => depthM))).toBeGreaterThan(0);
    expect(marks.find(({ volumeM3 }) => Math.abs(volumeM3 - 0.008) < 1e-12)?.depthM).toBeCloseTo(0.05, 9);
  });
});

test('the levels of a tank are ordered', () => {
  const { cannotBeDrawnM, reserveM, fullM } = stickLevels(box(1, 0.5, 0.3));
  expect(cannotBeDrawnM).toBeCloseTo(0.009, 9);
  expect(reserveM).toBeCloseTo(0.039, 9);
  expect(fullM).toBeCloseTo(0.3, 9);
});
