/**
 * A strip to be laid along a dipstick and copied: on its left edge what the tank holds in the first units, on its right edge
 * in the second; between them a line with the depth, in the first unit on its left and in the second on its right; each mark at its true
 * distance from the foot. Names of levels have a column of their own, so that no word is in the way of a mark.
 *
 * One unit of the drawing is a point; a depth of `d` millimetres is exactly `d × 72 / 25.4` points above the foot of the
 * stick. A stick longer than a sheet goes over several pieces, which share a stretch with a line to join them at.
 */
import type { FontSet } from '../font/metrics';
import { inks } from './carScale';
import {
  type DipstickInput,
  type DipstickScale,
  depthY,
  isOnPiece,
  stripEndsPt,
  stripHeightPt,
} from './dipstickInput';
import { drawNames, namesRoom } from './dipstickNames';
import {
  drawScale,
  extentOfScale,
  figurePt,
  type LineLengths,
  lineLengths,
  placeScale,
  unitEdgePt,
} from './dipstickScale';
import type { Drawing, Shape, Stroke } from './drawing';
import { ptPerMm } from './printedSize';
import { polyline, stroke, type TextShape, text } from './shapes';
import { wrapLine } from './wrapLine';

/** Width of a strip, unless its figures need more: as much as lets three stand beside the ruler on letter and on A4. */
export const stripWidthPt = 56 * ptPerMm;

/** Between the figures of the left edge and those of depth, so that two numbers do not read as one; a fine line runs between them. */
const partedPt = 9;
/** Between the names and the scales on both sides of them. */
const namesGapPt = 5;

/** How far across a strip its scales begin; the same on all pieces of a stick, which are laid edge to edge. */
interface Columns {
  readonly widthPt: number;
  /** The line between what is in the tank and how deep it is. */
  readonly parted: number;
  /** The line that depths stand on. */
  readonly spine: number;
  /** Where names stand. */
  readonly names: { readonly left: number; readonly right: number };
}

function columnsOf(input: DipstickInput, fonts: FontSet): Columns {
  const { edge, depth } = lineLengths;
  const extent = (scale: DipstickScale | undefined, lengths: LineLengths) =>
    scale === undefined ? 0 : extentOfScale(scale, lengths, fonts);
  const [left, right] = [extent(input.left, edge), extent(input.right, edge)];
  const [depths, secondDepths] = [extent(input.depths, depth), extent(input.secondDepths, depth)];
  const scales = left + partedPt + depths + secondDepths + right + 2 * namesGapPt;
  const names = namesRoom(input, fonts);
  const widthPt = Math.max(stripWidthPt, scales + names.least);
  // what names on one row leave over is shared between them and the gap
  const spare = Math.max(0, widthPt - scales - names.onOneRow) / 2;
  const spine = left + partedPt + spare + depths;
  return {
    widthPt,
    parted: left + (partedPt + spare) / 2,
    spine,
    names: { left: spine + secondDepths + namesGapPt, right: widthPt - right - namesGapPt },
  };
}

/** How wide the strip becomes. */
export function widthOfStrip(input: DipstickInput, fonts: FontSet): number {
  return columnsOf(input, fonts).widthPt;
}

/** Draws the strip at its true size. Throws if it is not between two depths. */
export function drawDipstick(input: DipstickInput, fonts: FontSet): Drawing {
  const { fromMm, toMm } = input;
  if (!(fromMm >= 0 && toMm > fromMm)) throw new RangeError(`a strip cannot go from ${fromMm} to ${toMm} mm`);
  const columns = columnsOf(input, fonts);
  const { widthPt, parted, spine, names } = columns;
  const drawn = (scale: DipstickScale | undefined, lengths: LineLengths, beginsAt: number, way: 1 | -1) =>
    scale === undefined ? [] : drawScale(placeScale(scale, lengths, input, fonts), beginsAt, way, fonts);
  return {
    name: input.name,
    widthPt,
    heightPt: stripHeightPt(input),
    alt: altWords(input),
    shapes: [
      ...shaded(input, widthPt),
      ...outline(input, widthPt),
      ...heading(input, columns, fonts),
      ...linesOver(input, widthPt),
      downTo(input, parted, stroke(0.4, inks.soft)),
      downTo(input, spine, stroke(0.5, inks.line)),
      ...drawn(input.left, lineLengths.edge, 0, 1),
      ...drawn(input.right, lineLengths.edge, widthPt, -1),
      ...drawn(input.depths, lineLengths.depth, spine, -1),
      ...drawn(input.secondDepths, lineLengths.depth, spine, 1),
      ...drawNames(input, names, fonts),
      ...footOf(input, widthPt),
    ],
  };
}

function line(y: number, to: number, widthPt: number, dashPt?: readonly number[]): Shape {
  const ends = [
    { x: 0, y },
    { x: to, y },
  ];
  return polyline(ends, { colour: inks.line, widthPt, ...(dashPt === undefined ? {} : { dashPt }) });
}

/** A line down the strip, from below its head to its foot. */
function downTo(input: DipstickInput, x: number, look: Stroke): Shape {
  const ends = [
    { x, y: stripEndsPt.head },
    { x, y: depthY(input, input.fromMm) },
  ];
  return polyline(ends, look);
}

/** Both long edges, and the head's frame. */
function outline(input: DipstickInput, widthPt: number): readonly Shape[] {
  const paint = { stroke: stroke(0.5, inks.soft) };
  const top = stripEndsPt.head;
  const height = depthY(input, input.fromMm) - 0.25;
  return [
    { kind: 'rect', x: 0.25, y: 0.25, width: widthPt - 0.5, height, paint },
    polyline(
      [
        { x: 0, y: top },
        { x: widthPt, y: top },
      ],
      stroke(0.5, inks.soft),
    ),
  ];
}

/** What cannot be drawn is grey, the reserve above it light grey. */
function shaded(input: DipstickInput, width: number): readonly Shape[] {
  const band = (toDepthMm: number, fill: `#${string}`): readonly Shape[] => {
    const depth = Math.min(toDepthMm, input.toMm);
    if (depth <= input.fromMm) return [];
    const y = depthY(input, depth);
    const height = depthY(input, input.fromMm) - y;
    return [{ kind: 'rect', x: 0, y, width, height, paint: { fill } }];
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
  for (const size of [10, 9, 8]) {
    const set = (words: string, face: HeadLine['face']): readonly HeadLine[] =>
      wrapLine(words, fonts[face], size, room).map((row) => ({ words: row, face, sizePt: size }));
    const rows = [...set(tank, 'narrow-bold'), ...head.flatMap((words) => set(words, 'narrow'))];
    const fits = rows.every((row) => fonts[row.face].widthOf(row.words, size) <= room);
    if (fits && rows.length <= mostHeadLines) return rows;
  }
  return undefined;
}

/** Names the strip, and over each scale what it counts. */
function heading(input: DipstickInput, { widthPt, spine }: Columns, fonts: FontSet): readonly Shape[] {
  const { tank } = input;
  const rows = headLines(input, fonts);
  if (rows === undefined) throw new RangeError(`the head of the strip for the ${tank} has too many words`);
  const unit = (words: string, x: number, anchor: TextShape['anchor']): TextShape =>
    text({ x, y: stripEndsPt.head - 4 }, words, {
      face: 'narrow-bold',
      sizePt: figurePt,
      colour: inks.line,
      anchor,
    });
  return [
    ...rows.map(({ words, ...look }, index) =>
      text({ x: widthPt / 2, y: 12 + index * headLeadingPt }, words, {
        ...look,
        colour: inks.line,
        anchor: 'middle',
      }),
    ),
    unit(input.left.unit, unitEdgePt, 'start'),
    unit(input.depths.unit, spine - unitEdgePt, 'end'),
    unit(input.secondDepths?.unit ?? '', spine + unitEdgePt, 'start'),
    unit(input.right?.unit ?? '', widthPt - unitEdgePt, 'end'),
  ].filter((shape) => shape.text !== '');
}

/** The line to cut along; no other line of a strip is half as heavy. */
const footLinePt = 2.4;

/** Lines from edge to edge: full ones at the levels, dashed ones where pieces are joined. */
function linesOver(input: DipstickInput, widthPt: number): readonly Shape[] {
  const ys = (marks: DipstickInput['levels']) =>
    marks.filter(({ depthMm }) => isOnPiece(input, depthMm)).map(({ depthMm }) => depthY(input, depthMm));
  return [
    ...ys(input.levels).map((y) => line(y, widthPt, 1.6)),
    ...ys(input.joins).map((y) => line(y, widthPt, 0.9, [4, 2])),
  ];
}

/** The foot of the stick is the heaviest line on the strip; what stands below it is cut off. */
function footOf(input: DipstickInput, widthPt: number): readonly Shape[] {
  const y = depthY(input, input.fromMm);
  const words = text({ x: widthPt / 2, y: y + 12 }, input.foot, {
    face: 'narrow',
    sizePt: 9,
    colour: inks.line,
    anchor: 'middle',
  });
  return input.fromMm === 0 ? [line(y, widthPt, footLinePt), words] : [words];
}

function altWords(input: DipstickInput): string {
  const { tank, left, fromMm, toMm, say } = input;
  const named = left.marks.filter(({ words, depthMm }) => words !== '' && isOnPiece(input, depthMm));
  const mm = (depthMm: number, decimals: number) => `${depthMm.toFixed(decimals)}\u00a0mm`;
  const list = named.map(({ depthMm, words }) =>
    say('strip-mark', { amount: `${words} ${left.unit}`, depth: mm(depthMm, 1) }),
  );
  return say('strip-picture', { tank, from: mm(fromMm, 0), to: mm(toMm, 0), list: list.join(', ') });
}
