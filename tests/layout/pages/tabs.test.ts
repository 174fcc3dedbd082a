import { describe, expect, it } from 'vitest';
import type { Page, PlacedShape } from '../../../src/layout/frame';
import { pointsPerMm } from '../../../src/layout/sheet';
import type { FlowOptions, Sheet } from '../../../src/layout/types';
import { heading, paragraph } from '../../helpers/blocks';
import { evenTheme, laidOutCleanly, linesOf, squareOptions, textsOf } from '../../helpers/squarePage';

const margins = { top: 10, right: 60, bottom: 10, left: 80 };
const sheet: Sheet = { name: 'with margins', widthPt: 400, heightPt: 500, margins };

function laidOut(titles: readonly string[], more: Partial<FlowOptions> = {}) {
  const blocks = titles.flatMap((title) => [heading(1, title), paragraph('words')]);
  const options = squareOptions(1, 1, {
    sheet,
    chaptersOnNewPage: true,
    chapterTabs: true,
    ...more,
  });
  return laidOutCleanly(blocks, options).pages;
}

/** The block and the words of a page's mark. */
function tabOf({ items }: Page) {
  const shapes = items.filter((item): item is PlacedShape => item.kind === 'shape');
  const [block, words] = shapes.map(({ shape }) => shape);
  return { count: shapes.length, tags: shapes.map(({ tag }) => tag), block, words };
}

const titles = ['Cover', 'Water', 'Fuel', 'Steam', 'Away'];

describe('marks of chapters', () => {
  it('stand one on every page but those of the opening chapter, as artifacts that say the chapter', () => {
    const pages = laidOut(titles);
    expect(pages.map((page) => tabOf(page).count)).toEqual([0, 2, 2, 2, 2]);
    for (const [index, page] of pages.entries()) {
      if (index === 0) continue;
      const { words, tags } = tabOf(page);
      expect(words).toMatchObject({ kind: 'text', text: titles[index], colour: evenTheme.tabs.letters });
      expect(tags).toEqual([undefined, undefined]);
    }
  });

  it('are stepped evenly from the top of the margins to the bottom, all of one length', () => {
    const blocks = laidOut(titles)
      .slice(1)
      .map((page) => tabOf(page).block);
    const rects = blocks.flatMap((block) => (block?.kind === 'rect' ? [block] : []));
    expect(rects.length).toBe(4);
    // the longest title has five square letters of 10 pt, with 0.8 of one before and after
    expect(new Set(rects.map(({ height }) => height))).toEqual(new Set([66]));
    const steps = rects.slice(1).map(({ y }, index) => y - (rects[index]?.y ?? 0));
    for (const step of steps) expect(step).toBeCloseTo((480 - 66) / 3, 6);
    expect(rects[0]?.y).toBe(10);
    expect((rects[3]?.y ?? 0) + 66).toBeCloseTo(490, 6);
  });

  it('stand in the margin: clear of the sheet’s edge, where printers put no ink, and of the text', () => {
    for (const page of laidOut(titles).slice(1)) {
      const { block } = tabOf(page);
      if (block?.kind !== 'rect') throw new Error('no block');
      expect(400 - (block.x + block.width)).toBeGreaterThanOrEqual(6.35 * pointsPerMm);
      expect(block.x).toBeGreaterThan(400 - margins.right);
      expect(page.tabStrip).toEqual([block.x, 10, block.x + block.width, 490]);
    }
  });

  it('stand at the right of every page that is printed on one side', () => {
    const lefts = laidOut(titles)
      .slice(1)
      .map((page) => page.tabStrip?.[0]);
    expect(new Set(lefts).size).toBe(1);
    const texts = laidOut(titles).map((page) => textsOf(page)[0]?.x);
    expect(new Set(texts)).toEqual(new Set([80]));
  });

  it('stand at the outer edge of sheets printed on both sides, whose margins are each other’s mirror', () => {
    const pages = laidOut(titles, { bothSides: true });
    expect(pages.map((page) => textsOf(page)[0]?.x)).toEqual([80, 60, 80, 60, 80]);
    expect(pages.map((page) => page.printable[0])).toEqual([80, 60, 80, 60, 80]);
    const [, second, third] = pages;
    const [left = 0, , right = 0] = second?.tabStrip ?? [];
    const [otherLeft = 0, , otherRight = 0] = third?.tabStrip ?? [];
    expect(left).toBeCloseTo(400 - otherRight, 6);
    expect(right).toBeCloseTo(400 - otherLeft, 6);
    const turns = pages.slice(1).map((page) => {
      const { words } = tabOf(page);
      return words?.kind === 'text' ? words.turn : undefined;
    });
    expect(turns).toEqual([-90, 90, -90, 90]);
  });

  it('go without words where a title is too long for them to step', () => {
    const pages = laidOut(['Cover', 'a title of very many letters indeed', 'b']);
    const marks = pages.slice(1).map(tabOf);
    expect(marks.map(({ count }) => count)).toEqual([1, 1]);
    expect(marks.map(({ block }) => block?.kind)).toEqual(['rect', 'rect']);
  });

  it('are not there where the theme or the paper has none', () => {
    const theme = { ...evenTheme, tabs: { ...evenTheme.tabs, show: false } };
    for (const pages of [laidOut(titles, { theme }), laidOut(titles, { chapterTabs: false })]) {
      expect(pages.map((page) => tabOf(page).count)).toEqual([0, 0, 0, 0, 0]);
      expect(pages.map(linesOf)).toEqual(titles.map((title) => [title, 'words']));
    }
  });
});
