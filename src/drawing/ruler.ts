/**
 * A ruler to hold beside a real one: 100 mm along one edge, 4 inches along the other, both from one end. A print on which
 * they are not right was scaled.
 */
import { inks } from './carScale';
import type { Shape } from './drawing';
import { placeShape } from './place';
import { ptPerIn, ptPerMm } from './printedSize';
import { type Point, polyline, text } from './shapes';

/** How long the ruler is: 4 inches, the longer of its scales. */
export const rulerLengthPt = 4 * ptPerIn;
/** How wide it is with its figures. */
export const rulerWidthPt = 46;
/** Past both ends: half a figure, or the name of a unit. */
export const rulerEndPt = 20;

const middle = rulerWidthPt / 2;
const longTick = 7;
const shortTick = 4;
const sizePt = 8;
const thin = { colour: inks.line, widthPt: 0.5 } as const;

interface Tick {
  readonly alongPt: number;
  /** Empty for a tick between figures. */
  readonly words: string;
}

/** Millimetres by fives, a figure at every second ten. */
const metricTicks: readonly Tick[] = Array.from({ length: 21 }, (_, five) => ({
  alongPt: five * 5 * ptPerMm,
  words: five % 4 === 0 ? String(five * 5) : '',
}));

/** Quarters of an inch, a figure at every whole one. */
const inchTicks: readonly Tick[] = Array.from({ length: 17 }, (_, quarter) => ({
  alongPt: (quarter / 4) * ptPerIn,
  words: quarter % 4 === 0 ? String(quarter / 4) : '',
}));

/** The ruler from `zero` to the right: millimetres above its line, inches below. Figures keep `rulerEndPt` past its ends. */
export function rulerAcross(zero: Point): readonly Shape[] {
  const at = (along: number, across: number): Point => ({ x: rulerEndPt + along, y: middle + across });
  return placed(zero, [...scale(metricTicks, -1, at), ...scale(inchTicks, 1, at), spine(at)]);
}

/** The ruler from `zero` upwards: millimetres to the left of its line, inches to the right. */
export function rulerUpright(zero: Point): readonly Shape[] {
  const at = (along: number, across: number): Point => ({ x: middle + across, y: -rulerEndPt - along });
  return placed(zero, [...scale(metricTicks, -1, at), ...scale(inchTicks, 1, at), spine(at)]);
}

type At = (along: number, across: number) => Point;

const placed = (zero: Point, shapes: readonly Shape[]): readonly Shape[] =>
  shapes.map((shape) => placeShape(shape, 1, zero.x, zero.y));

const spine = (at: At): Shape => polyline([at(0, 0), at(rulerLengthPt, 0)], { ...thin, widthPt: 0.75 });

/** Ticks on one side of the line with their figures, and the unit past the last of them. */
function scale(ticks: readonly Tick[], side: 1 | -1, at: At): readonly Shape[] {
  const upright = at(1, 0).y !== at(0, 0).y;
  const anchor = !upright ? 'middle' : side < 0 ? 'end' : 'start';
  const words = (alongPt: number, said: string): Shape => {
    const { x, y } = at(alongPt, side * (longTick + 1.5));
    const down = upright ? 0.35 * sizePt : side < 0 ? -0.5 : 0.72 * sizePt;
    return text({ x, y: y + down }, said, { face: 'narrow', sizePt, colour: inks.line, anchor });
  };
  const last = ticks.at(-1)?.alongPt ?? 0;
  return [
    ...ticks.flatMap(({ alongPt, words: said }): readonly Shape[] => {
      const tick = polyline([at(alongPt, 0), at(alongPt, side * (said === '' ? shortTick : longTick))], thin);
      return said === '' ? [tick] : [tick, words(alongPt, said)];
    }),
    words(last + (upright ? 1.1 : side < 0 ? 1.8 : 1.2) * sizePt, side < 0 ? 'mm' : 'in'),
  ];
}
