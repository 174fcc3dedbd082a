/**
 * One scale of a dipstick strip: its lines, each at its true height, and their figures. A figure stands level with its line, unless a line
 * across the strip would run through it: then it stands beside that line, and its own is short, with a fine leader from its end to the figure.
 */
import type { FontSet } from '../font/metrics';
import { inks } from './carScale';
import { clearMiddle } from './clearPlace';
import {
  type DipstickInput,
  type DipstickScale,
  depthY,
  goesOnAbove,
  isOnPiece,
  linesAcross,
  type ScaleMark,
  stripEndsPt,
} from './dipstickInput';
import type { Shape } from './drawing';
import { polyline, text } from './shapes';

/** Size of all figures of a strip, in points. */
export const figurePt = 9;

const face = 'narrow-bold';

/** Lengths of the lines of a scale, in points. */
export interface LineLengths {
  readonly longPt: number;
  readonly shortPt: number;
}

/** Lines at an edge of the strip, and at the line of depth between the edges. */
export const lineLengths = {
  edge: { longPt: 11, shortPt: 6 },
  depth: { longPt: 8, shortPt: 4 },
} as const satisfies Readonly<Record<string, LineLengths>>;

/** Between the edge of the strip and the unit over a scale, in points. */
export const unitEdgePt = 4;
/** From the end of a line to its figure, in points. */
const figureGapPt = 2;
/** The part of a long line that is left where a leader goes on from it to its figure. */
const beforeLeader = 0.5;
/** From the end of a leader to its figure, in points. */
const leaderGapPt = 1.2;
/** A figure no farther from the height of its line than this is level with it. */
const levelPt = 0.5;

/** A mark with all that is known of it before it is known where its scale begins. */
interface PlacedMark {
  readonly y: number;
  readonly lengthPt: number;
  readonly heavy: boolean;
  readonly figure?: { readonly words: string; readonly middleY: number };
}

/** A scale with its figures in their places. */
export interface PlacedScale {
  readonly marks: readonly PlacedMark[];
  /** How far from where it begins its figures stand. */
  readonly figuresPt: number;
}

/** Finds the places of the figures of a scale. */
export function placeScale(
  { marks }: DipstickScale,
  lengths: LineLengths,
  input: DipstickInput,
  fonts: FontSet,
): PlacedScale {
  const half = (fonts[face].capHeight * figurePt) / 2;
  const lines = linesAcross(input);
  const room = {
    top: stripEndsPt.head + 1,
    bottom: depthY(input, input.fromMm) - 1,
  };
  const stretchOf = (middleY: number) => ({ top: middleY - half, bottom: middleY + half });
  const shown = marks.filter(({ depthMm }) => isOnPiece(input, depthMm));
  const figured = shown
    .filter(({ words }) => words !== '')
    .map((mark) => ({ mark, y: depthY(input, mark.depthMm) }))
    .filter(({ y }) => !isOnOtherPiece(y, input));
  // those that can stand level with their line do; the others then find their places between them
  const isLevel = (y: number) => clearMiddle(y, half, { lines, taken: [], room }) === y;
  const middles = new Map(figured.filter(({ y }) => isLevel(y)).map(({ mark, y }) => [mark, y]));
  for (const { mark, y } of figured) {
    if (middles.has(mark)) continue;
    const taken = [...middles.values()].map(stretchOf);
    middles.set(mark, clearMiddle(y, half, { lines, taken, room }));
  }
  const placed = shown.map((mark): PlacedMark => {
    const y = depthY(input, mark.depthMm);
    const lengthPt = lengthOf(mark, lengths);
    const middleY = middles.get(mark);
    const line = { y, heavy: mark.words !== '' };
    if (middleY === undefined) return { ...line, lengthPt };
    const figure = { words: mark.words, middleY };
    return { ...line, figure, lengthPt: isLevelWith(y, middleY) ? lengthPt : lengthPt * beforeLeader };
  });
  return { marks: placed, figuresPt: lengths.longPt + figureGapPt };
}

/** How far a scale reaches from where it begins, with any figure of its own and with its unit; the same on all pieces of a stick. */
export function extentOfScale(
  { unit, marks }: DipstickScale,
  { longPt }: LineLengths,
  fonts: FontSet,
): number {
  const widthOf = (words: string) => fonts[face].widthOf(words, figurePt);
  const figures = marks.map(({ words }) => widthOf(words));
  return Math.max(unitEdgePt + widthOf(unit), longPt + figureGapPt + Math.max(0, ...figures));
}

/** Draws a scale from the place across the strip where it begins, to the right or to the left. */
export function drawScale(
  { marks, figuresPt }: PlacedScale,
  beginsAt: number,
  way: 1 | -1,
  fonts: FontSet,
): readonly Shape[] {
  const inwards = (pt: number) => beginsAt + way * pt;
  const down = (fonts[face].capHeight * figurePt) / 2;
  return marks.flatMap(({ y, lengthPt, heavy, figure }): readonly Shape[] => {
    const end = { x: inwards(lengthPt), y };
    const line = polyline([{ x: inwards(0), y }, end], {
      colour: inks.line,
      widthPt: heavy ? 1.1 : 0.6,
    });
    if (figure === undefined) return [line];
    const { words, middleY } = figure;
    const said = text({ x: inwards(figuresPt), y: middleY + down }, words, {
      face,
      sizePt: figurePt,
      colour: inks.line,
      anchor: way === 1 ? 'start' : 'end',
    });
    if (isLevelWith(y, middleY)) return [line, said];
    const to = { x: inwards(figuresPt - leaderGapPt), y: middleY };
    return [line, polyline([end, to], { colour: inks.line, widthPt: 0.5 }), said];
  });
}

const isLevelWith = (y: number, middleY: number): boolean => Math.abs(middleY - y) <= levelPt;

function lengthOf({ reach, words }: ScaleMark, { longPt, shortPt }: LineLengths): number {
  if (reach !== undefined) return reach * longPt;
  return words === '' ? shortPt : longPt;
}

/** Whether a figure would be cut by an end at which another piece goes on; it stands whole on that one. */
function isOnOtherPiece(y: number, input: DipstickInput): boolean {
  const reach = figurePt / 2;
  const above = goesOnAbove(input) && y - reach < stripEndsPt.head;
  const below = input.fromMm > 0 && y + reach > depthY(input, input.fromMm);
  return above || below;
}
