/**
 * How the pressure rises from lighting the main burner: one curve for each start, with the pressures at which
 * something is due.
 */
import type { FontSet } from '../font/metrics';
import type { Say } from '../language/messages';
import { inks } from './carScale';
import type { Drawing, Shape } from './drawing';
import { roundStep, scaleNumber, stepsTo } from './scaleSteps';
import { circle, type Point, polyline, stroke, text } from './shapes';
import { spreadLabels } from './spreadLabels';
import { wrapLine } from './wrapLine';

/** A point of a curve: minutes since lighting, and pressure in the diagram's unit. */
export interface CurvePoint {
  readonly minutes: number;
  readonly pressure: number;
}

/** What the diagram is drawn from. */
export interface RaisingCurveInput {
  readonly name: string;
  /** The car. */
  readonly of: string;
  readonly unit: string;
  /** The words of the drawing. */
  readonly say: Say;
  /** Between whole and parts of a number. */
  readonly decimal: string;
  readonly curves: readonly { readonly start: string; readonly points: readonly CurvePoint[] }[];
  /** Pressures at which something is due, with words for both; from the lowest up. */
  readonly checks: readonly { readonly pressure: number; readonly says: string; readonly due: string }[];
  readonly widthPt?: number;
}

const sizePt = 8.5;
const leadingPt = 10;
const frame = { left: 40, top: 22, bottom: 40, height: 230 };
const labelsPt = 132;
const dashes = [undefined, [6, 3], [2, 2.5]] as const;

/** Draws the curves. */
export function drawRaisingCurve(input: RaisingCurveInput, fonts: FontSet): Drawing {
  const widthPt = input.widthPt ?? 480;
  const points = input.curves.flatMap((curve) => curve.points);
  const mostPressure = Math.max(
    1,
    ...points.map(({ pressure }) => pressure),
    ...input.checks.map(({ pressure }) => pressure),
  );
  const mostMinutes = Math.max(1, ...points.map(({ minutes }) => minutes));
  const steps = { x: roundStep(mostMinutes, 12), y: roundStep(mostPressure * 1.04, 7) };
  const ends = {
    x: stepsTo(mostMinutes, steps.x).at(-1) ?? 1,
    y: stepsTo(mostPressure * 1.04, steps.y).at(-1) ?? 1,
  };
  const right = widthPt - labelsPt - 10;
  const bottom = frame.top + frame.height;
  const at = ({ minutes, pressure }: CurvePoint): Point => ({
    x: frame.left + ((right - frame.left) * minutes) / ends.x,
    y: bottom - (frame.height * pressure) / ends.y,
  });
  return {
    name: input.name,
    widthPt,
    heightPt: bottom + frame.bottom,
    alt: altWords(input),
    shapes: [
      ...axes(at, ends, steps, input),
      ...checkLines(input, at, ends.x, right, fonts),
      ...input.curves.flatMap(({ points: own }, index) =>
        curveShapes(own, input.checks, at, dashes[index % 3]),
      ),
      ...curveNames(input, bottom + 34),
    ],
  };
}

type Place = (point: CurvePoint) => Point;

function axes(
  at: Place,
  ends: { readonly x: number; readonly y: number },
  steps: { readonly x: number; readonly y: number },
  { unit, say, decimal }: RaisingCurveInput,
): readonly Shape[] {
  const words = { face: 'narrow', sizePt, colour: inks.line } as const;
  const grid = stroke(0.3, inks.tyre);
  const minutes = stepsTo(ends.x, steps.x).flatMap((value): readonly Shape[] => {
    const [foot, head] = [at({ minutes: value, pressure: 0 }), at({ minutes: value, pressure: ends.y })];
    return [
      polyline([foot, head], grid),
      text({ x: foot.x, y: foot.y + 11 }, scaleNumber(value, steps.x, decimal), {
        ...words,
        anchor: 'middle',
      }),
    ];
  });
  const pressures = stepsTo(ends.y, steps.y).flatMap((value): readonly Shape[] => {
    const [from, to] = [at({ minutes: 0, pressure: value }), at({ minutes: ends.x, pressure: value })];
    return [
      polyline([from, to], grid),
      text({ x: from.x - 5, y: from.y + 3 }, scaleNumber(value, steps.y, decimal), {
        ...words,
        anchor: 'end',
      }),
    ];
  });
  const corner = at({ minutes: 0, pressure: 0 });
  const lines = polyline(
    [at({ minutes: 0, pressure: ends.y }), corner, at({ minutes: ends.x, pressure: 0 })],
    stroke(1, inks.line),
  );
  return [
    ...minutes,
    ...pressures,
    lines,
    text({ x: corner.x - 5, y: frame.top - 10 }, unit, { ...words, anchor: 'end' }),
    text({ x: at({ minutes: ends.x, pressure: 0 }).x, y: corner.y + 22 }, say('minutes-from-lighting', {}), {
      ...words,
      anchor: 'end',
    }),
  ];
}

/** A level line for each pressure, led to its words at the right. */
function checkLines(
  { checks }: RaisingCurveInput,
  at: Place,
  mostMinutes: number,
  right: number,
  fonts: FontSet,
): readonly Shape[] {
  const labels = checks.map(({ pressure, says, due }) => ({
    y: at({ minutes: 0, pressure }).y,
    lines: [says, ...wrapLine(due, fonts.narrow, sizePt, labelsPt - 14, labelsPt - 14)],
  }));
  const tops = spreadLabels(
    labels.map(({ y, lines }) => ({ middle: y, heightPt: lines.length * leadingPt })),
    { top: 0, bottom: frame.top + frame.height + frame.bottom - 4, gapPt: 4 },
  );
  return labels.flatMap(({ y, lines }, index): readonly Shape[] => {
    const top = tops[index] ?? y;
    const level = top + leadingPt / 2;
    return [
      polyline(
        [
          { x: at({ minutes: 0, pressure: 0 }).x, y },
          { x: at({ minutes: mostMinutes, pressure: 0 }).x, y },
          { x: right + 10, y: level },
          { x: right + 16, y: level },
        ],
        stroke(0.6, inks.line, [1, 2.4]),
      ),
      ...lines.map((line, number) =>
        text({ x: right + 20, y: top + leadingPt * (number + 0.5) + sizePt * 0.34 }, line, {
          face: number === 0 ? 'narrow-bold' : 'narrow',
          sizePt,
          colour: inks.line,
        }),
      ),
    ];
  });
}

function curveShapes(
  points: readonly CurvePoint[],
  checks: RaisingCurveInput['checks'],
  at: Place,
  dash: readonly number[] | undefined,
): readonly Shape[] {
  const marks = checks.flatMap(({ pressure }) => {
    const minutes = minutesTo(points, pressure);
    return minutes === undefined ? [] : [at({ minutes, pressure })];
  });
  return [
    polyline(points.map(at), stroke(1.8, inks.line, dash)),
    ...marks.map((mark) => circle(mark, 3, { fill: inks.paper, stroke: stroke(1.1, inks.line) })),
  ];
}

/** When a curve first reaches a pressure, between its points in a straight line; undefined if it does not. */
export function minutesTo(points: readonly CurvePoint[], pressure: number): number | undefined {
  const index = points.findIndex((point) => point.pressure >= pressure - 1e-9);
  const [before, after] = [points[index - 1], points[index]];
  if (!after) return undefined;
  if (!before || after.pressure === before.pressure) return after.minutes;
  const share = (pressure - before.pressure) / (after.pressure - before.pressure);
  return before.minutes + (after.minutes - before.minutes) * Math.min(1, share);
}

/** Which line is which start, below the axis. */
function curveNames({ curves, say }: RaisingCurveInput, y: number): readonly Shape[] {
  return curves.flatMap(({ start }, index): readonly Shape[] => {
    const x = frame.left + index * 150;
    return [
      polyline(
        [
          { x, y: y - 3 },
          { x: x + 28, y: y - 3 },
        ],
        stroke(1.8, inks.line, dashes[index % 3]),
      ),
      text({ x: x + 34, y }, say('boiler-start', { start }), { face: 'narrow', sizePt, colour: inks.line }),
    ];
  });
}

function altWords({ of, unit, curves, checks, say }: RaisingCurveInput): string {
  const list = curves.map(({ start, points }) => {
    const times = checks.map(({ pressure, says }) => {
      const minutes = minutesTo(points, pressure);
      return minutes === undefined
        ? say('not-reached', { pressure: says })
        : say('reached-after', { pressure: says, minutes: Math.ceil(minutes - 1e-9) });
    });
    return `${say('boiler-start', { start })}: ${times.join(', ')}`;
  });
  return say('raising-picture', { car: of, unit, list: list.join('; ') });
}
