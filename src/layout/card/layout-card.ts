/**
 * Cards: the largest type that fits between the smallest legible size and the largest useful one.
 *
 * If the smallest size needs more than one face, the card takes more faces, all in the same size; it is never set
 * smaller and never cut. `layoutSheet` does the same for a sheet in the plain cut, such as a weather-proof table.
 */
import { bad, type Diagnostic, good, type Outcome } from '../../diagnostic/diagnostic';
import type { Face } from '../../font/metrics';
import type { Block } from '../../markup/block';
import { collectBlocks } from '../blocks/collect';
import { filledRect } from '../blocks/marks';
import { Reuse } from '../blocks/reuse';
import { themeStyle } from '../flow/flow-look';
import type { LaidOut, Page, PlacedItem } from '../frame';
import { RememberedWords } from '../inline/plain';
import { Labels } from '../labels';
import { leastLeading } from '../legibility';
import { outlineOf } from '../pages/outline';
import { destinationsOf, labelsOf, placeBody } from '../pages/place-body';
import { type Round, settle } from '../pages/settle';
import { withoutUnused } from '../pages/unused';
import { Problems, spotOf } from '../problems';
import type { Place, Setting } from '../setting';
import { moveItem } from '../shape';
import { pointsPerMm } from '../sheet';
import { StructureBuilder } from '../structure';
import { originOf, survey } from '../survey';
import type { CardOptions } from '../types';
import { cardLook, leastSizeOf } from './card-look';
import type { Closeness } from './closer-parts';
import { type FaceNumber, footStrip, mostFootPt } from './faces';
import { headsOf, headX, withRoomForHole } from './heads';
import { guides, noHole, roomForHole } from './hole';
import { largestSize } from './largest';
import { forMarks, hasMarks, waitsForMarks } from './marks-told';
import type { Strip } from './strip';
import { facesUnderHeads } from './under-heads';

/** Lays out a card in the condensed cut. A level 1 heading that comes first is its title. */
export function layoutCard(blocks: readonly Block[], options: CardOptions): Outcome<LaidOut> {
  return layoutLargest(blocks, options, { base: 'narrow', punched: true });
}

/** Lays out a card in the bold condensed cut, for few words. */
export function layoutBoldCard(blocks: readonly Block[], options: CardOptions): Outcome<LaidOut> {
  return layoutLargest(blocks, options, { base: 'narrow-bold', punched: true });
}

/** Lays out a sheet in the plain cut, its type growing to fill the faces it needs. */
export function layoutSheet(blocks: readonly Block[], options: CardOptions): Outcome<LaidOut> {
  return layoutLargest(blocks, options, { base: 'text', punched: false });
}

/** In which face it is set, and whether it is a card that is rounded and punched. */
interface Cut {
  readonly base: Face;
  readonly punched: boolean;
}

/** With the paragraphs that are for its marks, or for none. A mark that only they make room for is told of all the same. */
function layoutLargest(blocks: readonly Block[], options: CardOptions, cut: Cut): Outcome<LaidOut> {
  if (!waitsForMarks(blocks)) return layoutWhole(blocks, options, cut);
  const told = layoutWhole(forMarks(blocks, 'some'), options, cut);
  if (!told.ok || told.value.marked === true) return told;
  const untold = layoutWhole(forMarks(blocks, 'none'), options, cut);
  return untold.ok && untold.value.marked === true ? told : untold;
}

function layoutWhole(blocks: readonly Block[], options: CardOptions, cut: Cut): Outcome<LaidOut> {
  const leastPt = leastSizeOf(cut.base, options.leastPt);
  const words = new RememberedWords();
  const layoutIn = (own: CardOptions, sizePt: number, most: number, closeness?: Closeness) =>
    layoutAtSize(blocks, own, cut, { sizePt, words, most, closeness });
  const asWished = layoutIn(options, leastPt, Number.POSITIVE_INFINITY);
  if (!asWished.ok) return asWished;
  let smallest = asWished;
  let taken = options;
  for (const share of asWished.value.closeness.length > 1 ? closerLines : closerShares) {
    const most = smallest.value.faces - 1;
    if (most === 0) break;
    const closer = closedUp(options, share);
    const closed = layoutIn(closer, leastPt, most);
    if (!closed.ok || closed.value.faces > most || closed.remarks.length > asWished.remarks.length) continue;
    smallest = closed;
    taken = closer;
  }
  const { faces, closeness } = smallest.value;
  // larger type takes no space from between steps that the smallest leaves there
  const layoutAt = (sizePt: number, mostFaces: number) => layoutIn(taken, sizePt, mostFaces, closeness);
  if (faces > options.mostFaces)
    return bad([tooManyFaces(blocks, options, faces, leastPt), ...smallest.remarks]);
  let best = smallest;
  const takes = (tried: Outcome<Tried>): boolean => {
    if (!tried.ok || tried.value.faces > faces || tried.remarks.length > smallest.remarks.length)
      return false;
    best = tried;
    return true;
  };
  const sizePt = largestSize(leastPt, options.mostPt, (tried) => takes(layoutAt(tried, faces)));
  const { breaks } = best.value;
  // what is looked up grows into room that is left over, up to the size of the rest, and moves nothing to another face
  const lookUpPt = leastSizeOf(cut.base, options.lookUpPt ?? options.leastPt);
  largestSize(lookUpPt, leastPt, (larger) => {
    const tried = layoutIn(withLookUp(taken, larger / lookUpPt), sizePt, faces, closeness);
    return tried.ok && tried.value.breaks === breaks && takes(tried);
  });
  return good(best.value.finish(), best.remarks);
}

/** The same with what is looked up larger by a share. */
function withLookUp(options: CardOptions, share: number): CardOptions {
  const { lookUpPt } = options;
  if (lookUpPt === undefined) return options;
  const larger = Object.entries(lookUpPt).map(([face, sizePt]) => [face, share * sizePt]);
  return { ...options, lookUpPt: Object.fromEntries(larger) };
}

/** What is left of the spaces between steps and blocks where that saves a face, tried in turn. */
const closerShares = [0.7, 0.5] as const;

/** Where each part has its own share, only the lines close up for all. */
const closerLines = [1] as const;

/** The same with less space between steps and blocks, and lines as close as they may stand; the type stays. */
function closedUp(options: CardOptions, share: number): CardOptions {
  const { shares } = options.theme;
  const closer = {
    leading: Math.min(shares.leading, leastLeading),
    stepGap: share * shares.stepGap,
    blockGap: share * shares.blockGap,
    headingGap: share * shares.headingGap,
  };
  return { ...options, theme: { ...options.theme, shares: { ...shares, ...closer } } };
}

/** A size that is tried. */
interface Trial {
  readonly sizePt: number;
  readonly words: RememberedWords;
  /** With more faces than this it need not be laid out to its end. */
  readonly most: number;
  /** What is left of the spaces in each part; left out, what saves faces is found. */
  readonly closeness?: Closeness | undefined;
}

/** A card as it comes out at one size. */
interface Tried {
  readonly faces: number;
  /** What is left of the spaces in each part. */
  readonly closeness: Closeness;
  /** Where the faces begin: how much stands on each but the first, on which lines may break otherwise. */
  readonly breaks: string;
  /** Makes the finished pages: only wanted of the size that is taken. */
  readonly finish: () => LaidOut;
}

function layoutAtSize(
  blocks: readonly Block[],
  options: CardOptions,
  cut: Cut,
  { sizePt, words, ...trial }: Trial,
): Outcome<Tried> {
  const look = cardLook(options, cut.base, sizePt);
  const problems = new Problems();
  const found = survey(blocks, problems);
  const reuse = new Reuse();
  let { closeness } = trial;
  return settle((known) => {
    const labels = new Labels(known, found.ids, problems);
    const structure = new StructureBuilder();
    const shared = { look, structure, problems, labels, survey: found, reuse, words };
    const setting = { ...shared, roomPt: 0, chaptersOnNewPage: false };
    const round = layoutOnce(blocks, options, { cut, ...trial, closeness }, setting);
    closeness ??= round.closeness;
    return round;
  }, originOf(blocks));
}

function layoutOnce(
  blocks: readonly Block[],
  options: CardOptions,
  { cut, most, closeness: asked }: Omit<Trial, 'sizePt' | 'words'> & { readonly cut: Cut },
  open: Setting,
): Round<Tried> & { readonly closeness: Closeness } {
  const { problems, labels, structure, survey: found } = open;
  const body = cardBody(blocks, options, cut, open);
  const { heads, setting, widthPt, roomUnder } = body;
  const pieces = collectBlocks(body.rest, columnOf(widthPt), setting);
  const { faces, closeness } = facesUnderHeads(pieces, setting, {
    closeness: asked,
    heads,
    roomUnder,
    headed: cut.punched,
    // where page numbers are printed, the next round may need fewer faces
    mostFaces: labels.timesAsked === 0 ? most + 1 : Number.POSITIVE_INFINITY,
  });
  const { left, top } = options.sheet.margins;
  const boxes = faces.map((face) => face.boxes);
  const inHeads = faces.flatMap(({ headNames }, page) => headNames.map((name) => ({ name, page, y: top })));
  const destinations = [...inHeads, ...destinationsOf(boxes, top)];
  const newLabels = labelsOf(destinations, (page) => String(page + 1));
  const finish = (): LaidOut => {
    const bodies = placeBody(boxes, () => left, top, structure);
    const pages = bodies.map((items, index): Page => {
      const head =
        faces[index]?.head.items.map((item) => moveItem(item, left + headX(index, body.hole), top)) ?? [];
      const number = { face: index + 1, faces: bodies.length, endsPart: faces[index]?.endsPart === true };
      const foot = footOf(number, widthPt, options, setting);
      return finishedFace([...head, ...foot, ...items], index, bodies.length, cut, options);
    });
    const outline = outlineOf(found.headings);
    const whole = withoutUnused({ pages, structure: structure.finish(), destinations, outline });
    return hasMarks(boxes) ? { ...whole, marked: true } : whole;
  };
  return {
    closeness,
    finish: () => ({
      faces: faces.length,
      closeness,
      breaks: boxes
        .slice(1)
        .map(({ length }) => length)
        .join(' '),
      finish,
    }),
    problems: problems.told(),
    labels: newLabels,
    settled: labels.agreesWith(newLabels),
  };
}

/** Sets the title and works out the room between heads and foot. */
function cardBody(blocks: readonly Block[], options: CardOptions, cut: Cut, open: Setting) {
  const { sheet, theme } = options;
  const widthPt = sheet.widthPt - sheet.margins.left - sheet.margins.right;
  const heightPt = sheet.heightPt - sheet.margins.top - sheet.margins.bottom;
  const first = blocks[0];
  const title = first?.kind === 'heading' && first.level === 1 ? first : undefined;
  const hole = cut.punched ? roomForHole(theme.card.hole, sheet) : noHole;
  const heads = headsOf(title, { title: options.title, widthPt, hole }, open);
  const clearPt = theme.card.footClearMm * pointsPerMm;
  const footPt = mostFootPt(options.foot, footStyle(options), widthPt, open) + clearPt;
  const roomUnder = (head: Strip) => heightPt - head.heightPt - footPt;
  const rest = title === undefined ? blocks : blocks.slice(1);
  // what fits on no face under its tallest head is refused, whatever head it would come to stand under
  const look = withRoomForHole(open.look, hole);
  const setting = { ...open, look, roomPt: heightPt - heads.mostPt - footPt };
  return { heads, hole, widthPt, rest, roomUnder, setting };
}

function columnOf(widthPt: number): Place {
  return { x: 0, widthPt, tag: 0, depth: 0, keptAbovePt: 0 };
}

function footStyle({ theme }: CardOptions) {
  return themeStyle(theme, 'running');
}

/** The foot of one face at its place on the sheet. */
function footOf(number: FaceNumber, widthPt: number, options: CardOptions, setting: Setting): PlacedItem[] {
  const { heightPt, margins } = options.sheet;
  const foot = footStrip(options.foot, number, footStyle(options), widthPt, setting);
  const y = heightPt - margins.bottom - foot.heightPt;
  return foot.items.map((item) => moveItem(item, margins.left, y));
}

function finishedFace(
  items: Page['items'],
  index: number,
  count: number,
  cut: Cut,
  { sheet, ground, theme }: CardOptions,
): Page {
  const { widthPt, heightPt, margins } = sheet;
  const out = ground?.outsetPt ?? 0;
  const [left, top] = [margins.left - out, margins.top - out];
  const [right, bottom] = [widthPt - margins.right + out, heightPt - margins.bottom + out];
  // on a dark ground the theme's ink is light; the corners lie outside that ground
  const { ink } = theme.colours;
  const guideInks = { corners: ground?.colour ?? ink, hole: ink };
  const behind =
    ground === undefined ? [] : [filledRect(left, top, right - left, bottom - top, ground.colour)];
  return {
    widthPt,
    heightPt,
    label: `${index + 1} of ${count}`,
    items: [...behind, ...items],
    printable: [left, top, right, bottom],
    ...(cut.punched ? { guides: guides(theme.card, sheet, guideInks) } : {}),
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
