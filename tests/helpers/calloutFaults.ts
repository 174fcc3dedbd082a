/** What is wrong with the callouts of a drawing: leaders that meet, leaders through words, numbers or dots of others. */
import { meet } from '../../src/drawing/calloutColumn';
import type { Drawing } from '../../src/drawing/drawing';
import type { Point } from '../../src/drawing/shapes';
import { plexFonts } from './fonts';

/** A leader: from its label level, then straight to its point. */
type Leader = readonly [Point, Point, Point];

/** The size of a dot: a leader closer to its middle runs over it. */
const dotRadiusPt = 2.3;

/** How far a leader to `end` must keep from the middle of another's dot. Dots that lie over each other can only be told apart by half. */
function clearOf(dot: Point, end: Point): number {
  return Math.min(dotRadiusPt, 0.5 * Math.hypot(dot.x - end.x, dot.y - end.y));
}

/** Every fault in words; none for good callouts. */
export function calloutFaults(drawing: Drawing): readonly string[] {
  const leaders = leadersOf(drawing);
  return leaders.flatMap((leader, index) => [
    ...leaders
      .slice(0, index)
      .flatMap((other) => (crossing(leader, other) ? [`${named(leader)} crosses ${named(other)}`] : [])),
    ...leaders.flatMap((other) =>
      other !== leader && distance(other[2], leader[1], leader[2]) < clearOf(other[2], leader[2])
        ? [`${named(leader)} runs through the dot of ${named(other)}`]
        : [],
    ),
    ...wordsCrossed(leader, drawing),
  ]);
}

/** The leaders drawn, by the dot at their end. */
export function leadersOf({ shapes }: Drawing): readonly Leader[] {
  return shapes.flatMap((shape) => {
    if (shape.kind !== 'path' || shape.paint.stroke?.widthPt !== 0.5 || shape.pieces.length !== 3) return [];
    const [label, bend, end] = shape.pieces;
    if (!label || !bend || !end || !('x' in label) || !('x' in bend) || !('x' in end)) return [];
    return [[label, bend, end] as const];
  });
}

function named([{ x, y }]: Leader): string {
  return `the leader from ${x.toFixed(0)}, ${y.toFixed(0)}`;
}

function crossing(a: Leader, b: Leader): boolean {
  const pieces = ([label, bend, end]: Leader) => [[label, bend] as const, [bend, end] as const];
  return pieces(a).some(([from, to]) => pieces(b).some(([other, end]) => meet(from, to, other, end)));
}

function distance(point: Point, from: Point, to: Point): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const along = ((point.x - from.x) * dx + (point.y - from.y) * dy) / (dx * dx + dy * dy);
  const held = Math.min(1, Math.max(0, along));
  return Math.hypot(point.x - from.x - held * dx, point.y - from.y - held * dy);
}

/** Words under a leader, as boxes from the baseline to the height of a capital. */
function wordsCrossed(leader: Leader, { shapes }: Drawing): readonly string[] {
  return shapes.flatMap((shape) => {
    if (shape.kind !== 'text') return [];
    const width = plexFonts[shape.face].widthOf(shape.text, shape.sizePt);
    const left = shape.x - width * { start: 0, middle: 0.5, end: 1 }[shape.anchor];
    const top = shape.y - plexFonts[shape.face].capHeight * shape.sizePt;
    const [a, b, c, d] = [
      { x: left, y: top },
      { x: left + width, y: top },
      { x: left + width, y: shape.y },
      { x: left, y: shape.y },
    ];
    const [label, bend, end] = leader;
    const over = [[label, bend] as const, [bend, end] as const].some(([from, to]) =>
      [[a, b] as const, [b, c] as const, [c, d] as const, [d, a] as const].some(([one, other]) =>
        meet(from, to, one, other),
      ),
    );
    return over ? [`${named(leader)} runs through “${shape.text}”`] : [];
  });
}
