/**
 * Roofs: from above dashed, so that the seats under them are seen; from the side at their measured height. The shapes are
 * the usual ones (common practice, no source).
 */
import type { Body, OutlineInput } from './carBody';
import { type CarScale, inks, lines, mirrored } from './carScale';
import type { PathPiece, Shape } from './drawing';
import { type Point, polygon, polyline, stroke } from './shapes';

const { heavy, middle } = lines;
const dashed = stroke(1, inks.line, [5, 3]);

/** Where a roof begins and ends, and where the driver's part of a van does, in metres back. */
function reachOf({ outline }: OutlineInput, body: Body) {
  const rows = body.seatRows.map(({ back }) => back);
  const last = Math.max(body.dash, ...rows) + 0.45;
  const wall = Math.min(body.tail - 0.3, last);
  return {
    from: body.dash + 0.05,
    to: outline === 'top-up' ? Math.min(body.tail, last + 0.1) : body.tail - 0.04,
    wall,
  };
}

/** From above: the roof's edge; a top's bows; a van's wall behind the driver and its doors at the tail. */
export function roof(input: OutlineInput, body: Body, scale: CarScale): readonly Shape[] {
  const { outline } = input;
  if (outline === 'open' || outline === 'bare') return [];
  const { from, to, wall } = reachOf(input, body);
  const half = body.tubHalf * 0.93;
  const across = (back: number, line: typeof heavy) =>
    polyline([scale.at(back, -half), scale.at(back, half)], line);
  const round = outline === 'van' ? 0.06 : 0.16;
  const edge: Shape = {
    kind: 'path',
    pieces: mirrored(scale, [
      { to: [to, 0] },
      { to: [to, half - round] },
      { to: [to - round, half], by: [to, half - round * 0.4, to - round * 0.4, half] },
      { to: [from + round, half] },
      { to: [from, half - round], by: [from + round * 0.4, half, from, half - round * 0.4] },
      { to: [from, 0] },
    ]),
    paint: { stroke: dashed },
  };
  if (outline === 'closed') return [edge];
  if (outline === 'top-up')
    return [edge, ...[0.34, 0.67].map((share) => across(from + (to - from) * share, dashed))];
  return [
    edge,
    polyline([scale.at(wall, -body.tubHalf), scale.at(wall, body.tubHalf)], heavy),
    polyline([scale.at(body.tail - 0.09, 0), scale.at(body.tail, 0)], heavy),
  ];
}

/** From metres along and above the ground to points. */
interface SideAt {
  at(backM: number, upM: number): Point;
}

/** From the side: the roof up to `topM`, on pillars over a car's windows, or over a van's closed wall. `beltUp`: the body's upper edge. */
export function roofFromSide(
  input: OutlineInput,
  body: Body,
  scale: SideAt,
  { beltUp, topM }: { readonly beltUp: number; readonly topM: number },
): readonly Shape[] {
  const { outline } = input;
  const { from, to, wall } = reachOf(input, body);
  const fore = from + 0.06;
  const bar = polyline([scale.at(from - 0.05, topM - 0.04), scale.at(to, topM - 0.04)], stroke(3, inks.line));
  const paint = { fill: inks.body, stroke: heavy };
  if (outline === 'van') {
    const box = [
      scale.at(wall, beltUp - 0.02),
      scale.at(wall, topM),
      scale.at(to, topM),
      scale.at(to, beltUp - 0.02),
    ];
    return [
      polygon(box, paint),
      polyline([scale.at(from - 0.05, topM - 0.04), scale.at(wall, topM - 0.04)], stroke(3, inks.line)),
    ];
  }
  if (outline === 'closed') {
    const pillars = [
      fore,
      ...body.seatRows.map(({ back }) => back - 0.3).filter((back) => back > fore + 0.3),
      to - 0.3,
    ];
    const panel = [
      scale.at(to - 0.3, beltUp),
      scale.at(to - 0.3, topM),
      scale.at(to, topM),
      scale.at(to, beltUp),
    ];
    return [
      ...pillars.map((back) => polyline([scale.at(back, beltUp), scale.at(back, topM - 0.04)], heavy)),
      polygon(panel, paint),
      bar,
    ];
  }
  const rise = topM - beltUp;
  const curve = (one: Point, two: Point, end: Point): PathPiece => ({
    op: 'curve',
    x1: one.x,
    y1: one.y,
    x2: two.x,
    y2: two.y,
    ...end,
  });
  // a folding top: taut from the screen to its highest bow, rounded down to the body behind the last seat
  const top: readonly PathPiece[] = [
    { op: 'move', ...scale.at(fore, topM - 0.1) },
    { op: 'line', ...scale.at(to - 0.55, topM) },
    curve(scale.at(to - 0.1, topM), scale.at(to, topM - rise * 0.2), scale.at(to, beltUp)),
    { op: 'line', ...scale.at(to - 0.42, beltUp) },
    curve(
      scale.at(to - 0.42, topM - rise * 0.45),
      scale.at(to - 0.5, topM - 0.16),
      scale.at(to - 0.62, topM - 0.16),
    ),
    { op: 'line', ...scale.at(fore, topM - 0.18) },
    { op: 'close' },
  ];
  const bows = [0.4, 0.7].map((share) => {
    const head = scale.at(fore + (to - fore) * share, topM - 0.14);
    return polyline([scale.at(to - 0.5, beltUp), head], middle);
  });
  return [...bows, { kind: 'path', pieces: top, paint }];
}
