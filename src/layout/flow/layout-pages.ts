/** Papers that flow over pages: blocks in, finished pages out. */
import type { Outcome } from '../../diagnostic/diagnostic';
import type { Block } from '../../markup/block';
import { collectBlocks } from '../blocks/collect';
import { rule } from '../blocks/marks';
import { Reuse } from '../blocks/reuse';
import { tolerancePt } from '../fits';
import type { Destination, LaidOut, Page, PlacedItem } from '../frame';
import { Labels } from '../labels';
import { outlineOf } from '../pages/outline';
import { paginate } from '../pages/paginate';
import { destinationsOf, labelsOf, placeBody } from '../pages/place-body';
import { type RunningContext, runningHeight, setRunning } from '../pages/running';
import { type Round, settle } from '../pages/settle';
import type { Piece } from '../pieces';
import { Problems } from '../problems';
import type { Setting } from '../setting';
import { moveItem } from '../shape';
import { StructureBuilder } from '../structure';
import { originOf, type Survey, survey } from '../survey';
import type { FlowOptions, RunningLine } from '../types';
import { flowLook, themeStyle } from './flow-look';

/** Lays out a paper on as many pages as it needs. */
export function layoutPages(blocks: readonly Block[], options: FlowOptions): Outcome<LaidOut> {
  const look = flowLook(options.theme, options.fonts);
  const problems = new Problems();
  const found = survey(blocks, problems);
  const reuse = new Reuse();
  return settle((known) => {
    const labels = new Labels(known, found.ids, problems);
    const structure = new StructureBuilder();
    const { chaptersOnNewPage } = options;
    const open = { look, structure, problems, labels, survey: found, reuse, roomPt: 0, chaptersOnNewPage };
    return layoutOnce(blocks, options, open);
  }, originOf(blocks));
}

function layoutOnce(blocks: readonly Block[], options: FlowOptions, open: Setting): Round<LaidOut> {
  const { problems, labels, structure, survey: found } = open;
  const body = bodyBox(options, open, blocks);
  const setting = { ...open, roomPt: body.heightPt };
  const boxes = paginate(collectChapters(blocks, body.widthPt, setting), setting);
  const destinations = destinationsOf(boxes, body.top);
  const newLabels = labelsOf(destinations, (page) => String(page + 1));
  const finish = (): LaidOut => {
    const bodies = placeBody(boxes, body.left, body.top, structure);
    const pages = finishPages(bodies, destinations, body, options, setting);
    return { pages, structure: structure.finish(), destinations, outline: outlineOf(found.headings) };
  };
  return { finish, problems: problems.told(), labels: newLabels, settled: labels.agreesWith(newLabels) };
}

/** Each level 1 heading opens a section of the structure tree. */
function collectChapters(blocks: readonly Block[], widthPt: number, setting: Setting): Piece[] {
  const place = { x: 0, widthPt, tag: 0, depth: 0, keptAbovePt: 0 };
  return chaptersOf(blocks).flatMap((chapter) => {
    const opens = chapter[0]?.kind === 'heading' && chapter[0].level === 1;
    const tag = opens ? setting.structure.add('Sect', 0) : 0;
    return collectBlocks(chapter, { ...place, tag }, setting);
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
  readonly left: number;
  readonly top: number;
  readonly widthPt: number;
  readonly heightPt: number;
  readonly running: RunningContext;
  readonly chapters: readonly { readonly name: string; readonly title: string }[];
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
  return { left: margins.left, top, widthPt, heightPt, running, chapters };
}

function withGap(heightPt: number, gapPt: number): number {
  return heightPt === 0 ? 0 : heightPt + gapPt;
}

function chapterTitles({ headings }: Survey): { name: string; title: string }[] {
  return headings.filter(({ block }) => block.level === 1).map(({ name, title }) => ({ name, title }));
}

function finishPages(
  bodies: readonly (readonly PlacedItem[])[],
  destinations: readonly Destination[],
  body: Body,
  options: FlowOptions,
  setting: Setting,
): Page[] {
  const { sheet, firstPage } = options;
  const { margins } = sheet;
  const printable = [
    margins.left,
    margins.top,
    sheet.widthPt - margins.right,
    sheet.heightPt - margins.bottom,
  ] as const;
  const chapterAt = chapterByPage(body, destinations, bodies.length);
  return bodies.map((items, index) => {
    const fields = { chapter: chapterAt[index] ?? '', page: String(index + 1), pages: String(bodies.length) };
    const head =
      index === 0 && !firstPage.head ? [] : headItems(options.head, fields, body, options, setting);
    const foot =
      index === 0 && !firstPage.foot ? [] : footItems(options.foot, fields, body, options, setting);
    const { widthPt, heightPt } = sheet;
    return { widthPt, heightPt, label: fields.page, items: [...head, ...items, ...foot], printable };
  });
}

type Fields = Parameters<typeof setRunning>[1];

function headItems(
  line: RunningLine,
  fields: Fields,
  body: Body,
  options: FlowOptions,
  setting: Setting,
): PlacedItem[] {
  const set = setRunning(line, fields, body.running);
  if (set.items.length === 0) return [];
  const { look } = setting;
  const y = options.sheet.margins.top;
  const ruleY = body.top - options.theme.page.headGap + 0.35 * body.running.style.sizePt;
  const underline = rule(body.left, ruleY, body.widthPt, look.colours.hair, look.line.thin);
  return [...set.items.map((item) => moveItem(item, body.left, y)), underline];
}

function footItems(
  line: RunningLine,
  fields: Fields,
  body: Body,
  options: FlowOptions,
  setting: Setting,
): PlacedItem[] {
  const set = setRunning(line, fields, body.running);
  if (set.items.length === 0) return [];
  const { look } = setting;
  const y = options.sheet.heightPt - options.sheet.margins.bottom - set.heightPt;
  const overline = rule(
    body.left,
    y - 0.5 * body.running.style.sizePt,
    body.widthPt,
    look.colours.hair,
    look.line.thin,
  );
  return [overline, ...set.items.map((item) => moveItem(item, body.left, y))];
}

/** The chapter each page begins in; if none has begun yet, the first that begins on it. */
function chapterByPage(
  { chapters, top }: Body,
  destinations: readonly Destination[],
  count: number,
): string[] {
  const placeOf = new Map(destinations.map((destination) => [destination.name, destination]));
  const starts = chapters.flatMap(({ name, title }) => {
    const place = placeOf.get(name);
    return place === undefined ? [] : [{ title, page: place.page, atTop: place.y - top < tolerancePt }];
  });
  const titles: string[] = [];
  let next = 0;
  let inForce: string | undefined;
  for (let page = 0; page < count; page += 1) {
    const first = starts[next]?.page === page ? starts[next] : undefined;
    titles.push((first?.atTop === true ? first.title : (inForce ?? first?.title)) ?? '');
    for (; starts[next]?.page === page; next += 1) inForce = starts[next]?.title;
  }
  return titles;
}
