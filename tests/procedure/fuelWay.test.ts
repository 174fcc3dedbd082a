/** The order of valves on fuel lines of any shape: from the tank forward, from the burner back. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { connect } from '../../src/car/build';
import type { Car, Part, PartId } from '../../src/car/car';
import type { Pipe } from '../../src/car/plant';
import { allFuelValves, lastValvesTo, valvesTo } from '../../src/procedure/fuelWay';
import { select } from '../../src/procedure/select';
import { smallCar, smallCars } from '../helpers/smallCars';

const base = smallCar(...(smallCars['one pilot valve'] ?? []));

/** A car whose main fuel runs through `widths[0]` valves side by side, then `widths[1]`, and so on; `returns` lead back to the tank. */
function layered(widths: readonly number[], returns: readonly number[], spin: number) {
  const layers = widths.map((width, layer) =>
    Array.from({ length: width }, (_, index) => `valve-${layer}-${index}`),
  );
  const tees = widths.map((_, layer) => `tee-${layer}`);
  const runs: (readonly PartId[])[] = layers.flatMap((valves, layer) =>
    valves.map((valve) => [layer === 0 ? 'fuel-tank' : `tee-${layer - 1}`, valve, `tee-${layer}`]),
  );
  runs.push([`tee-${widths.length - 1}`, 'main-burner']);
  for (const layer of returns) runs.push([`tee-${layer % widths.length}`, `return-${layer}`, 'fuel-tank']);
  // the order in which a keeper writes the lines must not matter to the order of flow
  const turned = [...runs.slice(spin % runs.length), ...runs.slice(0, spin % runs.length)];
  const pipes: Pipe[] = turned
    .flatMap((run, line) =>
      run.slice(1).map((to, step) => ({
        index: 0,
        from: run[step] ?? '',
        to,
        carries: 'main fuel' as const,
        line,
        step,
      })),
    )
    .map((pipe, index) => ({ ...pipe, index }));
  const ids = [...layers.flat(), ...returns.map((layer) => `return-${layer}`)];
  const parts = new Map<PartId, Part>([
    ...base.parts,
    ...ids.map((id) => [id, { id, kind: 'valve', name: id } as Part] as const),
    ...tees.map((id) => [id, { id, kind: 'fitting', name: id } as Part] as const),
  ]);
  const car: Car = { ...base, parts, plant: connect(pipes) };
  return { car, layers };
}

const shapes = fc.record({
  widths: fc.array(fc.integer({ min: 1, max: 3 }), { minLength: 1, maxLength: 5 }),
  returns: fc.uniqueArray(fc.integer({ min: 0, max: 4 }), { maxLength: 3 }),
  spin: fc.nat(20),
});

describe('valves on the way to a burner', () => {
  test('each comes after every valve upstream of it, and returns to the tank are not among them', () => {
    fc.assert(
      fc.property(shapes, ({ widths, returns, spin }) => {
        const { car, layers } = layered(widths, returns, spin);
        const found = valvesTo(car, 'main-burner');
        expect([...found].sort()).toEqual([...layers.flat()].sort());
        layers.forEach((valves, layer) => {
          for (const valve of valves) {
            for (const upstream of layers.slice(0, layer).flat())
              expect(found.indexOf(upstream)).toBeLessThan(found.indexOf(valve));
          }
        });
      }),
    );
  });

  test('shutting from the burner back is opening from the tank forward, turned round', () => {
    fc.assert(
      fc.property(shapes, ({ widths, returns, spin }) => {
        const { car } = layered(widths, returns, spin);
        const forward = select(car, { duty: 'main-valve', order: 'from-source' });
        expect(select(car, { duty: 'main-valve', order: 'from-burner' })).toEqual([...forward].reverse());
        expect(allFuelValves(car)).toEqual(forward);
      }),
    );
  });

  test('the last valves are those with nothing but pipe between them and the flame', () => {
    fc.assert(
      fc.property(shapes, ({ widths, returns, spin }) => {
        const { car, layers } = layered(widths, returns, spin);
        expect([...lastValvesTo(car, 'main-burner')].sort()).toEqual([...(layers.at(-1) ?? [])].sort());
      }),
    );
  });
});

describe('as a seated driver reaches them', () => {
  test('every valve is there once, the seated ones first', () => {
    fc.assert(
      fc.property(fc.constantFrom(...Object.values(smallCars)), (patches) => {
        const car = smallCar(...patches);
        const order = select(car, { duty: 'fuel-valve', order: 'by-reach' });
        expect([...order].sort()).toEqual([...allFuelValves(car)].sort());
        const seated = order.map((id) => car.places.get(car.parts.get(id)?.place ?? '')?.reach === 'seated');
        expect(seated.lastIndexOf(true)).toBeLessThan(
          seated.includes(false) ? seated.indexOf(false) : seated.length,
        );
      }),
      { numRuns: 7 },
    );
  });
});
