/**
 * Seats and steering of the car from above.
 */
import type { Body, OutlineInput } from './carBody';
import { type CarScale, inks, lines } from './carScale';
import type { Shape } from './drawing';
import { box, circle, polyline, stroke, text } from './shapes';

const { middle } = lines;

/** Cushions and backs, row by row; the driver's is marked. */
export function seats(input: OutlineInput, body: Body, scale: CarScale): readonly Shape[] {
  const deep = 0.46;
  const room = body.tubHalf * 2 * 0.9;
  return body.seatRows.flatMap(({ back, count }, row) => {
    const wide = Math.min(0.62, room / Math.max(2, count));
    const cushions = Array.from({ length: count }, (_, index) => (index - (count - 1) / 2) * wide);
    const places = cushions.map((right) =>
      box(
        scale.at(back, right),
        wide * 0.94 * scale.ptPerM,
        deep * scale.ptPerM,
        { fill: inks.seat, stroke: middle },
        5,
      ),
    );
    const rest = box(
      scale.at(back + deep / 2 + 0.05, 0),
      (count * wide + 0.06) * scale.ptPerM,
      0.1 * scale.ptPerM,
      { fill: inks.seat, stroke: middle },
      4,
    );
    return [...places, rest, ...(row === 0 ? driverMark(input, cushions, back, scale) : [])];
  });
}

function driverMark(
  input: OutlineInput,
  cushions: readonly number[],
  back: number,
  scale: CarScale,
): readonly Shape[] {
  const right = driverRight(input, cushions);
  const { x, y } = scale.at(back, right);
  return [
    text({ x, y: y + 3 }, 'driver', { face: 'narrow', sizePt: 9, colour: inks.line, anchor: 'middle' }),
  ];
}

/** The seat the driver takes: on the driver's side, or the middle one. */
function driverRight({ driverSide }: OutlineInput, cushions: readonly number[]): number {
  const sorted = [...cushions].sort((a, b) => a - b);
  if (driverSide === 'centre') return sorted[Math.floor(sorted.length / 2)] ?? 0;
  return (driverSide === 'left' ? sorted[0] : sorted.at(-1)) ?? 0;
}

/** Wheel and column, or tiller, before the driver. */
export function steering(input: OutlineInput, body: Body, scale: CarScale): readonly Shape[] {
  const [row] = body.seatRows;
  if (!row) return [];
  const wide = Math.min(0.62, (body.tubHalf * 1.8) / Math.max(2, row.count));
  const right = driverRight(
    input,
    Array.from({ length: row.count }, (_, index) => (index - (row.count - 1) / 2) * wide),
  );
  if (input.steering === 'tiller') {
    const post = scale.at(row.back - 0.3, 0);
    const bend = scale.at(row.back - 0.36, right * 0.55);
    const grip = scale.at(row.back - 0.22, right);
    return [
      polyline([post, bend, grip], stroke(2.2, inks.line)),
      circle(post, 3.2, { fill: inks.paper, stroke: middle }),
      circle(grip, 2.6, { fill: inks.line }),
    ];
  }
  const hub = scale.at(Math.max(body.dash + 0.24, row.back - 0.48), right);
  const foot = scale.at(body.dash, right * 0.92);
  const radius = 0.19 * scale.ptPerM;
  return [
    // grey, so that leaders that cross it stay apart from it
    polyline([foot, hub], stroke(1.8, inks.wheel)),
    circle(hub, radius, { stroke: stroke(2.4, inks.wheel) }),
    ...[0, 1, 2].map((spoke) => {
      const angle = (Math.PI * 2 * spoke) / 3 + Math.PI / 6;
      return polyline(
        [hub, { x: hub.x + Math.cos(angle) * radius, y: hub.y + Math.sin(angle) * radius }],
        stroke(0.75, inks.wheel),
      );
    }),
    circle(hub, 2.4, { fill: inks.wheel }),
  ];
}
