/**
 * A tag to hang on a valve, at its true size: front and back beside each other with the fold between them, so that both
 * sides come to lie on each other whatever the printer does. Round or oblong, with its hole at the end away from the fold.
 */
import type { FontSet } from '../font/metrics';
import type { Say } from '../language/messages';
import { inks } from './carScale';
import type { Drawing, Shape, Stroke } from './drawing';
import { placeShape } from './place';
import { ptPerMm } from './printedSize';
import { circle, polyline, stroke, text } from './shapes';
import { firstLine } from './wrapLine';

/** How a tag is cut. */
export type TagForm = 'round' | 'oblong';

/** What a tag is drawn from. */
export interface ValveTagInput {
  readonly name: string;
  readonly form: TagForm;
  /** What stands on it in large letters, on both sides, such as `F1`. */
  readonly tag: string;
  readonly valve: string;
  /** On the back: what it does, how it stands when the car is put away, and which car and issue it is of. */
  readonly does: string;
  readonly parked: string;
  readonly issue: string;
  /** Words for whoever cannot see it. */
  readonly say: Say;
}

/** Smallest type of each part, in points, from how far away it is read. */
export interface TagType {
  readonly tagPt: number;
  readonly namePt: number;
  readonly backPt: number;
}

/** Outer size of one side. */
export interface TagSize {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** Sizes that tags are made in, from small to large. */
export const tagSizes: Readonly<Record<TagForm, readonly TagSize[]>> = {
  round: [38, 47, 60, 75].map((side) => ({ widthMm: side, heightMm: side })),
  oblong: [
    { widthMm: 60, heightMm: 30 },
    { widthMm: 75, heightMm: 38 },
    { widthMm: 90, heightMm: 45 },
  ],
};

const holeMm = 2.5;
/** From the end of the tag to the middle of its hole, which keeps a rim of metal or film around it. */
const holeInMm = 5.5;
/** No word comes nearer to the hole, since a punch may miss its mark by a millimetre. */
const holeClearMm = 2;
const edgeMm = 2;

/** Draws front and back at their true size; nothing if the words do not fit in type that can be read. */
export function drawValveTag(
  input: ValveTagInput,
  size: TagSize,
  type: TagType,
  fonts: FontSet,
): Drawing | undefined {
  const [widthPt, heightPt] = [size.widthMm * ptPerMm, size.heightMm * ptPerMm];
  const side = { form: input.form, widthPt, heightPt };
  const front = setWords(frontLines(input, type), { ...side, holeAt: 'left' }, fonts);
  const back = setWords(backLines(input, type), { ...side, holeAt: 'right' }, fonts);
  if (front === undefined || back === undefined) return undefined;
  const onBack = [...sideShapes({ ...side, holeAt: 'right' }), ...back];
  return {
    name: input.name,
    widthPt: 2 * widthPt,
    heightPt,
    alt: altWords(input),
    shapes: [
      ...sideShapes({ ...side, holeAt: 'left' }),
      ...front,
      ...onBack.map((shape) => placeShape(shape, 1, widthPt, 0)),
      foldLine(widthPt, heightPt),
    ],
  };
}

interface Side {
  readonly form: TagForm;
  readonly widthPt: number;
  readonly heightPt: number;
  /** The end of an oblong tag that its hole is at: away from the fold. */
  readonly holeAt: 'left' | 'right';
}

/** The line to cut along and the hole to punch. */
function sideShapes({ form, widthPt, heightPt, holeAt }: Side): readonly Shape[] {
  const edge = stroke(0.5, inks.soft);
  const across = holeAt === 'left' ? holeInMm * ptPerMm : widthPt - holeInMm * ptPerMm;
  const hole = form === 'round' ? { x: widthPt / 2, y: holeInMm * ptPerMm } : { x: across, y: heightPt / 2 };
  const rim: Shape =
    form === 'round'
      ? circle({ x: widthPt / 2, y: heightPt / 2 }, widthPt / 2 - 0.25, { stroke: edge })
      : openAtFold(widthPt, heightPt, holeAt, edge);
  const cross = 1.2 * ptPerMm;
  const arm = (dx: number, dy: number): Shape =>
    polyline(
      [
        { x: hole.x - dx, y: hole.y - dy },
        { x: hole.x + dx, y: hole.y + dy },
      ],
      { colour: inks.soft, widthPt: 0.4 },
    );
  return [rim, circle(hole, holeMm * ptPerMm, { stroke: edge }), arm(cross, 0), arm(0, cross)];
}

/** The three edges that an oblong side is cut along. The fourth is the fold: a full line under its dashes would read as one to cut. */
function openAtFold(widthPt: number, heightPt: number, holeAt: Side['holeAt'], edge: Stroke): Shape {
  const [outer, fold] = holeAt === 'left' ? [0.25, widthPt] : [widthPt - 0.25, 0];
  const corners = [
    { x: fold, y: 0.25 },
    { x: outer, y: 0.25 },
    { x: outer, y: heightPt - 0.25 },
    { x: fold, y: heightPt - 0.25 },
  ];
  return polyline(corners, edge);
}

/** Dashed: fold, do not cut. */
function foldLine(x: number, heightPt: number): Shape {
  return polyline(
    [
      { x, y: 0 },
      { x, y: heightPt },
    ],
    { colour: inks.line, widthPt: 0.6, dashPt: [3, 3] },
  );
}

/** One paragraph of a side: its type shrinks from `most` to `least` until the side has room. */
interface TagWords {
  readonly words: string;
  readonly bold: boolean;
  readonly most: number;
  readonly least: number;
}

function frontLines({ tag, valve }: ValveTagInput, { tagPt, namePt }: TagType): readonly TagWords[] {
  return [
    { words: tag, bold: true, most: Math.max(36, tagPt), least: tagPt },
    { words: valve, bold: true, most: Math.max(16, namePt), least: namePt },
  ];
}

function backLines(
  { tag, does, parked, issue }: ValveTagInput,
  { namePt, backPt }: TagType,
): readonly TagWords[] {
  return [
    { words: tag, bold: true, most: Math.max(16, namePt), least: namePt },
    { words: does, bold: false, most: Math.max(11, backPt), least: backPt },
    { words: parked, bold: true, most: Math.max(11, backPt), least: backPt },
    { words: issue, bold: false, most: backPt, least: backPt },
  ];
}

const leading = 1.16;
const steps = 8;

/** The largest setting of the words that the side has room for; nothing if the smallest has not. */
function setWords(parts: readonly TagWords[], side: Side, fonts: FontSet): readonly Shape[] | undefined {
  for (let step = 0; step <= steps; step += 1) {
    const share = 1 - step / steps;
    const sized = parts.map((part) => ({ ...part, sizePt: part.least + (part.most - part.least) * share }));
    const set = setAt(sized, side, fonts);
    if (set !== undefined) return set;
  }
  return undefined;
}

/** Where a block of words may begin on a round tag: so many heights from the top of its room to its middle. */
const beginnings = 12;

/** The words at their sizes, as near to the middle of the room that hole and rim leave as they go; nothing if they do not. */
function setAt(
  parts: readonly (TagWords & { readonly sizePt: number })[],
  side: Side,
  fonts: FontSet,
): readonly Shape[] | undefined {
  const { form, heightPt } = side;
  const top = (form === 'round' ? holeInMm + holeMm + 1 : edgeMm) * ptPerMm;
  const bottom = heightPt - edgeMm * ptPerMm;
  if (form === 'oblong') {
    const lines = linesFrom(parts, top, side, fonts);
    const spare = bottom - top - heightOf(lines ?? []);
    return lines === undefined || spare < 0 ? undefined : placed(lines, top + spare / 2);
  }
  // where the block begins decides how wide its lines are, and so how many there are
  const settings = Array.from({ length: beginnings }, (_, index) => {
    const from = top + ((bottom - top) / 2) * (index / beginnings);
    const lines = linesFrom(parts, from, side, fonts) ?? [];
    return {
      from,
      lines,
      over: from + heightOf(lines) - bottom,
      off: Math.abs(2 * from + heightOf(lines) - top - bottom),
    };
  }).filter(({ lines, over }) => lines.length > 0 && over <= 0);
  const [best] = settings.sort((one, other) => one.off - other.off);
  return best && placed(best.lines, best.from);
}

function heightOf(lines: readonly TagLine[]): number {
  return lines.reduce((sum, { sizePt }) => sum + sizePt * leading, 0);
}

interface TagLine {
  readonly words: string;
  readonly face: 'narrow' | 'narrow-bold';
  readonly sizePt: number;
  readonly middle: number;
}

/** Breaks the words into lines from a height downwards; nothing if a word is wider than the tag where it stands. */
function linesFrom(
  parts: readonly (TagWords & { readonly sizePt: number })[],
  from: number,
  side: Side,
  fonts: FontSet,
): readonly TagLine[] | undefined {
  const lines: TagLine[] = [];
  let y = from;
  for (const { words, bold, sizePt } of parts) {
    const face = bold ? 'narrow-bold' : 'narrow';
    let rest = words;
    while (rest !== '') {
      const { middle, width } = roomAt(y, y + sizePt * leading, side);
      const line = firstLine(rest, fonts[face], sizePt, width);
      if (fonts[face].widthOf(line, sizePt) > width) return undefined;
      lines.push({ words: line, face, sizePt, middle });
      rest = rest.slice(line.length).trimStart();
      y += sizePt * leading;
      if (y > side.heightPt) return undefined;
    }
  }
  return lines;
}

/** How wide a tag is between two heights, less its rim; an oblong one is also less its hole. */
function roomAt(from: number, to: number, { form, widthPt, heightPt, holeAt }: Side) {
  if (form === 'oblong') {
    const hole = (holeInMm + holeMm + holeClearMm) * ptPerMm;
    const width = widthPt - hole - edgeMm * ptPerMm;
    const left = holeAt === 'left' ? hole : edgeMm * ptPerMm;
    return { middle: left + width / 2, width };
  }
  const [radius, centre] = [widthPt / 2 - edgeMm * ptPerMm, heightPt / 2];
  const far = Math.max(Math.abs(from - centre), Math.abs(to - centre));
  return { middle: widthPt / 2, width: far >= radius ? 0 : 2 * Math.sqrt(radius ** 2 - far ** 2) };
}

function placed(lines: readonly TagLine[], from: number): readonly Shape[] {
  let y = from;
  return lines.map(({ words, face, sizePt, middle }) => {
    const at = { x: middle, y: y + sizePt * 0.9 };
    y += sizePt * leading;
    return text(at, words, { face, sizePt, colour: inks.line, anchor: 'middle' });
  });
}

function altWords({ tag, valve, does, parked, issue, say }: ValveTagInput): string {
  return say('tag-picture', { tag, valve, does, parked, issue });
}
