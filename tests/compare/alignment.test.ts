import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bestPairs, commonPairs } from '../../src/compare/alignment';

const rows = fc.array(fc.constantFrom('a', 'b', 'c', 'd', 'e'), { maxLength: 12 });
const words = (text: string) => text.split('');

/** Length of the longest common row, straight from its definition. */
function longest(was: readonly string[], is: readonly string[]): number {
  const [one, ...rest] = was;
  if (one === undefined || is.length === 0) return 0;
  const at = is.indexOf(one);
  const without = longest(rest, is);
  return at < 0 ? without : Math.max(without, 1 + longest(rest, is.slice(at + 1)));
}

describe('what two rows share', () => {
  test('nothing, all, and what stands between', () => {
    expect(commonPairs([], words('abc'))).toEqual([]);
    expect(commonPairs(words('abc'), words('abc'))).toHaveLength(3);
    expect(commonPairs(words('abcd'), words('axcd'))).toEqual([
      [0, 0],
      [2, 2],
      [3, 3],
    ]);
  });

  test('the worked example of two strings: ABCBDAB and BDCABA share four', () => {
    // T. H. Cormen and others, Introduction to Algorithms, section on the longest common subsequence
    const range = (text: string): readonly [number, number] => [0, text.length];
    const [was, is] = ['ABCBDAB', 'BDCABA'];
    const gain = (one: number, other: number) => (was[one] === is[other] ? 1 : 0);
    expect(bestPairs({ was: range(was), is: range(is) }, gain)).toHaveLength(4);
  });

  test('pairs are of equal entries and in the order of both', () => {
    fc.assert(
      fc.property(rows, rows, (was, is) => {
        const pairs = commonPairs(was, is);
        pairs.forEach(([one, other], index) => {
          expect(was[one]).toBe(is[other]);
          const [before, above] = pairs[index - 1] ?? [-1, -1];
          expect(one).toBeGreaterThan(before);
          expect(other).toBeGreaterThan(above);
        });
      }),
    );
  });

  test('of rows without a repeated entry no more could be paired', () => {
    const once = fc.uniqueArray(fc.integer({ min: 0, max: 12 }).map(String), { maxLength: 9 });
    fc.assert(
      fc.property(once, once, (was, is) => {
        expect(commonPairs(was, is)).toHaveLength(longest(was, is));
      }),
    );
  });
});
