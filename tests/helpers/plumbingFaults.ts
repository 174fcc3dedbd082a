/** What is wrong with a laid-out plumbing diagram: overlaps, pipes through symbols, pipes on top of each other, NaN. */
import type { Box, PlacedPart, PlumbingLayout, Run } from '../../src/drawing/plumbing/plumbing';

/** Every fault in words; none for a good diagram. */
export function plumbingFaults(layout: PlumbingLayout): readonly string[] {
  const boxes = layout.parts.flatMap(boxesOf);
  return [
    ...boxes.flatMap((box) => outside(box, layout)),
    ...boxes.flatMap((box, index) =>
      boxes
        .slice(0, index)
        .flatMap((other) => (overlap(box, other, 0.01) ? [`${box.what} lies over ${other.what}`] : [])),
    ),
    ...layout.runs.flatMap((run) => runFaults(run, layout, boxes)),
    ...layout.runs.flatMap((run, index) =>
      layout.runs
        .slice(0, index)
        .flatMap((other) => (merged(run, other) ? [`${show(run)} lies on ${show(other)}`] : [])),
    ),
  ];
}

interface Named extends Box {
  readonly what: string;
}

function boxesOf({ part, symbol, label, gauges, lines }: PlacedPart): readonly Named[] {
  return [
    { ...symbol, what: `symbol of ${part.id}` },
    ...(lines.length === 0 ? [] : [{ ...label, what: `label of ${part.id}` }]),
    ...gauges.map(({ box, tag }) => ({ ...box, what: `gauge ${tag}` })),
  ];
}

function outside(box: Named, { widthPt, heightPt }: PlumbingLayout): readonly string[] {
  const inside = box.left >= 0 && box.top >= 0 && box.right <= widthPt && box.bottom <= heightPt;
  return inside ? [] : [`${box.what} is not inside the drawing`];
}

function overlap(a: Box, b: Box, by: number): boolean {
  return a.left < b.right - by && b.left < a.right - by && a.top < b.bottom - by && b.top < a.bottom - by;
}

function runFaults(
  run: Run,
  { widthPt, heightPt }: PlumbingLayout,
  boxes: readonly Named[],
): readonly string[] {
  const { a, b } = run;
  const bounds = {
    left: Math.min(a.x, b.x),
    right: Math.max(a.x, b.x),
    top: Math.min(a.y, b.y),
    bottom: Math.max(a.y, b.y),
  };
  if (![a.x, a.y, b.x, b.y].every(Number.isFinite)) return [`${show(run)} is nowhere`];
  if (a.x !== b.x && a.y !== b.y) return [`${show(run)} is aslant`];
  if (bounds.left < 0 || bounds.top < 0 || bounds.right > widthPt || bounds.bottom > heightPt)
    return [`${show(run)} leaves the drawing`];
  const thick = {
    left: bounds.left - 0.5,
    right: bounds.right + 0.5,
    top: bounds.top,
    bottom: bounds.bottom,
  };
  return boxes.flatMap((box) => (overlap(thick, box, 0.02) ? [`${show(run)} runs through ${box.what}`] : []));
}

/** Two lengths of different nets on one line, for more than a stub at the part where they meet. */
function merged(one: Run, other: Run): boolean {
  if (one.net === other.net) return false;
  const along = (upright: boolean): boolean => {
    const across = upright ? ('x' as const) : ('y' as const);
    const way = upright ? ('y' as const) : ('x' as const);
    if (one.a[across] !== one.b[across] || other.a[across] !== other.b[across]) return false;
    if (Math.abs(one.a[across] - other.a[across]) > 1) return false;
    const from = Math.max(Math.min(one.a[way], one.b[way]), Math.min(other.a[way], other.b[way]));
    const to = Math.min(Math.max(one.a[way], one.b[way]), Math.max(other.a[way], other.b[way]));
    const shared = [one.a, one.b].some((p) => [other.a, other.b].some((q) => p.x === q.x && p.y === q.y));
    return to - from > 0.5 && !shared;
  };
  return along(true) || along(false);
}

function show({ net, a, b }: Run): string {
  return `pipe ${net} (${a.x.toFixed(1)},${a.y.toFixed(1)} to ${b.x.toFixed(1)},${b.y.toFixed(1)})`;
}
