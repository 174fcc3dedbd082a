/**
 * Callouts: labels beside a drawing, each led to its point, so that no leaders cross and no labels overlap.
 *
 * Labels stand in a column left and a column right of the drawing. Points at the same place share one label.
 */
import type { Face, FontSet } from '../font/metrics';
import { isRunOver, placeColumn } from './calloutColumn';
import type { Point } from './shapes';
import { wrapLine } from './wrapLine';

/** A line of a label, in one face. */
export interface CalloutText {
  readonly text: string;
  readonly face: Face;
}

/** A point to be named. */
export interface CalloutPoint extends Point {
  /** The label's lines, each broken further if it is wider than the column. */
  readonly lines: readonly CalloutText[];
}

/** A line of a label as it is set: a piece of the line `given` of the point `member`. */
export interface CalloutLine extends CalloutText {
  readonly member: number;
  readonly given: number;
  /** False for what had to go on to the next line. */
  readonly first: boolean;
}

/** Where the drawing is, and the room beside it. */
export interface CalloutRoom {
  /** The drawing's own part, which leaders run through: all points lie inside. */
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** Width of a column of labels. */
  readonly labelWidthPt: number;
  /** Between the drawing's part and the labels: the level end of a leader. */
  readonly stubPt: number;
}

/** How labels are set. */
export interface CalloutStyle {
  readonly fonts: FontSet;
  readonly sizePt: number;
  /** From baseline to baseline. */
  readonly leadingPt: number;
  /** Between labels. */
  readonly gapPt: number;
  /** Points no further apart than this, both ways, share a label. */
  readonly sharePt: number;
}

/** A label in its place. */
export interface Callout {
  /** Which of the points given it names. */
  readonly members: readonly number[];
  readonly side: 'left' | 'right';
  /** The point its leader ends at. */
  readonly anchor: Point;
  readonly lines: readonly CalloutLine[];
  /** The label's edge towards the drawing. */
  readonly x: number;
  readonly top: number;
  readonly heightPt: number;
  readonly widthPt: number;
  /** From the label to the anchor: a level end, then a straight line. */
  readonly leader: readonly [Point, Point, Point];
}

/** All labels. */
export interface PlacedCallouts {
  readonly callouts: readonly Callout[];
  /** The height by which the fuller column is too tall for the room (0: it fits). */
  readonly overflowPt: number;
  /** How many points the leaders of others run over. */
  readonly runOver: number;
}

interface Shared {
  readonly anchor: Point;
  readonly members: readonly number[];
  readonly lines: readonly CalloutLine[];
  readonly heightPt: number;
}

/**
 * Places the labels. Leaders are kept short: each column is chosen so that none cross, the shortest of those found.
 * Throws if a point is not inside the drawing's part.
 */
export function placeCallouts(
  points: readonly CalloutPoint[],
  room: CalloutRoom,
  style: CalloutStyle,
): PlacedCallouts {
  for (const { x, y } of points) {
    if (!(x > room.left && x < room.right && Number.isFinite(y))) {
      throw new RangeError(`the point ${x}, ${y} is not inside the drawing's part`);
    }
  }
  const shared = sharePlaces(points, style.sharePt).map((members) => labelFor(members, points, room, style));
  let best: PlacedCallouts | undefined;
  for (const { left, right } of sidesToTry(shared, room, style.gapPt)) {
    const columns = [columnOf(left, 'left', room, style), columnOf(right, 'right', room, style)];
    const placed = {
      callouts: columns.flatMap(({ callouts }) => callouts),
      overflowPt: Math.max(...columns.map(({ overflowPt }) => overflowPt)),
      runOver: columns.reduce((sum, { runOver }) => sum + runOver, 0),
    };
    if (best === undefined || placed.runOver < best.runOver) best = placed;
    if (best.runOver === 0) break;
  }
  return best ?? { callouts: [], overflowPt: 0, runOver: 0 };
}

/** Which points stand at the same place, in the order given. */
function sharePlaces(points: readonly CalloutPoint[], sharePt: number): readonly (readonly number[])[] {
  const groups: { readonly at: Point; readonly members: number[] }[] = [];
  for (const [index, point] of points.entries()) {
    const same = groups.find(
      ({ at }) => Math.abs(at.x - point.x) <= sharePt && Math.abs(at.y - point.y) <= sharePt,
    );
    if (same) same.members.push(index);
    else groups.push({ at: point, members: [index] });
  }
  return groups.map(({ members }) => members);
}

function labelFor(
  members: readonly number[],
  points: readonly CalloutPoint[],
  room: CalloutRoom,
  { fonts, sizePt, leadingPt }: CalloutStyle,
): Shared {
  const lines = members.flatMap((member) =>
    (points[member]?.lines ?? []).flatMap(({ text, face }, given) =>
      wrapLine(text, fonts[face], sizePt, room.labelWidthPt, room.labelWidthPt).map((piece, index) => ({
        text: piece,
        face,
        member,
        given,
        first: index === 0,
      })),
    ),
  );
  const { x = 0, y = 0 } = points[members[0] ?? 0] ?? {};
  return { anchor: { x, y }, members, lines, heightPt: lines.length * leadingPt };
}

interface Sides {
  readonly left: readonly Shared[];
  readonly right: readonly Shared[];
}

/** So many ways to cut are tried before points that are run over are put up with. */
const cutsTried = 5;

/**
 * Cuts the points, sorted from left to right, into those named on the left and those named on the right: as near
 * their own side as the height of the columns allows. Leaders of the two sides then never meet. The best cut comes first,
 * then those that need no taller columns.
 */
function sidesToTry(shared: readonly Shared[], room: CalloutRoom, gapPt: number): readonly Sides[] {
  const sorted = [...shared].sort((a, b) => a.anchor.x - b.anchor.x || a.anchor.y - b.anchor.y);
  const space = room.bottom - room.top;
  const over = (labels: readonly Shared[]): number => Math.max(0, heightOf(labels, gapPt) - space);
  const cuts = Array.from({ length: sorted.length + 1 }, (_, cut) => {
    const [left, right] = [sorted.slice(0, cut), sorted.slice(cut)];
    const run =
      left.reduce((sum, { anchor }) => sum + anchor.x - room.left, 0) +
      right.reduce((sum, { anchor }) => sum + room.right - anchor.x, 0);
    const uneven = Math.abs(heightOf(left, gapPt) - heightOf(right, gapPt));
    const overPt = Math.max(over(left), over(right));
    return { left, right, overPt, cost: run + uneven / 2 + 1000 * overPt };
  }).sort((a, b) => a.cost - b.cost);
  return cuts.filter(({ overPt }) => overPt <= (cuts[0]?.overPt ?? 0)).slice(0, cutsTried);
}

function heightOf(labels: readonly Shared[], gapPt: number): number {
  return labels.reduce((sum, { heightPt }) => sum + heightPt + gapPt, 0) - (labels.length > 0 ? gapPt : 0);
}

function columnOf(
  labels: readonly Shared[],
  side: 'left' | 'right',
  room: CalloutRoom,
  { gapPt, leadingPt }: CalloutStyle,
): PlacedCallouts {
  const edge = side === 'left' ? room.left : room.right;
  const out = side === 'left' ? -room.stubPt : room.stubPt;
  const portDown = leadingPt / 2;
  const tops = placeColumn(
    labels.map(({ anchor, heightPt }) => ({ anchor, heightPt })),
    { edge, top: room.top, bottom: room.bottom, gapPt, portDown },
  );
  const callouts = labels.map(({ anchor, members, lines, heightPt }, index): Callout => {
    const top = tops[index] ?? room.top;
    const y = top + portDown;
    const x = edge + out;
    const leader = [{ x, y }, { x: edge, y }, anchor] as const;
    return { members, side, anchor, lines, x, top, heightPt, widthPt: room.labelWidthPt, leader };
  });
  return {
    callouts,
    overflowPt: Math.max(0, heightOf(labels, gapPt) - (room.bottom - room.top)),
    runOver: runOverBy(callouts.map(({ leader: [, port, anchor] }) => [port, anchor] as const)),
  };
}

function runOverBy(leaders: readonly (readonly [port: Point, anchor: Point])[]): number {
  return leaders.reduce(
    (sum, leader) =>
      sum + leaders.filter((other) => other !== leader && isRunOver(other[1], leader[0], leader[1])).length,
    0,
  );
}
