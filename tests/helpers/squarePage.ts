/**
 * Pages for geometry tests: square letters of 10 pt on lines of 12 pt, no running heads, no margins, round gaps. A page
 * of `columns` letters and `lines` lines holds exactly that.
 */
import { layoutPages } from '../../src/layout/flow/layout-pages';
import type { LaidOut, Page, PlacedText } from '../../src/layout/frame';
import { readTheme, type Theme } from '../../src/layout/theme';
import type { FlowOptions, RunningLine, Sheet } from '../../src/layout/types';
import type { Block } from '../../src/markup/block';
import { inEnglish } from './english';
import { plainThemeText } from './fonts';
import { squareFonts } from './squareMetrics';

function squareTheme(): Theme {
  const read = readTheme(plainThemeText, 'plain.yaml', squareFonts);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const value = inEnglish(read.value);
  const type = Object.fromEntries(
    Object.entries(value.type).map(([role, { face }]) => [role, { face, size: 10, leading: 12 }]),
  ) as Theme['type'];
  const none = { title: 0, section: 0, topic: 0, point: 0 };
  const space = {
    ...value.space,
    paragraph: 0,
    listItem: 0,
    step: 0,
    block: 0,
    caption: 0,
    above: none,
    below: none,
  };
  return {
    ...value,
    type,
    space: { ...space, indent: 20, cellX: 5, cellY: 0, boxX: 10, boxY: 6, writing: 24 },
    page: { ...value.page, headGap: 0, footGap: 0, measureEm: 200 },
  };
}

/** The plain theme with all type 10 pt on 12 pt and no gaps. */
export const evenTheme = squareTheme();

/** A sheet without clear edges that holds `columns` letters by `lines` lines. */
export function squareSheet(columns: number, lines: number): Sheet {
  const margins = { top: 0, right: 0, bottom: 0, left: 0 };
  return { name: 'square', widthPt: columns * 10, heightPt: lines * 12, margins };
}

/** An empty running line. */
export const nothingRunning: RunningLine = { left: [], centre: [], right: [] };

/** Pages with nothing around their text, on one side. */
export const nothingAround = {
  head: nothingRunning,
  foot: nothingRunning,
  firstPage: { head: true, foot: true },
  chaptersOnNewPage: false,
  chapterTabs: false,
  bothSides: false,
} satisfies Partial<FlowOptions>;

/** Options for a page of `columns` by `lines`. */
export function squareOptions(columns: number, lines: number, more: Partial<FlowOptions> = {}): FlowOptions {
  return {
    fonts: squareFonts,
    theme: evenTheme,
    sheet: squareSheet(columns, lines),
    ...nothingAround,
    ...more,
  };
}

/** Lays out and fails on any problem or remark. */
export function laidOutCleanly(blocks: readonly Block[], options: FlowOptions): LaidOut {
  const result = layoutPages(blocks, options);
  if (!result.ok) throw new Error(JSON.stringify(result.problems, null, 2));
  if (result.remarks.length > 0) throw new Error(JSON.stringify(result.remarks, null, 2));
  return result.value;
}

/** The runs of text on a page, from the top down. */
export function textsOf(page: Page | undefined): PlacedText[] {
  const texts = (page?.items ?? []).filter((item): item is PlacedText => item.kind === 'text');
  return texts.sort((one, other) => one.y - other.y || one.x - other.x);
}

/** The words of each line on a page, from the top down. */
export function linesOf(page: Page | undefined): string[] {
  const lines = new Map<number, string[]>();
  for (const { y, text } of textsOf(page)) lines.set(y, [...(lines.get(y) ?? []), text.trimEnd()]);
  return [...lines.values()].map((parts) => parts.join(' '));
}
