/**
 * What the lines of a plan are called: labels in one column beside all of them, each led to a dot on its line, so that no label
 * lies on a line or on another label.
 */
import type { FontSet } from '../font/metrics';
import { placeColumn } from './calloutColumn';
import { inks } from './carScale';
import type { Shape } from './drawing';
import { circle, type Point, polyline, stroke, text } from './shapes';
import { wrapLine } from './wrapLine';

/** A closed line as it is drawn, and what it is called. */
export interface LabelledLine {
  readonly line: { readonly number: number; readonly short: string; readonly distance: string };
  readonly points: readonly Point[];
}

/** Where the column stands: right of every line. */
export interface LabelColumn {
  /** Leaders come straight as far as here, and go on level. */
  readonly edge: number;
  /** Where its words begin. */
  readonly left: number;
  readonly widthPt: number;
  readonly top: number;
}

const sizePt = 9;
const leadingPt = 10.5;
const gapPt = 8;
const dotPt = 2;
/** A dot this far from the other lines is not taken for one on them. */
const clearPt = 8;

/** The labels with their leaders, and how far down they reach. */
export function standLabels(
  lines: readonly LabelledLine[],
  column: LabelColumn,
  fonts: FontSet,
): { readonly shapes: readonly Shape[]; readonly bottom: number } {
  const anchors = anchorsOn(lines);
  const labels = lines.map(({ line }, index) => {
    const name = wrapLine(
      `${line.number}\u2002${line.short}`,
      fonts['narrow-bold'],
      sizePt,
      column.widthPt,
      column.widthPt,
    );
    const rows = [
      ...name.map((words) => ({ words, face: 'narrow-bold' as const })),
      ...wrapLine(line.distance, fonts.narrow, sizePt, column.widthPt).map((words) => ({
        words,
        face: 'narrow' as const,
      })),
    ];
    return { rows, anchor: anchors[index] ?? { x: 0, y: 0 }, heightPt: rows.length * leadingPt };
  });
  const total = labels.reduce((sum, { heightPt }) => sum + heightPt + gapPt, -gapPt);
  const drawn = lines.flatMap(({ points }) => points.map(({ y }) => y));
  const bottom = Math.max(column.top + total, ...drawn);
  const portDown = leadingPt / 2;
  const tops = placeColumn(labels, { edge: column.edge, top: column.top, bottom, gapPt, portDown });
  const leader = stroke(0.6, inks.line);
  const shapes = labels.flatMap(({ rows, anchor }, index): readonly Shape[] => {
    const top = tops[index] ?? column.top;
    const port = { x: column.edge, y: top + portDown };
    return [
      polyline([anchor, port, { x: column.left - 3, y: port.y }], leader),
      circle(anchor, dotPt, { fill: inks.line, stroke: stroke(0.8, inks.paper) }),
      ...rows.map(({ words, face }, row) =>
        text({ x: column.left, y: top + leadingPt * (row + 0.5) + sizePt * 0.35 }, words, {
          face,
          sizePt,
          colour: inks.line,
        }),
      ),
    ];
  });
  return { shapes, bottom };
}

/**
 * A place for the dot on each line: the largest lines have theirs furthest up and down, the smallest in the middle, as leaders
 * then cross nothing that lies within; each where other lines are not near.
 */
function anchorsOn(lines: readonly LabelledLine[]): readonly Point[] {
  const ys = lines.flatMap(({ points }) => points.map(({ y }) => y));
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
  const bySize = [...lines.keys()].sort((a, b) => tallness(lines[b]) - tallness(lines[a]));
  const targets = new Map(
    bySize.map((index, place) => {
      const slot = place % 2 === 0 ? place / 2 : lines.length - (place + 1) / 2;
      return [index, top + ((bottom - top) * (slot + 0.5)) / lines.length];
    }),
  );
  const taken: Point[] = [];
  return lines.map(({ points }, index) => {
    const target = targets.get(index) ?? top;
    const others = lines.flatMap((line, other) => (other === index ? [] : alongEdges(line.points)));
    const middle = points.reduce((sum, { x }) => sum + x, 0) / points.length;
    const [best] = alongEdges(points)
      .filter(({ x }) => x >= middle - 1e-6)
      .map((point) => {
        const near = [...others, ...taken].map(({ x, y }) => Math.hypot(x - point.x, y - point.y));
        return { point, cost: Math.abs(point.y - target) - 4 * Math.min(clearPt, ...near) };
      })
      .sort((a, b) => a.cost - b.cost || b.point.x - a.point.x || a.point.y - b.point.y);
    const found = best?.point ?? { x: 0, y: 0 };
    taken.push(found);
    return found;
  });
}

function tallness(line: LabelledLine | undefined): number {
  const ys = line?.points.map(({ y }) => y) ?? [];
  return Math.max(...ys) - Math.min(...ys);
}

/** Points along a closed line, close together. */
function alongEdges(points: readonly Point[]): readonly Point[] {
  return points.flatMap((from, index) => {
    const to = points[(index + 1) % points.length] ?? from;
    const steps = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / 4));
    return Array.from({ length: steps }, (_, step) => ({
      x: from.x + ((to.x - from.x) * step) / steps,
      y: from.y + ((to.y - from.y) * step) / steps,
    }));
  });
}
