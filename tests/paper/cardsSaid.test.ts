import { expect, test } from 'vitest';
import { setOnePaper } from '../../src/kettlebook';
import { withCards, withFaces } from '../../src/paper/context/cardsSaid';
import { demo, demoNames, goodOf, workshop } from '../whole/made';

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

test('a title of this card has its face behind it, and its own has none', () => {
  const cards = {
    here: new Map([
      ['Shut everything', 'shut-everything'],
      ['Pilot out', 'pilot-out'],
    ]),
    onFace: { before: '(face ', after: ')' },
  };
  const text = 'Past it, do “Shut everything” at once; “Pilot out” if it is dark.';
  const pieces = withFaces([{ text, strong: false }], cards, 'pilot-out');
  expect(pieces.map(({ text: words, page }) => page || words)).toEqual([
    'Past it, do “Shut everything”',
    'shut-everything',
    ' at once; “Pilot out” if it is dark.',
  ]);
  expect(pieces[1]).toMatchObject({ text: '', before: ' (face\u00a0', after: ')' });
});

test.each(demoNames)(
  '%s: whatever a trouble sends to on its own card has the face where it begins',
  async (car) => {
    const [ready, shop] = [await demo(car), await workshop()];
    const paper = ready.papers.find(({ name }) => name === 'card-something-is-wrong');
    if (paper === undefined) throw new Error('there is no card for trouble');
    const { pages, destinations } = goodOf(setOnePaper(ready, paper, shop)).laidOut;
    const faceOf = new Map(
      ready.proof.procedures.flatMap(({ id, title }) => {
        const at = destinations.find(({ name }) => name === id);
        return at === undefined ? [] : [[title, at.page + 1] as const];
      }),
    );
    const words = pages
      .map(({ items }) => items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])).join(' '))
      .join(' ')
      .replaceAll(/[\s\u00a0]+/g, ' ');
    const sent = [...words.matchAll(/“([^“”]+)” \(face (\d+)\s?\)/g)].map(([, title = '', face]) => [
      title,
      Number(face),
    ]);
    expect(sent.length).toBeGreaterThan(1);
    for (const [title, face] of sent) expect([title, face]).toEqual([title, faceOf.get(String(title))]);
  },
);
