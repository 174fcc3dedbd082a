import { describe, expect, test } from 'vitest';
import type { Part } from '../../src/car/car';
import { type ReadyCar, setOnePaper } from '../../src/kettlebook';
import { duties } from '../../src/procedure/duties';
import { demo, demoNames, goodOf, specText, workshop } from './made';
import { ownWords, strangeTerms, wordsOfPaper } from './partWords';

const shop = await workshop();

/** The words of a paper, small, with white space made even. */
function textOf(ready: ReadyCar, name: string): string {
  const paper = shop.papers.find((each) => each.name === name);
  if (paper === undefined) throw new Error(`there is no paper ${name}`);
  return wordsOfPaper(goodOf(setOnePaper(ready, paper, shop))).toLowerCase();
}

/** Names with white space and line-end hyphens made even, so that a name broken over two lines is found. */
const even = (text: string) => text.toLowerCase().replace(/[\s\u00a0]+/g, '');

function missing(ready: ReadyCar, paper: string, wanted: (part: Part) => boolean): readonly string[] {
  const text = even(textOf(ready, paper));
  return [...ready.car.parts.values()].filter(wanted).flatMap(({ name, tag }) => {
    const lacking = [name, ...(tag === undefined ? [] : [tag])].filter((each) => !text.includes(even(each)));
    return lacking.length === 0 ? [] : [`${paper}: ${lacking.join(', ')}`];
  });
}

const kinds = (...list: readonly Part['kind'][]) => {
  const set = new Set(list);
  return ({ kind }: Part) => set.has(kind);
};

describe.each(demoNames)('the papers of %s', (name) => {
  test.each([
    ['docent-guide', kinds('valve', 'gauge', 'tank', 'lock', 'device', 'boiler', 'engine', 'burner')],
    ['inspection-sheet', kinds('valve', 'gauge', 'tank', 'lock', 'device')],
    ['log-sheet', kinds('tank', 'gauge')],
    ['owners-manual', ({ kind }: Part) => kind !== 'outside'],
  ] as const)('%s names every part that belongs there', async (paper, wanted) => {
    expect(missing(await demo(name), paper, wanted)).toEqual([]);
  });

  test('the visiting driver’s page names all that is worked or read from the seat, on one sheet', async () => {
    const ready = await demo(name);
    const fromSeat = (part: Part) =>
      kinds('valve', 'gauge', 'lock', 'control')(part) &&
      ready.car.places.get(part.place ?? '')?.reach === 'seated';
    expect(missing(ready, 'visiting-driver', fromSeat)).toEqual([]);
  });

  test('the burner-front card names the burners and every valve worked while they are lit', async () => {
    const ready = await demo(name);
    const worked = new Set(
      ready.procedures
        .filter(({ phase }) => ['pilot', 'soak', 'main-burner'].includes(phase))
        .flatMap(({ steps }) => steps.map(({ part }) => part)),
    );
    const wanted = (part: Part) => part.kind === 'burner' || (part.kind === 'valve' && worked.has(part.id));
    expect(missing(ready, 'card-burner-front', wanted)).toEqual([]);
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
