/** A way driven by a car: the reserve stays whole even if everything goes to the high end. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fillingM3 } from '../../../src/calc/figures/planning';
import { carTour, planningUse } from '../../../src/calc/figures/tour';
import { usedOver } from '../../../src/calc/figures/use';
import type { Way } from '../../../src/calc/stops/way';
import { litre } from '../../../src/quantity/base-units';
import { terrains } from '../../../src/spec/schema/running';
import { demoCar, demoNames, soundOf, tiny } from './figured';

const place = fc.record({
  distanceM: fc.double({ min: 500, max: 25_000, noNaN: true }),
  terrain: fc.constantFrom(...terrains),
  water: fc.boolean(),
  fuel: fc.boolean(),
});

function wayOf(
  legs: readonly { distanceM: number; terrain: (typeof terrains)[number]; water: boolean; fuel: boolean }[],
): Way {
  let atM = 0;
  const stretches: Way['stretches'][number][] = [];
  const places = legs.map(({ distanceM, terrain, water, fuel }, index) => {
    stretches.push({ fromM: atM, toM: atM + distanceM, terrain, climbM: 0 });
    atM += distanceM;
    return { name: `place ${index}`, atM, water, fuel, note: '' };
  });
  return { lengthM: atM, stretches, places, heights: { kind: 'said' } };
}

describe.each(demoNames)('%s', (name) => {
  const { car, figures } = demoCar(name);

  test('never eats the reserve, fills only where there is something, loses no length', () => {
    let driven = 0;
    fc.assert(
      fc.property(fc.array(place, { minLength: 1, maxLength: 12 }), (legs) => {
        const way = wayOf(legs);
        const tour = carTour(car, figures, way);
        if (!tour.ok) {
          expect(tour.problems.map(({ code }) => code)).toEqual(['tour-too-far']);
          return;
        }
        driven += 1;
        expect(tour.value.legs.reduce((sum, leg) => sum + leg.distanceM, 0)).toBeCloseTo(way.lengthM, 6);
        for (const leg of tour.value.legs) {
          expect(leg.waterLeftM3).toBeGreaterThanOrEqual(-1e-6 * litre);
          expect(leg.fuelLeftM3).toBeGreaterThanOrEqual(-1e-6 * litre);
          if (leg.takeWater) expect(leg.to.water).toBe(true);
          if (leg.takeFuel) expect(leg.to.fuel).toBe(true);
          expect(leg.water.low).toBeLessThanOrEqual(leg.water.mean);
          expect(leg.water.mean).toBeLessThanOrEqual(leg.water.high);
        }
        const stopped = tour.value.legs.filter((leg) => leg.takeWater || leg.takeFuel).length;
        expect(stopped).toBe(tour.value.stops);
      }),
    );
    expect(driven).toBeGreaterThan(5);
  });

  test('on a filling, planned to the last drop, the high end of the use is the filling', () => {
    const chart = figures.water;
    const perM = chart === undefined ? undefined : planningUse(chart);
    if (chart === undefined || perM === undefined) throw new Error('the water is known');
    const far = fillingM3(chart) / perM.hilly;
    expect(usedOver(chart.use, { level: 0, rolling: 0, hilly: far })?.high).toBeCloseTo(fillingM3(chart), 9);
  });
});

test('the same way over harder road needs no fewer stops', () => {
  const { car, figures } = demoCar('marigold');
  const stops = (terrain: (typeof terrains)[number]) =>
    soundOf(
      carTour(
        car,
        figures,
        wayOf(Array.from({ length: 16 }, () => ({ distanceM: 8000, terrain, water: true, fuel: true }))),
      ),
    ).stops;
  expect(stops('level')).toBeGreaterThan(0);
  expect(stops('rolling')).toBeGreaterThanOrEqual(stops('level'));
  expect(stops('hilly')).toBeGreaterThan(stops('level'));
});

test('a way without water in reach says where it ends and what more to carry', () => {
  const { car, figures } = demoCar('thimble');
  const tour = carTour(
    car,
    figures,
    wayOf([{ distanceM: 60_000, terrain: 'level', water: false, fuel: false }]),
  );
  const [problem] = tour.ok ? [] : tour.problems;
  expect(problem?.message).toContain('lacks water');
  expect(problem?.mend).toMatch(/carry \d+\.\d L \(\d+\.\d US gal\) more/);
});

test('a car whose tanks nobody has measured is not planned for', () => {
  const { car, figures } = tiny();
  const tour = carTour(car, figures, wayOf([{ distanceM: 1000, terrain: 'level', water: true, fuel: true }]));
  const [problem] = tour.ok ? [] : tour.problems;
  expect(problem?.code).toBe('tour-unknown');
  expect(problem?.mend).toMatch(/shape|stick/);
});
