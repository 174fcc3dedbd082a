import { describe, expect, it } from 'vitest';
import { checkLaidOut } from '../../../src/layout/check';
import { layoutPages } from '../../../src/layout/flow/layout-pages';
import type { LaidOut, Page } from '../../../src/layout/frame';
import type { Block } from '../../../src/markup/block';
import {
  definitions,
  figure,
  group,
  heading,
  inlines,
  origin,
  pageOf,
  paragraph,
  words,
} from '../../helpers/blocks';
import { squareFonts } from '../../helpers/squareMetrics';
import { evenTheme, laidOutCleanly, squareOptions, textsOf } from '../../helpers/squarePage';

/** The gap between columns is 20 pt: two letters. A page of `2 n + 2` letters has columns of `n`. */
const columnsOf = (blocks: readonly Block[]) => group(blocks, 'columns');
const oneLine = (letter: string) => paragraph(letter.repeat(8));
const lay = (blocks: readonly Block[], columns: number, lines: number) =>
  laidOutCleanly(blocks, squareOptions(columns, lines));

/** The lines of the left and of the right column, from the top down. */
function columnsOn(page: Page | undefined, letters: number): string[][] {
  const texts = textsOf(page);
  const lines = (isMine: (x: number) => boolean) => {
    const own = texts.filter(({ x }) => isMine(x));
    return [...new Set(own.map(({ y }) => y))].map((y) =>
      own
        .filter((text) => text.y === y)
        .map(({ text }) => text.trimEnd())
        .join(' '),
    );
  };
  const right = (letters + 2) * 10;
  return [lines((x) => x < right), lines((x) => x >= right)];
}

function problemsIn(blocks: readonly Block[], laidOut: LaidOut): string[] {
  const leastPt = { text: 5, 'text-bold': 5, 'text-italic': 5, narrow: 5, 'narrow-bold': 5 };
  return checkLaidOut(blocks, laidOut, { fonts: squareFonts, theme: evenTheme, leastPt }).map(
    ({ code }) => code,
  );
}

describe('columns', () => {
  it('are even: what fits on the page is shared out between both, the left one read first', () => {
    const blocks = [columnsOf('abcdef'.split('').map(oneLine))];
    const { pages } = lay(blocks, 34, 20);
    expect(pages.length).toBe(1);
    expect(columnsOn(pages[0], 16)).toEqual([
      ['aaaaaaaa', 'bbbbbbbb', 'cccccccc'],
      ['dddddddd', 'eeeeeeee', 'ffffffff'],
    ]);
  });

  it('are set closer where that saves a page that would hold next to nothing', () => {
    const theme = { ...evenTheme, space: { ...evenTheme.space, paragraph: 2 } };
    const letters = 'abcdefghijklmnopq'.split('');
    const pages = (count: number) =>
      laidOutCleanly([columnsOf(letters.slice(0, count).map(oneLine))], squareOptions(34, 9, { theme }))
        .pages;
    // eight lines and seven gaps are 110 pt, a page 108
    expect(pages(14).map((page) => textsOf(page).length)).toEqual([14]);
    expect(pages(16).map((page) => textsOf(page).length)).toEqual([16]);
    expect(columnsOn(pages(16)[0], 16).map((column) => column.length)).toEqual([8, 8]);
  });

  it('stand half the width apart, their lines on common baselines', () => {
    const { pages } = lay([columnsOf('abcd'.split('').map(oneLine))], 34, 20);
    expect(textsOf(pages[0]).map(({ x, y }) => [x, y])).toEqual([
      [0, 8.5],
      [180, 8.5],
      [0, 20.5],
      [180, 20.5],
    ]);
  });

  it('fill the page and go on on the next, where the rest is even again', () => {
    const blocks = [columnsOf('abcdefghij'.split('').map(oneLine))];
    const { pages } = lay(blocks, 34, 3);
    expect(
      pages.map((page) => columnsOn(page, 16).map((lines) => lines.map((line) => line[0]).join(''))),
    ).toEqual([
      ['abc', 'def'],
      ['gh', 'ij'],
    ]);
  });

  it('begin below what stands above them, and what follows stands below both', () => {
    const { pages } = lay([oneLine('x'), columnsOf('abc'.split('').map(oneLine)), oneLine('y')], 34, 20);
    expect(textsOf(pages[0]).map(({ x, y, text }) => [x, y, text[0]])).toEqual([
      [0, 8.5, 'x'],
      [0, 20.5, 'a'],
      [180, 20.5, 'c'],
      [0, 32.5, 'b'],
      [0, 44.5, 'y'],
    ]);
  });

  it('obey the keep rules: no heading last in a column, no single line of a paragraph', () => {
    const blocks = [
      columnsOf([oneLine('a'), oneLine('b'), heading(2, 'hhhh'), paragraph('cccccccccccc dddddddddddd')]),
    ];
    const { pages } = lay(blocks, 34, 3);
    expect(columnsOn(pages[0], 16)).toEqual([
      ['aaaaaaaa', 'bbbbbbbb'],
      ['hhhh', 'cccccccccccc', 'dddddddddddd'],
    ]);
    const four = columnsOf([oneLine('a'), paragraph('bbbbbbbbbbbb cccccccccccc dddddddddddd eeeeeeeeeeee')]);
    expect(columnsOn(lay([four], 34, 20).pages[0], 16)).toEqual([
      ['aaaaaaaa', 'bbbbbbbbbbbb', 'cccccccccccc'],
      ['dddddddddddd', 'eeeeeeeeeeee'],
    ]);
  });

  it('say the term again, as an artifact, where a long entry breaks', () => {
    const meaning = 'ABCDEFGHIJ'
      .split('')
      .map((letter) => letter.repeat(10))
      .join(' ');
    const blocks = [columnsOf([definitions([['term', meaning]])])];
    const laidOut = lay(blocks, 42, 20);
    expect(columnsOn(laidOut.pages[0], 20)).toEqual([
      ['term', ...'ABCDE'.split('').map((letter) => letter.repeat(10))],
      ['term (continued)', ...'FGHIJ'.split('').map((letter) => letter.repeat(10))],
    ]);
    const again = textsOf(laidOut.pages[0]).filter(({ tag }) => tag === undefined);
    expect(again.map(({ text }) => text.trimEnd()).join(' ')).toBe('term (continued)');
    expect(problemsIn(blocks, laidOut)).toEqual([]);
  });

  it('move a short entry whole, and say again only the words of a term, not where they lead', () => {
    const short = columnsOf([definitions([['aa', 'AAAAAAAAAA BBBBBBBBBB CCCCCCCCCC']])]);
    const [left, right] = columnsOn(lay([short], 42, 20).pages[0], 20);
    expect(left?.length).toBe(4);
    expect(right).toEqual([]);
    const item = {
      term: [...inlines('part'), pageOf('there')],
      meaning: inlines(words(24)),
    };
    const leading: Block = { kind: 'definitions', origin: origin(), items: [item] };
    const blocks = [heading(1, 'x', 'there'), columnsOf([leading])];
    const laidOut = lay(blocks, 42, 20);
    expect(columnsOn(laidOut.pages[0], 20)[1]?.[0]).toBe('part (continued)');
    expect(problemsIn(blocks, laidOut)).toEqual([]);
  });

  it('move figures and named places with their column', () => {
    const named = paragraph('bbbbbbbb', 'body', 'here');
    const laidOut = lay([columnsOf([figure(100, 24), oneLine('a'), figure(100, 24), named])], 42, 20);
    const boxes = laidOut.structure.flatMap(({ type, box }) => (type === 'Figure' ? [box] : []));
    expect(boxes).toEqual([
      [0, 0, 100, 24],
      [220, 0, 320, 24],
    ]);
    expect(laidOut.destinations).toEqual([{ name: 'here', page: 0, y: 24 }]);
  });

  it('are one where the sheet is too narrow for two', () => {
    const { pages } = lay([columnsOf('abcd'.split('').map(oneLine))], 31, 20);
    expect(columnsOn(pages[0], 16)).toEqual([['aaaaaaaa', 'bbbbbbbb', 'cccccccc', 'dddddddd'], []]);
  });

  it('refuse what is taller than a page, once, and lay out nothing wrongly at any height', () => {
    const tall = columnsOf([oneLine('a'), figure(100, 2000)]);
    const codes = layoutPages([tall], squareOptions(42, 10));
    expect((codes.ok ? [] : codes.problems).map(({ code }) => code)).toEqual(['layout-figure-small']);
    const list = definitions(
      'abcdefghijkl'.split('').map((letter, index) => [letter.repeat(3), words(3 * index + 1)] as const),
    );
    for (let lines = 4; lines < 60; lines += 3) {
      const blocks = [heading(1, 'title'), columnsOf([list]), oneLine('z')];
      const laidOut = lay(blocks, 42, lines);
      expect(problemsIn(blocks, laidOut), `${lines} lines`).toEqual([]);
      for (const page of laidOut.pages) for (const { y } of textsOf(page)) expect(y).toBeLessThan(lines * 12);
    }
  });
});
