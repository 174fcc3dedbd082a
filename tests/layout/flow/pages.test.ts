import { describe, expect, it } from 'vitest';
import { layoutPages } from '../../../src/layout/flow/layout-pages';
import type { Page } from '../../../src/layout/frame';
import type { Block, StepItem } from '../../../src/markup/block';
import {
  briefCaution,
  caution,
  figure,
  group,
  heading,
  inlines,
  linesToFoot,
  linked,
  list,
  pageBreak,
  pageOf,
  paragraph,
  rule,
  step,
  steps,
  table,
  words,
} from '../../helpers/blocks';
import { evenTheme, laidOutCleanly, linesOf, squareOptions, textsOf } from '../../helpers/squarePage';

/** Words of one line each, `columns` wide. */
const oneLine = (letter: string) => paragraph(letter.repeat(8));
const pagesOf = (blocks: readonly Block[], columns: number, lines: number) =>
  laidOutCleanly(blocks, squareOptions(columns, lines)).pages.map(linesOf);
const codesOf = (blocks: readonly Block[], columns: number, lines: number) => {
  const result = layoutPages(blocks, squareOptions(columns, lines));
  return (result.ok ? result.remarks : result.problems).map(({ code }) => code);
};

describe('paragraphs', () => {
  it('stand on lines 12 pt apart, from the top left corner', () => {
    const [page] = laidOutCleanly([paragraph('aaaa bbbb cccc')], squareOptions(9, 10)).pages;
    // baseline: the middle of the 12 pt line, lowered by half of ascent 7.5 less descent 2.5
    expect(textsOf(page).map(({ x, y, text }) => [x, y, text])).toEqual([
      [0, 8.5, 'aaaa bbbb '],
      [0, 20.5, 'cccc'],
    ]);
  });

  it('fill a page to its last line', () => {
    expect(pagesOf('abcdef'.split('').map(oneLine), 8, 3).map((lines) => lines.length)).toEqual([3, 3]);
  });

  it('leave no single line at the foot of a page', () => {
    const four = paragraph('aaaaaa bbbbbb cccccc dddddd');
    expect(pagesOf([oneLine('x'), oneLine('y'), four], 8, 3)).toEqual([
      ['xxxxxxxx', 'yyyyyyyy'],
      ['aaaaaa', 'bbbbbb'],
      ['cccccc', 'dddddd'],
    ]);
  });

  it('leave no single line at the head of a page', () => {
    const five = paragraph('aaaaaa bbbbbb cccccc dddddd eeeeee');
    expect(pagesOf([five], 8, 4)).toEqual([
      ['aaaaaa', 'bbbbbb', 'cccccc'],
      ['dddddd', 'eeeeee'],
    ]);
  });

  it('lose no word at any width', () => {
    const text = words(90);
    for (let columns = 7; columns < 60; columns += 3) {
      const lines = pagesOf([paragraph(text)], columns, 9).flat();
      expect(lines.join(' ')).toBe(text);
    }
  });
});

describe('headings', () => {
  it('go with the two lines that follow them', () => {
    const blocks = [oneLine('x'), oneLine('y'), heading(2, 'hhhh'), paragraph('aaaaaa bbbbbb cccccc dddddd')];
    expect(pagesOf(blocks, 8, 4)[1]?.[0]).toBe('hhhh');
    expect(pagesOf(blocks, 8, 5)[0]).toEqual(['xxxxxxxx', 'yyyyyyyy', 'hhhh', 'aaaaaa', 'bbbbbb']);
  });

  it('go together, several of them, with what follows', () => {
    const blocks = [oneLine('x'), heading(1, 'one'), heading(2, 'two'), oneLine('a')];
    expect(pagesOf(blocks, 8, 3)).toEqual([['xxxxxxxx'], ['one', 'two', 'aaaaaaaa']]);
  });

  it('go with a table’s head and first two rows', () => {
    const rows = ['1', '2', '3', '4', '5'].map((text) => [text]);
    const blocks = [oneLine('x'), heading(2, 'hhhh'), table({ head: ['top'], rows, style: 'plain' })];
    const [first, second] = pagesOf(blocks, 8, 5);
    expect(first).toEqual(['xxxxxxxx']);
    expect(second?.slice(0, 3)).toEqual(['hhhh', 'top', '1']);
  });

  it('go, with a few words below them, with what those words introduce', () => {
    const rows = ['1', '2', '3', '4', '5', '6'].map((text) => [text]);
    const below: readonly (readonly [string, Block, readonly string[]])[] = [
      ['a table', table({ head: ['top'], rows, style: 'plain' }), ['top', '1', '2']],
      ['a list', list(['one', 'two']), ['one', 'two']],
      ['steps', steps([step('one'), step('two')]), ['1 one', '2 two']],
      ['a caution', caution('danger', 'hot'), ['DANGER', 'hot']],
    ];
    for (const [kind, introduced, lines] of below) {
      const blocks = [oneLine('x'), oneLine('y'), heading(2, 'hhhh'), paragraph('a:'), introduced];
      const found = pagesOf(blocks, 14, kind === 'a table' || kind === 'a caution' ? 7 : 4);
      expect(found[0], kind).toEqual(['xxxxxxxx', 'yyyyyyyy']);
      expect(found[1]?.slice(0, 2), kind).toEqual(['hhhh', 'a:']);
      expect(found[1]?.slice(2).join(''), kind).toContain(lines.join(''));
    }
  });

  it('do not hold more than a few words to what comes next', () => {
    const five = paragraph('aaaaaa bbbbbb cccccc dddddd eeeeee');
    const blocks = [oneLine('x'), oneLine('y'), heading(2, 'hhhh'), five, figure(40, 40)];
    expect(pagesOf(blocks, 8, 10).map((lines) => lines.length)).toEqual([8, 0]);
  });

  it('leave a figure the room below them and their words', () => {
    const blocks = [heading(2, 'hhhh'), paragraph('a'), figure(70, 116)];
    const { pages } = laidOutCleanly(blocks, squareOptions(8, 10));
    expect(pages).toHaveLength(1);
    const rect = pages[0]?.items.find((item) => item.kind === 'shape' && item.shape.kind === 'rect');
    expect(rect?.kind === 'shape' && rect.shape.kind === 'rect' ? rect.shape.height : 0).toBeCloseTo(96, 6);
  });

  it('start a chapter on a new page if asked to, without an empty page first', () => {
    const blocks = [heading(1, 'one'), oneLine('a'), heading(1, 'two'), oneLine('b')];
    const { pages } = laidOutCleanly(blocks, squareOptions(8, 9, { chaptersOnNewPage: true }));
    expect(pages.map(linesOf)).toEqual([
      ['one', 'aaaaaaaa'],
      ['two', 'bbbbbbbb'],
    ]);
  });

  it('are bookmarks down to level 3, nested', () => {
    const blocks = [
      heading(1, 'a'),
      heading(2, 'b'),
      heading(3, 'c'),
      heading(4, 'd'),
      heading(1, 'e'),
      oneLine('x'),
    ];
    const { outline } = laidOutCleanly(blocks, squareOptions(8, 20));
    const shape = (entries: typeof outline): unknown =>
      entries.map(({ title, children }) => [title, shape(children)]);
    expect(shape(outline)).toEqual([
      ['a', [['b', [['c', []]]]]],
      ['e', []],
    ]);
  });
});

describe('page breaks', () => {
  it('start a new page, once, and none at the start or end', () => {
    const blocks = [pageBreak(), oneLine('a'), pageBreak(), pageBreak(), oneLine('b'), pageBreak()];
    expect(pagesOf(blocks, 8, 9)).toEqual([['aaaaaaaa'], ['bbbbbbbb']]);
  });

  it('give one empty page for an empty paper', () => {
    expect(pagesOf([], 8, 9)).toEqual([[]]);
    expect(pagesOf([pageBreak(), pageBreak()], 8, 9)).toEqual([[]]);
  });

  it('that depend on the room left start a new page unless half of one is left, and then draw a line', () => {
    const after = [pageBreak('half'), oneLine('z')];
    const linesBefore = (count: number) => 'abcdefgh'.slice(0, count).split('').map(oneLine);
    const pages = (count: number) =>
      laidOutCleanly([...linesBefore(count), ...after], squareOptions(8, 8)).pages;
    const rules = (page: Page | undefined) =>
      page?.items.filter(({ kind }) => kind === 'shape').map(({ tag }) => tag);
    expect(pages(4).map((page) => linesOf(page).length)).toEqual([5]);
    expect(rules(pages(4)[0])).toEqual([undefined]);
    expect(pages(5).map((page) => linesOf(page).length)).toEqual([5, 1]);
    expect(pages(5).map(rules)).toEqual([[], []]);
  });

  it('that depend on the room left take a third of a page where that is asked for', () => {
    const pages = (count: number, share: 'half' | 'third') =>
      pagesOf(
        [...'abcdefghi'.slice(0, count).split('').map(oneLine), pageBreak(share), oneLine('z')],
        8,
        9,
      ).map((lines) => lines.length);
    expect(pages(5, 'half')).toEqual([5, 1]);
    expect(pages(5, 'third')).toEqual([6]);
    expect(pages(6, 'third')).toEqual([7]);
    expect(pages(7, 'third')).toEqual([7, 1]);
  });

  it('that ask for the whole start a new page unless all stands there up to the next, and then draw a line', () => {
    const part = (letters: string) => [pageBreak('whole'), ...letters.split('').map(oneLine)];
    const pages = (...parts: readonly string[]) =>
      pagesOf(
        parts.flatMap((letters) => part(letters)),
        8,
        9,
      ).map((lines) => lines.map((line) => line[0]).join(''));
    expect(pages('abc', 'de', 'fg')).toEqual(['abcdefg']);
    // a line across is 0.75 pt
    expect(pages('abc', 'de', 'fghi')).toEqual(['abcde', 'fghi']);
    expect(pages('abc', 'defghij', 'k')).toEqual(['abc', 'defghijk']);
    expect(pages('a', 'bcdefghijkl', 'm')).toEqual(['a', 'bcdefghij', 'klm']);
    const rules = (letters: string) =>
      laidOutCleanly([oneLine('a'), ...part(letters)], squareOptions(8, 9)).pages.map(
        ({ items }) => items.filter(({ kind }) => kind === 'shape').length,
      );
    expect(rules('bc')).toEqual([1]);
    expect(rules('bcdefghij')).toEqual([0, 0]);
  });

  it('that ask for the whole count a caution said above once', () => {
    const careful = (letter: string) => step(letter.repeat(3), { cautions: [briefCaution('danger', 'hot')] });
    const careless = (letter: string) => step(letter.repeat(3));
    const pages = (lines: number, one: (letter: string) => StepItem) =>
      pagesOf([oneLine('x'), pageBreak('whole'), steps([one('a'), one('b'), one('c')])], 30, lines).length;
    const least = (one: (letter: string) => StepItem) =>
      [4, 5, 6, 7, 8, 9, 10].find((lines) => pages(lines, one) === 1);
    expect(least(careless)).toBe(5);
    // the panel is a line tall and a little more; three of them would take nine lines
    expect(least(careful)).toBe(6);
  });

  it('do not part the first of several steps from the next where that takes no page more', () => {
    const few = (letters: string) => steps(letters.split('').map((letter) => step(letter.repeat(3))));
    const begun = (before: number, letters: string) =>
      pagesOf(
        [...'zyxwvu'.slice(0, before).split('').map(oneLine), heading(2, 'hh'), few(letters)],
        10,
        6,
      ).map((lines) => lines.length);
    expect(begun(3, 'abcd')).toEqual([6, 2]);
    expect(begun(4, 'abcd')).toEqual([4, 5]);
    // a page more would be taken
    expect(begun(4, 'abcdefg')).toEqual([6, 6]);
    expect(begun(4, 'a')).toEqual([6]);
  });

  it('that depend on the room left do not part what follows from what holds on to it', () => {
    const part = [pageBreak('half'), heading(2, 'hhhh'), figure(40, 40)];
    expect(pagesOf([oneLine('a'), ...part], 8, 7)).toEqual([['aaaaaaaa', 'hhhh']]);
    expect(pagesOf([oneLine('a'), oneLine('b'), oneLine('c'), ...part], 8, 7)).toEqual([
      ['aaaaaaaa', 'bbbbbbbb', 'cccccccc'],
      ['hhhh'],
    ]);
  });

  it('set a part that they begin or end a little closer, where its last page would else hold little', () => {
    const theme = { ...evenTheme, space: { ...evenTheme.space, paragraph: 2 } };
    const lines = (count: number) => 'abcdefgh'.slice(0, count).split('').map(oneLine);
    const pages = laidOutCleanly(
      [...lines(8), pageBreak(), ...lines(2)],
      squareOptions(8, 9, { theme }),
    ).pages.map((page) => textsOf(page).map(({ y }) => y));
    // eight lines and seven gaps are 110 pt, a page 108
    expect(pages.map(({ length }) => length)).toEqual([8, 2]);
    expect((pages[0]?.[1] ?? 0) - (pages[0]?.[0] ?? 0)).toBeCloseTo(12 + 0.8 * 2, 6);
    expect((pages[1]?.[1] ?? 0) - (pages[1]?.[0] ?? 0)).toBeCloseTo(14, 6);
  });

  it('that depend on the room left start nothing at the head or the end of a paper', () => {
    expect(pagesOf([pageBreak('half'), oneLine('a'), pageBreak('half')], 8, 9)).toEqual([['aaaaaaaa']]);
  });
});

describe('groups', () => {
  it('stay on one page if one can hold them', () => {
    const blocks = [oneLine('x'), oneLine('y'), group([oneLine('a'), oneLine('b'), oneLine('c')])];
    expect(pagesOf(blocks, 8, 4)).toEqual([
      ['xxxxxxxx', 'yyyyyyyy'],
      ['aaaaaaaa', 'bbbbbbbb', 'cccccccc'],
    ]);
  });

  it('flow over pages if none can, losing nothing and leaving no page empty', () => {
    const inside = 'abcdefgh'.split('').map(oneLine);
    const pages = pagesOf([oneLine('x'), group(inside)], 8, 3);
    expect(pages.flat().length).toBe(9);
    expect(pages.map((lines) => lines.length)).toEqual([3, 3, 3]);
  });

  it('follow their heading even when both together are taller than a page', () => {
    const inside = 'abcd'.split('').map(oneLine);
    const pages = pagesOf([oneLine('x'), oneLine('y'), heading(2, 'hhhh'), group(inside)], 8, 4);
    expect(pages.every((lines) => lines[lines.length - 1] !== 'hhhh')).toBe(true);
    expect(pages.flat()).toHaveLength(7);
  });

  it('have a line around them, closed on each page they stand on', () => {
    const blocks = [group('abcdef'.split('').map(oneLine), 'boxed')];
    const { pages } = laidOutCleanly(blocks, squareOptions(10, 4));
    // 6 pt above and below leave three lines of 12 pt in four
    expect(pages.map((page) => linesOf(page).length)).toEqual([3, 3]);
    for (const page of pages) {
      const boxes = page.items.flatMap((item) =>
        item.kind === 'shape' && item.shape.kind === 'rect' ? [item.shape] : [],
      );
      expect(boxes.map(({ height }) => Math.round(height))).toEqual([48, 47]);
    }
  });
});

describe('lists', () => {
  it('hang their numbers so that the texts stand under each other', () => {
    const items = Array.from({ length: 10 }, (_, index) => `item${index}`);
    const [page] = laidOutCleanly([list(items, true)], squareOptions(20, 12)).pages;
    const numbers = textsOf(page).filter(({ text }) => /^\d+\.$/.test(text));
    const texts = textsOf(page).filter(({ text }) => text.startsWith('item'));
    expect(new Set(numbers.map(({ x, widthPt }) => x + widthPt)).size).toBe(1);
    // "10." is 30 pt wide, and half an em follows
    expect(new Set(texts.map(({ x }) => x))).toEqual(new Set([35]));
  });

  it('leave no last item alone on a page', () => {
    const above = Array.from({ length: 8 }, (_, index) => paragraph(`x${index}`));
    const { pages } = laidOutCleanly([...above, list(['a', 'b', 'c', 'd'])], squareOptions(20, 11));
    expect(pages.map((page) => linesOf(page).filter((line) => /[a-d]$/.test(line)).length)).toEqual([2, 2]);
  });

  it('stand inside each other', () => {
    const [page] = laidOutCleanly(
      [list(['a', [paragraph('b'), list(['c', 'd'])]])],
      squareOptions(20, 12),
    ).pages;
    expect(textsOf(page).map(({ text, x }) => [text, x])).toEqual([
      ['a', 20],
      ['b', 20],
      ['c', 40],
      ['d', 40],
    ]);
  });

  it('mark an item that does not begin with text', () => {
    const item = [table({ rows: [['x']], style: 'plain' })];
    const [page] = laidOutCleanly([list([item], true)], squareOptions(20, 12)).pages;
    expect(linesOf(page)).toEqual(['1.', 'x']);
  });

  it('are lists in the structure tree', () => {
    const { structure } = laidOutCleanly([list(['a'], true)], squareOptions(20, 12));
    expect(structure.map(({ type, parent }) => [type, parent])).toEqual([
      ['Document', undefined],
      ['L', 0],
      ['LI', 1],
      ['Lbl', 2],
      ['LBody', 2],
      ['P', 4],
    ]);
  });
});

describe('steps', () => {
  it('hang their numbers and put the result beneath', () => {
    const blocks = [steps([step('act', { result: 'see', remark: 'note' })], 'number', 7)];
    const [page] = laidOutCleanly(blocks, squareOptions(30, 12)).pages;
    expect(textsOf(page).map(({ text, y }) => [text, y])).toEqual([
      ['7', 8.5],
      ['act', 8.5],
      ['see', 20.5],
      ['note', 32.5],
    ]);
  });

  it('put a result that fits at the end of a leader, and one that does not beneath', () => {
    const blocks = [
      steps([step('act', { result: 'seen' }), step('a long act', { result: 'a long result' })], 'tick'),
    ];
    const [page] = laidOutCleanly(blocks, squareOptions(24, 12)).pages;
    const texts = textsOf(page);
    const led = texts.find(({ text }) => text === 'seen');
    expect(led?.y).toBe(8.5);
    expect((led?.x ?? 0) + (led?.widthPt ?? 0)).toBeCloseTo(240, 6);
    expect(texts.find(({ text }) => text === 'a long result')?.y).toBe(32.5);
  });

  it('put a result at the end of a leader where they are to, though they have no box to tick', () => {
    const plain = steps([step('act', { result: 'seen' })]);
    if (plain.kind !== 'steps') throw new Error('no steps');
    const yOf = (block: Block) =>
      textsOf(laidOutCleanly([block], squareOptions(24, 12)).pages[0]).find(({ text }) => text === 'seen')?.y;
    expect(yOf(plain)).toBe(20.5);
    expect(yOf({ ...plain, led: true })).toBe(8.5);
  });

  it('keep a caution whole, before its step, on its page', () => {
    const careful = step('shut it', { cautions: [caution('warning', 'Hot.', 'It burns.', 'Wear gloves.')] });
    for (let above = 0; above < 14; above += 1) {
      const lead = Array.from({ length: above }, () => oneLine('x'));
      const pages = pagesOf([...lead, steps([step('one'), careful, step('last')])], 40, 14);
      const page = pages.find((lines) => lines.some((line) => line.includes('WARNING'))) ?? [];
      const at = page.findIndex((line) => line.includes('WARNING'));
      expect(page.slice(at, at + 5)).toEqual(['WARNING', 'Hot.', 'It burns.', 'Wear gloves.', '2 shut it']);
    }
  });

  it('go over several pages if one step is 400 words long', () => {
    const pages = pagesOf([steps([step(words(400), { critical: true })])], 40, 12);
    expect(pages.length).toBeGreaterThan(5);
    expect(pages.flat().join(' ')).toBe(`1 ${words(400)}`);
  });

  it('mark a critical step with a bar as tall as the step, on every page of it', () => {
    const blocks = [steps([step('plain'), step('aaaa bbbb cccc', { critical: true })])];
    const [page] = laidOutCleanly(blocks, squareOptions(10, 12)).pages;
    const bars = page?.items.flatMap((item) =>
      item.kind === 'shape' && item.shape.kind === 'rect' ? [item.shape] : [],
    );
    const heights = textsOf(page).filter(({ text }) => /^(aaaa|bbbb|cccc)/.test(text)).length * 12;
    expect(bars?.map(({ height }) => height)).toEqual([heights]);
  });
});

describe('figures', () => {
  it('keep their size if there is room, and their caption', () => {
    const { pages, structure } = laidOutCleanly([figure(100, 48, 'cap')], squareOptions(20, 9));
    expect(textsOf(pages[0])[0]).toMatchObject({ text: 'cap', y: 48 + 8.5 });
    expect(structure.find(({ type }) => type === 'Figure')).toMatchObject({
      box: [0, 0, 100, 48],
      alt: 'a drawing',
    });
  });

  it('shrink to the width of the column', () => {
    const { structure } = laidOutCleanly([figure(400, 96)], squareOptions(20, 9));
    expect(structure.find(({ type }) => type === 'Figure')?.box).toEqual([0, 0, 200, 48]);
  });

  it('shrink to leave room for their heading and caption on the page', () => {
    const { pages } = laidOutCleanly([heading(2, 'hhhh'), figure(100, 160, 'cap')], squareOptions(20, 10));
    expect(pages).toHaveLength(1);
    expect(linesOf(pages[0])).toEqual(['hhhh', 'cap']);
  });

  it('are refused when they would come out too small to read', () => {
    expect(codesOf([figure(2000, 100)], 20, 10)).toEqual(['layout-figure-small']);
  });

  it('that are measured with are never made smaller', () => {
    const measured = (widthPt: number, heightPt: number) =>
      ({ ...figure(widthPt, heightPt), trueSize: true }) as Block;
    const { structure } = laidOutCleanly([measured(200, 96)], squareOptions(20, 9));
    expect(structure.find(({ type }) => type === 'Figure')?.box).toEqual([0, 0, 200, 96]);
    expect(codesOf([measured(201, 96)], 20, 9)).toEqual(['layout-figure-true-size']);
    expect(codesOf([measured(200, 200)], 20, 9)).toEqual(['layout-figure-true-size']);
  });
});

describe('rules', () => {
  it('give a pencil its lines, on as many pages as it takes', () => {
    const { pages } = laidOutCleanly([rule(7)], squareOptions(20, 8));
    const lines = pages.map(({ items }) => items.filter((item) => item.kind === 'shape').length);
    expect(lines).toEqual([4, 3]);
  });
});

describe('lines down to the foot of a page', () => {
  const ruled = (blocks: readonly Block[], lines: number) =>
    laidOutCleanly(blocks, squareOptions(20, lines)).pages.map(
      ({ items }) => items.filter((item) => item.kind === 'shape').length,
    );

  it('take what room is left', () => {
    expect(ruled([oneLine('a'), linesToFoot(2)], 9)).toEqual([4]);
    expect(ruled([oneLine('a'), linesToFoot(4)], 9)).toEqual([4]);
  });

  it('stand on the next page, and fill it, if too few would stand here', () => {
    expect(ruled([...'abcde'].map(oneLine).concat(linesToFoot(3)), 9)).toEqual([0, 4]);
    expect(ruled([...'abcde'].map(oneLine).concat(linesToFoot(2)), 9)).toEqual([2]);
  });

  it('leave what follows to the next page', () => {
    expect(pagesOf([oneLine('a'), linesToFoot(2), oneLine('b')], 8, 9).map((lines) => lines.length)).toEqual([
      1, 1,
    ]);
  });
});

describe('a few words right below a table', () => {
  const rows = (count: number) => Array.from({ length: count }, (_, index) => [`r${index + 1}`]);
  const below = (count: number, lines: number) =>
    pagesOf([table({ rows: rows(count), style: 'plain' }), oneLine('z')], 8, lines);
  const last = 'zzzzzzzz';

  it('follow it on its page if they fit', () => {
    expect(below(7, 8)).toEqual([['r1', 'r2', 'r3', 'r4', 'r5', 'r6', 'r7', last]]);
  });

  it('take rows overleaf with them, no fewer than three', () => {
    expect(below(8, 8)).toEqual([
      ['r1', 'r2', 'r3', 'r4', 'r5'],
      ['r6', 'r7', 'r8', last],
    ]);
  });

  it('begin a page if the table has no rows to give', () => {
    expect(below(3, 3)).toEqual([['r1', 'r2', 'r3'], [last]]);
  });

  it('do not if they are many', () => {
    const many = [table({ rows: rows(8), style: 'plain' }), paragraph(words(40))];
    expect(pagesOf(many, 8, 8)[0]).toHaveLength(8);
  });
});

describe('what cannot be set', () => {
  it('is an error if it is whole and taller than a page, and layout ends', () => {
    const tall = caution('danger', words(200));
    expect(codesOf([oneLine('a'), tall, oneLine('b')], 20, 6)).toEqual(['layout-too-tall']);
  });

  it('is an error if what must stay together is taller than a page', () => {
    const blocks = [heading(1, 'a a a a'), heading(2, 'b b b b'), oneLine('x')];
    expect(codesOf(blocks, 8, 2)).toEqual(['layout-kept-too-tall']);
  });

  it('is an error if letters are missing: once, with all letters and places', () => {
    const result = layoutPages([paragraph('a\ue000b'), paragraph('\ue001 \ue000')], squareOptions(20, 9));
    const problems = result.ok ? [] : result.problems;
    expect(problems.map(({ code }) => code)).toEqual(['layout-missing-letters']);
    expect(problems[0]?.found).toBe('\ue000 \ue001');
    expect(problems[0]?.notes).toHaveLength(2);
    expect(problems[0]?.notes?.[0]).toMatch(/test:\d+:1, test:\d+:1/);
  });

  it('is a remark if a word had to be broken between letters', () => {
    expect(codesOf([paragraph('abcdefghijkl')], 5, 9)).toEqual(['layout-word-broken']);
  });

  it('is an error if a link leads nowhere, or an id stands twice', () => {
    expect(codesOf([paragraph([linked('go', 'nowhere')])], 20, 9)).toEqual(['layout-no-target']);
    expect(codesOf([heading(1, 'a', 'x'), paragraph('b', 'body', 'x')], 20, 9)).toEqual([
      'layout-duplicate-id',
    ]);
  });
});

describe('page references', () => {
  it('name the page a thing stands on, before and after it', () => {
    const blocks = [
      paragraph([...inlines('see '), pageOf('later')]),
      pageBreak(),
      heading(2, 'there', 'later'),
      paragraph([...inlines('on '), pageOf('later')]),
    ];
    expect(pagesOf(blocks, 20, 9)).toEqual([['see 2'], ['there', 'on 2']]);
  });

  it('are links to their place', () => {
    const { pages, destinations, structure } = laidOutCleanly(
      [paragraph([pageOf('later')]), pageBreak(), paragraph('x', 'body', 'later')],
      squareOptions(20, 9),
    );
    const link = pages[0]?.items.find((item) => item.kind === 'link');
    expect(link).toMatchObject({ target: 'later', x: 0, widthPt: 10 });
    expect(structure[link?.tag ?? 0]?.type).toBe('Link');
    expect(destinations).toEqual([{ name: 'later', page: 1, y: 0 }]);
  });

  it('that never settle are an error, not an endless run', () => {
    // named "9" it has three lines, which stay together and go to page 10; named "10" it has four, and two of them
    // stay on page 9
    const before = Array.from({ length: 8 }, () => [oneLine('p'), pageBreak()]).flat();
    const restless = paragraph([...inlines('aaaaaa bbbbbb cccccc '), pageOf('self')], 'body', 'self');
    const result = layoutPages([...before, oneLine('x'), oneLine('y'), restless], squareOptions(8, 4));
    expect(result.ok ? [] : result.problems.map(({ code }) => code)).toEqual(['layout-unsettled']);
  });
});
