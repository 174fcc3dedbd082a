/**
 * A strip to be laid along a dipstick and copied: depth marks on both edges at their true distances, what the tank
 * holds at each, and a rule along the middle to check the print with. One unit of the drawing is a point; a depth of
 * `d` millimetres is exactly `d × 72 / 25.4` points above the zero line.
 */
import type { FontSet } from '../font/metrics';
import { inks } from './carScale';
import type { Drawing, Shape } from './drawing';
import { ptPerMm } from './printedSize';
import { type Point, polyline, stroke, text } from './shapes';

/** One mark: how deep, and the words for the left and the right edge; a mark without words is a fine one. */
export interface DipstickMark {
  readonly depthMm: number;
  readonly left: string;
  readonly right: string;
}

/** What a strip is drawn from. */
export interface DipstickInput {
  readonly name: string;
  /** The tank, as it stands at the head of the strip. */
  readonly tank: string;
  /** The units of the two edges, as `US gal` and `L`; the second may be empty. */
  readonly units: readonly [left: string, right: string];
  readonly marks: readonly DipstickMark[];
  /** Depths under which nothing can be drawn and under which the reserve begins. */
  readonly cannotBeDrawnMm: number;
  readonly reserveMm: number;
  /** The part of the stick on this strip; a long stick goes over several. */
  readonly fromMm: number;
  readonly toMm: number;
  /** Said at the head, such as `sheet 1 of 2`; may be empty. */
  readonly note: string;
}

/** Width of a strip: the girth of a stick and room for figures on both edges. */
export const stripWidthPt = 40 * ptPerMm;

const head = 62;
const foot = 26;
const sizePt = 9;

/** Where a depth stands on the strip, in points from its top. */
export function depthY({ toMm }: Pick<DipstickInput, 'toMm'>, depthMm: number): number {
  return head + (toMm - depthMm) * ptPerMm;
}

/** Draws the strip at its true size. Throws if it is not between two depths. */
export function drawDipstick(input: DipstickInput, fonts: FontSet): Drawing {
  const { fromMm, toMm } = input;
  if (!(fromMm >= 0 && toMm > fromMm)) throw new RangeError(`a strip cannot go from ${fromMm} to ${toMm} mm`);
  const bottom = depthY(input, fromMm);
  return {
    name: input.name,
    widthPt: stripWidthPt,
    heightPt: bottom + foot,
    alt: altWords(input),
    shapes: [
      ...shaded(input),
      outline(bottom),
      ...heading(input, fonts),
      ...checkRule(input, bottom),
      ...marksOf(input, fonts),
      ...(fromMm === 0 ? [line(0, bottom, stripWidthPt, 2)] : []),
      text({ x: stripWidthPt / 2, y: bottom + 12 }, fromMm === 0 ? 'end of the stick' : 'goes on below', {
        face: 'narrow',
        sizePt,
        colour: inks.line,
        anchor: 'middle',
      }),
    ],
  };
}

function line(from: number, y: number, to: number, widthPt: number): Shape {
  return polyline(
    [
      { x: from, y },
      { x: to, y },
    ],
    { colour: inks.line, widthPt },
  );
}

function outline(bottom: number): Shape {
  const paint = { stroke: stroke(0.5, inks.soft) };
  return { kind: 'rect', x: 0.25, y: 0.25, width: stripWidthPt - 0.5, height: bottom + foot - 0.5, paint };
}

/** What cannot be drawn is grey; up to the reserve the edges are barred. */
function shaded(input: DipstickInput): readonly Shape[] {
  const band = (toDepthMm: number, x: number, width: number, fill: `#${string}`): readonly Shape[] => {
    const depth = Math.min(toDepthMm, input.toMm);
    if (depth <= input.fromMm) return [];
    const y = depthY(input, depth);
    return [{ kind: 'rect', x, y, width, height: depthY(input, input.fromMm) - y, paint: { fill } }];
  };
  return [
    ...band(input.reserveMm, 0, stripWidthPt, inks.body),
    ...band(input.cannotBeDrawnMm, 0, stripWidthPt, inks.tyre),
  ];
}

function heading({ tank, units, note }: DipstickInput, fonts: FontSet): readonly Shape[] {
  const middle = stripWidthPt / 2;
  const fitted = Math.min(11, (11 * (stripWidthPt - 6)) / fonts['narrow-bold'].widthOf(tank, 11));
  const bold = { face: 'narrow-bold', colour: inks.line } as const;
  return [
    text({ x: middle, y: 14 }, tank, { ...bold, sizePt: Math.max(8, fitted), anchor: 'middle' }),
    text({ x: middle, y: 27 }, note, { face: 'narrow', colour: inks.line, sizePt, anchor: 'middle' }),
    text({ x: 4, y: 42 }, units[0], { ...bold, sizePt }),
    text({ x: stripWidthPt - 4, y: 42 }, units[1], { ...bold, sizePt, anchor: 'end' }),
  ].filter((shape) => shape.text !== '');
}

/** Marks of the tank, from both edges inwards; figures stand on their line. */
function marksOf(input: DipstickInput, fonts: FontSet): readonly Shape[] {
  return input.marks
    .filter(({ depthMm }) => depthMm >= input.fromMm && depthMm <= input.toMm)
    .flatMap(({ depthMm, left, right }): readonly Shape[] => {
      const y = depthY(input, depthMm);
      const named = left !== '' || right !== '';
      const length = named ? 13 : 7;
      const baseline = y + (fonts['narrow-bold'].capHeight * sizePt) / 2;
      const words = { face: 'narrow-bold', sizePt, colour: inks.line } as const;
      return [
        line(0, y, length, named ? 1.1 : 0.6),
        line(stripWidthPt - length, y, stripWidthPt, named ? 1.1 : 0.6),
        ...(left === '' ? [] : [text({ x: length + 2, y: baseline }, left, words)]),
        ...(right === ''
          ? []
          : [text({ x: stripWidthPt - length - 2, y: baseline }, right, { ...words, anchor: 'end' })]),
      ];
    });
}

/** Hundred millimetres along the middle, or as many whole tens as the strip is long. */
function checkRule({ fromMm, toMm }: DipstickInput, bottom: number): readonly Shape[] {
  const tens = Math.min(10, Math.floor((toMm - fromMm) / 10));
  if (tens < 1) return [];
  const x = stripWidthPt / 2;
  const at = (mm: number): Point => ({ x, y: bottom - mm * ptPerMm });
  const fine = { colour: inks.soft, widthPt: 0.5 } as const;
  const ticks = Array.from({ length: tens + 1 }, (_, index) => {
    const { y } = at(index * 10);
    return polyline(
      [
        { x: x - 2.5, y },
        { x: x + 2.5, y },
      ],
      fine,
    );
  });
  const words = text({ x: x - 3.5, y: at(tens * 5).y }, `${tens * 10} mm by a rule`, {
    face: 'narrow',
    sizePt: 8,
    colour: inks.soft,
    anchor: 'middle',
  });
  return [polyline([at(0), at(tens * 10)], fine), ...ticks, { ...words, turn: -90 }];
}

function altWords({ tank, units, marks, fromMm, toMm }: DipstickInput): string {
  const named = marks.filter(({ left, depthMm }) => left !== '' && depthMm >= fromMm && depthMm <= toMm);
  const list = named.map(({ depthMm, left }) => `${left} ${units[0]} at ${depthMm.toFixed(1)} mm`);
  return `Dipstick strip at its true size for the ${tank}, from ${fromMm} to ${toMm} mm: ${list.join(', ')}.`;
}
