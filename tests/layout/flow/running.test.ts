import { describe, expect, it } from 'vitest';
import type { RunningLine, RunningPiece } from '../../../src/layout/types';
import { contents, heading, pageBreak, paragraph } from '../../helpers/blocks';
import { laidOutCleanly, linesOf, nothingRunning, squareOptions, textsOf } from '../../helpers/squarePage';

const words = (text: string): RunningPiece => ({ kind: 'words', text, strong: false });
const head: RunningLine = { left: [{ kind: 'chapter' }], centre: [], right: [words('car')] };
const foot: RunningLine = {
  left: [],
  centre: [words('page '), { kind: 'page' }, words(' of '), { kind: 'pages' }],
  right: [],
};

describe('running heads and feet', () => {
  it('say the chapter a page begins in, and the page’s number', () => {
    const blocks = [
      heading(1, 'one'),
      paragraph('a'),
      pageBreak(),
      paragraph('b'),
      heading(1, 'two'),
      paragraph('c'),
      pageBreak(),
      paragraph('d'),
    ];
    const { pages } = laidOutCleanly(blocks, squareOptions(40, 9, { head, foot }));
    expect(pages.map((page) => linesOf(page)[0])).toEqual(['one car', 'one car', 'two car']);
    expect(pages.map((page) => linesOf(page).at(-1))).toEqual(['page 1 of 3', 'page 2 of 3', 'page 3 of 3']);
  });

  it('leave out a chapter that says again what stands strong at the left', () => {
    const twice: RunningLine = {
      left: [{ kind: 'words', text: 'Car', strong: true }],
      centre: [],
      right: [{ kind: 'chapter' }],
    };
    const titles = ['Car', 'Car: the cover', 'Carriage'];
    const blocks = titles.flatMap((title) => [heading(1, title), paragraph('x')]);
    const { pages } = laidOutCleanly(blocks, squareOptions(40, 9, { head: twice, chaptersOnNewPage: true }));
    expect(pages.map((page) => linesOf(page)[0])).toEqual(['Car', 'Car', 'Car Carriage']);
  });

  it('say the new chapter where it begins at the top of the page', () => {
    const blocks = [heading(1, 'one'), paragraph('a'), heading(1, 'two'), paragraph('b')];
    const { pages } = laidOutCleanly(blocks, squareOptions(40, 9, { head, chaptersOnNewPage: true }));
    expect(pages.map((page) => linesOf(page)[0])).toEqual(['one car', 'two car']);
  });

  it('are artifacts, and absent from a title page', () => {
    const options = squareOptions(40, 9, { head, foot, firstPage: { head: false, foot: false } });
    const { pages } = laidOutCleanly([paragraph('a'), pageBreak(), paragraph('b')], options);
    expect(linesOf(pages[0])).toEqual(['a']);
    expect(
      textsOf(pages[1])
        .filter(({ tag }) => tag === undefined)
        .map(({ text }) => text),
    ).toEqual(['car', 'page 2 of 2']);
  });

  it('take lines of their own where they do not fit beside each other, and the text keeps clear of them', () => {
    const long: RunningLine = {
      ...nothingRunning,
      left: [{ kind: 'chapter' }],
      right: [words('rather long')],
    };
    const blocks = [heading(1, 'a long chapter title'), paragraph('x')];
    const { pages } = laidOutCleanly(blocks, squareOptions(25, 9, { head: long }));
    expect(textsOf(pages[0]).map(({ text, y }) => [text, y])).toEqual([
      ['a long chapter title', 8.5],
      ['rather long', 20.5],
      ['a long chapter title', 32.5],
      ['x', 44.5],
    ]);
  });
});

describe('contents', () => {
  it('list headings down to their depth with the pages they come out on', () => {
    const blocks = [
      contents(2),
      pageBreak(),
      heading(1, 'one'),
      heading(2, 'sub'),
      heading(3, 'deep'),
      paragraph('a'),
      pageBreak(),
      heading(1, 'two'),
      paragraph('b'),
    ];
    const { pages } = laidOutCleanly(blocks, squareOptions(40, 9));
    expect(linesOf(pages[0])).toEqual(['one 2', 'sub 2', 'two 3']);
    const texts = textsOf(pages[0]);
    expect(texts.filter(({ text }) => /^\d$/.test(text)).map(({ x, widthPt }) => x + widthPt)).toEqual([
      400, 400, 400,
    ]);
  });

  it('settle even when their own length moves what they list', () => {
    const chapters = Array.from({ length: 30 }, (_, index) => [
      heading(1, `chapter ${index}`),
      paragraph('text'),
    ]).flat();
    const { pages, destinations } = laidOutCleanly([contents(1), ...chapters], squareOptions(40, 12));
    const listed = pages.flatMap((page) => linesOf(page)).filter((line) => /^chapter \d+ \d+$/.test(line));
    expect(listed).toHaveLength(30);
    for (const line of listed) {
      const [, index, page] = /^chapter (\d+) (\d+)$/.exec(line) ?? [];
      expect(destinations[Number(index)]?.page).toBe(Number(page) - 1);
    }
  });

  it('are links to what they list', () => {
    const { pages, structure } = laidOutCleanly(
      [contents(1), heading(1, 'one', 'first'), paragraph('a')],
      squareOptions(40, 9),
    );
    const link = pages[0]?.items.find((item) => item.kind === 'link');
    expect(link).toMatchObject({ target: 'first', words: 'one', x: 0, y: 0, widthPt: 400, heightPt: 12 });
    expect(structure.slice(0, 4).map(({ type }) => type)).toEqual(['Document', 'TOC', 'TOCI', 'Link']);
  });
});
