import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { changeMarks } from '../../src/compare/marks';
import { unitsOf, withChanges } from '../../src/compare/units';
import type { Block } from '../../src/markup/block';
import { anyBlocks } from '../helpers/anyBlocks';
import { cell, heading, inlines, pageOf, paragraph, step, steps, table } from '../helpers/blocks';

/** The mark of each unit in a letter: `.` none, `c` changed, `g` gone after, `b` both. */
function marks(was: readonly Block[], is: readonly Block[]): string {
  return changeMarks(unitsOf(was), unitsOf(is))
    .map((mark) => (mark === undefined ? '.' : mark.changed ? (mark.goneAfter ? 'b' : 'c') : 'g'))
    .join('');
}

const paper = (...texts: string[]) => [heading(1, 'Paper', 'paper'), ...texts.map((text) => paragraph(text))];

describe('marks', () => {
  test('nothing changed, nothing marked, whatever the blocks', () => {
    fc.assert(
      fc.property(anyBlocks, (blocks) => {
        expect(marks(blocks, blocks)).toMatch(/^\.*$/);
      }),
      { numRuns: 60 },
    );
  });

  test('one that reads otherwise, one that is new, one that is gone', () => {
    const before = paper('fill the tank', 'light the pilot', 'wait ten minutes');
    expect(marks(before, paper('fill the tank', 'light the main pilot', 'wait ten minutes'))).toBe('..c.');
    expect(marks(before, paper('fill the tank', 'look', 'light the pilot', 'wait ten minutes'))).toBe(
      '..c..',
    );
    expect(marks(before, paper('fill the tank', 'wait ten minutes'))).toBe('.g.');
    expect(marks(before, paper('fill the tank', 'light the pilot'))).toBe('..g');
  });

  test('one put in the place of another that it is not like: the old is gone, the new is new', () => {
    expect(marks(paper('alpha beta', 'end'), paper('gamma delta', 'end'))).toBe('gc.');
  });

  test('one that moved is new where it stands and gone where it stood', () => {
    expect(marks(paper('one', 'two', 'three', 'four'), paper('two', 'three', 'one', 'four'))).toBe('g..c.');
  });

  test('a whole section that is gone is marked at the end of the one before', () => {
    const section = (id: string) => [heading(1, `chapter ${id}`, id), paragraph(`words of ${id}`)];
    expect(marks(['a', 'b', 'c'].flatMap(section), ['a', 'c'].flatMap(section))).toBe('.g..');
  });

  test('what stood first and is gone marks what stands first now', () => {
    expect(marks([paragraph('x'), paragraph('y')], [paragraph('y')])).toBe('c');
  });

  test('equal words in another chapter are other words', () => {
    const chapter = (id: string, ...texts: string[]) => [
      heading(1, id, id),
      ...texts.map((t) => paragraph(t)),
    ];
    const was = [...chapter('one', 'same words'), ...chapter('two', 'own words')];
    const is = [...chapter('one'), ...chapter('two', 'own words', 'same words')];
    expect(marks(was, is)).toBe('g..c');
  });

  test('numbers that only shifted are no change: of a place, of a step, of a page', () => {
    const was = [
      heading(1, '4. under the seat', 'seat'),
      steps([step('open'), step('shut')]),
      table({ rows: [['3', 'open']] }),
      paragraph([...inlines('see '), pageOf('seat')]),
    ];
    const counted = (number: string): Block => {
      const plain = table({ rows: [[number, 'open']] });
      return {
        ...plain,
        body: plain.body.map(({ cells: [first = cell(''), ...rest] }) => ({
          cells: [{ ...first, counts: true }, ...rest],
        })),
      };
    };
    const [, , , see = paragraph('')] = was;
    const now = [heading(1, '5. under the seat', 'seat'), steps([step('open'), step('shut')], 'number', 7)];
    expect(marks([...was.slice(0, 2), counted('3'), see], [...now, counted('4'), see])).toBe('.....');
    expect(marks(was, [...now, table({ rows: [['4', 'open']] }), see])).toBe('...c.');
  });

  test('a step, its caution, a row and a drawing are each marked by themselves', () => {
    const was = [steps([step('open the valve', { result: 'open' }), step('wait')])];
    const is = [steps([step('open the valve', { result: 'open, one turn' }), step('wait')])];
    expect(marks(was, is)).toBe('c.');
  });

  test('blocks with marks say the same as without', () => {
    fc.assert(
      fc.property(anyBlocks, (blocks) => {
        const units = unitsOf(blocks);
        const all = units.map(() => ({ changed: true, goneAfter: true }));
        expect(unitsOf(withChanges(blocks, all))).toEqual(units);
        expect(JSON.stringify(withChanges(blocks, [])).includes('"change"')).toBe(false);
      }),
      { numRuns: 60 },
    );
  });
});
