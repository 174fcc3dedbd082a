/** The list of troubles goes by what is noticed: every trouble is found by a sign, and no sign is one the car cannot show. */
import { describe, expect, test } from 'vitest';
import { type ReadyCar, setOnePaper } from '../../src/kettlebook';
import { signsOfTrouble } from '../../src/paper/context/signsOfTrouble';
import { duties } from '../../src/procedure/duties';
import { senses } from '../../src/procedure/procedure';
import { demoCar, demoCars } from '../cars/demo';
import { smallCar, smallCars } from '../helpers/smallCars';
import { proceduresOf, theLibrary } from '../procedure/shared';
import { procedure } from '../proof/edits';
import { demo, demoNames, goodOf, specText, workshop } from '../whole/made';
import { strangeTerms } from '../whole/partWords';

const shop = await workshop();
const library = theLibrary();
const cars = [
  ...demoCars.map((name) => [name, demoCar(name)] as const),
  ...Object.entries(smallCars).map(([name, patches]) => [name, smallCar(...patches)] as const),
];

/** A text with its white space made even. */
const even = (text: string) => text.replace(/\s+/g, ' ');

/** Words of a sign, and a duty of which the car must have a part for it. */
const speaksOf = [
  [/\bglass\b/i, ['level-glass']],
  [/\bpilot\b/i, ['pilot']],
  [/\broar\b/i, ['main-burner']],
  [/\bcut-off\b/i, ['low-water-cut-off', 'temperature-cut-off']],
  [/\bmotor\b/i, ['blower', 'fuel-electric-pump', 'feed-electric-pump']],
  [/\bwires?\b/i, ['igniter', 'blower', 'fuel-electric-pump', 'feed-electric-pump']],
  [/\bfuel (pressure|tank)\b/i, ['charged-tank', 'burner-fuel-gauge']],
  [/\bdrips\b/i, ['drips']],
  [/\bsafety valve\b/i, ['safety-valve']],
  [/\bthrottle\b/i, ['throttle']],
] as const;

describe.each(cars)('%s', (_, car) => {
  const emergencies = proceduresOf(car, library).filter(({ phase }) => phase === 'emergency');
  const signs = emergencies.flatMap(({ id, toldBy }) => toldBy.map(({ say }) => ({ id, say })));

  test('every emergency is led to by a sign, and by three at the most', () => {
    expect(emergencies.length).toBeGreaterThan(8);
    expect(
      emergencies.filter(({ toldBy }) => toldBy.length < 1 || toldBy.length > 3).map(({ id }) => id),
    ).toEqual([]);
  });

  test('no sign leads to two of them', () => {
    const said = signs.map(({ say }) => say);
    expect(said.filter((say, at) => said.indexOf(say) !== at)).toEqual([]);
  });

  test('no sign speaks of a part the car has not got', () => {
    const strange = signs.filter(({ say }) =>
      speaksOf.some(
        ([words, named]) =>
          words.test(say.replace(car.spec.boiler['lowest-level'], '')) &&
          named.every((duty) => (duties[duty]?.parts(car).length ?? 0) === 0),
      ),
    );
    expect(strange).toEqual([]);
  });
});

test('a sign of the library is eight words at the most and no sentence', () => {
  const texts = library.procedures.flatMap(({ form }) => (form['told-by'] ?? []).map(({ say }) => say));
  expect(texts.length).toBeGreaterThan(30);
  const bare = texts.map((say) => say.replace(/\{\{[^}]*\}\}/g, 'N'));
  expect(
    bare.filter((say) => say.split(' ').length > 8 || !/^[A-Z]/.test(say) || /[.!?]$/.test(say)),
  ).toEqual([]);
});

describe.each(demoNames)('the papers of %s', (name) => {
  const made = async (paper: string) => {
    const found = shop.papers.find((each) => each.name === paper);
    if (found === undefined) throw new Error(`there is no paper ${paper}`);
    const ready: ReadyCar = await demo(name);
    return { ready, set: goodOf(setOnePaper(ready, found, shop)) };
  };

  test('the card begins with the list, on two faces at the most, and each sign stands with its face', async () => {
    const { ready, set } = await made('card-something-is-wrong');
    const { destinations, pages } = set.laidOut;
    const emergencies = ready.proof.procedures.filter(({ phase }) => phase === 'emergency');
    const faceOf = new Map(destinations.map((each) => [each.name, each.page + 1]));
    expect(Math.min(...emergencies.map(({ id }) => faceOf.get(id) ?? Number.NaN))).toBeLessThanOrEqual(3);
    const listed = even(
      pages
        .slice(0, (faceOf.get('shut-everything') ?? 0) - 1)
        .flatMap(({ items }) => items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])))
        .join(' '),
    );
    const lacking = emergencies.flatMap(({ id, toldBy }) =>
      toldBy
        .filter(({ say }) => !listed.includes(`${even(say)} ${faceOf.get(id)}`))
        .map(({ say }) => `${id}: ${say}`),
    );
    expect(lacking).toEqual([]);
    // steps send to a trouble by its name
    const unnamed = emergencies.filter(
      ({ id, title }) => !listed.includes(`${even(title)} ${faceOf.get(id)}`),
    );
    expect(unnamed.map(({ id }) => id)).toEqual([]);
  });

  test('the chapter on emergencies has the same list with links', async () => {
    const { ready, set } = await made('owners-manual');
    const page = even(JSON.stringify(set.blocks));
    for (const { id, toldBy } of ready.proof.procedures.filter(({ phase }) => phase === 'emergency')) {
      expect(toldBy.filter(({ say }) => !page.includes(even(say)))).toEqual([]);
      expect(page).toContain(`procedure-${id}`);
    }
  });

  test('no sign uses a word of the trade for what the car has not got', async () => {
    const ready = await demo(name);
    const said = ready.proof.procedures.flatMap(({ toldBy }) => toldBy.map(({ say }) => say)).join('. ');
    expect(said.length).toBeGreaterThan(400);
    expect(strangeTerms(said, ready, specText(name))).toEqual([]);
  });
});

test('a way of noticing that the plans do not name is not lost', () => {
  const all = procedure('all', [], {
    phase: 'emergency',
    toldBy: senses.map((by) => ({ by, say: `by ${by}` })),
  });
  const planned = { ...shop.plans, 'signs-of-trouble': [{ by: ['smell' as const], title: 'Smelt' }] };
  const heads = signsOfTrouble([all], planned);
  expect(heads[0]).toEqual({ title: 'Smelt', signs: [{ say: 'by smell', id: 'all', trouble: 'all' }] });
  expect(
    heads
      .flatMap(({ signs }) => signs)
      .map(({ say }) => say)
      .sort(),
  ).toEqual(senses.map((by) => `by ${by}`).sort());
});

test('every way of noticing has its place in the plans that come with the program', () => {
  expect(
    shop.plans['signs-of-trouble']
      .flatMap(({ by }) => by)
      .slice()
      .sort(),
  ).toEqual([...senses].sort());
});
