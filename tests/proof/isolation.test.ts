/** What to shut for a leak: the fewest valves, held against trying every set of valves. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PartId } from '../../src/car/car';
import { type Isolation, isolations } from '../../src/proof/isolation';
import { type CutProblem, cheapestCut } from '../../src/proof/minCut';
import { demo } from './library';

/** Whether the targets can be reached with some nodes taken out. */
function reached({ edges, sources, targets }: CutProblem, out: ReadonlySet<number>): boolean {
  const seen = new Set(sources.filter((node) => !out.has(node)));
  for (const node of seen) for (const [from, to] of edges) if (from === node && !out.has(to)) seen.add(to);
  return targets.some((node) => seen.has(node));
}

/** The least cost of any set of nodes that cuts, by trying every one. */
function leastCost(problem: CutProblem): number {
  const able = problem.cost.flatMap((cost, node) => (Number.isFinite(cost) ? [node] : []));
  let least = Number.POSITIVE_INFINITY;
  for (let mask = 0; mask < 2 ** able.length; mask += 1) {
    const chosen = able.filter((_, index) => (mask >> index) % 2 === 1);
    const cost = chosen.reduce((sum, node) => sum + (problem.cost[node] ?? 0), 0);
    if (cost < least && !reached(problem, new Set(chosen))) least = cost;
  }
  return least;
}

describe('the cheapest cut', () => {
  const problem = fc.integer({ min: 3, max: 9 }).chain((nodes) => {
    const node = fc.integer({ min: 0, max: nodes - 1 });
    return fc.record({
      nodes: fc.constant(nodes),
      edges: fc.array(fc.tuple(node, node), { maxLength: 20 }),
      sources: fc.uniqueArray(node, { minLength: 1, maxLength: 2 }),
      targets: fc.uniqueArray(node, { minLength: 1, maxLength: 2 }),
      cost: fc.array(fc.oneof(fc.integer({ min: 1, max: 9 }), fc.constant(Number.POSITIVE_INFINITY)), {
        minLength: nodes,
        maxLength: nodes,
      }),
    });
  });

  test('cuts, and nothing cheaper does, in any small graph', () => {
    fc.assert(
      fc.property(problem, (each) => {
        const found = cheapestCut(each);
        const least = leastCost(each);
        if (found === undefined) expect(least).toBe(Number.POSITIVE_INFINITY);
        else {
          expect(reached(each, new Set(found))).toBe(false);
          expect(found.reduce((sum, node) => sum + (each.cost[node] ?? 0), 0)).toBe(least);
        }
      }),
      { numRuns: 400 },
    );
  });
});

function shutFor(found: readonly Isolation[], from: PartId, to: PartId): Isolation {
  const one = found.find(({ leak }) => 'pipe' in leak && leak.pipe.from === from && leak.pipe.to === to);
  if (one === undefined) throw new Error(`no pipe from ${from} to ${to}`);
  return one;
}

describe('what to shut on Marigold', () => {
  const { car } = demo('marigold');
  const found = isolations(car);

  test('a leak that two tanks feed needs both sides shut', () => {
    const one = shutFor(found, 'steam-automatic', 'low-water-cut-off');
    expect(one.sources).toEqual(['pressure-tank', 'pilot-tank']);
    expect(one.valves).toEqual(['fuel-stop-valve', 'main-burner-valve']);
  });

  test('the nearest valve is named, and the one that is reached from the seat beside it', () => {
    const one = shutFor(found, 'pilot-vaporizer', 'pilot-burner');
    expect(one.valves).toEqual(['pilot-needle-valve']);
    expect(one.awkward).toEqual(['pilot-needle-valve']);
    expect(one.fromSeat).toEqual(['pilot-stop-valve']);
  });

  test('a check valve holds what is beyond it', () => {
    expect(shutFor(found, 'hand-water-pump', 'hand-feed-check-valve').sources).toEqual(['water-tank']);
    expect(shutFor(found, 'hand-feed-check-valve', 'boiler').sources).toContain('boiler');
  });

  test('what hangs on a tank or on the boiler with no valve between is said to have none', () => {
    expect(shutFor(found, 'main-tank', 'main-tank-valve').valves).toBeUndefined();
    expect(shutFor(found, 'boiler', 'throttle-valve').valves).toBeUndefined();
  });

  test('oil feeds no leak of steam', () => {
    expect(shutFor(found, 'throttle-valve', 'superheater').valves).toEqual(['throttle-valve']);
  });
});

describe('what to shut on Thimble', () => {
  const found = isolations(demo('thimble').car);

  test('the wall of a feed heater keeps the water out of the exhaust', () => {
    const one = shutFor(found, 'feed-heater', 'exhaust-muffler');
    expect(one.sources).toEqual(['boiler']);
    expect(one.valves).toEqual(['throttle-valve']);
    expect(one.fromSeat).toEqual(['throttle-valve']);
  });

  test('a leak of the heater itself is fed from both of its sides', () => {
    const one = found.find(({ leak }) => 'part' in leak && leak.part === 'feed-heater');
    expect(new Set(one?.sources)).toEqual(new Set(['water-tank', 'boiler']));
    expect(new Set(one?.valves)).toEqual(new Set(['throttle-valve', 'water-tank-valve', 'bypass-valve']));
  });
});

describe.each(['marigold', 'thimble', 'heron'])('every leak of %s', (name) => {
  const { car } = demo(name);

  test('is cut off by the valves named for it, and by no fewer', () => {
    for (const one of isolations(car)) {
      const cut = (shut: readonly PartId[]) => !fedWith(car, one, new Set(shut));
      if (one.valves === undefined) expect(cut(Object.keys(car.spec.valves))).toBe(false);
      else {
        expect(cut(one.valves)).toBe(true);
        for (const valve of one.valves) expect(cut(one.valves.filter((each) => each !== valve))).toBe(false);
        if (one.valves.length === 2)
          for (const valve of Object.keys(car.spec.valves)) expect(cut([valve])).toBe(false);
      }
    }
  });
});

/** A walk of its own over the pipes, from the leak outward: whether something that holds fluid is come to. */
function fedWith(
  car: ReturnType<typeof demo>['car'],
  { leak }: Isolation,
  shut: ReadonlySet<PartId>,
): boolean {
  const oil =
    'pipe' in leak
      ? leak.pipe.carries === 'oil'
      : car.plant.pipes
          .filter((pipe) => pipe.from === leak.part || pipe.to === leak.part)
          .every((pipe) => pipe.carries === 'oil');
  const pipes = car.plant.pipes.filter((pipe) => (pipe.carries === 'oil') === oil);
  const kind = (id: PartId) => car.parts.get(id)?.kind;
  const holds = (id: PartId) => kind(id) === 'tank' || kind(id) === 'boiler';
  const gives = (id: PartId, back: boolean) => {
    if (holds(id)) return true;
    if (shut.has(id) || kind(id) === 'outside' || kind(id) === 'burner') return false;
    if (kind(id) === 'pump') return !back;
    const device = car.spec.devices[id]?.kind;
    if (device === 'relief-valve' || device === 'safety-valve') return false;
    return device !== 'check-valve' || !back;
  };
  // in a feed heater a wall stands between the water and the steam, so it matters on which side one comes to it
  const isHeater = (id: PartId) => kind(id) === 'feed-heater';
  const seen = new Set<string>();
  const waiting: { readonly id: PartId; readonly side: string }[] = [];
  const into = (id: PartId, carries: string) => {
    const side = isHeater(id) ? carries : '';
    if (!seen.has(`${id} ${side}`)) waiting.push({ id, side });
    seen.add(`${id} ${side}`);
  };
  if ('part' in leak) for (const { carries } of pipes) into(leak.part, carries);
  else {
    if (gives(leak.pipe.from, false)) into(leak.pipe.from, leak.pipe.carries);
    if (gives(leak.pipe.to, true)) into(leak.pipe.to, leak.pipe.carries);
  }
  for (const { id, side } of waiting) {
    if (holds(id)) return true;
    for (const pipe of pipes) {
      const leaks = 'pipe' in leak && leak.pipe.index === pipe.index;
      if (leaks || (isHeater(id) && pipe.carries !== side)) continue;
      if (pipe.to === id && gives(pipe.from, false)) into(pipe.from, pipe.carries);
      if (pipe.from === id && gives(pipe.to, true)) into(pipe.to, pipe.carries);
    }
  }
  return false;
}

describe('a leak that no valve cuts off on Heron', () => {
  const { car } = demo('heron');
  const found = isolations(car);

  test('is told what cuts off a part of it, and what feeds it still', () => {
    const one = shutFor(found, 'throttle-valve', 'engine');
    expect(one.valves).toBeUndefined();
    expect(one.partly).toEqual(['throttle-valve']);
    expect(one.left).toEqual(['water-tank']);
  });

  test('has nothing left where valves cut it off, and is split into what helps and what stays', () => {
    for (const { sources, valves, partly, left } of found) {
      if (valves !== undefined) expect([...partly, ...left]).toEqual([]);
      else {
        expect(left.length).toBeGreaterThan(0);
        expect(sources).toEqual(expect.arrayContaining([...left]));
        expect(partly.length > 0).toBe(left.length < sources.length);
      }
    }
  });
});
