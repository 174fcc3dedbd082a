import { describe, expect, test } from 'vitest';
import { type ReadyCar, setOnePaper } from '../../src/kettlebook';
import { duties } from '../../src/procedure/duties';
import { demo, demoNames, goodOf, specText, workshop } from './made';
import { missingParts, ownWords, partsOfPapers, strangeTerms, wordsOfPaper } from './partWords';

const shop = await workshop();

/** The words of a paper, small, with white space made even. */
function textOf(ready: ReadyCar, name: string): string {
  const paper = shop.papers.find((each) => each.name === name);
  if (paper === undefined) throw new Error(`there is no paper ${name}`);
  return wordsOfPaper(goodOf(setOnePaper(ready, paper, shop))).toLowerCase();
}

describe.each(demoNames)('the papers of %s', (name) => {
  test.each(Object.entries(partsOfPapers))(
    '%s names every part that belongs there',
    async (paper, wanted) => {
      const ready = await demo(name);
      expect([...ready.car.parts.values()].some((part) => wanted(part, ready))).toBe(true);
      expect(missingParts(textOf(ready, paper), ready, paper)).toEqual([]);
    },
  );

  test('are all of them told which parts they name, but for those made of distances', () => {
    const papers = shop.papers.map((paper) => paper.name);
    expect(papers.filter((paper) => !(paper in partsOfPapers))).toEqual(['range-table', 'trip-card']);
  });
});

/** Words of the trade that another car has for a name; a car with such a part under another name may read them. */
const tradeWords: Readonly<Record<string, string>> = { 'try cock': 'try-cock', 'blow-down tap': 'blow-down' };

function sayable(name: string, { car }: ReadyCar): boolean {
  return (duties[tradeWords[name] ?? '']?.parts(car).length ?? 0) > 0;
}

describe.each(demoNames)('%s: no paper', (name) => {
  const papers = shop.papers.map((paper) => paper.name);

  test.each(papers)('%s speaks of a part it has not got', async (paper) => {
    const ready = await demo(name);
    expect(strangeTerms(textOf(ready, paper), ready, specText(name))).toEqual([]);
  });

  test.each(papers)('%s names a part of another car', async (paper) => {
    const ready = await demo(name);
    const text = textOf(ready, paper);
    const own = ownWords(specText(name)).toLowerCase();
    const others = await Promise.all(demoNames.filter((each) => each !== name).map((each) => demo(each)));
    const names = new Set(
      others.flatMap(({ car }) =>
        [...car.parts.values()].flatMap((part) => (part.tag === undefined ? [] : [part.name.toLowerCase()])),
      ),
    );
    const strange = [...names].filter(
      (each) => !own.includes(each) && text.includes(` ${each} `) && !sayable(each, ready),
    );
    expect(strange).toEqual([]);
  });
});
