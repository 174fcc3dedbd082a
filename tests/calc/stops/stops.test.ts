import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fewestLimitedStops, fewestStops } from '../../../src/calc/stops/fewest-stops';
import { planTour, type Tour, type TourStop } from '../../../src/calc/stops/tour';

describe('fewest stops with a fixed range (published algorithms exercise)', () => {
  it.each<[number, number, number[], number[] | undefined]>([
    [950, 400, [200, 375, 550, 750], [375, 750]],
    [10, 3, [1, 2, 5, 9], undefined],
    [200, 250, [100, 150], []],
  ])('%d with a range of %d and stops at %o', (length, range, stops, expected) => {
    expect(fewestStops(length, range, stops)).toEqual(expected);
  });
});

describe('fewest stops where each gives so much (minimum number of refuelling stops, public problem 871)', () => {
  it.each<[number, number, [number, number][], number | undefined]>([
    [
      100,
      10,
      [
        [10, 60],
        [20, 30],
        [30, 30],
        [60, 40],
      ],
      2,
    ],
    [1, 1, [], 0],
    [100, 1, [[10, 100]], undefined],
  ])('to %d from %d with %o', (length, start, stops, expected) => {
    expect(
      fewestLimitedStops(
        length,
        start,
        stops.map(([atM, givesM]) => ({ atM, givesM })),
      ),
    ).toBe(expected);
  });
});

/** Every choice of stops, tried. */
function bruteForce(
  length: number,
  stops: readonly TourStop[],
  water: number,
  fuel: number,
): number | undefined {
  let best: number | undefined;
  for (let bits = 0; bits < 2 ** stops.length; bits++) {
    const chosen = stops.filter((_, i) => bits & (1 << i)).sort((a, b) => a.atM - b.atM);
    const legal = (range: number, has: (stop: TourStop) => boolean): boolean => {
      const marks = [0, ...chosen.filter(has).map((stop) => stop.atM), length];
      return marks.slice(1).every((mark, i) => mark - (marks[i] ?? 0) <= range);
    };
    if (
      legal(water, (s) => s.water) &&
      legal(fuel, (s) => s.fuel) &&
      (best === undefined || chosen.length < best)
    )
      best = chosen.length;
  }
  return best;
}

const tourOf = (lengthM: number, stops: readonly TourStop[]): Tour => ({
  lengthM,
  waterUsedM3: (at) => at,
  fuelUsedM3: (at) => at,
  stops,
});
const stopsArbitrary = fc
  .uniqueArray(fc.integer({ min: 1, max: 99 }), { maxLength: 9 })
  .chain((places) =>
    fc.tuple(
      fc.constant(places),
      fc.array(fc.constantFrom('water', 'fuel', 'both'), {
        minLength: places.length,
        maxLength: places.length,
      }),
    ),
  )
  .map(([places, kinds]): TourStop[] =>
    places.map((atM, i) => ({
      name: `stop ${i}`,
      atM,
      water: kinds[i] !== 'fuel',
      fuel: kinds[i] !== 'water',
    })),
  );

describe('a tour by water and fuel', () => {
  it('takes water twice and fuel once, at one stop together where it can', () => {
    const stops: TourStop[] = [
      { name: 'brook', atM: 20, water: true, fuel: false },
      { name: 'mill', atM: 30, water: true, fuel: false },
      { name: 'garage', atM: 55, water: true, fuel: true },
      { name: 'pump', atM: 60, water: true, fuel: false },
    ];
    const plan = planTour(tourOf(90, stops), { waterM3: 35, fuelM3: 60 });
    if (!plan.ok) throw new Error('should be possible');
    expect(plan.stops.map((stop) => stop.name)).toEqual(['brook', 'garage']);
    expect(
      plan.legs.map(({ from, to, waterLeftM3, fuelLeftM3 }) => [from, to, waterLeftM3, fuelLeftM3]),
    ).toEqual([
      ['start', 'brook', 15, 40],
      ['brook', 'garage', 0, 5],
      ['garage', 'end', 0, 25],
    ]);
  });

  it('says how far it comes and what runs out when it cannot be done', () => {
    const plan = planTour(tourOf(100, [{ name: 'garage', atM: 30, water: false, fuel: true }]), {
      waterM3: 40,
      fuelM3: 50,
    });
    expect(plan).toEqual({ ok: false, farthestM: expect.closeTo(40, 0), lacks: 'water' });
  });

  it('finds as few stops as trying every choice does', () => {
    fc.assert(
      fc.property(
        stopsArbitrary,
        fc.integer({ min: 15, max: 60 }),
        fc.integer({ min: 15, max: 60 }),
        (stops, water, fuel) => {
          const plan = planTour(tourOf(100, stops), { waterM3: water, fuelM3: fuel });
          expect(plan.ok ? plan.stops.length : undefined).toBe(bruteForce(100, stops, water, fuel));
        },
      ),
      { numRuns: 400 },
    );
  });

  it('for one resource agrees with the greedy choice; for two needs at least the larger count', () => {
    fc.assert(
      fc.property(
        stopsArbitrary,
        fc.integer({ min: 15, max: 60 }),
        fc.integer({ min: 15, max: 60 }),
        (stops, water, fuel) => {
          const plan = (one: readonly TourStop[], w: number, f: number): number => {
            const made = planTour(tourOf(100, one), { waterM3: w, fuelM3: f });
            return made.ok ? made.stops.length : Number.POSITIVE_INFINITY;
          };
          const greedy = (range: number, has: (stop: TourStop) => boolean): number =>
            fewestStops(
              100,
              range,
              stops.filter(has).map((stop) => stop.atM),
            )?.length ?? Number.POSITIVE_INFINITY;
          const onlyWater = plan(stops, water, 1000);
          const onlyFuel = plan(stops, 1000, fuel);
          expect(onlyWater).toBe(greedy(water, (stop) => stop.water));
          expect(onlyFuel).toBe(greedy(fuel, (stop) => stop.fuel));
          expect(plan(stops, water, fuel)).toBeGreaterThanOrEqual(Math.max(onlyWater, onlyFuel));
        },
      ),
      { numRuns: 200 },
    );
  });

  it('never arrives on the reserve', () => {
    fc.assert(
      fc.property(stopsArbitrary, fc.integer({ min: 15, max: 60 }), (stops, water) => {
        const plan = planTour(tourOf(100, stops), { waterM3: water, fuelM3: 70 });
        if (plan.ok)
          for (const leg of plan.legs)
            expect(Math.min(leg.waterLeftM3, leg.fuelLeftM3)).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});
