import { describe, expect, it } from 'vitest';
import { checkLaidOut } from '../../../src/layout/check';
import { contrast } from '../../../src/layout/contrast';
import { layoutPages } from '../../../src/layout/flow/layout-pages';
import type { Block } from '../../../src/markup/block';
import { cell, paragraph, table } from '../../helpers/blocks';
import { squareFonts } from '../../helpers/squareMetrics';
import { evenTheme, laidOutCleanly, linesOf, squareOptions, textsOf } from '../../helpers/squarePage';

const numbered = (count: number) => Array.from({ length: count }, (_, index) => [`r${index + 1}`]);
const pagesOf = (blocks: readonly Block[], columns: number, lines: number) =>
  laidOutCleanly(blocks, squareOptions(columns, lines)).pages.map(linesOf);
const checked = (blocks: readonly Block[], columns: number, lines: number) =>
  checkLaidOut(blocks, laidOutCleanly(blocks, squareOptions(columns, lines)), {
    fonts: squareFonts,
    theme: evenTheme,
    leastPt: { text: 10, 'text-italic': 10, 'text-bold': 10, narrow: 10, 'narrow-bold': 10 },
  });

describe('tables over pages', () => {
  it('repeat caption and head, the caption saying that it goes on', () => {
    const blocks = [table({ caption: 'cap', head: ['top'], rows: numbered(7), style: 'plain' })];
    // the line under the head takes 0.75 pt, so that a page of seven lines holds six
    expect(pagesOf(blocks, 20, 7)).toEqual([
      ['cap', 'top', 'r1', 'r2', 'r3', 'r4'],
      ['cap (continued)', 'top', 'r5', 'r6', 'r7'],
    ]);
  });

  it('leave no fewer than three rows at the end', () => {
    const blocks = [table({ head: ['top'], rows: numbered(6), style: 'plain' })];
    expect(pagesOf(blocks, 20, 7).map((lines) => lines.length)).toEqual([4, 4]);
  });

  it('do not begin at the foot of a page without three rows, nor break where that leaves fewer', () => {
    const rows = (count: number) => table({ head: ['top'], rows: numbered(count), style: 'plain' });
    const above = (count: number) => Array.from({ length: count }, (_, index) => paragraph(`x${index}`));
    const linesOfPages = (lead: number, count: number) =>
      pagesOf([...above(lead), rows(count)], 20, 9).map((lines) => lines.length);
    // a page of nine lines holds a head, eight rows less the line under the head
    expect(linesOfPages(4, 9)).toEqual([8, 7]);
    expect(linesOfPages(5, 9).slice(0, 1)).toEqual([5]);
    // five rows cannot be parted three and three
    expect(linesOfPages(3, 5)).toEqual([3, 6]);
  });

  it('stay whole with six rows or fewer that take no more than a quarter of a page', () => {
    const linesOfPages = (lead: number, count: number, lines: number) => {
      const above = Array.from({ length: lead }, (_, index) => paragraph(`x${index}`));
      const rows = table({ head: ['top'], rows: numbered(count), style: 'plain' });
      return pagesOf([...above, rows], 20, lines).map((page) => page.length);
    };
    // a head, six rows and the line under the head are a quarter of thirty lines, not of twenty; four lines are left
    expect(linesOfPages(25, 6, 30)).toEqual([25, 7]);
    expect(linesOfPages(15, 6, 20)).toEqual([19, 4]);
    expect(linesOfPages(25, 7, 30)).toEqual([29, 5]);
  });

  describe('with space in their rows', () => {
    const spaced = { ...evenTheme, space: { ...evenTheme.space, cellY: 2 } };
    const bottomsOf = (count: number, lines: number) =>
      laidOutCleanly(
        [table({ head: ['top'], rows: numbered(count), style: 'plain' })],
        squareOptions(20, lines, { theme: spaced }),
      ).pages.map((page) => textsOf(page).map(({ y }) => y));

    it('are set closer, as little as it takes, where all that is left then fits', () => {
      // rows of 16 pt, a head of 16.75: ten rows are 176.75 pt, and 14 lines hold 168
      const [page, ...more] = bottomsOf(10, 14);
      expect(more).toEqual([]);
      const [head = 0, first = 0, second = 0] = page ?? [];
      expect(second - first).toBeCloseTo(16 - 8.75 / 10, 6);
      expect(first - head).toBeCloseTo(16.75 - 8.75 / 20, 6);
    });

    it('keep their space where the least of it would not do', () => {
      // twelve rows are 208.75 pt; with 1.3 pt instead of 2 above and below each they are 191.95, with 1 pt 184.75
      const pages = bottomsOf(12, 14);
      expect(pages.map((page) => page.length)).toEqual([10, 4]);
      expect((pages[0]?.[2] ?? 0) - (pages[0]?.[1] ?? 0)).toBeCloseTo(16, 6);
    });

    it('leave room for a pencil in rows that are written in', () => {
      const whole = table({ rows: numbered(10), style: 'plain' });
      const field = { kind: 'line', name: 'a', title: 'a', letters: 2, lines: 1 } as const;
      const body = whole.body.map(({ cells }, index) => ({
        cells: cells.map((one) => ({ ...one, field: { ...field, name: `f${index}` } })),
      }));
      const { pages } = laidOutCleanly([{ ...whole, body }], squareOptions(20, 16, { theme: spaced }));
      const heights = pages.flatMap(({ items }) =>
        items.flatMap((item) => (item.kind === 'field' ? [item.heightPt] : [])),
      );
      expect(heights).toHaveLength(10);
      expect(new Set(heights.map((height) => height.toFixed(3))).size).toBe(1);
      expect(pages.length).toBe(2);
    });
  });

  it('do not begin at the foot of a page without two rows', () => {
    const blocks = [
      paragraph('x'),
      paragraph('y'),
      table({ head: ['top'], rows: numbered(4), style: 'plain' }),
    ];
    expect(pagesOf(blocks, 20, 5)).toEqual([
      ['x', 'y'],
      ['top', 'r1', 'r2'],
      ['top', 'r3', 'r4'],
    ]);
  });

  it('keep the head of a section with its rows', () => {
    const whole = table({
      head: ['h1', 'h2'],
      rows: Array.from({ length: 6 }, (_, index) => [`a${index}`, `b${index}`]),
      style: 'plain',
    });
    const section = { cells: [cell('part', 'column', 2)] };
    const blocks = [{ ...whole, body: [...whole.body.slice(0, 3), section, ...whole.body.slice(3)] }];
    const pages = pagesOf(blocks, 20, 6);
    expect(pages).toEqual([
      ['h1 h2', 'a0 b0', 'a1 b1', 'a2 b2'],
      ['h1 h2', 'part', 'a3 b3', 'a4 b4', 'a5 b5'],
    ]);
  });

  it('show every row whole, down to the last, at every page height', () => {
    const rows = Array.from({ length: 23 }, (_, index) => [
      `row${index}`,
      'some words that wrap',
      String(index),
    ]);
    for (let lines = 9; lines < 40; lines += 1) {
      expect(checked([table({ caption: 'a table', head: ['one', 'two', 'no'], rows })], 30, lines)).toEqual(
        [],
      );
    }
  });

  it('never break inside a row', () => {
    const rows = Array.from({ length: 8 }, (_, index) => [`first${index} second${index} third${index}`]);
    const { pages } = laidOutCleanly([table({ rows, style: 'plain' })], squareOptions(9, 8));
    for (const page of pages) expect(linesOf(page).length % 3).toBe(0);
  });

  it('are refused if the head leaves no room for a row', () => {
    const result = layoutPages([table({ head: ['a b c d e f'], rows: [['x']] })], squareOptions(1, 6));
    expect(result.ok ? [] : result.problems.map(({ code }) => code)).toEqual(['layout-head-too-tall']);
  });

  it('are refused if a row is taller than a page', () => {
    const result = layoutPages([table({ rows: [['a b c d e f g h']] })], squareOptions(1, 6));
    expect(result.ok ? [] : result.problems.map(({ code }) => code)).toEqual(['layout-too-tall']);
  });
});

describe('cells to write in', () => {
  const paths = (boxes: boolean) => {
    const whole = table({
      head: ['h', ''],
      rows: [
        ['a', ''],
        ['b', 'c'],
      ],
      striped: true,
    });
    const [page] = laidOutCleanly([{ ...whole, ...(boxes ? { boxes } : {}) }], squareOptions(20, 9)).pages;
    return (page?.items ?? []).flatMap((item) => {
      if (item.kind !== 'shape' || item.shape.kind !== 'path') return [];
      const points = item.shape.pieces.flatMap((piece) => ('x' in piece ? [[piece.x, piece.y]] : []));
      return [{ points, paint: item.shape.paint }];
    });
  };

  it('have a line on each side, dark enough to be seen, over the stripes', () => {
    const { rule } = evenTheme.colours;
    expect(contrast(rule, evenTheme.colours.paper)).toBeGreaterThanOrEqual(3);
    const lines = paths(true).filter(({ paint }) => paint.stroke?.colour === rule);
    const xs = lines.flatMap(({ points }) => points.map(([x]) => x));
    expect(lines).toHaveLength(4);
    expect([...new Set(xs)]).toHaveLength(2);
    expect(Math.max(...xs.map((x) => x ?? 0))).toBe(200);
  });

  it('have none in other tables', () => {
    const { rule } = evenTheme.colours;
    expect(paths(false).filter(({ paint }) => paint.stroke?.colour === rule)).toEqual([]);
  });
});

describe('columns', () => {
  it('stand as wide as their words need, numbers at the right', () => {
    const columns = [
      { align: 'left', weight: 0 },
      { align: 'right', weight: 0 },
      { align: 'centre', weight: 1 },
    ] as const;
    const [page] = laidOutCleanly(
      [
        table({
          rows: [
            ['aaa', '1', 'm'],
            ['a', '100', 'mm'],
          ],
          columns,
          style: 'plain',
        }),
      ],
      squareOptions(30, 9),
    ).pages;
    const at = (text: string) => textsOf(page).find((item) => item.text === text)?.x;
    // 30 pt and 5 of padding; then 5, 30 and 5; then 5 and what is left of 300
    expect([at('aaa'), at('a')]).toEqual([0, 0]);
    expect([at('1'), at('100')]).toEqual([60, 40]);
    expect(at('mm')).toBeCloseTo(80 + (220 - 20) / 2, 6);
  });

  it('break no word as long as the table can be as wide as its words', () => {
    const rows = [['low-water cut-off', 'shut', 'between the burner and the automatic']];
    for (let columns = 24; columns < 60; columns += 1)
      expect(checked([table({ rows })], columns, 30)).toEqual([]);
  });

  it('set a table that is too wide in the narrow cut, then break its words, and say so', () => {
    const blocks = [table({ rows: [['abcdefghijklmno', 'abcdefghijklmno']] })];
    const result = layoutPages(blocks, squareOptions(20, 9));
    expect(result.ok && result.remarks.map(({ code }) => code)).toEqual(['layout-word-broken']);
    const texts = textsOf(result.ok ? result.value.pages[0] : undefined);
    expect(new Set(texts.map(({ face }) => face))).toEqual(new Set(['narrow']));
    expect(texts.every(({ x, widthPt }) => x + widthPt <= 200)).toBe(true);
  });

  it('refuse a table with more columns than there is room for letters', () => {
    const rows = [Array.from({ length: 14 }, () => 'wwwwwwwwww')];
    const result = layoutPages([table({ rows })], squareOptions(20, 9));
    expect(result.ok ? [] : result.problems.map(({ code }) => code)).toEqual(['layout-table-too-wide']);
  });

  it('hold 60-letter names without losing a letter', () => {
    const name = 'the-right-hand-pilot-fuel-stop-valve-below-the-seat-cushion-x';
    for (const columns of [12, 20, 33, 70]) {
      const blocks = [
        table({
          rows: [
            [name, 'shut'],
            ['glass', 'open'],
          ],
        }),
      ];
      const result = layoutPages(blocks, squareOptions(columns, 40));
      if (!result.ok) throw new Error(JSON.stringify(result.problems));
      const letters = textsOf(result.value.pages[0])
        .filter(({ x }) => x === 0)
        .map(({ text }) => text.trim())
        .join('');
      expect(letters).toBe(`${name}glass`);
    }
  });
});

describe('the structure of a table', () => {
  it('names heads and what they head, spans, and the caption; repeated heads are not part of it', () => {
    const plain = table({ caption: 'cap', head: ['a', 'b'], rows: [['1', '2']] });
    const span = { cells: [cell('both', 'column', 2)] };
    const row = { cells: [cell('1', 'row'), cell('2')] };
    const { structure } = laidOutCleanly(
      [{ ...plain, head: [span, ...plain.head], body: [row] }],
      squareOptions(20, 20),
    );
    expect(structure.map(({ type, scope, columnSpan }) => [type, scope, columnSpan].filter(Boolean))).toEqual(
      [
        ['Document'],
        ['Table'],
        ['Caption'],
        ['THead'],
        ['TR'],
        ['TH', 'Column', 2],
        ['TR'],
        ['TH', 'Column'],
        ['TH', 'Column'],
        ['TBody'],
        ['TR'],
        ['TH', 'Row'],
        ['TD'],
      ],
    );
    const long = laidOutCleanly([table({ head: ['top'], rows: numbered(9) })], squareOptions(20, 7));
    expect(long.structure.filter(({ type }) => type === 'TH')).toHaveLength(1);
    const tops = long.pages.map((page) => textsOf(page).find(({ text }) => text === 'top')?.tag);
    expect(tops[0]).toBeTypeOf('number');
    expect(tops.slice(1)).toEqual([undefined]);
  });
});
