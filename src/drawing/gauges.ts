/**
 * The gauges as they should read: dials with their band and their red line; glasses and indicators beside
 * what is to be seen on them.
 */
import type { FontSet } from '../font/metrics';
import type { Say } from '../language/messages';
import { inks } from './carScale';
import type { Drawing, Shape } from './drawing';
import { roundStep, scaleNumber, stepsTo } from './scaleSteps';
import { box, circle, type Point, polyline, stroke, text } from './shapes';
import { wrapLine } from './wrapLine';

/** What a dial is marked with, all in `unit`. */
export interface DialScale {
  readonly unit: string;
  readonly from?: number;
  readonly to?: number;
  readonly redLine?: number;
}

/** One gauge. */
export interface GaugePicture {
  /** Empty if it has none. */
  readonly tag: string;
  readonly name: string;
  readonly kind: 'dial' | 'glass' | 'indicator';
  /** For a dial whose figures are known. */
  readonly scale?: DialScale;
  /** What it should show, in lines to stand under it. */
  readonly says: readonly string[];
}

/** All gauges of a car. */
export interface GaugesInput {
  readonly name: string;
  /** The car. */
  readonly of: string;
  /** The words of the drawing. */
  readonly say: Say;
  /** Between whole and parts of a number. */
  readonly decimal: string;
  readonly gauges: readonly GaugePicture[];
  readonly widthPt?: number;
}

/** Whether there is something to draw: a dial without figures has no scale, and an empty one would say nothing. */
export function isDrawn({ kind, scale }: GaugePicture): boolean {
  return kind !== 'dial' || scale !== undefined;
}

/** So many stand in a row, or one more where that saves a row. */
const wishedInRow = 4;
const radius = 45;
const sizePt = 8.5;
const leadingPt = 10.5;
const gapPt = 12;

/** Draws them in rows, but for those that there is nothing to draw of. */
export function drawGauges(all: GaugesInput, fonts: FontSet): Drawing {
  const input = { ...all, gauges: all.gauges.filter(isDrawn) };
  const widthPt = input.widthPt ?? 480;
  const perRow = inRowOf(input.gauges.length);
  const cellPt = widthPt / perRow;
  const labels = input.gauges.map((gauge) => labelOf(gauge, fonts, cellPt - 10));
  const shapes: Shape[] = [];
  let y = 4;
  for (let first = 0; first < input.gauges.length; first += perRow) {
    const row = input.gauges.slice(first, first + perRow);
    for (const [index, gauge] of row.entries()) {
      const middle = { x: cellPt * (index + 0.5), y: y + radius };
      shapes.push(...pictureOf(gauge, middle, fonts, input.decimal));
      shapes.push(...labelShapes(labels[first + index] ?? [], { x: middle.x, y: y + 2 * radius + 13 }));
    }
    const lines = Math.max(...row.map((_, index) => labels[first + index]?.length ?? 0));
    y += 2 * radius + 7 + lines * leadingPt + gapPt;
  }
  return { name: input.name, widthPt, heightPt: Math.max(1, y - gapPt + 4), alt: altWords(input), shapes };
}

function inRowOf(count: number): number {
  const closer = wishedInRow + 1;
  return Math.ceil(count / closer) < Math.ceil(count / wishedInRow) ? closer : wishedInRow;
}

interface LabelLine {
  readonly text: string;
  readonly bold: boolean;
}

function labelOf({ tag, name, says }: GaugePicture, fonts: FontSet, widthPt: number): readonly LabelLine[] {
  const head = wrapLine(tag === '' ? name : `${tag} ${name}`, fonts['narrow-bold'], sizePt, widthPt, widthPt);
  const rest = says.flatMap((line) => wrapLine(line, fonts.narrow, sizePt, widthPt, widthPt));
  return [
    ...head.map((line) => ({ text: line, bold: true })),
    ...rest.map((line) => ({ text: line, bold: false })),
  ];
}

function labelShapes(lines: readonly LabelLine[], { x, y }: Point): readonly Shape[] {
  return lines.map(({ text: words, bold }, index) =>
    text({ x, y: y + index * leadingPt }, words, {
      face: bold ? 'narrow-bold' : 'narrow',
      sizePt,
      colour: inks.line,
      anchor: 'middle',
    }),
  );
}

function pictureOf(gauge: GaugePicture, middle: Point, fonts: FontSet, decimal: string): readonly Shape[] {
  switch (gauge.kind) {
    case 'dial':
      return gauge.scale === undefined
        ? []
        : [...dialCase(middle), ...dialMarks(gauge.scale, middle, fonts, decimal)];
    case 'indicator':
      return [
        ...dialCase(middle),
        polyline([middle, { x: middle.x + 18, y: middle.y - 22 }], stroke(2, inks.line)),
      ];
    case 'glass':
      return glass(middle);
  }
}

function dialCase(middle: Point): readonly Shape[] {
  return [
    circle(middle, radius, { fill: inks.paper, stroke: stroke(1.6, inks.line) }),
    circle(middle, radius - 3, { stroke: stroke(0.4, inks.soft) }),
  ];
}

/** Three quarters of a circle, from lower left to lower right. */
const sweep = { from: -135, to: 135 };

/** A point of the dial, `share` of the scale from its beginning. */
function onDial(middle: Point, share: number, r: number): Point {
  const turn = ((sweep.from + (sweep.to - sweep.from) * share) * Math.PI) / 180;
  return { x: middle.x + Math.sin(turn) * r, y: middle.y - Math.cos(turn) * r };
}

function arc(middle: Point, from: number, to: number, r: number): readonly Point[] {
  const steps = Math.max(2, Math.ceil((to - from) * 60));
  return Array.from({ length: steps + 1 }, (_, index) =>
    onDial(middle, from + ((to - from) * index) / steps, r),
  );
}

/** The last mark of a dial: a good quarter past the highest figure that matters, on a round step. */
export function dialEnd({ from = 0, to = 0, redLine = 0 }: DialScale): {
  readonly most: number;
  readonly step: number;
} {
  const highest = Math.max(from, to, redLine);
  const step = roundStep(highest * 1.25, 6);
  return { most: stepsTo(highest * 1.25, step).at(-1) ?? highest, step };
}

function dialMarks(scale: DialScale, middle: Point, fonts: FontSet, decimal: string): readonly Shape[] {
  const { most, step } = dialEnd(scale);
  const { from, to, redLine, unit } = scale;
  const small = stepsTo(most, step / 5).map((value) => tick(middle, value / most, 3, 0.5));
  const large = stepsTo(most, step).map((value) => tick(middle, value / most, 6, 1));
  const numbers = stepsTo(most, step).map((value) =>
    number(middle, value / most, scaleNumber(value, step, decimal), fonts),
  );
  const band =
    from === undefined || to === undefined
      ? []
      : [
          polyline(arc(middle, from / most, to / most, radius - 6), { colour: inks.line, widthPt: 6.5 }),
          ...needle(middle, (from + to) / 2 / most),
        ];
  const red = redLine === undefined ? [] : redMark(middle, redLine / most);
  const words = text({ x: middle.x, y: middle.y + radius * 0.62 }, unit, {
    face: 'narrow',
    sizePt: 8,
    colour: inks.line,
    anchor: 'middle',
  });
  return [...small, ...large, ...band, ...red, ...numbers, words];
}

function tick(middle: Point, share: number, length: number, widthPt: number): Shape {
  return polyline(
    [onDial(middle, share, radius - 4), onDial(middle, share, radius - 4 - length)],
    stroke(widthPt, inks.line),
  );
}

function number(middle: Point, share: number, words: string, fonts: FontSet): Shape {
  const at = onDial(middle, share, radius - 18);
  const look = { face: 'narrow', sizePt: 8, colour: inks.line, anchor: 'middle' } as const;
  return text({ x: at.x, y: at.y + (fonts.narrow.capHeight * 8) / 2 }, words, look);
}

/** Across the edge of the dial, with a bar beyond it. */
function redMark(middle: Point, share: number): readonly Shape[] {
  return [
    polyline([onDial(middle, share, radius - 9), onDial(middle, share, radius + 4)], stroke(4.4, inks.paper)),
    polyline([onDial(middle, share, radius - 9), onDial(middle, share, radius + 3.5)], {
      colour: inks.line,
      widthPt: 2.6,
    }),
    polyline(arc(middle, share - 0.02, share + 0.02, radius + 2.6), { colour: inks.line, widthPt: 2.4 }),
  ];
}

function needle(middle: Point, share: number): readonly Shape[] {
  return [
    polyline([onDial(middle, share, -8), onDial(middle, share, radius - 25)], stroke(1.8, inks.line)),
    circle(middle, 3, { fill: inks.line }),
  ];
}

function glass({ x, y }: Point): readonly Shape[] {
  const fitting = (level: number): Shape =>
    box({ x, y: level }, 20, 9, { fill: inks.tyre, stroke: stroke(0.9, inks.line) }, 2);
  return [
    box({ x, y }, 12, 74, { fill: inks.paper, stroke: stroke(1.1, inks.line) }, 3),
    // filled to its middle: an empty one is the picture of trouble
    box({ x, y: y + 18 }, 9, 36, { fill: inks.soft }, 1),
    ...[-24, -12, 0, 12, 24].map((down) =>
      polyline(
        [
          { x: x + 9, y: y + down },
          { x: x + (down === 0 ? 19 : 14), y: y + down },
        ],
        stroke(0.8, inks.line),
      ),
    ),
    fitting(y - 39),
    fitting(y + 39),
  ];
}

function altWords({ of, gauges, say }: GaugesInput): string {
  const list = gauges.map(({ tag, name, says }) => {
    const head = tag === '' ? name : `${tag} ${name}`;
    return says.length === 0 ? head : `${head}: ${says.join(', ')}`;
  });
  return say('gauges-picture', { car: of, list: list.join('. ') });
}
