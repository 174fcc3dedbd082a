import fc from 'fast-check';
import { expect, test } from 'vitest';
import { emptyTally, shareOf } from '../../../src/cli/threads/share';

test('two that take from both ends, in whatever turn, take everything once', () => {
  fc.assert(
    fc.property(fc.nat(30), fc.array(fc.boolean(), { minLength: 40, maxLength: 80 }), (count, turns) => {
      const all = Array.from({ length: count }, (_, index) => index);
      const tally = emptyTally();
      const [front, back] = [shareOf(all, 'front', tally), shareOf(all, 'back', tally)];
      const taken: number[] = [];
      for (const turn of [...turns, ...all.map(() => true)]) {
        const { value } = (turn ? front : back).next();
        if (value !== undefined) taken.push(value);
      }
      taken.push(...back);
      expect([...taken].sort((a, b) => a - b)).toEqual(all);
    }),
  );
});

test('one alone takes everything in order', () => {
  expect([...shareOf(['a', 'b', 'c'], 'front', emptyTally())]).toEqual(['a', 'b', 'c']);
  expect([...shareOf(['a', 'b', 'c'], 'back', emptyTally())]).toEqual(['c', 'b', 'a']);
});
