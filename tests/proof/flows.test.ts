/** What is live in any state of the demo cars, held against a simple search that knows nothing of the program’s own. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Car, PartId } from '../../src/car/car';
import { Flows, type Stream } from '../../src/proof/flows';
import { type Model, modelOf } from '../../src/proof/model';
import { at, of, parkedState, type State } from '../../src/proof/state';
import { demo } from './library';

/** Mark parts as wet until nothing changes any more. */
function wet(
  car: Car,
  model: Model,
  state: State,
  sources: readonly PartId[],
  carries: readonly string[],
): ReadonlySet<PartId> {
  const found = new Set(sources);
  const moving = at(state, model.slots.motion) !== 0;
  const lets = (id: PartId): boolean => {
    const kind = car.parts.get(id)?.kind;
    if (kind === 'valve') return of(state, model.slots.valve, id) !== 0;
    if (kind === 'pump')
      return of(state, model.slots.pump, id) !== 0 || (moving && car.spec.pumps[id]?.drive === 'engine');
    if (kind === 'device')
      return !['relief-valve', 'safety-valve'].includes(car.spec.devices[id]?.kind ?? '');
    return !['tank', 'burner', 'outside'].includes(kind ?? '') || sources.includes(id);
  };
  for (let before = -1; before !== found.size; ) {
    before = found.size;
    for (const pipe of car.plant.pipes)
      if (carries.includes(pipe.carries) && found.has(pipe.from) && lets(pipe.from)) found.add(pipe.to);
  }
  return found;
}

describe.each(['marigold', 'thimble', 'heron'])('%s', (name) => {
  const { car } = demo(name);
  const model = modelOf(car);
  const flows = new Flows(model);
  const state = fc
    .record({
      open: fc.subarray([...model.slots.valve.values()]),
      pumping: fc.subarray([...model.slots.pump.values()]),
      holding: fc.subarray([...model.slots.content.keys()]),
      motion: fc.integer({ min: 0, max: 2 }),
      steam: fc.integer({ min: 0, max: 3 }),
      level: fc.integer({ min: 0, max: 3 }),
    })
    .map((drawn) => {
      const made = parkedState(model).draft();
      for (const slot of model.slots.valve.values()) made.set(slot, drawn.open.includes(slot) ? 2 : 0);
      for (const slot of model.slots.pump.values()) made.set(slot, drawn.pumping.includes(slot) ? 1 : 0);
      for (const [id, slot] of model.slots.content) made.set(slot, drawn.holding.includes(id) ? 2 : 0);
      made.set(model.slots.motion, drawn.motion);
      made.set(model.slots.steam, drawn.steam);
      made.set(model.slots.level, drawn.level);
      return made;
    });

  test('fuel, water and steam reach what a simple search says, and burners are fed accordingly', () => {
    const holds = (made: State, water: boolean) =>
      [...model.slots.content].flatMap(([id, slot]) =>
        at(made, slot) !== 0 && (car.spec.tanks[id]?.holds === 'water') === water ? [id] : [],
      );
    fc.assert(
      fc.property(state, (made) => {
        const fuel = wet(car, model, made, holds(made, false), ['main fuel', 'pilot fuel']);
        const reached = (stream: Stream) =>
          new Set([...car.parts.keys()].filter((id) => flows.reaches(stream, id, made)));
        expect(reached('fuel')).toEqual(fuel);
        expect(flows.fed(made)).toEqual(model.burners.filter((id) => fuel.has(id)));
        expect([...flows.fuelPipes(made)].map((index) => car.plant.pipes[index]?.to)).toEqual(
          expect.arrayContaining([...fuel].filter((id) => !holds(made, false).includes(id))),
        );
        expect(reached('water')).toEqual(wet(car, model, made, holds(made, true), ['water']));
        const { steam, level } = model.slots;
        const boiler = at(made, steam) === 0 || at(made, level) === 0 ? [] : ['boiler'];
        expect(reached('steam')).toEqual(wet(car, model, made, boiler, ['steam', 'exhaust']));
      }),
      { numRuns: 150 },
    );
  });
});
