/**
 * The boiler's levels and what they are read on, side by side and to one scale of heights: the shell with its water, the
 * glass, the try cocks, where the low-water cut-off acts, and a label for each.
 */
import type { FontSet } from '../font/metrics';
import type { Say } from '../language/messages';
import { inks } from './carScale';
import type { Drawing, Shape } from './drawing';
import { roundStep, scaleNumber, stepsTo } from './scaleSteps';
import { box, circle, type Point, polygon, polyline, stroke, text } from './shapes';
import { spreadLabels } from './spreadLabels';
import { wrapLine } from './wrapLine';

/** What stands at a height: a level of the water, an end of the glass, a cock, the cut-off. */
export type LevelKind = 'level' | 'working' | 'danger' | 'glass' | 'cock' | 'cut';

/** One height with its words. */
export interface LevelMark {
  readonly kind: LevelKind;
  /** Above the mark that all are measured from, in `unit`. */
  readonly at: number;
  readonly name: string;
  /** The height, as it is printed. */
  readonly height: string;
  /** What the car itself says of it, on lines of its own. */
  readonly detail?: string;
}

/** What the drawing is made from. */
export interface LevelsInput {
  /** The boiler's name. */
  readonly of: string;
  /** What every height is measured from. */
  readonly from: string;
  /** The unit of the scale and of `at`. */
  readonly unit: string;
  /** The inside of the boiler's top. */
  readonly top: number;
  readonly marks: readonly LevelMark[];
  /** The words of the drawing. */
  readonly say: Say;
  /** Between whole and parts of a number. */
  readonly decimal: string;
  readonly widthPt?: number;
  /** How tall the boiler is drawn. */
  readonly shellPt?: number;
}

const sizePt = 9;
const leadingPt = 11;
const shell = { left: 34, right: 138 };
const cockX = 156;
const glassX = 196;
const cutX = 226;
const leaderX = 248;
const labelX = 266;
const headPt = 18;
const footPt = 22;

/** Draws it. Its name is `levels`. */
export function drawLevels(input: LevelsInput, fonts: FontSet): Drawing {
  const widthPt = input.widthPt ?? 460;
  const marks = [...input.marks].sort((a, b) => b.at - a.at);
  const named = ofOneHeight(marks);
  const labels = named.map((group) => labelLines(group, fonts, widthPt - labelX - 2));
  const wanted = labels.reduce((sum, lines) => sum + lines.length * leadingPt + 3, 0);
  const shellPt = Math.max(input.shellPt ?? 230, wanted);
  const yOf = (at: number): number => headPt + shellPt * (1 - at / input.top);
  const heightPt = headPt + shellPt + footPt;
  const tops = spreadLabels(
    named.map(([{ at }], index) => ({
      middle: yOf(at),
      heightPt: (labels[index]?.length ?? 0) * leadingPt,
    })),
    { top: 2, bottom: heightPt - 4, gapPt: 3 },
  );
  return {
    name: 'levels',
    widthPt,
    heightPt,
    alt: altWords(input, marks),
    shapes: [
      ...shellShapes(marks, yOf, input.top),
      ...scaleShapes(input, yOf, fonts),
      ...glassShapes(marks, yOf),
      ...marks.flatMap((mark) => markShapes(mark, yOf(mark.at))),
      ...marks.map((mark) => {
        const y = yOf(mark.at);
        return polyline(
          [
            { x: startOf(mark.kind), y },
            { x: leaderX, y },
          ],
          lineOf(mark.kind),
        );
      }),
      ...named.flatMap(([{ at }], index) => {
        const y = yOf(at);
        const lines = labels[index] ?? [];
        const top = tops[index] ?? y;
        return [
          polyline(
            [
              { x: leaderX, y },
              { x: labelX - 3, y: top + leadingPt / 2 },
            ],
            stroke(0.5, inks.soft),
          ),
          ...labelShapes(lines, { x: labelX, y: top + leadingPt - 2.5 }),
        ];
      }),
      text({ x: shell.left, y: heightPt - 4 }, input.say('heights-from', { from: input.from }), {
        face: 'narrow',
        sizePt,
        colour: inks.soft,
      }),
    ],
  };
}

/** Marks that are printed at one height, which share a label. */
type SharedLabel = readonly [LevelMark, ...LevelMark[]];

function ofOneHeight(marks: readonly LevelMark[]): readonly SharedLabel[] {
  const groups = new Map<string, [LevelMark, ...LevelMark[]]>();
  for (const mark of marks) {
    const same = groups.get(mark.height);
    if (same === undefined) groups.set(mark.height, [mark]);
    else same.push(mark);
  }
  return [...groups.values()];
}

function labelLines(marks: SharedLabel, fonts: FontSet, widthPt: number): readonly string[] {
  const wrapped = (words: string) => wrapLine(words, fonts.narrow, sizePt, widthPt, widthPt);
  return marks.flatMap(({ height, name, detail }, index) => [
    ...wrapped(index === 0 ? `${height}: ${name}` : name),
    ...(detail === undefined ? [] : wrapped(detail)),
  ]);
}

function labelShapes(lines: readonly string[], { x, y }: Point): readonly Shape[] {
  return lines.map((line, index) =>
    text({ x, y: y + index * leadingPt }, line, { face: 'narrow', sizePt, colour: inks.line }),
  );
}

/** Where the line of a mark begins: a level at the far side of the shell, anything else at what it is. */
function startOf(kind: LevelKind): number {
  switch (kind) {
    case 'level':
    case 'working':
    case 'danger':
      return shell.left;
    case 'cock':
      return cockX + 6;
    case 'glass':
      return glassX + 9;
    case 'cut':
      return cutX + 6;
  }
}

function lineOf(kind: LevelKind) {
  switch (kind) {
    case 'working':
      return stroke(1.4, inks.line);
    case 'danger':
      return stroke(1.4, inks.line, [1.5, 2.5]);
    case 'level':
      return stroke(0.8, inks.line, [5, 3]);
    default:
      return stroke(0.5, inks.soft);
  }
}

/** The shell in section, water up to the working level. */
function shellShapes(
  marks: readonly LevelMark[],
  yOf: (at: number) => number,
  top: number,
): readonly Shape[] {
  const [upper, lower] = [yOf(top), yOf(0)];
  const middle = (shell.left + shell.right) / 2;
  const working = marks.find(({ kind }) => kind === 'working');
  const water =
    working === undefined
      ? []
      : [
          box(
            { x: middle, y: (yOf(working.at) + lower) / 2 },
            shell.right - shell.left,
            lower - yOf(working.at),
            { fill: inks.seat },
          ),
        ];
  return [
    ...water,
    box(
      { x: middle, y: (upper + lower) / 2 },
      shell.right - shell.left,
      lower - upper,
      { stroke: stroke(1.6, inks.line) },
      3,
    ),
  ];
}

/** The scale at the left edge of the shell, from nought at the mark that all is measured from. */
function scaleShapes(
  { top, unit, decimal }: LevelsInput,
  yOf: (at: number) => number,
  fonts: FontSet,
): readonly Shape[] {
  const step = roundStep(top, 8);
  const steps = stepsTo(top, step).filter((value) => value <= top * (1 + 1e-9));
  const look = { face: 'narrow', sizePt: 8, colour: inks.line, anchor: 'end' } as const;
  return [
    ...steps.flatMap((value) => {
      const y = yOf(value);
      return [
        polyline(
          [
            { x: shell.left - 5, y },
            { x: shell.left, y },
          ],
          stroke(0.7, inks.line),
        ),
        text(
          { x: shell.left - 7, y: y + (fonts.narrow.capHeight * 8) / 2 },
          scaleNumber(value, step, decimal),
          look,
        ),
      ];
    }),
    text({ x: shell.left - 7, y: 8 }, unit, look),
  ];
}

/** The glass between the lowest and the highest water that can be seen in it. */
function glassShapes(marks: readonly LevelMark[], yOf: (at: number) => number): readonly Shape[] {
  const ends = marks.filter(({ kind }) => kind === 'glass').map(({ at }) => yOf(at));
  if (ends.length < 2) return [];
  const [top, bottom] = [Math.min(...ends), Math.max(...ends)];
  const pipe = (y: number): Shape =>
    polyline(
      [
        { x: shell.right, y },
        { x: glassX, y },
      ],
      stroke(2.4, inks.line),
    );
  const fitting = (y: number): Shape =>
    box({ x: glassX, y }, 17, 8, { fill: inks.tyre, stroke: stroke(0.8, inks.line) }, 2);
  const working = marks.find(({ kind }) => kind === 'working');
  const level = working === undefined ? bottom : Math.min(bottom, Math.max(top, yOf(working.at)));
  return [
    pipe(top - 4),
    pipe(bottom + 4),
    box({ x: glassX, y: (level + bottom) / 2 }, 9, bottom - level, { fill: inks.seat }),
    box({ x: glassX, y: (top + bottom) / 2 }, 9, bottom - top, { stroke: stroke(1, inks.line) }),
    fitting(top - 4),
    fitting(bottom + 4),
  ];
}

function markShapes({ kind }: LevelMark, y: number): readonly Shape[] {
  if (kind === 'cock')
    return [
      polyline(
        [
          { x: shell.right, y },
          { x: cockX, y },
        ],
        stroke(2.4, inks.line),
      ),
      circle({ x: cockX, y }, 4.5, { fill: inks.paper, stroke: stroke(1.2, inks.line) }),
      polyline(
        [
          { x: cockX, y: y - 8 },
          { x: cockX, y: y - 4.5 },
        ],
        stroke(1.6, inks.line),
      ),
    ];
  if (kind === 'cut')
    return [
      polygon(
        [
          { x: cutX - 6, y },
          { x: cutX + 6, y: y - 6 },
          { x: cutX + 6, y: y + 6 },
        ],
        { fill: inks.line },
      ),
    ];
  return [];
}

function altWords({ of, from, say }: LevelsInput, marks: readonly LevelMark[]): string {
  const list = marks
    .map(({ name, height, detail }) =>
      [`${height}: ${name}`, ...(detail === undefined ? [] : [detail])].join(', '),
    )
    .join('. ');
  return say('levels-picture', { boiler: of, from, list });
}
