/**
 * Seats and steering of the car from above.
 */
import type { FontMetrics } from '../font/metrics';
import { meet } from './calloutColumn';
import { type Body, bodyOf, type OutlineInput } from './carBody';
import { type CarScale, inks, lines } from './carScale';
import type { Shape } from './drawing';
import { box, circle, type Point, polyline, stroke, text } from './shapes';

const { middle } = lines;

/** A cushion from front to back, in metres. */
const deepM = 0.46;

/** Cushions and backs, row by row. */
export function seats(body: Body, scale: CarScale): readonly Shape[] {
  return body.seatRows.flatMap(({ back, count }) => {
    const wide = seatWidth(body, count);
    const places = acrossOf(count, wide).map((right) =>
      box(
        scale.at(back, right),
        wide * 0.94 * scale.ptPerM,
        deepM * scale.ptPerM,
        { fill: inks.seat, stroke: middle },
        5,
      ),
    );
    const rest = box(
      scale.at(back + deepM / 2 + 0.05, 0),
      (count * wide + 0.06) * scale.ptPerM,
      0.1 * scale.ptPerM,
      { fill: inks.seat, stroke: middle },
      4,
    );
    return [...places, rest];
  });
}

/** What is drawn over the seats: the lines of leaders, and the dots at their ends. */
export interface Overdrawn {
  readonly leaders: readonly (readonly Point[])[];
  readonly dots: readonly Point[];
}

/** The word on the driver's seat, as near its middle as it stands clear of what is drawn over the seat. */
export function driverMark(
  input: OutlineInput,
  scale: CarScale,
  words: { readonly says: string; readonly font: FontMetrics },
  over: Overdrawn,
): readonly Shape[] {
  const body = bodyOf(input);
  const [row] = body.seatRows;
  if (!row) return [];
  const sizePt = 9;
  const half = { x: words.font.widthOf(words.says, sizePt) / 2, y: (words.font.capHeight * sizePt) / 2 };
  const wide = seatWidth(body, row.count);
  const middle = scale.at(row.back, driverRight(input, acrossOf(row.count, wide)));
  const room = {
    x: Math.max(0, (wide * 0.94 * scale.ptPerM) / 2 - half.x - 1),
    y: Math.max(0, (deepM * scale.ptPerM) / 2 - half.y - 2),
  };
  const spots = [0, 0.25, -0.25, 0.5, -0.5, 0.75, -0.75, 1, -1].flatMap((down) =>
    [0, -0.5, 0.5, -1, 1].map((right) => ({
      x: middle.x + right * room.x,
      y: middle.y + down * room.y,
      off: Math.abs(down) * room.y + Math.abs(right) * room.x,
    })),
  );
  // nearest first, so that the first that lies under nothing is the best, and few are looked at
  const nearest = [...spots].sort((a, b) => a.off - b.off);
  let best = { ...middle, under: Number.POSITIVE_INFINITY };
  for (const spot of nearest) {
    const under = hits(spot, half, over);
    if (under < best.under) best = { ...spot, under };
    if (under === 0) break;
  }
  return [
    text({ x: best.x, y: best.y + half.y }, words.says, {
      face: 'narrow',
      sizePt,
      colour: inks.line,
      anchor: 'middle',
    }),
  ];
}

/** How many leaders and dots the word would lie under. */
function hits(at: Point, half: Point, { leaders, dots }: Overdrawn): number {
  const clear = 1.6;
  const [x, y] = [half.x + clear, half.y + clear];
  const corners = [
    { x: at.x - x, y: at.y - y },
    { x: at.x + x, y: at.y - y },
    { x: at.x + x, y: at.y + y },
    { x: at.x - x, y: at.y + y },
  ];
  const crossed = leaders.filter((leader) =>
    leader.slice(1).some((to, index) =>
      corners.some((corner, side) => {
        const [from, next] = [leader[index], corners[(side + 1) % 4]];
        return from !== undefined && next !== undefined && meet(from, to, corner, next);
      }),
    ),
  );
  const reach = 2.3;
  const under = dots.filter(
    (dot) => Math.abs(dot.x - at.x) < x + reach && Math.abs(dot.y - at.y) < y + reach,
  );
  return crossed.length + under.length;
}

/** The width of a seat, in metres, of so many in a row. */
function seatWidth({ tubHalf }: Body, count: number): number {
  return Math.min(0.62, (tubHalf * 1.8) / Math.max(2, count));
}

/** Where the middles of so many seats are, right of the middle of the car, in metres. */
function acrossOf(count: number, wide: number): readonly number[] {
  return Array.from({ length: count }, (_, index) => (index - (count - 1) / 2) * wide);
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
  const right = driverRight(input, acrossOf(row.count, seatWidth(body, row.count)));
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
