/** Two valves at one place are told apart by a hand, without light. */
import { expect, test } from 'vitest';
import { worldOf } from '../../src/kettlebook';
import { darkContext } from '../../src/paper/context/dark';
import { feelOf, sharedPlaces } from '../../src/paper/context/feel';
import { listOfPlaces, type PlaceList } from '../../src/paper/context/placeList';
import { placesOnCard } from '../../src/paper/context/placesSaid';
import { demo, demoNames, workshop } from '../whole/made';

const shop = await workshop();

test.each(demoNames)('%s: valves of the way out that share a place say how they feel', async (name) => {
  const { car, proof } = await demo(name);
  const wayOut = proof.procedures.find(({ id }) => id === 'shut-everything');
  const seated = (wayOut?.steps ?? []).flatMap(({ part = '', action }) => {
    const valve = action === 'shut' ? car.spec.valves[part] : undefined;
    return valve !== undefined && car.places.get(valve.place)?.reach === 'seated' ? [valve] : [];
  });
  expect(seated.length).toBeGreaterThan(1);
  const beside = ({ place, name: own }: (typeof seated)[number]) =>
    Object.values(car.spec.valves).some((other) => other.place === place && other.name !== own);
  expect(seated.filter(beside).length).toBeGreaterThan(0);
  for (const valve of seated.filter(beside)) expect(valve.feel ?? '', valve.name).not.toBe('');
});

test('the card for the dark says how a valve feels, and how it is shut in a hurry', async () => {
  const world = worldOf(await demo('thimble'), shop);
  const { places } = darkContext(world);
  const ways = places.flatMap(({ steps }) => steps.map(({ how }) => how));
  const { valves } = world.car.spec;
  expect(ways[0]).toBe(`${valves['fuel-stop-valve']?.feel}; ${valves['fuel-stop-valve']?.quickly}`);
  expect(ways[1]).toContain(`${valves['throttle-valve']?.feel}; `);
});

test('the list of places says so for trouble, where they part, and not elsewhere', async () => {
  const { car } = await demo('thimble');
  const places = [{ place: 'the levers', reach: 'seated', parts: ['S1', 'F3', 'reverse lever'] }] as const;
  const whole = listOfPlaces(places, car);
  expect(whole.tagged).toEqual([{ parts: ['F3', 'S1'], places: ['the levers'] }]);
  const byFeel = listOfPlaces(places, car, { byFeel: 'apart' });
  expect(byFeel.tagged.map(({ parts }) => parts)).toEqual([['F3'], ['S1']]);
  expect(byFeel.named).toEqual([
    { parts: ['reverse lever'], places: [`the levers: ${car.spec.controls['reverse-lever']?.feel}`] },
  ]);
});

test('for trouble the list says what is lifted before a hand gets at a valve, and how a brake is set that stays on', async () => {
  const { car } = await demo('marigold');
  const { spec } = car;
  const [box, brake] = [spec.valves['pilot-tank-valve'], spec.controls['hand-brake']];
  const first = car.places.get(box?.place ?? '')?.how;
  expect([box?.tag, first, brake?.how].includes(undefined)).toBe(false);
  const places = [
    { place: 'the box', reach: 'standing', parts: [box?.tag ?? '', 'T3'] },
    { place: 'the side', reach: 'seated', parts: [brake?.name ?? ''] },
  ] as const;
  const wordsOf = (byFeel: 'apart' | 'not') => {
    const { tagged, named } = listOfPlaces(places, car, { byFeel });
    return [...tagged, ...named].map((row) => `${row.parts.join(' ')}: ${row.places.join(' ')}`);
  };
  expect(wordsOf('apart').find((line) => line.startsWith(`${box?.tag}:`))).toContain(`the box (${first})`);
  expect(wordsOf('apart').find((line) => line.startsWith('T3:'))).toBe('T3: the box');
  expect(wordsOf('apart').at(-1)).toContain(`the side: ${brake?.how}`);
  expect(wordsOf('not').join(' ')).not.toContain(first ?? 'no word');
});

test('what a step names beside its part stands in the list of places', async () => {
  const { car, proof } = await demo('marigold');
  const goingOn = proof.procedures.find(({ id }) => id === 'going-on');
  const parts = placesOnCard(goingOn?.steps ?? [], car).flatMap((each) => each.parts);
  const gloves = Object.values(car.spec.equipment).find(({ kind }) => kind === 'gloves');
  expect(goingOn?.steps.some(({ part }) => part !== undefined && car.spec.equipment[part] === gloves)).toBe(
    false,
  );
  expect(parts).toContain(gloves?.name);
});

test('other lists say it behind the place that parts share, and nothing of a part that stands alone', async () => {
  const { car } = await demo('thimble');
  const places = [
    { place: "levers by the driver's right hand", reach: 'seated', parts: ['S1', 'F3', 'reverse lever'] },
    { place: 'burner door, low in the right side panel', reach: 'standing', parts: ['F4'] },
  ] as const;
  const { valves, controls } = car.spec;
  const levers = car.places.get(valves['throttle-valve']?.place ?? '')?.name ?? '';
  const list = listOfPlaces([{ ...places[0], place: levers }, places[1]], car, { byFeel: 'together' });
  expect(list.tagged).toEqual([
    {
      parts: ['F3', 'S1'],
      places: [`${levers}: F3, ${valves['main-burner-valve']?.feel}; S1, ${valves['throttle-valve']?.feel}`],
    },
    { parts: ['F4'], places: [places[1].place] },
  ]);
  expect(list.named).toEqual([
    { parts: ['reverse lever'], places: [`${levers}: ${controls['reverse-lever']?.feel}`] },
  ]);
  // alone at its place, whatever the spec says of it
  const { car: heron } = await demo('heron');
  const alone = heron.places.get(heron.spec.valves['fuel-tank-tap']?.place ?? '')?.name ?? '';
  const tap = [{ place: alone, reach: 'standing', parts: ['F1'] }] as const;
  expect(heron.spec.valves['fuel-tank-tap']?.feel ?? '').not.toBe('');
  expect(listOfPlaces(tap, heron, { byFeel: 'together' }).tagged).toEqual([
    { parts: ['F1'], places: [alone] },
  ]);
});

test.each(demoNames)('%s: a card of the day says how what shares a place feels', async (name) => {
  const world = worldOf(await demo(name), shop);
  const { car } = world;
  const shared = sharedPlaces(car);
  const cards = shop.papers.filter(
    ({ template, name: own }) => template === 'card' && /start|running|down/.test(own),
  );
  expect(cards.length).toBeGreaterThan(2);
  let told = 0;
  for (const paper of cards) {
    const { card } = paper.context(world) as { card: { places: PlaceList } };
    for (const { parts, places } of [...card.places.tagged, ...card.places.named])
      for (const part of [...car.parts.values()].filter(({ tag, name: own }) => parts.includes(tag ?? own))) {
        const feel = feelOf(part.id, car);
        const place = car.places.get(part.place ?? '')?.name ?? '';
        if (feel === '' || !shared.has(place) || !places.some((each) => each.startsWith(place))) continue;
        expect(places.join(), `${paper.name} ${part.name}`).toContain(feel);
        told += 1;
      }
  }
  expect(told).toBeGreaterThan(4);
});
