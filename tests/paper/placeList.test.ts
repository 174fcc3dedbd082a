/** The list of places on a card: every part that its steps name, where it is, and quickly found by its tag. */
import { describe, expect, test } from 'vitest';
import { worldOf } from '../../src/kettlebook';
import { burnerFrontContext } from '../../src/paper/context/burnerFront';
import { listOfPlaces, type PlaceList } from '../../src/paper/context/placeList';
import { placesOnCard, taggedParts } from '../../src/paper/context/placesSaid';
import { cardSteps } from '../../src/paper/context/procedures';
import { demoCar, demoCars } from '../cars/demo';
import { proceduresOf, theLibrary } from '../procedure/shared';
import { demo, workshop } from '../whole/made';

const library = theLibrary();
const shop = await workshop();

const rowOf = ({ tagged, named }: PlaceList, part: string) =>
  [...tagged, ...named].filter(({ parts }) => parts.includes(part));

describe.each(demoCars)('%s', (name) => {
  const car = demoCar(name);
  const procedures = proceduresOf(car, library);
  const phases = [...new Set(procedures.map(({ phase }) => phase))];
  const lists = phases.map((phase) => {
    const steps = procedures
      .filter((procedure) => procedure.phase === phase)
      .flatMap((procedure) => cardSteps(procedure, new Set()));
    const places = placesOnCard(steps, car);
    return { phase, places, list: listOfPlaces(places, car) };
  });

  test('every part stands on one line, with every place that the card names for it', () => {
    for (const { phase, places, list } of lists) {
      const parts = new Set(places.flatMap((place) => place.parts));
      for (const part of parts) {
        const at = places.filter((place) => place.parts.includes(part)).map(({ place }) => place);
        const rows = rowOf(list, part);
        const told = rows.flatMap((row) => row.places);
        expect(told, `${phase} ${part}`).toEqual(at);
        if (list.tagged.some((row) => row.parts.includes(part))) expect(rows, part).toHaveLength(1);
      }
    }
    expect(lists.some(({ list }) => list.tagged.length > 0 && list.named.length > 0)).toBe(true);
  });

  test('lines begin in the order of the tags; in a long list the tags of a line are of one letter', () => {
    const order = new Intl.Collator('en', { numeric: true }).compare;
    for (const { list } of lists) {
      const first = list.tagged.map(({ parts }) => parts[0] ?? '');
      expect(first).toEqual([...first].sort(order));
      for (const { parts } of list.tagged) expect(parts).toEqual([...parts].sort(order));
      if (list.tagged.length <= 8) continue;
      for (const { parts } of list.tagged)
        expect(new Set(parts.map((tag) => tag.replace(/\d+$/, ''))).size, parts.join()).toBe(1);
    }
    expect(lists.some(({ list }) => list.tagged.length > 8)).toBe(true);
  });

  test('what a trouble is known by, and every step of it, names no gauge or valve that the list leaves out', async () => {
    const world = worldOf(await demo(name), shop);
    const paper = shop.papers.find(({ name: own }) => own === 'card-something-is-wrong');
    if (paper === undefined) throw new Error('no card of troubles');
    const { card } = paper.context(world) as {
      card: {
        places: PlaceList;
        procedures: readonly { seen: string; never: readonly string[]; steps: unknown }[];
      };
    };
    const seen = card.procedures.flatMap((each) => [each.seen, ...each.never]).join('\n');
    const steps = JSON.stringify(card.procedures.map((each) => each.steps));
    const gauges = Object.values(car.spec.gauges).filter(
      ({ name: own, tag }) => tag !== undefined && seen.includes(own),
    );
    expect(gauges.length).toBeGreaterThan(1);
    const tagged = taggedParts(car).filter(({ tag }) => new RegExp(`\\b${tag}\\b`).test(steps));
    expect(tagged.length).toBeGreaterThan(10);
    for (const tag of [...gauges, ...tagged].map(({ tag: own }) => own ?? ''))
      expect(rowOf(card.places, tag), tag).toHaveLength(1);
  });

  test('the helper at the burner front is told where everything is that the card names', async () => {
    const { places: list, procedures: shown, signed } = burnerFrontContext(worldOf(await demo(name), shop));
    const words = JSON.stringify([shown, signed]);
    const named = taggedParts(car).filter(
      ({ tag }) => words.includes(`"${tag}"`) || words.includes(`(${tag})`),
    );
    expect(named.length).toBeGreaterThan(2);
    for (const { tag } of named) expect(rowOf(list, tag), tag).toHaveLength(1);
    const untagged = [...car.parts.values()].filter(
      ({ tag, kind, name: own }) =>
        tag === undefined && ['burner', 'vaporizer', 'fitting'].includes(kind) && words.includes(own),
    );
    for (const { name: own } of untagged) expect(rowOf(list, own), own).toHaveLength(1);
    const [extinguisher] = [...car.parts.values()].filter(({ name: own }) => /extinguisher/.test(own));
    expect(rowOf(list, extinguisher?.name ?? '')).toHaveLength(1);
  });
});
