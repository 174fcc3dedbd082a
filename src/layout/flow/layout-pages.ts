/** Papers that flow over pages: blocks in, finished pages out. */
import type { Outcome } from '../../diagnostic/diagnostic';
import type { Block } from '../../markup/block';
import { collectBlocks } from '../blocks/collect';
import { rule } from '../blocks/marks';
import { Reuse } from '../blocks/reuse';
import { tolerancePt } from '../fits';
import type { Destination, LaidOut, Page, PlacedItem } from '../frame';
import { RememberedWords } from '../inline/plain';
import { Labels } from '../labels';
import {
  anyChange,
  changeStrip,
  changesOn,
  drawChanges,
  overhangPt,
  type PageChanges,
  refuseNarrowMargin,
} from '../pages/change-bars';
import { paginateChapters } from '../pages/chapters';
import { outlineOf } from '../pages/outline';
import { destinationsOf, labelsOf, placeBody } from '../pages/place-body';
import { type RunningContext, runningHeight, setRunning } from '../pages/running';
import { type Round, settle } from '../pages/settle';
import { chapterTabs } from '../pages/tabs';
import type { Piece } from '../pieces';
import { Problems } from '../problems';
import type { Setting } from '../setting';
import { type Bounds, moveItem } from '../shape';
import { StructureBuilder } from '../structure';
import { originOf, type Survey, survey } from '../survey';
import type { FlowOptions, Margins, RunningLine } from '../types';
import { flowLook, themeStyle } from './flow-look';

/** Lays out a paper on as many pages as it needs. */
export function layoutPages(blocks: readonly Block[], options: FlowOptions): Outcome<LaidOut> {
  const look = flowLook(options.theme, options.fonts);
  const problems = new Problems();
  const found = survey(blocks, problems);
  const reuse = new Reuse();
  const words = new RememberedWords();
  return settle((known) => {
    const labels = new Labels(known, found.ids, problems);
    const structure = new StructureBuilder();
    const { chaptersOnNewPage } = options;
    const shared = { look, structure, problems, labels, survey: found, reuse, words };
    return layoutOnce(blocks, options, { ...shared, roomPt: 0, chaptersOnNewPage });
  }, originOf(blocks));
}

function layoutOnce(blocks: readonly Block[], options: FlowOptions, open: Setting): Round<LaidOut> {
  const { problems, labels, structure, survey: found } = open;
  const body = bodyBox(options, open, blocks);
  const setting = { ...open, roomPt: body.heightPt };
  const chapters = collectChapters(blocks, body.widthPt, setting);
  const boxes = paginateChapters(setting.chaptersOnNewPage ? chapters : [chapters.flat()], setting);
  const destinations = destinationsOf(boxes, body.top);
  const changes = boxes.map(changesOn);
  if (changes.some(anyChange)) refuseNarrowMargin(options, body.running.origin, problems);
  const newLabels = labelsOf(destinations, (page) => String(page + 1));
  const finish = (): LaidOut => {
    const bodies = placeBody(boxes, (page) => marginsOn(page, options).left, body.top, structure);
    const pages = finishPages(bodies, { destinations, changes }, body, options, setting);
    return { pages, structure: structure.finish(), destinations, outline: outlineOf(found.headings) };
  };
  return { finish, problems: problems.told(), labels: newLabels, settled: labels.agreesWith(newLabels) };
}

/** Each level 1 heading opens a section of the structure tree. */
function collectChapters(blocks: readonly Block[], widthPt: number, setting: Setting): Piece[][] {
  const place = { x: 0, widthPt, tag: 0, depth: 0, keptAbovePt: 0 };
  return chaptersOf(blocks).map((chapter) => {
    const opens = chapter[0]?.kind === 'heading' && chapter[0].level === 1;
    const tag = opens ? setting.structure.add('Sect', 0) : 0;
    return [...collectBlocks(chapter, { ...place, tag }, setting)];
  });
}

function chaptersOf(blocks: readonly Block[]): Block[][] {
  const chapters: Block[][] = [[]];
  for (const block of blocks) {
    if (block.kind === 'heading' && block.level === 1) chapters.push([]);
    chapters[chapters.length - 1]?.push(block);
  }
  return chapters.filter((chapter) => chapter.length > 0);
}

/** Where the text of a page stands, with the running lines around it. */
interface Body {
  readonly top: number;
  readonly widthPt: number;
  readonly heightPt: number;
  readonly running: RunningContext;
  readonly chapters: readonly Chapter[];
}

/** A level 1 heading. */
interface Chapter {
  readonly name: string;
  readonly title: string;
}

function bodyBox(options: FlowOptions, setting: Setting, blocks: readonly Block[]): Body {
  const { sheet, theme } = options;
  const { margins } = sheet;
  const widthPt = sheet.widthPt - margins.left - margins.right;
  const style = themeStyle(theme, 'running', theme.colours.soft);
  const running = { style, widthPt, setting, origin: originOf(blocks) };
  const chapters = chapterTitles(setting.survey);
  const titles = chapters.map(({ title }) => title);
  const headPt = withGap(runningHeight(options.head, titles, running), theme.page.headGap);
  const footPt = withGap(runningHeight(options.foot, titles, running), theme.page.footGap);
  const top = margins.top + headPt;
  const heightPt = sheet.heightPt - margins.bottom - footPt - top;
  return { top, widthPt, heightPt, running, chapters };
}

/** The clear edges of a page: left and right change places on the backs of sheets that are printed on both sides. */
function marginsOn(page: number, { sheet: { margins }, bothSides }: FlowOptions): Margins {
  return bothSides && page % 2 === 1 ? { ...margins, left: margins.right, right: margins.left } : margins;
}

function withGap(heightPt: number, gapPt: number): number {
  return heightPt === 0 ? 0 : heightPt + gapPt;
}

function chapterTitles({ headings }: Survey): Chapter[] {
  return headings.filter(({ block }) => block.level === 1).map(({ name, title }) => ({ name, title }));
}

function finishPages(
  bodies: readonly (readonly PlacedItem[])[],
  { destinations, changes }: Found,
  body: Body,
  options: FlowOptions,
  setting: Setting,
): Page[] {
  const { sheet, firstPage } = options;
  const { widthPt, heightPt } = sheet;
  const chapterAt = chapterByPage(body, destinations, bodies.length);
  const tabbed = tabsFor(chapterAt, options);
  return bodies.map((items, index) => {
    const { left, top, right, bottom } = marginsOn(index, options);
    const printable = [left, top, widthPt - right, heightPt - bottom] as const;
    const fields = {
      chapter: chapterAt[index]?.title ?? '',
      page: String(index + 1),
      pages: String(bodies.length),
    };
    const head =
      index === 0 && !firstPage.head ? [] : headItems(options.head, fields, { body, left }, options, setting);
    const foot =
      index === 0 && !firstPage.foot ? [] : footItems(options.foot, fields, { body, left }, options, setting);
    const page = { widthPt, heightPt, label: fields.page, printable };
    const tab = tabbed(index);
    const marks = marksOn(changes[index], index, body, options, setting);
    return {
      ...page,
      items: [...head, ...items, ...foot, ...(tab?.items ?? []), ...(marks?.items ?? [])],
      ...(tab === undefined ? {} : { tabStrip: tab.strip }),
      ...(marks === undefined ? {} : { changeStrip: marks.strip }),
    };
  });
}

/** What is known of the pages once they are filled. */
interface Found {
  readonly destinations: readonly Destination[];
  readonly changes: readonly PageChanges[];
}

/** The marks of what changed on a page, between its text and the marks of the chapters; nothing if it has none. */
function marksOn(
  changes: PageChanges | undefined,
  page: number,
  body: Body,
  options: FlowOptions,
  { look }: Setting,
): { readonly items: readonly PlacedItem[]; readonly strip: Bounds } | undefined {
  if (changes === undefined || !anyChange(changes)) return undefined;
  const text = options.bothSides && page % 2 === 1 ? 'right' : 'left';
  const [from, to] = changeStrip(options, text);
  const bounds = [from, body.top - overhangPt, to, body.top + body.heightPt + overhangPt] as const;
  const items = drawChanges(changes, { bounds, text }, body.top, look.line.heavy, look.colours.ink);
  return { items, strip: bounds };
}

type TabOf = (page: number) => { readonly items: readonly PlacedItem[]; readonly strip: Bounds } | undefined;

/** The mark of the chapter that each page begins in; none for the chapter that opens the paper, such as its cover. */
function tabsFor(chapterAt: readonly (Chapter | undefined)[], options: FlowOptions): TabOf {
  const { sheet, theme, fonts, bothSides } = options;
  if (!options.chapterTabs || !theme.tabs.show) return () => undefined;
  const marked = [...new Set(chapterAt)].filter((chapter) => chapter !== chapterAt[0]);
  const titles = marked.map((chapter) => chapter?.title ?? '');
  const room = { top: sheet.margins.top, bottom: sheet.heightPt - sheet.margins.bottom };
  const tabs = chapterTabs(titles, sheet, room, theme, fonts);
  return (page) => {
    const index = marked.indexOf(chapterAt[page]);
    const outer = bothSides && page % 2 === 1 ? 'left' : 'right';
    return index < 0 ? undefined : { items: tabs.mark(index, outer), strip: tabs.strip(outer) };
  };
}

type Fields = Parameters<typeof setRunning>[1];

/** The body of one page: `left` is its left edge on the sheet. */
interface Placed {
  readonly body: Body;
  readonly left: number;
}

function headItems(
  line: RunningLine,
  fields: Fields,
  { body, left }: Placed,
  options: FlowOptions,
  setting: Setting,
): PlacedItem[] {
  const set = setRunning(line, fields, body.running);
  if (set.items.length === 0) return [];
  const { look } = setting;
  const y = options.sheet.margins.top;
  const ruleY = body.top - options.theme.page.headGap + 0.35 * body.running.style.sizePt;
  const underline = rule(left, ruleY, body.widthPt, look.colours.hair, look.line.thin);
  return [...set.items.map((item) => moveItem(item, left, y)), underline];
}

function footItems(
  line: RunningLine,
  fields: Fields,
  { body, left }: Placed,
  options: FlowOptions,
  setting: Setting,
): PlacedItem[] {
  const set = setRunning(line, fields, body.running);
  if (set.items.length === 0) return [];
  const { look } = setting;
  const y = options.sheet.heightPt - options.sheet.margins.bottom - set.heightPt;
  const overline = rule(
    left,
    y - 0.5 * body.running.style.sizePt,
    body.widthPt,
    look.colours.hair,
    look.line.thin,
  );
  return [overline, ...set.items.map((item) => moveItem(item, left, y))];
}

/** The chapter each page begins in; if none has begun yet, the first that begins on it. */
function chapterByPage(
  { chapters, top }: Body,
  destinations: readonly Destination[],
  count: number,
): (Chapter | undefined)[] {
  const placeOf = new Map(destinations.map((destination) => [destination.name, destination]));
  const starts = chapters.flatMap((chapter) => {
    const place = placeOf.get(chapter.name);
    return place === undefined ? [] : [{ chapter, page: place.page, atTop: place.y - top < tolerancePt }];
  });
  const begun: (Chapter | undefined)[] = [];
  let next = 0;
  let inForce: Chapter | undefined;
  for (let page = 0; page < count; page += 1) {
    const first = starts[next]?.page === page ? starts[next] : undefined;
    begun.push(first?.atTop === true ? first.chapter : (inForce ?? first?.chapter));
    for (; starts[next]?.page === page; next += 1) inForce = starts[next]?.chapter;
  }
  return begun;
}
