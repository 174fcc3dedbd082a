/**
 * How far the car goes on full tanks, by liquid and terrain, as bars on one scale; what the reserve adds is hatched.
 */
import type { FontSet } from '../font/metrics';
import type { Say } from '../language/messages';
import { inks } from './carScale';
import type { Drawing, Shape } from './drawing';
import { hatching } from './hatching';
import { roundStep, scaleNumber, stepsTo } from './scaleSteps';
import { polyline, stroke, text } from './shapes';

/** One bar, in the picture's unit. */
export interface RangeBar {
  readonly terrain: string;
  readonly distance: number;
  /** Farther than that on the reserve. */
  readonly reserve: number;
}

/** What the picture is drawn from. */
export interface RangePictureInput {
  readonly name: string;
  /** The car. */
  readonly of: string;
  readonly unit: string;
  /** The words of the drawing. */
  readonly say: Say;
  /** Between whole and parts of a number. */
  readonly decimal: string;
  readonly liquids: readonly { readonly liquid: string; readonly bars: readonly RangeBar[] }[];
  readonly widthPt?: number;
}

const sizePt = 9;
const barPt = 15;
const rowPt = 20;
const headPt = 20;
const nameColumnPt = 62;

/** Draws the bars. */
export function drawRangePicture(input: RangePictureInput, fonts: FontSet): Drawing {
  const widthPt = input.widthPt ?? 480;
  const bars = input.liquids.flatMap((each) => each.bars);
  const farthest = Math.max(1, ...bars.map(({ distance, reserve }) => distance + reserve));
  const step = roundStep(farthest, 8);
  const end = stepsTo(farthest, step).at(-1) ?? farthest;
  const right = widthPt - 24;
  const x = (distance: number): number => nameColumnPt + ((right - nameColumnPt) * distance) / end;
  const shapes: Shape[] = [];
  let y = 2;
  for (const { liquid, bars: own } of input.liquids) {
    shapes.push(
      text({ x: 0, y: y + 12 }, capital(input.say('on-full', { liquid })), {
        face: 'narrow-bold',
        sizePt: 9.5,
        colour: inks.line,
      }),
    );
    y += headPt;
    for (const bar of own) {
      shapes.push(...barShapes(bar, y, x, fonts));
      y += rowPt;
    }
    y += 4;
  }
  const foot = y + 2;
  return {
    name: input.name,
    widthPt,
    heightPt: foot + 30,
    alt: altWords(input),
    shapes: [...scale(x, end, step, foot, input), ...shapes, ...legend(foot + 26, input.say)],
  };
}

function barShapes(
  { terrain, distance, reserve }: RangeBar,
  top: number,
  x: (distance: number) => number,
  fonts: FontSet,
): readonly Shape[] {
  const words = { face: 'narrow', sizePt, colour: inks.line } as const;
  const baseline = top + barPt / 2 + sizePt * 0.34;
  const figure = String(Math.floor(distance + 1e-9));
  const inside = x(distance) - x(0) > fonts['narrow-bold'].widthOf(figure, 10) + 10;
  return [
    text({ x: nameColumnPt - 6, y: baseline }, terrain, { ...words, anchor: 'end' }),
    rect(x(0), top, x(distance), top + barPt, inks.tyre),
    ...hatching(x(distance), top, x(distance + reserve), top + barPt),
    text({ x: inside ? x(distance) - 5 : x(distance + reserve) + 5, y: baseline }, figure, {
      face: 'narrow-bold',
      sizePt: 10,
      colour: inks.line,
      anchor: inside ? 'end' : 'start',
    }),
  ];
}

function rect(left: number, top: number, right: number, bottom: number, fill: `#${string}`): Shape {
  const paint = { fill, stroke: stroke(0.9, inks.line) };
  return { kind: 'rect', x: left, y: top, width: right - left, height: bottom - top, paint };
}

function scale(
  x: (distance: number) => number,
  end: number,
  step: number,
  y: number,
  { unit, decimal }: RangePictureInput,
): readonly Shape[] {
  const words = { face: 'narrow', sizePt: 8.5, colour: inks.line } as const;
  return [
    ...stepsTo(end, step).flatMap((value) => [
      polyline(
        [
          { x: x(value), y: 4 + headPt - 6 },
          { x: x(value), y },
        ],
        stroke(0.3, inks.tyre),
      ),
      text({ x: x(value), y: y + 11 }, scaleNumber(value, step, decimal), { ...words, anchor: 'middle' }),
    ]),
    polyline(
      [
        { x: x(0), y },
        { x: x(end), y },
      ],
      stroke(0.9, inks.line),
    ),
    text({ x: x(0) - 10, y: y + 11 }, unit, { ...words, anchor: 'end' }),
  ];
}

function legend(y: number, say: Say): readonly Shape[] {
  const words = { face: 'narrow', sizePt: 8.5, colour: inks.line } as const;
  const at = nameColumnPt;
  return [
    rect(at, y - 8, at + 22, y, inks.tyre),
    text({ x: at + 27, y }, say('to-run-on', {}), words),
    ...hatching(at + 90, y - 8, at + 112, y),
    text({ x: at + 117, y }, say('reserve-kept-back', {}), words),
  ];
}

function altWords({ of, unit, liquids, say }: RangePictureInput): string {
  const list = liquids.map(({ liquid, bars }) => {
    const far = bars.map(({ terrain, distance }) => `${terrain} ${Math.floor(distance + 1e-9)} ${unit}`);
    return `${say('on-full', { liquid })}: ${far.join(', ')}`;
  });
  return say('range-picture', { car: of, list: list.join('; ') });
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
