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

test('a name within the longer name of another part stays plain', () => {
  const cut = (text: string, name: string, others: readonly string[]) =>
    withNamesStrong(text, [name], others)
      .filter((piece) => piece.strong)
      .map((piece) => piece.text);
  const valve = ['main burner', 'main burner valve'];
  expect(
    cut('See that the main burner is out and the main burner valve (F3) shut.', 'main burner', valve),
  ).toEqual(['main burner']);
  expect(cut('Let air off by the fuel tank vent valve.', 'fuel tank', ['fuel tank vent valve'])).toEqual([]);
  expect(cut('Open the main fuel tank valve.', 'fuel tank', ['main fuel tank'])).toEqual([]);
  // one that does not hold the name takes nothing from it
  expect(cut('Open the fuel tank and the valve.', 'fuel tank', ['fuel', 'tank'])).toEqual(['fuel tank']);
});

test('no letter is lost, whatever the text and the names', () => {
  fc.assert(
    fc.property(
      fc.string(),
      fc.array(fc.string(), { maxLength: 4 }),
      fc.array(fc.string(), { maxLength: 4 }),
      (text, names, others) => {
        expect(
          withNamesStrong(text, names, others)
            .map((piece) => piece.text)
            .join(''),
        ).toBe(text);
      },
    ),
  );
});
