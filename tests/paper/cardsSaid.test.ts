import { expect, test } from 'vitest';
import { withCards } from '../../src/paper/context/cardsSaid';

const cards = () => ({
  words: new Map([
    ['Raise steam', '(card “Cold start”)'],
    ['Light the pilot', '(card “Cold start”)'],
    ['Blow down', '(card “Shutting down”)'],
  ]),
  told: new Set<string>(),
});

test('titles in a row that stand on one card have it once, after the last', () => {
  expect(withCards('Do “Light the pilot”, then “Raise steam”.', cards())).toBe(
    'Do “Light the pilot”, then “Raise steam” (card “Cold start”).',
  );
  expect(withCards('Do “Raise steam”, then “Blow down”.', cards())).toBe(
    'Do “Raise steam” (card “Cold start”), then “Blow down” (card “Shutting down”).',
  );
});

test('a title that a text has twice has its card at the first', () => {
  expect(withCards('Do “Blow down”; after “Blow down”, wait.', cards())).toBe(
    'Do “Blow down” (card “Shutting down”); after “Blow down”, wait.',
  );
});

test('a card is told once, and nothing of what stands on this card', () => {
  const said = cards();
  expect(withCards('Do “Raise steam” and “Moving off”.', said)).toBe(
    'Do “Raise steam” (card “Cold start”) and “Moving off”.',
  );
  expect(withCards('Then “Light the pilot”, and “Raise steam” again.', said)).toBe(
    'Then “Light the pilot” (card “Cold start”), and “Raise steam” again.',
  );
});
