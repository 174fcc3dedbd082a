import { expect, test } from 'vitest';
import { withApostrophes } from '../../src/markup/apostrophes';

test('an apostrophe after a letter is printed as one, inside a word and at its end', () => {
  expect(withApostrophes("the boiler's level, at arm's reach, the valves' stems")).toBe(
    'the boiler’s level, at arm’s reach, the valves’ stems',
  );
  expect(withApostrophes("Fräulein Weiß's Öl")).toBe('Fräulein Weiß’s Öl');
});

test('feet and inches stay as they are, and so does what has none', () => {
  expect(withApostrophes(`6' 2" long`)).toBe(`6' 2" long`);
  expect(withApostrophes('already the driver’s')).toBe('already the driver’s');
});
