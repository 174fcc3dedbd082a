/**
 * Cards: the largest type that fits between the smallest legible size and the largest useful one.
 *
 * If the smallest size needs more than one face, the card takes more faces, all in the same size; it is never set
 * smaller and never cut. `layoutSheet` does the same for a sheet in the plain cut, such as a weather-proof table.
 */
import { bad, type Diagnostic, type Outcome } from '../../diagnostic/diagnostic';
import type { Face } from '../../font/metrics';
import type { Block } from '../../markup/block';
import { collectBlocks } from '../blocks/collect';
import { filledRect } from '../blocks/marks';
import { Reuse } from '../blocks/reuse';
import { themeStyle } from '../flow/flow-look';
import type { LaidOut, Page } from '../frame';
import { Labels } from '../labels';
import { outlineOf } from '../pages/outline';
import { paginate } from '../pages/paginate';
import { destinationsOf, labelsOf, placeBody } from '../pages/place-body';
import { type Round, settle } from '../pages/settle';
import { isSolid, type Piece } from '../pieces';
import { Problems, spotOf } from '../problems';
import type { Place, Setting } from '../setting';
import { moveItem } from '../shape';
import { StructureBuilder } from '../structure';
import { originOf, survey } from '../survey';
import type { CardOptions } from '../types';
import { cardLook, leastSizeOf } from './card-look';
import { continuedTitle, footStrip, headStrip, markStrip, type Strip } from './faces';
import { largestSize } from './largest';

/** Lays out a card in the condensed cut. A level 1 heading that comes first is its title. */
export function layoutCard(blocks: readonly Block[], options: CardOptions): Outcome<LaidOut> {
  return layoutLargest(blocks, options, 'narrow');
}

/** Lays out a card in the bold condensed cut, for few words. */
export function layoutBoldCard(blocks: readonly Block[], options: CardOptions): Outcome<LaidOut> {
  return layoutLargest(blocks, options, 'narrow-bold');
}

/** Lays out a sheet in the plain cut, its type growing to fill the faces it needs. */
export function layoutSheet(blocks: readonly Block[], options: CardOptions): Outcome<LaidOut> {
  return layoutLargest(blocks, options, 'text');
}

function layoutLargest(blocks: readonly Block[], options: CardOptions, base: Face): Outcome<LaidOut> {
  const leastPt = leastSizeOf(base, options.leastPt);
  const layoutAt = (sizePt: number) => layoutAtSize(blocks, options, base, sizePt);
  const smallest = layoutAt(leastPt);
  if (!smallest.ok) return smallest;
  const faces = smallest.value.pages.length;
  if (faces > options.mostFaces)
    return bad([tooManyFaces(blocks, options, faces, leastPt), ...smallest.remarks]);
  let best: Outcome<LaidOut> = smallest;
  largestSize(leastPt, options.mostPt, (sizePt) => {
    const tried = layoutAt(sizePt);
    const fitting =
      tried.ok && tried.value.pages.length <= faces && tried.remarks.length <= smallest.remarks.length;
    if (fitting) best = tried;
    return fitting;
  });
  return best;
}

function layoutAtSize(
  blocks: readonly Block[],
  options: CardOptions,
  base: Face,
  sizePt: number,
): Outcome<LaidOut> {
  const look = cardLook(options, base, sizePt);
  const problems = new Problems();
  const found = survey(blocks, problems);
  const reuse = new Reuse();
  return settle((known) => {
    const labels = new Labels(known, found.ids, problems);
    const structure = new StructureBuilder();
    const open = {
      look,
      structure,
      problems,
      labels,
      survey: found,
      reuse,
      roomPt: 0,
      chaptersOnNewPage: false,
    };
    return layoutOnce(blocks, options, open);
  }, originOf(blocks));
}

function layoutOnce(blocks: readonly Block[], options: CardOptions, open: Setting): Round<LaidOut> {
  const { problems, labels, structure, survey: found } = open;
  const { heads, setting, firstRoomPt, widthPt, titleNames, rest } = cardBody(blocks, options, open);
  const pieces = collectBlocks(rest, columnOf(widthPt), setting);
  const { left, top } = options.sheet.margins;
  const faces = paginate(pieces, setting, firstRoomPt).map((boxes, index) => {
    const headPt = (index === 0 ? heads.first : heads.next).heightPt;
    return boxes.map(({ box, y }) => ({ box, y: y + headPt }));
  });
  const titles = titleNames.map((name) => ({ name, page: 0, y: top }));
  const destinations = [...titles, ...destinationsOf(faces, top)];
  const newLabels = labelsOf(destinations, (page) => String(page + 1));
  const finish = (): LaidOut => {
    const bodies = placeBody(faces, () => left, top, structure);
    const pages = bodies.map((items, index): Page => {
      const surrounds = faceSurrounds(index, bodies.length, { heads, widthPt }, options, setting);
      const around = surrounds.flatMap(({ strip, y }) => strip.items.map((item) => moveItem(item, left, y)));
      return finishedFace(around.concat(items), index, bodies.length, options);
    });
    return { pages, structure: structure.finish(), destinations, outline: outlineOf(found.headings) };
  };
  return { finish, problems: problems.told(), labels: newLabels, settled: labels.agreesWith(newLabels) };
}

interface Heads {
  readonly first: Strip;
  readonly next: Strip;
}

/** Sets the title and works out the room between it and the foot. */
function cardBody(blocks: readonly Block[], options: CardOptions, open: Setting) {
  const { sheet } = options;
  const widthPt = sheet.widthPt - sheet.margins.left - sheet.margins.right;
  const heightPt = sheet.heightPt - sheet.margins.top - sheet.margins.bottom;
  const first = blocks[0];
  const title = first?.kind === 'heading' && first.level === 1 ? first : undefined;
  const titlePieces = title === undefined ? [] : collectBlocks([title], columnOf(widthPt), open);
  const heads: Heads = {
    first: headStrip(stripOf(titlePieces), widthPt, open),
    next: headStrip(continuedTitle(options.title, widthPt, open), widthPt, open),
  };
  const markPt = Math.max(markStrip(true, widthPt, open).heightPt, markStrip(false, widthPt, open).heightPt);
  const foot = footStrip(options.foot, 88, 88, footStyle(options), widthPt, open);
  const firstRoomPt = heightPt - heads.first.heightPt - markPt - foot.heightPt;
  // a later face never has more room than the first, or all might move there and leave the title alone
  const roomPt = Math.min(firstRoomPt, heightPt - heads.next.heightPt - markPt - foot.heightPt);
  const titleNames = titlePieces.flatMap((piece) =>
    isSolid(piece) ? piece.anchors.map(({ name }) => name) : [],
  );
  const rest = title === undefined ? blocks : blocks.slice(1);
  return { heads, widthPt, titleNames, rest, firstRoomPt, setting: { ...open, roomPt } };
}

function columnOf(widthPt: number): Place {
  return { x: 0, widthPt, tag: 0, depth: 0, keptAbovePt: 0 };
}

function stripOf(pieces: readonly Piece[]): Strip {
  let heightPt = 0;
  const items = pieces.flatMap((piece) => {
    if (piece.kind !== 'box') return [];
    const moved = piece.layers.flatMap(({ y, items }) =>
      items.map((item) => moveItem(item, 0, heightPt + y)),
    );
    heightPt += piece.heightPt;
    return moved;
  });
  return { heightPt, items };
}

function footStyle({ theme }: CardOptions) {
  return themeStyle(theme, 'running');
}

/** Title, mark and foot of one face with their heights on the sheet. */
function faceSurrounds(
  index: number,
  count: number,
  { heads, widthPt }: { readonly heads: Heads; readonly widthPt: number },
  options: CardOptions,
  setting: Setting,
): { strip: Strip; y: number }[] {
  const { sheet } = options;
  const foot = footStrip(options.foot, index + 1, count, footStyle(options), widthPt, setting);
  const footY = sheet.heightPt - sheet.margins.bottom - foot.heightPt;
  const mark = markStrip(index === count - 1, widthPt, setting);
  return [
    { strip: index === 0 ? heads.first : heads.next, y: sheet.margins.top },
    { strip: mark, y: footY - mark.heightPt },
    { strip: foot, y: footY },
  ];
}

function finishedFace(
  items: Page['items'],
  index: number,
  count: number,
  { sheet, ground }: CardOptions,
): Page {
  const { widthPt, heightPt, margins } = sheet;
  const out = ground?.outsetPt ?? 0;
  const [left, top] = [margins.left - out, margins.top - out];
  const [right, bottom] = [widthPt - margins.right + out, heightPt - margins.bottom + out];
  const behind =
    ground === undefined ? [] : [filledRect(left, top, right - left, bottom - top, ground.colour)];
  return {
    widthPt,
    heightPt,
    label: `${index + 1} of ${count}`,
    items: [...behind, ...items],
    printable: [left, top, right, bottom],
  };
}

function tooManyFaces(
  blocks: readonly Block[],
  options: CardOptions,
  faces: number,
  leastPt: number,
): Diagnostic {
  return {
    code: 'layout-too-many-faces',
    severity: 'error',
    message: `\`${options.title}\` needs ${faces} faces at the smallest legible size`,
    at: spotOf(originOf(blocks)),
    found: `${faces} faces of ${options.sheet.name} at ${leastPt.toFixed(2)} pt`,
    expected: `at most ${options.mostFaces}`,
    mend: 'use a larger sheet, allow more faces, or read it from nearer',
  };
}
