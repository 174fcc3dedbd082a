import { describe, expect, it } from 'vitest';
import type { Block, TableBlock } from '../../../src/markup/block';
import { cell, figure, paragraph, table } from '../../helpers/blocks';
import { laidOutCleanly, linesOf, squareOptions } from '../../helpers/squarePage';

const sectioned = (): TableBlock => {
  const plain = table({ head: ['top', 'two'], rows: [['', '']], style: 'plain' });
  const row = (name: string, id?: string) => ({
    cells: [cell(name), cell('x')],
    ...(id === undefined ? {} : { id }),
  });
  const head = (name: string) => ({ cells: [cell(name, 'row', 2)] });
  return {
    ...plain,
    body: [
      head('one'),
      ...['a', 'b', 'c', 'd', 'e', 'f'].map((name) => row(name, `row-${name}`)),
      head('two'),
      row('g'),
      row('h'),
      row('i'),
    ],
  };
};

describe('a table in sections', () => {
  it('says the head of a section again where its rows go on overleaf', () => {
    const pages = laidOutCleanly([sectioned()], squareOptions(30, 7)).pages.map(linesOf);
    expect(pages.length).toBeGreaterThan(1);
    expect(pages[1]?.join(' ')).toContain('one (continued)');
    expect(pages[0]?.join(' ')).not.toContain('continued');
  });

  it('has rows that links lead to, on the page where each stands', () => {
    const { pages, destinations } = laidOutCleanly([sectioned()], squareOptions(30, 7));
    const pageOf = (name: string) => destinations.find((each) => each.name === name)?.page;
    const shown = (name: string) =>
      pages.findIndex((page) => linesOf(page).some((line) => line.startsWith(name)));
    for (const name of ['a', 'b', 'f']) expect(pageOf(`row-${name}`)).toBe(shown(name));
    expect(pageOf('row-a')).not.toBe(pageOf('row-f'));
  });
});

describe('a figure in a book', () => {
  const above = (lines: number): Block[] =>
    Array.from({ length: lines }, (_, index) => paragraph(`x${index}`));
  const pagesWith = (lines: number, heightPt: number, chaptersOnNewPage: boolean) =>
    laidOutCleanly([...above(lines), figure(50, heightPt)], squareOptions(20, 20, { chaptersOnNewPage }))
      .pages.length;

  it('gives way by a little rather than move overleaf, and no more than its letters allow', () => {
    // lines of 12 pt: ten of twenty leave 120 pt
    expect(pagesWith(10, 120, true)).toBe(1);
    expect(pagesWith(10, 125, true)).toBe(1);
    expect(pagesWith(10, 160, true)).toBe(2);
  });

  it('stays as it is on other papers', () => {
    expect(pagesWith(10, 125, false)).toBe(2);
  });
});
