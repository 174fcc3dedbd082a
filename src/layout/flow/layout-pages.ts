/**
 * Papers that flow over pages: blocks in, finished pages out.
 *
 * Page numbers depend on layout and layout on page numbers, so it runs again until the numbers it was given are the
 * numbers that come out; if they have not settled after five rounds, that is an error.
 */
import { bad, type Diagnostic, good, hasErrors, type Outcome } from '../../diagnostic/diagnostic';
import type { Block } from '../../markup/block';
import { collectBlocks } from '../blocks/collect';
import { rule } from '../blocks/marks';
import type { Destination, LaidOut, Page, PlacedItem } from '../frame';
import { Labels } from '../labels';
import type { Look } from '../look';
import { outlineOf } from '../pages/outline';
import { paginate } from '../pages/paginate';
import { labelsOf, placeBody } from '../pages/place-body';
import { type RunningContext, runningHeight, setRunning } from '../pages/running';
import type { Piece } from '../pieces';
import { Problems } from '../problems';
import type { Setting } from '../setting';
import { moveItem } from '../shape';
import { StructureBuilder } from '../structure';
import { originOf, type Survey, survey } from '../survey';
import type { FlowOptions, RunningLine } from '../types';
import { flowLook, themeStyle } from './flow-look';

const mostRounds = 5;

/** Lays out a paper on as many pages as it needs. */
export function layoutPages(blocks: readonly Block[], options: FlowOptions): Outcome<LaidOut> {
  const look = flowLook(options.theme, options.fonts);
  let known: ReadonlyMap<string, string> = new Map();
  for (let round = 1; round <= mostRounds; round += 1) {
    const result = layoutOnce(blocks, options, look, known);
    if (hasErrors(result.problems)) return bad(result.problems);
    if (result.settled) return good(result.laidOut, result.problems);
    known = result.labels;
  }
  return bad([unsettled(blocks)]);
}

interface Round {
  readonly laidOut: LaidOut;
  readonly problems: readonly Diagnostic[];
  readonly labels: ReadonlyMap<string, string>;
  readonly settled: boolean;
}

function layoutOnce(
  blocks: readonly Block[],
  options: FlowOptions,
  look: Look,
  known: ReadonlyMap<string, string>,
): Round {
  const problems = new Problems();
  const found = survey(blocks, problems);
  const labels = new Labels(known, found.ids, problems);
  const structure = new StructureBuilder();
  const { chaptersOnNewPage } = options;
  const open: Setting = { look, structure, problems, labels, survey: found, roomPt: 0, chaptersOnNewPage };
  const body = bodyBox(options, open, blocks);
  const setting = { ...open, roomPt: body.heightPt };
  const boxes = paginate(collectChapters(blocks, body.widthPt, setting), setting);
  const placed = placeBody(boxes, body.left, body.top, structure);
  const newLabels = labelsOf(placed.destinations, (page) => String(page + 1));
  const pages = finishPages(placed.pages, placed.destinations, body, options, setting);
  const laidOut = {
    pages,
    structure: structure.finish(),
    destinations: placed.destinations,
    outline: outlineOf(found.headings),
  };
  return { laidOut, problems: problems.told(), labels: newLabels, settled: labels.agreesWith(newLabels) };
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
  const printable = [margins.left, margins.top, sheet.widthPt - margins.right, sheet.heightPt - margins.bottom] as const;
  const chapterAt = chapterByPage(body, destinations, bodies.length);
  return bodies.map((items, index) => {
    const fields = { chapter: chapterAt[index] ?? '', page: String(index + 1), pages: String(bodies.length) };
    const head = index === 0 && !firstPage.head ? [] : headItems(options.head, fields, body, options, setting);
    const foot = index === 0 && !firstPage.foot ? [] : footItems(options.foot, fields, body, options, setting);
    const { widthPt, heightPt } = sheet;
    return { widthPt, heightPt, label: fields.page, items: [...head, ...items, ...foot], printable };
  });
}

type Fields = Parameters<typeof setRunning>[1];

function headItems(line: RunningLine, fields: Fields, body: Body, options: FlowOptions, setting: Setting): PlacedItem[] {
  const set = setRunning(line, fields, body.running);
  if (set.items.length === 0) return [];
  const { look } = setting;
  const y = options.sheet.margins.top;
  const ruleY = body.top - options.theme.page.headGap + 0.35 * body.running.style.sizePt;
  const underline = rule(body.left, ruleY, body.widthPt, look.colours.hair, look.line.thin);
  return [...set.items.map((item) => moveItem(item, body.left, y)), underline];
}

function footItems(line: RunningLine, fields: Fields, body: Body, options: FlowOptions, setting: Setting): PlacedItem[] {
  const set = setRunning(line, fields, body.running);
  if (set.items.length === 0) return [];
  const { look } = setting;
  const y = options.sheet.heightPt - options.sheet.margins.bottom - set.heightPt;
  const overline = rule(body.left, y - 0.5 * body.running.style.sizePt, body.widthPt, look.colours.hair, look.line.thin);
  return [overline, ...set.items.map((item) => moveItem(item, body.left, y))];
}

/** The chapter each page begins in, or that begins on it if it begins in none. */
function chapterByPage({ chapters }: Body, destinations: readonly Destination[], count: number): string[] {
  const pageOf = new Map(destinations.map(({ name, page }) => [name, page]));
  const starts = chapters.map(({ name, title }) => ({ title, page: pageOf.get(name) ?? 0 }));
  const titles: string[] = [];
  let at = -1;
  for (let page = 0; page < count; page += 1) {
    const current = starts[at]?.title;
    const firstHere = starts.find((start) => start.page === page)?.title;
    titles.push(current ?? firstHere ?? '');
    while ((starts[at + 1]?.page ?? Number.POSITIVE_INFINITY) <= page) at += 1;
  }
  return titles;
}

function unsettled(blocks: readonly Block[]): Diagnostic {
  const { template, line, column } = originOf(blocks);
  return {
    code: 'layout-unsettled',
    severity: 'error',
    message: `the page numbers have not settled after ${mostRounds} rounds`,
    at: { file: template, line, column },
    mend: 'put a page break before the part whose page number changes',
  };
}
