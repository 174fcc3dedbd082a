/** Two valves at one place are told apart by a hand, without light. */
import { expect, test } from 'vitest';
import { worldOf } from '../../src/kettlebook';
import { darkContext } from '../../src/paper/context/dark';
import { listOfPlaces } from '../../src/paper/context/placeList';
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
  const byFeel = listOfPlaces(places, car, { byFeel: true });
  expect(byFeel.tagged.map(({ parts }) => parts)).toEqual([['F3'], ['S1']]);
  expect(byFeel.named).toEqual([
    { parts: ['reverse lever'], places: [`the levers: ${car.spec.controls['reverse-lever']?.feel}`] },
  ]);
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
