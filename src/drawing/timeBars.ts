/**
 * Bars over time: what goes on, and when, a lane for each. Kinds of bar are told apart by shape, not by colour.
 */
import type { FontSet } from '../font/metrics';
import { inks } from './carScale';
import type { Drawing, Shape } from './drawing';
import { hatching } from './hatching';
import { roundStep } from './scaleSteps';
import { type Point, polyline, stroke, text } from './shapes';
import { wrapLine } from './wrapLine';

/** A stretch of time, in minutes on the picture's scale. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** One bar. */
export interface TimeBar extends Span {
  readonly kind: 'plain' | 'hatched';
  /** Drawn as a thin bar below it. */
  readonly least?: Span;
}

/** What the key may explain. */
export type Explained = TimeBar['kind'] | 'least';

/** What the picture is drawn from. */
export interface TimeBarsInput {
  readonly name: string;
  readonly alt: string;
  readonly lanes: readonly { readonly name: string; readonly bars: readonly TimeBar[] }[];
  /** What the scale at the foot counts, and how it prints a minute. */
  readonly counts: string;
  readonly minute: (minute: number) => string;
  /** The clock at a minute, for a second scale at the head. */
  readonly clock?: (minute: number) => string;
  /** The key: what each kind that is shown means. */
  readonly key: readonly { readonly of: Explained; readonly says: string }[];
  readonly widthPt?: number;
}

const sizePt = 9;
const leadingPt = 10.5;
const barPt = 11;
const leastPt = 3;
const lanePadPt = 4;
const mostNamePt = 170;
const scalePt = 14;
const marginPt = 18;
const words = { face: 'narrow', sizePt, colour: inks.line } as const;
const steps = [1, 2, 5, 10, 15, 30, 60, 120];
const mostSteps = 10;
/** A bar of no length can still be seen. */
const leastBarPt = 2;

/** Draws the bars. */
export function drawTimeBars(input: TimeBarsInput, fonts: FontSet): Drawing {
  const widthPt = input.widthPt ?? 480;
  const named = input.lanes.map((lane) => ({
    ...lane,
    lines: wrapLine(lane.name, fonts.narrow, sizePt, mostNamePt, mostNamePt),
  }));
  const namePt = Math.max(
    ...named.flatMap(({ lines }) => lines.map((line) => fonts.narrow.widthOf(line, sizePt))),
  );
  const ticks = ticksOf(input);
  const [first = 0, last = 1] = [ticks[0], ticks.at(-1)];
  const left = namePt + 10;
  const right = widthPt - marginPt;
  const x = (minute: number): number => left + ((right - left) * (minute - first)) / (last - first);
  const head = input.clock ? scalePt : 0;
  const lanes: Shape[] = [];
  let y = head;
  for (const { lines, bars } of named) {
    const heightPt =
      Math.max(lines.length * leadingPt, barPt + (bars.some(({ least }) => least) ? leastPt + 1 : 0)) +
      2 * lanePadPt;
    lanes.push(...laneShapes(lines, bars, y, heightPt, x));
    y += heightPt;
    lanes.push(polyline([point(0, y), point(right, y)], stroke(0.3, inks.tyre)));
  }
  const key = keyShapes(input, y + 2 * scalePt + 4, widthPt, fonts);
  return {
    name: input.name,
    widthPt,
    heightPt: key.bottom,
    alt: input.alt,
    shapes: [...scales(input, ticks, x, head, y), ...lanes, ...key.shapes],
  };
}

/** Minutes at which the scale has a number, from at or before the first bar to at or after the last. */
function ticksOf({ lanes }: TimeBarsInput): readonly number[] {
  const bars = lanes.flatMap((lane) => lane.bars.flatMap((bar) => [bar, ...(bar.least ? [bar.least] : [])]));
  const all = bars.flatMap(({ from, to }) => [from, to]);
  const [from, to] = [Math.min(...all), Math.max(...all)];
  const span = Math.max(1, to - from);
  const step = steps.find((each) => span / each <= mostSteps) ?? roundStep(span, mostSteps);
  const [low, high] = [Math.floor(from / step + 1e-9), Math.ceil(to / step - 1e-9)];
  // `+ 0` so that no tick is minus nought
  return Array.from({ length: Math.max(1, high - low) + 1 }, (_, index) => (low + index) * step + 0);
}

function laneShapes(
  names: readonly string[],
  bars: readonly TimeBar[],
  top: number,
  heightPt: number,
  x: (minute: number) => number,
): readonly Shape[] {
  const firstLine = top + (heightPt - names.length * leadingPt) / 2;
  const tall = barPt + (bars.some(({ least }) => least) ? leastPt + 1 : 0);
  const barTop = top + (heightPt - tall) / 2;
  return [
    ...names.map((line, index) =>
      text(point(0, firstLine + leadingPt * (index + 0.5) + sizePt * 0.34), line, words),
    ),
    ...bars.flatMap(({ kind, least, ...span }) => [
      ...barShapes(kind, x(span.from), x(span.to), barTop),
      ...(least === undefined ? [] : [leastShape(x(least.from), x(least.to), barTop + barPt + 1)]),
    ]),
  ];
}

function barShapes(kind: TimeBar['kind'], left: number, right: number, top: number): readonly Shape[] {
  const end = Math.max(right, left + leastBarPt);
  const paint = { fill: inks.tyre, stroke: stroke(0.9, inks.line) };
  const bar: Shape = { kind: 'rect', x: left, y: top, width: end - left, height: barPt, paint };
  if (kind === 'plain') return [bar];
  return [{ ...bar, paint: { fill: inks.paper } }, ...hatching(left, top, end, top + barPt)];
}

function leastShape(left: number, right: number, top: number): Shape {
  const width = Math.max(right - left, leastBarPt);
  return { kind: 'rect', x: left, y: top, width, height: leastPt, paint: { fill: inks.line } };
}

function scales(
  { minute, clock, counts }: TimeBarsInput,
  ticks: readonly number[],
  x: (minute: number) => number,
  top: number,
  bottom: number,
): readonly Shape[] {
  const at = (tick: number): readonly Shape[] => [
    polyline([point(x(tick), top), point(x(tick), bottom)], stroke(0.3, inks.tyre)),
    text(point(x(tick), bottom + 10), minute(tick), { ...words, anchor: 'middle' }),
    ...(clock ? [text(point(x(tick), sizePt), clock(tick), { ...words, anchor: 'middle' })] : []),
  ];
  const right = x(ticks.at(-1) ?? 0);
  return [
    ...ticks.flatMap(at),
    polyline([point(x(ticks[0] ?? 0), bottom), point(right, bottom)], stroke(0.9, inks.line)),
    text(point(right, bottom + 10 + leadingPt), counts, { ...words, anchor: 'end' }),
  ];
}

/** What each kind means, side by side, on as many lines as that takes. */
function keyShapes(
  { key }: TimeBarsInput,
  top: number,
  widthPt: number,
  fonts: FontSet,
): { readonly shapes: readonly Shape[]; readonly bottom: number } {
  const samplePt = 24;
  const shapes: Shape[] = [];
  let [x, y] = [0, top];
  for (const { of, says } of key) {
    const widePt = samplePt + 5 + fonts.narrow.widthOf(says, sizePt);
    if (x > 0 && x + widePt > widthPt) [x, y] = [0, y + barPt + 5];
    shapes.push(
      ...sample(of, x, y, samplePt),
      text(point(x + samplePt + 5, y + barPt / 2 + sizePt * 0.34), says, words),
    );
    x += widePt + 18;
  }
  return { shapes, bottom: y + barPt + 2 };
}

function sample(of: Explained, x: number, y: number, widePt: number): readonly Shape[] {
  if (of === 'least') return [leastShape(x, x + widePt, y + (barPt - leastPt) / 2)];
  return barShapes(of, x, x + widePt, y);
}

function point(x: number, y: number): Point {
  return { x, y };
}
