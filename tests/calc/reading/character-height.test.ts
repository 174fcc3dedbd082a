import { describe, expect, it } from 'vitest';
import { characterHeightM, sizeForHeightPt, typeSizes } from '../../../src/calc/reading/character-height';

describe('height of characters', () => {
  it.each<[number, number[]]>([
    [15, [1.745, 2.182, 2.618, 3.054, 4.363, 6.545]],
    [16, [1.862, 2.327, 2.793, 3.258, 4.654, 6.981]],
    [20, [2.327, 2.909, 3.491, 4.072, 5.818, 8.727]],
    [22, [2.56, 3.2, 3.84, 4.48, 6.4, 9.599]],
  ])('ISO 9241-3, H = 2 D tan(a/2): %d minutes of arc', (arcMinutes, heights) => {
    for (const [index, millimetres] of [400, 500, 600, 700, 1000, 1500].entries()) {
      const height = characterHeightM(millimetres / 1000, arcMinutes) * 1000;
      expect(Math.abs(height - (heights[index] ?? Number.NaN))).toBeLessThan(1e-3);
    }
  });

  it('NUREG-0700 rev. 2 prints H = 6.283 D MA / 21600: the same within a part in ten thousand', () => {
    expect(characterHeightM(0.7, 20) / ((6.283 * 0.7 * 20) / 21600)).toBeCloseTo(1, 4);
  });
});

describe('size of type', () => {
  it('NASA CR-177605: an x-height of 7.2 pt (0.10 in) in a face of ratio 0.52 needs 13.85 pt, so 14 pt in half points', () => {
    expect(sizeForHeightPt(0.00254, 0.52, 0.01)).toBeCloseTo(13.85, 9);
    expect(sizeForHeightPt(0.00254, 0.52, 0.5)).toBe(14);
  });

  it('is rounded up, but not past a size that is just enough', () => {
    expect(sizeForHeightPt((0.0254 / 72) * 6, 0.5, 0.5)).toBe(12);
    expect(sizeForHeightPt((0.0254 / 72) * 6.01, 0.5, 0.5)).toBe(12.5);
  });

  it('the least is never above the preferred, and both grow with distance', () => {
    const [near, far] = [typeSizes(0.4, 0.52), typeSizes(0.8, 0.52)];
    expect(near.leastPt).toBeLessThan(near.preferredPt);
    expect(far.leastPt).toBeGreaterThan(near.leastPt);
    expect(() => typeSizes(0.4, 0)).toThrow(RangeError);
  });
});
