import { describe, expect, it } from 'vitest';
import { placardHeights } from '../../../src/calc/reading/placard';

describe('ANSI Z535.4, favourable light', () => {
  it.each([
    [4, 0.16],
    [8, 0.32],
    [10, 0.4],
    [20, 0.8],
    [40, 1.6],
  ])('at %d ft message capitals are %d in', (feet, inches) => {
    const { messageM, signalWordM } = placardHeights(feet * 0.3048);
    expect(messageM / 0.0254).toBeCloseTo(inches, 9);
    expect(signalWordM / 0.0254).toBeCloseTo(2 * inches, 9);
  });

  it('no capital is under 0.16 in, and the signal word stays half as tall again', () => {
    const near = placardHeights(0.3);
    expect(near.messageM / 0.0254).toBeCloseTo(0.16, 9);
    expect(near.signalWordM).toBeCloseTo(1.5 * near.messageM, 12);
  });
});
