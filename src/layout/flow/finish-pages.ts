/** The last step of a page: running lines above and below its text, marks of chapters and of changes beside it. */
import { rule } from '../blocks/marks';
import { tolerancePt } from '../fits';
import type { Destination, Page, PlacedItem } from '../frame';
import { anyChange, changeStrip, drawChanges, overhangPt, type PageChanges } from '../pages/change-bars';
import { setRunning } from '../pages/running';
import { chapterTabs } from '../pages/tabs';
import type { Setting } from '../setting';
import { type Bounds, moveItem } from '../shape';
import type { FlowOptions, RunningLine } from '../types';
import { type Body, type Chapter, marginsOn } from './body';

/** What is known of a book once its pages are filled, and where in it the pages stand that are to be finished. */
export interface Found {
  /** Of the whole book. */
  readonly destinations: readonly Destination[];
  /** Pages of the whole book. */
  readonly pageCount: number;
  /** How many pages stand before these. */
  readonly before: number;
  /** What changed on each of these pages. */
  readonly changes: readonly PageChanges[];
}

/** Gives pages their running lines, the marks of their chapters and those of what changed. `bodies` are the items of each. */
export function finishPages(
  bodies: readonly (readonly PlacedItem[])[],
  { destinations, pageCount, before, changes }: Found,
  body: Body,
  options: FlowOptions,
  setting: Setting,
): Page[] {
  const { sheet, firstPage } = options;
  const { widthPt, heightPt } = sheet;
  const chapterAt = chapterByPage(body, destinations, pageCount);
  const tabbed = tabsFor(chapterAt, options);
  return bodies.map((items, at) => {
    const index = before + at;
    const { left, top, right, bottom } = marginsOn(index, options);
    const printable = [left, top, widthPt - right, heightPt - bottom] as const;
    const fields = {
      chapter: chapterAt[index]?.title ?? '',
      page: String(index + 1),
      pages: String(pageCount),
    };
    const head = index === 0 && !firstPage.head ? [] : headItems(fields, { body, left }, options, setting);
    const foot = index === 0 && !firstPage.foot ? [] : footItems(fields, { body, left }, options, setting);
    const page = { widthPt, heightPt, label: fields.page, printable };
    const tab = tabbed(index);
    const marks = marksOn(changes[at], index, body, options, setting);
    return {
      ...page,
      items: [...head, ...items, ...foot, ...(tab?.items ?? []), ...(marks?.items ?? [])],
      ...(tab === undefined ? {} : { tabStrip: tab.strip }),
      ...(marks === undefined ? {} : { changeStrip: marks.strip }),
    };
  });
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
  fields: Fields,
  placed: Placed,
  { head, sheet, theme }: FlowOptions,
  setting: Setting,
): PlacedItem[] {
  const { top, running } = placed.body;
  const ruleY = top - theme.page.headGap + 0.35 * running.style.sizePt;
  return ruledLine(head, fields, placed, setting, () => ({ y: sheet.margins.top, ruleY }));
}

function footItems(
  fields: Fields,
  placed: Placed,
  { foot, sheet }: FlowOptions,
  setting: Setting,
): PlacedItem[] {
  const { style } = placed.body.running;
  return ruledLine(foot, fields, placed, setting, (heightPt) => {
    const y = sheet.heightPt - sheet.margins.bottom - heightPt;
    return { y, ruleY: y - 0.5 * style.sizePt };
  });
}

/** A running line and the rule between it and the text, from the top down; nothing if the line says nothing. */
function ruledLine(
  line: RunningLine,
  fields: Fields,
  { body, left }: Placed,
  { look }: Setting,
  placesAt: (heightPt: number) => { readonly y: number; readonly ruleY: number },
): PlacedItem[] {
  const set = setRunning(line, fields, body.running);
  if (set.items.length === 0) return [];
  const { y, ruleY } = placesAt(set.heightPt);
  const words = set.items.map((item) => moveItem(item, left, y));
  const ruled = rule(left, ruleY, body.widthPt, look.colours.hair, look.line.thin);
  return y < ruleY ? [...words, ruled] : [ruled, ...words];
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
