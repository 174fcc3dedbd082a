/** Relations: parts that belong to the part at hand, such as the vent valve of a tank or the last valve of a burner. */
import type { Car, PartId } from '../car/car';
import { carrying, partsInFlowOrder, routesTo } from '../car/flow';
import { filledByTransfer, transferPumps, waterTanksBefore } from '../car/waterPumps';
import { without } from './duty/pick';
import { drainsOfGlass, injectorValves, waterCocksOfGlass } from './duty/waterParts';
import { fuelPumps, handValveOf, lastValvesTo, startingValvesTo } from './fuelWay';

/** One relation. */
export interface Relation {
  /** What it gives, in plain words, for `docs/procedures.md`. */
  readonly meaning: string;
  readonly parts: (car: Car, of: PartId) => readonly PartId[];
}

function present(...ids: readonly (PartId | undefined)[]): readonly PartId[] {
  return ids.filter((id) => id !== undefined);
}

function airPumps(car: Car, tank: PartId): readonly PartId[] {
  return Object.entries(car.spec.pumps).flatMap(([id, pump]) =>
    pump.moves === 'air' && pump.charges === tank ? [id] : [],
  );
}

function airValves(car: Car, tank: PartId): readonly PartId[] {
  const vent = car.spec.tanks[tank]?.['vent-valve'];
  const ways = routesTo(
    car.plant,
    tank,
    (id) => car.parts.get(id)?.kind === 'outside' || car.parts.get(id)?.kind === 'pump',
    carrying('air'),
  );
  return partsInFlowOrder(ways).filter((id) => id in car.spec.valves && id !== vent);
}

/** Every relation by name. */
export const relations: Readonly<Record<string, Relation>> = {
  'vent-valve': {
    meaning: 'Of a tank: the valve that lets its pressure off.',
    parts: (car, id) => present(car.spec.tanks[id]?.['vent-valve']),
  },
  'air-pump': { meaning: 'Of a tank: the air pumps that charge it.', parts: airPumps },
  'air-valve': {
    meaning: 'Of a tank: the hand valves on the air line to it, from the pump forward.',
    parts: airValves,
  },
  'fuel-pump': {
    meaning: 'Of a pressure tank: the hand or motor pumps that fill it.',
    parts: (car, id) => fuelPumps(car, id).filter((pump) => car.spec.pumps[pump]?.drive !== 'engine'),
  },
  gauge: {
    meaning: 'Of a tank: the gauge or glass its content is read on.',
    parts: (car, id) => present(car.spec.tanks[id]?.gauge),
  },
  'pressure-gauge': {
    meaning: 'Of a tank, burner or vaporizer: the gauges of its pressure.',
    parts: (car, id) =>
      Object.entries(car.spec.gauges).flatMap(([key, gauge]) =>
        gauge.of === id && gauge.reads === 'pressure' ? [key] : [],
      ),
  },
  'last-valve': { meaning: 'Of a burner: the hand valves nearest to it.', parts: lastValvesTo },
  'hand-valve': {
    meaning:
      'Of a main burner: the valve it is worked with on the road, the nearest to it that a seated driver reaches, or else the last.',
    parts: handValveOf,
  },
  'starting-valve': {
    meaning:
      'Of a main burner: the hand valves of the branch that sends pilot fuel to it, from the source forward.',
    parts: startingValvesTo,
  },
  igniter: {
    meaning: 'Of a burner: what lights it.',
    parts: (car, id) => present(car.spec.burners[id]?.['lit-by']),
  },
  damper: {
    meaning: 'Of a burner: the control that shuts off its air.',
    parts: (car, id) => present(car.spec.burners[id]?.damper),
  },
  vaporizer: {
    meaning: 'Of a burner: its vaporizer.',
    parts: (car, id) => present(car.spec.burners[id]?.vaporizer),
  },
  heater: {
    meaning: 'Of a vaporizer: what heats it, main burners left out.',
    parts: (car, id) =>
      (car.spec.vaporizers?.[id]?.['heated-by'] ?? []).filter(
        (heater) => car.spec.burners[heater]?.job !== 'main',
      ),
  },
  'steam-valve': {
    meaning: 'Of a pump driven by its own steam: the hand valves on its steam line, from the boiler forward.',
    parts: (car, id) =>
      partsInFlowOrder(routesTo(car.plant, id, (from) => from === 'boiler', carrying('steam'))).filter(
        (each) => each in car.spec.valves,
      ),
  },
  'injector-valve': {
    meaning:
      'Of a pump driven by its own steam that has an overflow: the hand valves on its water alone, from the tank forward.',
    parts: injectorValves,
  },
  switch: {
    meaning: 'Of a pump: the switch that runs it.',
    parts: (car, id) => present(car.spec.pumps[id]?.['switched-by']),
  },
  'water-cock': {
    meaning: 'Of a gauge glass: the cocks through which the boiler’s water comes to it.',
    parts: waterCocksOfGlass,
  },
  'steam-cock': {
    meaning: 'Of a gauge glass: the cocks through which the boiler’s steam comes to it.',
    parts: (car, id) => without(car.spec.gauges[id]?.cocks ?? [], waterCocksOfGlass(car, id)),
  },
  'drain-cock': { meaning: 'Of a gauge glass: the valves it is blown through.', parts: drainsOfGlass },
  fills: {
    meaning: 'Of a pump that moves water from tank to tank: the tanks it fills.',
    parts: (car, id) => (transferPumps(car).includes(id) ? filledByTransfer(car, id) : []),
  },
  'draws-from': {
    meaning: 'Of such a pump: the tanks it draws from.',
    parts: (car, id) => (transferPumps(car).includes(id) ? waterTanksBefore(car, id) : []),
  },
  bypass: {
    meaning: 'Of a pump: its bypass valve.',
    parts: (car, id) => present(car.spec.pumps[id]?.bypass),
  },
};
