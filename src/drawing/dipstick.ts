/**
 * A strip to be laid along a dipstick and copied: on its left edge what the tank holds in the first units, on its right edge
 * in the second, down its middle the depth, each mark at its true distance from the foot.
 *
 * One unit of the drawing is a point; a depth of `d` millimetres is exactly `d × 72 / 25.4` points above the foot of the
 * stick. A stick longer than a sheet goes over several pieces, which share a stretch with a line to join them at.
 */
import type { FontSet } from '../font/metrics';
import type { Say } from '../language/messages';
import { inks } from './carScale';
import type { Drawing, Shape } from './drawing';
import { ptPerMm } from './printedSize';
import { polyline, stroke, type TextShape, text } from './shapes';
import { spreadLabels } from './spreadLabels';
import { wrapLine } from './wrapLine';

/** One mark of a scale: how deep, and its figure; a mark without a figure is a fine one. */
export interface DipstickMark {
  readonly depthMm: number;
  readonly words: string;
}

/** One of the three scales of a strip: what it counts, and its marks. */
export interface DipstickScale {
  readonly unit: string;
  readonly marks: readonly DipstickMark[];
}

/** What a strip is drawn from. */
export interface DipstickInput {
  readonly name: string;
  /** Which tank; the first line of the head. */
  readonly tank: string;
  /** Further lines of the head: the car, its issue and fingerprint, which piece it is. */
  readonly head: readonly string[];
  /** Edges; the right one is left bare if the car prints in one system of units. */
  readonly left: DipstickScale;
  readonly right?: DipstickScale;
  /** Depths, down the middle. */
  readonly depths: DipstickScale;
  /** Lines across the whole strip, each with its name, such as where the reserve begins. */
  readonly levels: readonly DipstickMark[];
  /** Depths under which the strip is grey, and under which it is light grey. */
  readonly cannotBeDrawnMm: number;
  readonly reserveMm: number;
  /** The part of the stick on this piece. */
  readonly fromMm: number;
  readonly toMm: number;
  /** Lines at which this piece is joined to the next, with their letter. */
  readonly joins: readonly DipstickMark[];
  /** What stands below the strip: that the stick ends there, or that it goes on. */
  readonly foot: string;
  /** Words for whoever cannot see it. */
  readonly say: Say;
}

/** Width of a strip: room for a figure on each edge and for depths and names between. */
export const stripWidthPt = 48 * ptPerMm;

/** Room of the head above the strip and of the foot below it. */
export const stripEndsPt = { head: 84, foot: 18 } as const;

const sizePt = 9;
const smallPt = 8;
const middle = stripWidthPt / 2;

/** Where a depth stands on the strip, in points from the top of the drawing. */
export function depthY({ toMm }: Pick<DipstickInput, 'toMm'>, depthMm: number): number {
  return stripEndsPt.head + (toMm - depthMm) * ptPerMm;
}

/** Height of the drawing of a stretch of stick. */
export function stripHeightPt({ fromMm, toMm }: Pick<DipstickInput, 'fromMm' | 'toMm'>): number {
  return stripEndsPt.head + (toMm - fromMm) * ptPerMm + stripEndsPt.foot;
}

/** Draws the strip at its true size. Throws if it is not between two depths. */
export function drawDipstick(input: DipstickInput, fonts: FontSet): Drawing {
  const { fromMm, toMm, left, right, depths } = input;
  if (!(fromMm >= 0 && toMm > fromMm)) throw new RangeError(`a strip cannot go from ${fromMm} to ${toMm} mm`);
  const names = levelNames(input, fonts);
  return {
    name: input.name,
    widthPt: stripWidthPt,
    heightPt: stripHeightPt(input),
    alt: altWords(input),
    shapes: [
      ...shaded(input),
      ...outline(input),
      ...heading(input, fonts),
      ...levelLines(input),
      ...joinLines(input, fonts),
      ...edgeMarks(left, 'left', input, fonts),
      ...(right === undefined ? [] : edgeMarks(right, 'right', input, fonts)),
      ...depthMarks(depths, names, input, fonts),
      ...names.flatMap(({ ground, words }) => [...ground, words]),
      ...footOf(input),
    ],
  };
}

function line(from: number, y: number, to: number, widthPt: number, dashPt?: readonly number[]): Shape {
  const ends = [
    { x: from, y },
    { x: to, y },
  ];
  return polyline(ends, { colour: inks.line, widthPt, ...(dashPt === undefined ? {} : { dashPt }) });
}

const within = ({ fromMm, toMm }: DipstickInput, depthMm: number): boolean =>
  depthMm >= fromMm - 1e-6 && depthMm <= toMm + 1e-6;

/** Both long edges, and the head's frame. */
function outline(input: DipstickInput): readonly Shape[] {
  const paint = { stroke: stroke(0.5, inks.soft) };
  const top = stripEndsPt.head;
  const height = depthY(input, input.fromMm) - 0.25;
  return [
    { kind: 'rect', x: 0.25, y: 0.25, width: stripWidthPt - 0.5, height, paint },
    polyline(
      [
        { x: 0, y: top },
        { x: stripWidthPt, y: top },
      ],
      stroke(0.5, inks.soft),
    ),
  ];
}

/** What cannot be drawn is grey, the reserve above it light grey. */
function shaded(input: DipstickInput): readonly Shape[] {
  const band = (toDepthMm: number, fill: `#${string}`): readonly Shape[] => {
    const depth = Math.min(toDepthMm, input.toMm);
    if (depth <= input.fromMm) return [];
    const y = depthY(input, depth);
    const height = depthY(input, input.fromMm) - y;
    return [{ kind: 'rect', x: 0, y, width: stripWidthPt, height, paint: { fill } }];
  };
  return [...band(input.reserveMm, inks.body), ...band(input.cannotBeDrawnMm, inks.tyre)];
}

interface HeadLine {
  readonly words: string;
  readonly face: 'narrow' | 'narrow-bold';
  readonly sizePt: number;
}

const mostHeadLines = 6;
const headLeadingPt = 11;

/** The lines of a head in the largest type in which they all stand; nothing if there are too many words. */
export function headLines(
  { tank, head }: Pick<DipstickInput, 'tank' | 'head'>,
  fonts: FontSet,
): readonly HeadLine[] | undefined {
  const room = stripWidthPt - 8;
  for (const size of [10, sizePt, smallPt]) {
    const set = (words: string, face: HeadLine['face']): readonly HeadLine[] =>
      wrapLine(words, fonts[face], size, room).map((row) => ({ words: row, face, sizePt: size }));
    const rows = [...set(tank, 'narrow-bold'), ...head.flatMap((words) => set(words, 'narrow'))];
    const fits = rows.every((row) => fonts[row.face].widthOf(row.words, size) <= room);
    if (fits && rows.length <= mostHeadLines) return rows;
  }
  return undefined;
}

/** Names the strip, and over each scale what it counts. */
function heading(input: DipstickInput, fonts: FontSet): readonly Shape[] {
  const { tank, left, right, depths } = input;
  const rows = headLines(input, fonts);
  if (rows === undefined) throw new RangeError(`the head of the strip for the ${tank} has too many words`);
  const unit = (words: string, x: number, anchor: TextShape['anchor']): TextShape =>
    text({ x, y: stripEndsPt.head - 4 }, words, { face: 'narrow-bold', sizePt, colour: inks.line, anchor });
  return [
    ...rows.map(({ words, ...look }, index) =>
      text({ x: middle, y: 12 + index * headLeadingPt }, words, {
        ...look,
        colour: inks.line,
        anchor: 'middle',
      }),
    ),
    unit(left.unit, 4, 'start'),
    unit(depths.unit, middle, 'middle'),
    unit(right?.unit ?? '', stripWidthPt - 4, 'end'),
  ].filter((shape) => shape.text !== '');
}

/** The line to cut along; no other line of a strip is half as heavy. */
const footLinePt = 2.4;

const longMark = 13;
const shortMark = 7;

/** Marks from one edge inwards; a figure stands on its line, or beside a line across the strip that would run through it. */
function edgeMarks(
  { marks }: DipstickScale,
  edge: 'left' | 'right',
  input: DipstickInput,
  fonts: FontSet,
): readonly Shape[] {
  const inwards = (length: number) => (edge === 'left' ? length : stripWidthPt - length);
  const shown = marks.filter(({ depthMm }) => within(input, depthMm));
  const named = shown.filter(({ words }) => words !== '').map(({ depthMm }) => depthY(input, depthMm));
  const half = (fonts['narrow-bold'].capHeight * sizePt) / 2;
  return shown.flatMap(({ depthMm, words }): readonly Shape[] => {
    const y = depthY(input, depthMm);
    if (words === '') return [line(inwards(0), y, inwards(shortMark), 0.6)];
    const mark = line(inwards(0), y, inwards(longMark), 1.1);
    const figures = named.filter((other) => other !== y);
    const middleY = clearMiddle(y, half, { lines: linesAcross(input), taken: [], figures }) ?? y;
    if (cutByEnd(middleY, input)) return [mark];
    const at = { x: inwards(longMark + 2), y: centred(middleY, sizePt, fonts) };
    const anchor = edge === 'left' ? 'start' : 'end';
    return [mark, text(at, words, { face: 'narrow-bold', sizePt, colour: inks.line, anchor })];
  });
}

/** Where the lines across the strip run. They are carried onto the stick, so that no figure stands on one and none is broken. */
function linesAcross(input: DipstickInput): readonly number[] {
  return [...input.levels, ...input.joins]
    .filter(({ depthMm }) => within(input, depthMm))
    .map(({ depthMm }) => depthY(input, depthMm));
}

/** What figures have to keep clear of, down the strip. */
interface InTheWay {
  readonly lines: readonly number[];
  /** Stretches that words take up. */
  readonly taken: readonly { readonly top: number; readonly bottom: number }[];
  /** The middles of figures that stand on their own marks. */
  readonly figures: readonly number[];
}

/** Between a figure and the middle of a line beside it: half the line, and paper. */
const besideLinePt = 1.9;

/** Between a figure and words or a figure above or below it, where there is room. */
const wordsApartPt = 1.5;

/**
 * The middle of a figure that reaches `half` up and down: on its mark at `y`, or as near to it as nothing is in its way, above rather than
 * below. Nothing if that is farther than `farthest`.
 */
function clearMiddle(
  y: number,
  half: number,
  { lines, taken, figures }: InTheWay,
  farthest = Number.POSITIVE_INFINITY,
): number | undefined {
  const fromLine = half + besideLinePt;
  const places = [
    y,
    ...lines.flatMap((at) => [at - fromLine, at + fromLine]),
    ...taken.flatMap(({ top, bottom }) => [top - half - wordsApartPt, bottom + half + wordsApartPt]),
  ];
  const hair = 1e-6;
  const clear = places.filter(
    (at) =>
      Math.abs(at - y) <= farthest &&
      lines.every((each) => Math.abs(each - at) >= fromLine - hair) &&
      taken.every(({ top, bottom }) => at + half < top - 1 || at - half > bottom + 1),
  );
  const crowds = (at: number) =>
    figures.some((each) => Math.abs(each - at) < 2 * half + wordsApartPt) ? 1 : 0;
  const [best] = clear.sort(
    (one, other) => crowds(one) - crowds(other) || Math.abs(one - y) - Math.abs(other - y) || one - other,
  );
  return best;
}

/** Whether a figure would be cut by an end at which another piece goes on; it stands whole on that one. */
function cutByEnd(y: number, input: DipstickInput): boolean {
  const reach = sizePt / 2;
  const above = y - reach < stripEndsPt.head;
  const below = input.fromMm > 0 && y + reach > depthY(input, input.fromMm);
  return above || below;
}

/** The baseline of figures whose middle stands at `y`. */
function centred(y: number, size: number, fonts: FontSet): number {
  return y + (fonts['narrow-bold'].capHeight * size) / 2;
}

/** How far a figure of depth may stand from its mark and still be read with it. */
const farFromMarkPt = 8;

/**
 * Depths down the middle, as heavy as what the edges say: the range table is read by them. A mark that would run into the name of a
 * level is left out.
 */
function depthMarks(
  { marks }: DipstickScale,
  names: readonly LevelName[],
  input: DipstickInput,
  fonts: FontSet,
): readonly Shape[] {
  const letters = input.joins.map(({ depthMm }) => {
    const y = depthY(input, depthMm);
    return { top: y - joinLettersPt, bottom: y + joinLettersPt };
  });
  const taken = [...names, ...letters];
  const half = (fonts['narrow-bold'].capHeight * sizePt) / 2;
  return marks
    .filter(({ depthMm }) => within(input, depthMm))
    .flatMap(({ depthMm, words }): readonly Shape[] => {
      const y = depthY(input, depthMm);
      if (taken.some(({ top, bottom }) => y + 0.5 >= top && y - 0.5 <= bottom)) return [];
      if (words === '') return [line(middle - 11, y, middle - 7, 0.6)];
      const way = { lines: linesAcross(input), taken, figures: [] };
      const middleY = clearMiddle(y, half, way, farFromMarkPt);
      if (middleY === undefined || cutByEnd(middleY, input)) return [line(middle - 11, y, middle - 7, 0.6)];
      const at = { x: middle - 1, y: centred(middleY, sizePt, fonts) };
      const look = { face: 'narrow-bold', sizePt, colour: inks.line, anchor: 'start' } as const;
      return [line(middle - 11, y, middle - 3, 1.1), text(at, words, look)];
    });
}

interface LevelName {
  readonly top: number;
  readonly bottom: number;
  /** White behind the words, where a line across would run through them and there is no room beside it. */
  readonly ground: readonly Shape[];
  readonly words: TextShape;
}

const nameHeight = smallPt + 2;

/** Names of the levels, each below its line where there is room, else as near as they can be to it. */
function levelNames(input: DipstickInput, fonts: FontSet): readonly LevelName[] {
  const levels = input.levels.filter(({ depthMm }) => within(input, depthMm));
  const tops = spreadLabels(
    levels.map(({ depthMm }) => ({
      middle: depthY(input, depthMm) + 1 + nameHeight / 2,
      heightPt: nameHeight,
    })),
    { top: stripEndsPt.head + 1, bottom: depthY(input, input.fromMm) - 1, gapPt: 0.5 },
  );
  return levels.map(({ words }, index) => {
    const top = tops[index] ?? 0;
    return {
      top,
      bottom: top + nameHeight,
      ground: groundOf(words, top, input, fonts),
      words: text({ x: middle, y: top + nameHeight - 2.5 }, words, {
        face: 'narrow',
        sizePt: smallPt,
        colour: inks.line,
        anchor: 'middle',
      }),
    };
  });
}

function groundOf(words: string, top: number, input: DipstickInput, fonts: FontSet): readonly Shape[] {
  const bottom = top + nameHeight;
  if (!linesAcross(input).some((y) => y > top && y < bottom)) return [];
  const width = fonts.narrow.widthOf(words, smallPt) + 4;
  const paint = { fill: inks.paper };
  return [{ kind: 'rect', x: middle - width / 2, y: top, width, height: nameHeight, paint }];
}

function levelLines(input: DipstickInput): readonly Shape[] {
  return input.levels
    .filter(({ depthMm }) => within(input, depthMm))
    .map(({ depthMm }) => line(0, depthY(input, depthMm), stripWidthPt, 1.6));
}

/** How far the letters of a join reach from its line. */
const joinLettersPt = 8.5;

/** A dashed line from edge to edge, its letter on both sides of it so that it can be read on either piece. */
function joinLines(input: DipstickInput, fonts: FontSet): readonly Shape[] {
  return input.joins.flatMap(({ depthMm, words }): readonly Shape[] => {
    const y = depthY(input, depthMm);
    const look = { face: 'narrow-bold', sizePt: smallPt, colour: inks.line, anchor: 'middle' } as const;
    return [
      line(0, y, stripWidthPt, 0.9, [4, 2]),
      text({ x: middle, y: y - 2.5 }, words, look),
      text({ x: middle, y: y + 2.5 + fonts['narrow-bold'].capHeight * smallPt }, words, look),
    ];
  });
}

/** The foot of the stick is the heaviest line on the strip; what stands below it is cut off. */
function footOf(input: DipstickInput): readonly Shape[] {
  const y = depthY(input, input.fromMm);
  const words = text({ x: middle, y: y + 12 }, input.foot, {
    face: 'narrow',
    sizePt,
    colour: inks.line,
    anchor: 'middle',
  });
  return input.fromMm === 0 ? [line(0, y, stripWidthPt, footLinePt), words] : [words];
}

function altWords(input: DipstickInput): string {
  const { tank, left, fromMm, toMm, say } = input;
  const named = left.marks.filter(({ words, depthMm }) => words !== '' && within(input, depthMm));
  const mm = (depthMm: number, decimals: number) => `${depthMm.toFixed(decimals)}\u00a0mm`;
  const list = named.map(({ depthMm, words }) =>
    say('strip-mark', { amount: `${words} ${left.unit}`, depth: mm(depthMm, 1) }),
  );
  return say('strip-picture', { tank, from: mm(fromMm, 0), to: mm(toMm, 0), list: list.join(', ') });
}
