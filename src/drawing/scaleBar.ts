/**
 * Scale bars: how long a metre and three feet are on the drawing.
 */
import type { Shape } from './drawing';
import { type Point, polyline, stroke, text } from './shapes';

const ink = '#1a1a1a';
/** A foot is 0.3048 m exactly (international yard and pound agreement, 1959). */
const footM = 0.3048;

/** Two bars, one above the other; `at` is the left end of the lower one. */
export function scaleBars(at: Point, ptPerM: number): readonly Shape[] {
  return [
    ...bar({ x: at.x, y: at.y - 14 }, ptPerM, [0, 0.5, 1], '1 m'),
    ...bar(at, ptPerM, [0, footM, 2 * footM, 3 * footM], '3 ft'),
  ];
}

/** The same for a drawing of the ground around the car: ten metres, and thirty feet. */
export function groundBars(at: Point, ptPerM: number): readonly Shape[] {
  return [
    ...bar({ x: at.x, y: at.y - 14 }, ptPerM, [0, 5, 10], '10 m'),
    ...bar(at, ptPerM, [0, 10 * footM, 20 * footM, 30 * footM], '30 ft'),
  ];
}

function bar({ x, y }: Point, ptPerM: number, marksM: readonly number[], words: string): readonly Shape[] {
  const end = x + (marksM.at(-1) ?? 0) * ptPerM;
  const line = stroke(0.75, ink);
  return [
    polyline(
      [
        { x, y },
        { x: end, y },
      ],
      line,
    ),
    ...marksM.map((mark) =>
      polyline(
        [
          { x: x + mark * ptPerM, y: y - 2.5 },
          { x: x + mark * ptPerM, y: y + 2.5 },
        ],
        line,
      ),
    ),
    text({ x: end + 5, y: y + 3 }, words, { face: 'narrow', sizePt: 9, colour: ink }),
  ];
}
