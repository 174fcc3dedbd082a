import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { movedEntries } from '../../src/compare/order';
import { differingStretch, differingWords } from '../../src/compare/stretch';

describe('moved entries', () => {
  test('one taken from the middle to the end', () => {
    expect([...movedEntries(['a', 'b', 'c', 'd'], ['a', 'c', 'd', 'b'])]).toEqual(['b']);
  });

  const orders = fc
    .uniqueArray(fc.string({ minLength: 1, maxLength: 3 }), { maxLength: 9 })
    .chain((before) =>
      fc.shuffledSubarray(before, { minLength: before.length }).map((now) => ({ before, now })),
    );

  test('without them both orders are one, and no fewer would do', () => {
    fc.assert(
      fc.property(orders, ({ before, now }) => {
        const moved = movedEntries(before, now);
        const rest = (order: readonly string[]) => order.filter((entry) => !moved.has(entry));
        expect(rest(before)).toEqual(rest(now));
        expect(rest(now).length).toBe(longestCommon(before, now));
      }),
    );
  });
});

/** Length of the longest row that stands in both, by the textbook table. */
function longestCommon(a: readonly string[], b: readonly string[]): number {
  let above = b.map(() => 0);
  for (const entry of a) {
    const row: number[] = [];
    b.forEach((other, index) => {
      const diagonal = index === 0 ? 0 : (above[index - 1] ?? 0);
      row.push(other === entry ? diagonal + 1 : Math.max(above[index] ?? 0, row[index - 1] ?? 0));
    });
    above = row;
  }
  return above.at(-1) ?? 0;
}

describe('where two rows differ', () => {
  test('with what stands around it', () => {
    expect(differingStretch(['a', 'b', 'c', 'd', 'e'], ['a', 'b', 'x', 'y', 'd', 'e'], 1)).toEqual([
      ['…', 'b', 'c', 'd', '…'],
      ['…', 'b', 'x', 'y', 'd', '…'],
    ]);
  });

  test('short texts are told whole', () => {
    expect(differingWords('Open F1.', 'Open F2.')).toEqual(['Open F1.', 'Open F2.']);
  });

  test('two that differ never come out alike', () => {
    const words = fc.array(fc.constantFrom('open', 'the', 'valve', 'a', 'turn', 'and', 'look', 'again'), {
      maxLength: 30,
    });
    fc.assert(
      fc.property(words, words, (was, is) => {
        fc.pre(was.join(' ') !== is.join(' '));
        const [old, now] = differingWords(was.join(' '), is.join(' '));
        expect(old).not.toBe(now);
      }),
    );
  });
});
