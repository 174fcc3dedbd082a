/**
 * Contrast between two colours, by WCAG 2.2 (W3C, "contrast ratio" and "relative luminance"), and how a colour
 * comes out on a grey printer.
 */
import type { Colour } from '../drawing/drawing';

/** Least contrast of text with its ground: WCAG 2.2, success criterion 1.4.3, level AA. */
export const leastContrast = 4.5;

/** Contrast ratio of two colours, from 1 (the same) to 21 (black and white). */
export function contrast(one: Colour, other: Colour): number {
  const [low, high] = [luminance(one), luminance(other)].sort((a, b) => a - b) as [number, number];
  return (high + 0.05) / (low + 0.05);
}

/** The grey a printer without colours makes of a colour: luma of ITU-R BT.601 (0.299 R, 0.587 G, 0.114 B). */
export function asGrey(colour: Colour): Colour {
  const [red, green, blue] = channels(colour);
  const grey = Math.round(0.299 * red + 0.587 * green + 0.114 * blue);
  const digits = grey.toString(16).padStart(2, '0');
  return `#${digits}${digits}${digits}`;
}

/** Relative luminance, 0 (black) to 1 (white), of an sRGB colour. */
export function luminance(colour: Colour): number {
  const [red, green, blue] = channels(colour).map((level) => linear(level / 255)) as [number, number, number];
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function linear(share: number): number {
  return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
}

function channels(colour: Colour): [number, number, number] {
  const value = Number.parseInt(colour.slice(1), 16);
  return [value >> 16, (value >> 8) & 255, value & 255];
}
