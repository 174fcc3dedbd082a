import { describe, expect, it } from 'vitest';
import { asGrey, contrast } from '../../src/layout/contrast';

describe('contrast', () => {
  // WCAG 2.2, "contrast ratio" and "relative luminance" (W3C); worked from the formula unless a document prints them
  it.each([
    ['#000000', '#ffffff', 21],
    ['#ff0000', '#000000', 5.252],
    ['#767676', '#ffffff', 4.542],
    ['#777777', '#ffffff', 4.478],
    ['#ff0000', '#ffffff', 3.998],
    ['#0000ff', '#ffffff', 8.592],
    ['#595959', '#ffffff', 7.005],
    ['#ffff00', '#000000', 19.556],
  ] as const)('of %s on %s is %d', (letters, ground, ratio) => {
    expect(Math.abs(contrast(letters, ground) - ratio)).toBeLessThan(0.005);
    expect(contrast(ground, letters)).toBe(contrast(letters, ground));
  });

  // ANSI Z535.1 safety colours as screen values near FS 595 chips 11120, 12300, 13591, 14120, 15092
  it.each([
    ['#ffffff', '#bd1e24', 6.22],
    ['#000000', '#e97600', 7.06],
    ['#ffffff', '#e97600', 2.98],
    ['#000000', '#f6c700', 13.09],
    ['#ffffff', '#007256', 5.93],
    ['#ffffff', '#0067a7', 6.0],
    // ISO 3864 safety colours
    ['#ffffff', '#9b2423', 7.86],
    ['#000000', '#d05d29', 5.28],
    ['#000000', '#f9a800', 10.63],
    ['#ffffff', '#237f52', 4.97],
    ['#ffffff', '#005387', 8.12],
  ] as const)('of safety colours: %s on %s is %d', (letters, ground, ratio) => {
    expect(Math.abs(contrast(letters, ground) - ratio)).toBeLessThan(0.01);
  });
});

describe('asGrey', () => {
  it('weighs the channels as ITU-R BT.601 does', () => {
    expect(asGrey('#ffffff')).toBe('#ffffff');
    expect(asGrey('#ff0000')).toBe('#4c4c4c');
    expect(asGrey('#00ff00')).toBe('#969696');
    expect(asGrey('#0000ff')).toBe('#1d1d1d');
  });
});
