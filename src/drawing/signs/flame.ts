/** A flame, as several signs show one. */
import type { Colour, Shape } from '../drawing';
import { placeShape } from '../place';
import type { Point } from '../shapes';
import { filled } from './trace';

/** Outline of a flame in a frame 32 wide and 42 high, its foot in the middle below, at (0, 0). */
const outline =
  'M -1 -42 C 2 -33 15 -26 16 -13 C 17 -5 10 0 0 0 C -10 0 -17 -5 -16 -14 C -15 -20 -11 -23 -10 -30 C -7 -27 -6 -25 -5 -21 C -2 -27 -3 -35 -1 -42 Z';
const heart =
  'M 0 -17 C 2 -13 7 -11 7 -6.5 C 7 -3.2 4 -1.6 0 -1.6 C -4 -1.6 -7 -3.2 -7 -6.5 C -7 -10.5 -2 -12.5 0 -17 Z';

/** A flame `height` tall whose foot stands at `foot`, with a lighter heart. */
export function placeFlame(foot: Point, height: number, ink: Colour, ground: Colour): Shape[] {
  const scale = height / 42;
  return [filled(outline, ink), filled(heart, ground)].map((shape) =>
    placeShape(shape, scale, foot.x, foot.y),
  );
}
