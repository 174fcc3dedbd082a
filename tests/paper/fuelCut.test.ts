/** The manual says which valves together shut off all fuel, those reached from the seat first. */
import { describe, expect, test } from 'vitest';
import { setOnePaper, worldOf } from '../../src/kettlebook';
import { fuelCutContext } from '../../src/paper/context/fuelCut';
import { demo, demoNames, goodOf, workshop } from '../whole/made';

const shop = await workshop();

describe.each(demoNames)('%s', (name) => {
  test('every valve between a fuel tank and a burner that a hand shuts is among them, in the order of the way out', async () => {
    const ready = await demo(name);
    const { car, proof } = ready;
    const { seated, others } = fuelCutContext(worldOf(ready, shop));
    const told = [...seated, ...others].map(({ tag }) => tag);
    const { lines, valves, tanks, burners, fuels } = car.spec;
    // what a line of fuel passes through on its way to a burner or a vaporizer
    const onTheWay = lines
      .filter(({ carries }) => carries === 'main fuel' || carries === 'pilot fuel')
      .filter(({ through }) => through.some((part) => part in burners || part in (car.spec.vaporizers ?? {})))
      .flatMap(({ through }) => through.flatMap((part) => valves[part]?.tag ?? []));
    expect(onTheWay.length).toBeGreaterThan(1);
    expect(told).toEqual(expect.arrayContaining(onTheWay));
    expect(new Set(told).size).toBe(told.length);
    expect(Object.values(tanks).some(({ holds }) => holds in fuels)).toBe(true);
    const wayOut = proof.procedures.find(({ id }) => id === 'shut-everything')?.steps ?? [];
    const order = wayOut.flatMap(({ part, action }) =>
      action === 'shut' && part !== undefined ? (valves[part]?.tag ?? []) : [],
    );
    expect(seated.map(({ tag }) => tag)).toEqual(
      order.filter((tag) => seated.some((each) => each.tag === tag)),
    );
    for (const { tag } of seated) {
      const valve = Object.values(valves).find((each) => each.tag === tag);
      expect(car.places.get(valve?.place ?? '')?.reach).toBe('seated');
    }
    expect(others.length).toBeGreaterThan(0);
  });

  test('the manual says so where it tells what to shut for a leak', async () => {
    const ready = await demo(name);
    const manual = shop.papers.find((paper) => paper.name === 'owners-manual');
    if (manual === undefined) throw new Error('there is no manual');
    const { laidOut } = goodOf(setOnePaper(ready, manual, shop));
    const words = laidOut.pages
      .flatMap(({ items }) => items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])))
      .join(' ')
      .replace(/\s+/g, ' ');
    const at = words.indexOf('All fuel is shut off, as in');
    expect(at).toBeGreaterThan(0);
    for (const { tag } of fuelCutContext(worldOf(ready, shop)).seated)
      expect(words.slice(at, at + 700)).toContain(` ${tag}`);
  });
});
