/** What is live in a state, and by which routes something comes to a part: by example and against simpler searches. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PartId } from '../../src/car/car';
import {
  carrying,
  carryingFuel,
  type FlowState,
  fuelRoutes,
  isReached,
  live,
  type Piped,
  type PipeFilter,
  partsInFlowOrder,
  type Route,
  routesTo,
  tanksFeeding,
} from '../../src/car/flow';
import { mostRoutes } from '../../src/car/routes';
import { plantOf, randomPlants, randomStates } from '../helpers/randomPlant';

const anything: PipeFilter = () => true;
const isTank = (id: PartId) => id.startsWith('tank');

function state(given: Partial<Record<keyof FlowState, readonly PartId[]>>): FlowState {
  return {
    open: new Set(given.open),
    passing: new Set(given.passing),
    pumping: new Set(given.pumping),
    sources: new Set(given.sources),
  };
}

/** Main tank, pump, pressure tank with a relief valve back, two valves, an automatic; and a pilot branch. */
const example = plantOf([
  ['tank-main', 'pump'],
  ['pump', 'tank-pressure'],
  ['tank-pressure', 'device-relief'],
  ['device-relief', 'tank-main'],
  ['tank-pressure', 'valve-stop'],
  ['valve-stop', 'device-automatic'],
  ['device-automatic', 'valve-burner'],
  ['valve-burner', 'burner-main'],
  ['tank-pilot', 'valve-pilot', 'pilot fuel'],
  ['valve-pilot', 'burner-pilot', 'pilot fuel'],
  ['valve-pilot', 'valve-starting', 'pilot fuel'],
  ['valve-starting', 'burner-main', 'pilot fuel'],
  ['tank-main', 'gauge-flow', 'water'],
  ['gauge-flow', 'outside', 'water'],
]);

describe('live', () => {
  test('a shut valve is reached, and nothing beyond it', () => {
    const { parts, pipes } = live(example, state({ sources: ['tank-pressure'] }), carryingFuel);
    expect([...parts].sort()).toEqual(['device-relief', 'tank-pressure', 'valve-stop']);
    expect([...pipes].sort()).toEqual([2, 4]);
  });

  test('an open way reaches the burner and ends there', () => {
    const open = state({
      sources: ['tank-pressure'],
      open: ['valve-stop', 'valve-burner'],
      passing: ['device-automatic'],
    });
    expect(live(example, open, carryingFuel).parts.has('burner-main')).toBe(true);
  });

  test('a device that does not pass stops the way', () => {
    const stopped = state({ sources: ['tank-pressure'], open: ['valve-stop', 'valve-burner'] });
    const { parts } = live(example, stopped, carryingFuel);
    expect(parts.has('device-automatic')).toBe(true);
    expect(parts.has('valve-burner')).toBe(false);
  });

  test('a pump passes only while it is worked, and a tank gives only what it holds', () => {
    const still = live(example, state({ sources: ['tank-main'] }), carryingFuel);
    expect(still.parts.has('tank-pressure')).toBe(false);
    const worked = live(
      example,
      state({ sources: ['tank-main'], pumping: ['pump'], open: ['valve-stop'] }),
      carryingFuel,
    );
    expect(worked.parts.has('tank-pressure')).toBe(true);
    expect(worked.parts.has('valve-stop')).toBe(false);
  });

  test('only pipes that carry what is asked for', () => {
    const both = state({ sources: ['tank-pilot'], open: ['valve-pilot', 'valve-starting'] });
    expect(live(example, both, carrying('main fuel')).parts).toEqual(new Set(['tank-pilot']));
    expect(live(example, both, carrying('pilot fuel')).parts.has('burner-main')).toBe(true);
  });

  test('a gauge in a pipe lets through what it counts', () => {
    expect(live(example, state({ sources: ['tank-main'] }), carrying('water')).parts.has('outside')).toBe(
      true,
    );
  });

  test('agrees with adding live pipes until nothing changes', () => {
    const drawn = randomPlants(12, 30).chain((plant) => randomStates(plant).map((each) => ({ plant, each })));
    fc.assert(
      fc.property(
        drawn,
        fc.constantFrom(anything, carryingFuel, carrying('water')),
        ({ plant, each }, use) => {
          const found = live(plant, each, use);
          const expected = untilNothingChanges(plant, each, use);
          expect([...found.parts].sort()).toEqual([...expected.parts].sort());
          expect([...found.pipes].sort()).toEqual([...expected.pipes].sort());
          for (const id of plant.parts.keys())
            expect(isReached(plant, each, id, use)).toBe(expected.parts.has(id));
        },
      ),
      { numRuns: 500 },
    );
  });

  test('opening a valve never makes less live', () => {
    const drawn = randomPlants(10, 25).chain((plant) => randomStates(plant).map((each) => ({ plant, each })));
    fc.assert(
      fc.property(drawn, fc.nat(), ({ plant, each }, which) => {
        const ids = [...plant.parts.keys()];
        const more = { ...each, open: new Set([...each.open, ids[which % ids.length] ?? '']) };
        const before = live(plant, each, anything);
        const after = live(plant, more, anything);
        expect([...before.parts].every((id) => after.parts.has(id))).toBe(true);
        expect([...before.pipes].every((index) => after.pipes.has(index))).toBe(true);
      }),
    );
  });
});

/** The slow, plain way: go over all pipes again and again, until a round adds nothing. */
function untilNothingChanges(plant: Piped, at: FlowState, use: PipeFilter) {
  const lets: Readonly<Record<string, ReadonlySet<PartId>>> = {
    valve: at.open,
    device: at.passing,
    pump: at.pumping,
    burner: at.sources,
    outside: at.sources,
    tank: at.sources,
  };
  const parts = new Set(at.sources);
  const pipes = new Set<number>();
  for (let changed = true; changed; ) {
    changed = false;
    for (const pipe of plant.plant.pipes) {
      const gate = lets[plant.parts.get(pipe.from)?.kind ?? ''];
      const flows = use(pipe) && parts.has(pipe.from) && (gate === undefined || gate.has(pipe.from));
      if (!flows || pipes.has(pipe.index)) continue;
      pipes.add(pipe.index);
      parts.add(pipe.to);
      changed = true;
    }
  }
  return { parts, pipes };
}

describe('routes', () => {
  test('from the nearest tank, and from the tank behind it', () => {
    const routes = fuelRoutes(example, 'burner-main').map((route) => route.join(' > '));
    expect(routes).toEqual([
      'tank-pressure > valve-stop > device-automatic > valve-burner > burner-main',
      'tank-main > pump > tank-pressure > valve-stop > device-automatic > valve-burner > burner-main',
      'tank-pilot > valve-pilot > valve-starting > burner-main',
    ]);
  });

  test('no further than the first start, unless asked', () => {
    const routes = routesTo(example.plant, 'burner-main', isTank, carrying('main fuel'));
    expect(routes.map((route) => route[0])).toEqual(['tank-pressure']);
  });

  test('none to a part that nothing leads to, or to one that is not there', () => {
    expect(fuelRoutes(example, 'tank-pilot')).toEqual([]);
    expect(fuelRoutes(example, 'burner-spare')).toEqual([]);
  });

  test('the tanks that feed a burner', () => {
    expect(tanksFeeding(example, 'burner-main')).toEqual(['tank-main', 'tank-pressure', 'tank-pilot']);
    expect(tanksFeeding(example, 'burner-pilot')).toEqual(['tank-pilot']);
  });

  test('are those that trying every way finds, each once', () => {
    fc.assert(
      fc.property(randomPlants(8, 16), fc.nat(), fc.boolean(), (plant, which, goOn) => {
        const ids = [...plant.parts.keys()];
        fc.pre(ids.length > 0);
        const to = ids[which % ids.length] ?? '';
        const isStart = (id: PartId) => isTank(id) || id.startsWith('outside');
        const found = routesTo(plant.plant, to, isStart, carryingFuel, goOn).map((route) => route.join(' '));
        expect(new Set(found).size).toBe(found.length);
        expect(found.toSorted()).toEqual(everyWay(plant, to, isStart, carryingFuel, goOn).toSorted());
      }),
      { numRuns: 500 },
    );
  });

  test('the tanks feeding a burner are the starts of its routes', () => {
    fc.assert(
      fc.property(randomPlants(8, 16), fc.nat(), (plant, which) => {
        const ids = [...plant.parts.keys()];
        fc.pre(ids.length > 0);
        const to = ids[which % ids.length] ?? '';
        const starts = new Set(fuelRoutes(plant, to).map((route) => route[0] ?? ''));
        expect(new Set(tanksFeeding(plant, to))).toEqual(starts);
      }),
      { numRuns: 300 },
    );
  });
});

/** The slow, plain way: every row of different parts, kept if pipes join it from a start to the end. */
function everyWay(
  plant: Piped,
  to: PartId,
  isStart: (id: PartId) => boolean,
  use: PipeFilter,
  goOn: boolean,
): string[] {
  const joined = new Set(plant.plant.pipes.filter(use).map((pipe) => `${pipe.from} ${pipe.to}`));
  const found: string[] = [];
  const extend = (row: readonly PartId[]) => {
    const last = row.at(-1) ?? '';
    if (last === to) {
      const passed = row.slice(1, -1).some(isStart);
      if (row.length > 1 && (goOn || !passed)) found.push(row.join(' '));
      return;
    }
    for (const id of plant.parts.keys())
      if (!row.includes(id) && joined.has(`${last} ${id}`)) extend([...row, id]);
  };
  for (const id of plant.parts.keys()) if (isStart(id) && id !== to) extend([id]);
  return found;
}

describe('the order of flow', () => {
  test('from the tank forward, whatever the order of the routes', () => {
    const forward = [
      'tank-main',
      'pump',
      'tank-pressure',
      'valve-stop',
      'device-automatic',
      'valve-burner',
      'burner-main',
    ];
    const routes = routesTo(example.plant, 'burner-main', isTank, carrying('main fuel'), true);
    expect(partsInFlowOrder(routes)).toEqual(forward);
    expect(partsInFlowOrder(routes.toReversed())).toEqual(forward);
  });

  test('a part on a short and on a long way comes after all of the long one', () => {
    const order = partsInFlowOrder([
      ['tank', 'valve-z', 'burner'],
      ['tank', 'valve-a', 'valve-b', 'valve-c', 'valve-z', 'burner'],
    ]);
    expect(order).toEqual(['tank', 'valve-a', 'valve-b', 'valve-c', 'valve-z', 'burner']);
  });

  test('valves in parallel keep the order of the routes', () => {
    const order = partsInFlowOrder([
      ['tank', 'valve-2', 'burner'],
      ['tank', 'valve-1', 'burner'],
    ]);
    expect(order).toEqual(['tank', 'valve-2', 'valve-1', 'burner']);
  });

  test('what lies beyond a ring comes after the ring', () => {
    const order = partsInFlowOrder([
      ['tank-1', 'a', 'b', 'x', 'burner'],
      ['tank-2', 'b', 'a', 'x', 'burner'],
      ['tank-3', 'x', 'burner'],
    ]);
    expect(order.indexOf('x')).toBe(order.length - 2);
    expect(order.at(-1)).toBe('burner');
    expect(order.indexOf('tank-2')).toBeLessThan(order.indexOf('b'));
  });

  test('no part before one that is upstream of it, unless each is upstream of the other', () => {
    fc.assert(
      fc.property(randomPlants(9, 18), fc.nat(), (plant, which) => {
        const ids = [...plant.parts.keys()];
        fc.pre(ids.length > 0);
        const routes = fuelRoutes(plant, ids[which % ids.length] ?? '');
        const order = partsInFlowOrder(routes);
        expect([...order].sort()).toEqual([...new Set(routes.flat())].sort());
        const before = upstreamOf(routes);
        for (const id of order) {
          for (const above of before.get(id) ?? []) {
            if (before.get(above)?.has(id) === true) continue;
            expect(order.indexOf(above)).toBeLessThan(order.indexOf(id));
          }
        }
      }),
      { numRuns: 500 },
    );
  });
});

/** The slow, plain way: everything upstream of each part, by adding until nothing changes. */
function upstreamOf(routes: readonly Route[]): ReadonlyMap<PartId, ReadonlySet<PartId>> {
  const above = new Map<PartId, Set<PartId>>(routes.flat().map((id) => [id, new Set()]));
  for (let changed = true; changed; ) {
    changed = false;
    for (const route of routes) {
      for (const [step, to] of route.entries()) {
        const set = above.get(to);
        const from = route[step - 1];
        if (set === undefined || from === undefined) continue;
        const size = set.size;
        for (const id of [from, ...(above.get(from) ?? [])]) set.add(id);
        changed ||= set.size > size;
      }
    }
  }
  return above;
}

describe('more routes than can be listed', () => {
  /** So many pairs of valves in parallel, one after the other: 2 to that power routes. */
  function stages(count: number): Piped {
    const pairs = Array.from({ length: count }, (_, n) => n).flatMap((n): [PartId, PartId][] => {
      const from = n === 0 ? 'tank' : `fitting-${n}`;
      return [
        [from, `valve-${n}-a`],
        [from, `valve-${n}-b`],
        [`valve-${n}-a`, `fitting-${n + 1}`],
        [`valve-${n}-b`, `fitting-${n + 1}`],
      ];
    });
    return plantOf([...pairs, [`fitting-${count}`, 'burner']]);
  }

  test('up to the bound every one is listed', () => {
    expect(fuelRoutes(stages(9), 'burner')).toHaveLength(2 ** 9);
    expect(2 ** 9).toBeLessThan(mostRoutes);
  });

  test.each([10, 40, 200])(
    '%i pairs of valves: every valve is on some route, in the order of flow',
    (count) => {
      const plant = stages(count);
      const start = performance.now();
      const routes = fuelRoutes(plant, 'burner');
      const valves = partsInFlowOrder(routes).filter((id) => id.startsWith('valve'));
      expect(performance.now() - start).toBeLessThan(10_000);
      expect(routes.length).toBeLessThan(mostRoutes + 2 + 4 * count + 1);
      expect(valves).toEqual(
        Array.from({ length: count }, (_, n) => [`valve-${n}-a`, `valve-${n}-b`]).flat(),
      );
      const joined = new Set(plant.plant.pipes.map((pipe) => `${pipe.from} ${pipe.to}`));
      for (const route of routes) {
        expect(route[0]).toBe('tank');
        expect(route.at(-1)).toBe('burner');
        expect(new Set(route).size).toBe(route.length);
        expect(route.slice(1).every((to, step) => joined.has(`${route[step]} ${to}`))).toBe(true);
      }
      const covered = new Set(
        routes.flatMap((route) => route.slice(1).map((to, step) => `${route[step]} ${to}`)),
      );
      expect(covered).toEqual(joined);
    },
  );

  test('tanks on the way keep routes of their own', () => {
    const pairs = stages(30).plant.pipes.map((pipe): [PartId, PartId] => [
      pipe.from.replace('fitting-15', 'tank-15'),
      pipe.to.replace('fitting-15', 'tank-15'),
    ]);
    const plant = plantOf(pairs);
    expect(new Set(fuelRoutes(plant, 'burner').map((route) => route[0]))).toEqual(
      new Set(['tank', 'tank-15']),
    );
    expect(tanksFeeding(plant, 'burner')).toEqual(['tank', 'tank-15']);
  });

  test('a maze of pipes both ways round does not take for ever', () => {
    const ids = Array.from({ length: 18 }, (_, n) => `fitting-${n}`);
    const maze = ids.flatMap((from) =>
      ids.filter((to) => to !== from).map((to): [PartId, PartId] => [from, to]),
    );
    const plant = plantOf([['tank', 'fitting-0'], ...maze, ['fitting-17', 'burner']]);
    const start = performance.now();
    const routes = fuelRoutes(plant, 'burner');
    expect(performance.now() - start).toBeLessThan(10_000);
    expect(new Set(routes.flat()).size).toBe(20);
  });

  test('a line of 10,000 parts', () => {
    const ids = ['tank', ...Array.from({ length: 9_998 }, (_, n) => `fitting-${n}`), 'burner'];
    const plant = plantOf(ids.slice(1).map((to, step): [PartId, PartId] => [ids[step] ?? '', to]));
    const routes = fuelRoutes(plant, 'burner');
    expect(routes).toEqual([ids]);
    expect(partsInFlowOrder(routes)).toEqual(ids);
  });
});
