/** A box with lines aslant, cut at its edges: told apart from a plain one without colour. */
import { inks } from './carScale';
import type { Shape } from './drawing';
import { polyline, stroke } from './shapes';

const apartPt = 4;

/** The box from its upper left to its lower right corner; nothing if it has no width to speak of. */
export function hatching(left: number, top: number, right: number, bottom: number): readonly Shape[] {
  if (right - left < 0.5) return [];
  const height = bottom - top;
  const lines: Shape[] = [];
  for (let from = left - height + apartPt; from < right; from += apartPt) {
    const [a, b] = [Math.max(left, from), Math.min(right, from + height)];
    if (b > a)
      lines.push(
        polyline(
          [
            { x: a, y: bottom - (a - from) },
            { x: b, y: bottom - (b - from) },
          ],
          stroke(0.5, inks.line),
        ),
      );
  }
  const edge = { stroke: stroke(0.9, inks.line) };
  return [
    ...lines,
    { kind: 'rect', x: left, y: top, width: right - left, height: bottom - top, paint: edge },
  ];
}
