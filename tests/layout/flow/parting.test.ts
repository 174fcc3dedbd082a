import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lengthOf, partedAt } from '../../../src/layout/flow/parting';
import { caution, figure, group, list, paragraph, step, steps, table } from '../../helpers/blocks';

const lengths = fc.array(fc.integer({ min: 1, max: 1000 }), { minLength: 2, maxLength: 12 });
const sum = (all: readonly number[]) => all.reduce((before, each) => before + each, 0);

describe('where a book is parted', () => {
  it('leaves neither part empty, and comes as near to the share as any place does', () => {
    fc.assert(
      fc.property(lengths, fc.double({ min: 0, max: 1, noNaN: true }), (all, share) => {
        const at = partedAt(all, share);
        expect(at).toBeGreaterThan(0);
        expect(at).toBeLessThan(all.length);
        const off = (place: number) => Math.abs(sum(all.slice(0, place)) - share * sum(all));
        const least = Math.min(...all.slice(1).map((_, index) => off(index + 1)));
        expect(off(at)).toBeCloseTo(least, 6);
      }),
    );
  });
});

describe('how much a chapter says', () => {
  it.each([
    ['a paragraph', paragraph('letters')],
    ['a list', list(['letters'])],
    ['steps', steps([step('letters', { result: 'more' })])],
    [
      'cautions of steps',
      steps([step('x', { cautions: [caution('warning', 'letters', 'more', 'still more')] })]),
    ],
    ['a table', table({ head: ['letters'], rows: [['more']] })],
    ['a figure', figure(100, 100)],
    ['a group', group([paragraph('letters')])],
  ])('grows by %s', (_, block) => {
    const before = [paragraph('before')];
    expect(lengthOf([...before, block])).toBeGreaterThan(lengthOf(before) + 5);
  });

  it('grows by the letters of a table', () => {
    const few = lengthOf([table({ head: ['a'], rows: [['b']] })]);
    expect(lengthOf([table({ head: ['a'.repeat(50)], rows: [['b'.repeat(70)]] })])).toBe(few + 49 + 69);
  });
});
