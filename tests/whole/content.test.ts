import { describe, expect, test } from 'vitest';
import { setOnePaper } from '../../src/kettlebook';
import { withApostrophes } from '../../src/markup/apostrophes';
import type { SetPaper } from '../../src/paper/paper';
import { demo, demoNames, goodOf, workshop } from './made';
import { withoutPlaces } from './partWords';

/** The words of a page, in the order they were placed. */
function wordsOf(paper: SetPaper, page: number): string {
  const items = paper.laidOut.pages[page]?.items ?? [];
  return items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])).join(' ');
}

/** All words of a paper, with white space made even. */
function allWords(paper: SetPaper): string {
  return paper.laidOut.pages
    .map((_, page) => wordsOf(paper, page))
    .join(' ')
    .replace(/[\s\u00a0]+/g, ' ');
}

const shop = await workshop();

describe.each(demoNames)('%s', (name) => {
  test('every sheet carries the car, the paper, the issue and the fingerprint', async () => {
    const ready = await demo(name);
    const { letter } = ready.car.spec.issue;
    for (const paper of shop.papers) {
      const set = goodOf(setOnePaper(ready, paper, shop));
      set.laidOut.pages.forEach((_, page) => {
        const words = wordsOf(set, page).replace(/[\s\u00a0]+/g, ' ');
        expect(words, `${paper.name}, page ${page + 1}`).toContain(ready.car.spec.car.name);
        expect(words, `${paper.name}, page ${page + 1}`).toContain(`Issue ${letter},`);
        expect(words, `${paper.name}, page ${page + 1}`).toContain(set.fingerprint);
      });
    }
  });

  test('the manual names every valve, gauge, tank, lock, device, pump and control, with its tag and its place', async () => {
    const ready = await demo(name);
    const manual = shop.papers.find((paper) => paper.name === 'owners-manual');
    if (manual === undefined) throw new Error('there is no manual');
    const words = allWords(goodOf(setOnePaper(ready, manual, shop)));
    const wanted = new Set(['valve', 'gauge', 'tank', 'lock', 'device', 'pump', 'control']);
    for (const part of ready.car.parts.values()) {
      if (!wanted.has(part.kind)) continue;
      expect(words).toContain(withApostrophes(part.name));
      if (part.tag !== undefined) expect(words).toContain(part.tag);
    }
    const usedPlaces = [...ready.car.places.values()].filter((place) => place.parts.length > 0);
    for (const place of usedPlaces)
      expect(words.toLowerCase()).toContain(withApostrophes(place.name).toLowerCase());
  });

  test('the cards hold every card step of their phases, and the manual every step', async () => {
    const ready = await demo(name);
    // a line may end in a name that holds a hyphen, so white space does not count
    const plain = (text: string) => withApostrophes(text).replace(/[\s\u00a0]+/g, '');
    // in trouble the place of a part stands in the brackets beside its name, and a procedure of another card has that card beside it, one of this card its face
    const cards = shop.papers.filter((paper) => paper.template === 'card');
    const onCards = plain(
      withoutPlaces(
        cards.map((paper) => allWords(goodOf(setOnePaper(ready, paper, shop)))).join(' '),
        ready.car,
      )
        .replace(/ \(card “[^”]+”\)/g, '')
        .replace(/\s\(face[^()]*\)/g, ''),
    );
    const missing = ready.proof.procedures
      .filter(({ phase }) => shop.plans.cards.some((card) => card.phases?.includes(phase)))
      .flatMap(({ steps }) => steps.filter((step) => step.onCard))
      // what troubles share is said in a row after it has been said in full
      .filter(
        ({ say, row }) => !onCards.includes(plain(say)) && (row === '' || !onCards.includes(plain(row))),
      );
    expect(missing.map((step) => step.say)).toEqual([]);
  });

  test('the same input gives the same fingerprints; another issue letter gives others', async () => {
    const ready = await demo(name);
    const marks = () => shop.papers.map((paper) => goodOf(setOnePaper(ready, paper, shop)).fingerprint);
    const first = marks();
    expect(marks()).toEqual(first);
    expect(new Set(first).size).toBe(first.length);
    const spec = { ...ready.car.spec, issue: { ...ready.car.spec.issue, letter: 'Z' } };
    const other = { ...ready, car: { ...ready.car, spec } };
    const later = shop.papers.map((paper) => goodOf(setOnePaper(other, paper, shop)).fingerprint);
    for (const [index, mark] of later.entries()) expect(mark).not.toBe(first[index]);
  });
});
