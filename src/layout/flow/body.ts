/** The body of the pages of a book: where its text stands between the running lines. */
import type { Block } from '../../markup/block';
import { type RunningContext, runningHeight } from '../pages/running';
import type { Setting } from '../setting';
import { originOf, type Survey } from '../survey';
import type { FlowOptions, Margins } from '../types';
import { themeStyle } from './flow-look';

/** Where the text of a page stands, with the running lines around it. */
export interface Body {
  readonly top: number;
  readonly widthPt: number;
  readonly heightPt: number;
  readonly running: RunningContext;
  readonly chapters: readonly Chapter[];
}

/** A level 1 heading. */
export interface Chapter {
  readonly name: string;
  readonly title: string;
}

/** Works it out: its room depends on the longest title that a running line has to hold. */
export function bodyBox(options: FlowOptions, setting: Setting, blocks: readonly Block[]): Body {
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
export function marginsOn(page: number, { sheet: { margins }, bothSides }: FlowOptions): Margins {
  return bothSides && page % 2 === 1 ? { ...margins, left: margins.right, right: margins.left } : margins;
}

function withGap(heightPt: number, gapPt: number): number {
  return heightPt === 0 ? 0 : heightPt + gapPt;
}

function chapterTitles({ headings }: Survey): Chapter[] {
  return headings.filter(({ block }) => block.level === 1).map(({ name, title }) => ({ name, title }));
}
