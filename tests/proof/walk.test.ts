/** The walk round the car, held against trying every order (R. Bellman 1962, M. Held and R. M. Karp 1962: by subsets). */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { Round, shortestWalk, walkLength } from '../../src/proof/walk';
import { demo } from './library';

const round = new Round(demo('marigold').car);

/** The length of the shortest walk by subsets of spots already called at. */
function bySubsets(spots: readonly number[], from: number | undefined, to: number | undefined): number {
  const count = spots.length;
  const best = new Map<string, number>();
  const key = (mask: number, last: number) => `${mask} ${last}`;
  for (let index = 0; index < count; index += 1)
    best.set(key(1 << index, index), from === undefined ? 0 : round.between(from, spots[index] ?? 0));
  for (let mask = 1; mask < 1 << count; mask += 1) {
    for (let last = 0; last < count; last += 1) {
      const here = best.get(key(mask, last));
      if (here === undefined) continue;
      for (let next = 0; next < count; next += 1) {
        if ((mask >> next) % 2 === 1) continue;
        const there = here + round.between(spots[last] ?? 0, spots[next] ?? 0);
        const at = key(mask | (1 << next), next);
        if (there < (best.get(at) ?? Number.POSITIVE_INFINITY)) best.set(at, there);
      }
    }
  }
  const ends = spots.map(
    (spot, last) =>
      (best.get(key((1 << count) - 1, last)) ?? Number.POSITIVE_INFINITY) +
      (to === undefined ? 0 : round.between(spot, to)),
  );
  return Math.min(...ends);
}

const spot = fc.double({ min: 0, max: round.lengthM, noNaN: true }).map((each) => each % round.lengthM);
const maybe = fc.option(spot, { nil: undefined });

describe('the shortest walk', () => {
  test('is as short as the shortest of all orders', () => {
    fc.assert(
      fc.property(fc.array(spot, { minLength: 1, maxLength: 8 }), maybe, maybe, (spots, from, to) => {
        const walk = shortestWalk(round, spots, from, to);
        expect([...walk.order].sort((a, b) => a - b)).toEqual(spots.map((_, index) => index));
        const walked = walkLength(
          round,
          walk.order.map((index) => spots[index] ?? 0),
          from,
          to,
        );
        expect(walked).toBeCloseTo(walk.lengthM, 6);
        expect(walk.lengthM).toBeCloseTo(bySubsets(spots, from, to), 6);
      }),
      { numRuns: 150 },
    );
  });

  test('never goes more than once round and back', () => {
    fc.assert(
      fc.property(fc.array(spot, { minLength: 1, maxLength: 40 }), spot, (spots, from) => {
        expect(shortestWalk(round, spots, from, undefined).lengthM).toBeLessThanOrEqual(round.lengthM + 1e-9);
      }),
      { numRuns: 50 },
    );
  });

  test('of equally short walks takes the one whose heavy spots come first', () => {
    const spots = [0, round.lengthM / 4, round.lengthM / 2];
    expect(shortestWalk(round, spots, undefined, undefined, [0, 0, 1]).order).toEqual([2, 1, 0]);
    expect(shortestWalk(round, spots, undefined, undefined, [1, 0, 0]).order).toEqual([0, 1, 2]);
  });
});

describe('where one stands', () => {
  const { places } = demo('marigold').car;
  const spotOf = (id: string) => {
    const place = places.get(id);
    if (place === undefined) throw new Error(id);
    return round.spotOf(place);
  };

  test('places on one side are nearer to each other than to the other side', () => {
    expect(round.between(spotOf('boiler-foot-left'), spotOf('hood-left'))).toBeLessThan(
      round.between(spotOf('boiler-foot-left'), spotOf('boiler-foot-right')),
    );
  });

  test('everything reached from the seat is one spot', () => {
    expect(spotOf('dash-glass')).toBe(spotOf('driver-floor'));
  });
});
