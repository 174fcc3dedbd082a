import fc from 'fast-check';
import { expect, test } from 'vitest';
import { withNamesStrong } from '../../src/paper/pieces';

const strong = (text: string, names: readonly string[]) =>
  withNamesStrong(text, names)
    .filter((piece) => piece.strong)
    .map((piece) => piece.text);

test('a name is strong wherever it stands whole', () => {
  expect(strong('Open the pilot valve; the pilot valve hisses.', ['pilot valve'])).toEqual([
    'pilot valve',
    'pilot valve',
  ]);
});

test('a name inside a longer word is not that name', () => {
  expect(strong('Look at F12, then open F1.', ['F1'])).toEqual(['F1']);
});

test('the longer of two names that begin alike wins', () => {
  expect(strong('Shut the pilot tank valve.', ['pilot tank', 'pilot tank valve'])).toEqual([
    'pilot tank valve',
  ]);
});

test('no letter is lost, whatever the text and the names', () => {
  fc.assert(
    fc.property(fc.string(), fc.array(fc.string(), { maxLength: 4 }), (text, names) => {
      expect(
        withNamesStrong(text, names)
          .map((piece) => piece.text)
          .join(''),
      ).toBe(text);
    }),
  );
});
