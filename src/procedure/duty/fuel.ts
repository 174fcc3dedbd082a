/** Duties of the fuel side. */
import type { Car, PartId } from '../../car/car';
import {
  allFuelValves,
  burnersFor,
  fuelPumps,
  fuelTanks,
  handValveOf,
  lastValvesTo,
  pumpedTanks,
  startingValves,
  supplyValves,
  valvesTo,
} from '../fuelWay';
import type { Duties } from './duty';
import { drainsOf, onLines } from './lines';
import { keysWhere, unique, without } from './pick';
import { ventValves } from './vents';
import { bottomAndTop, glassCocks, levelValves } from './waterParts';

const mains = (car: Car) => burnersFor(car, 'main');
const pilots = (car: Car) => burnersFor(car, 'pilot');
const pilotValves = (car: Car) =>
  inFuelOrder(
    car,
    pilots(car).flatMap((id) => valvesTo(car, id)),
  );
const mainValves = (car: Car) =>
  inFuelOrder(
    car,
    mains(car).flatMap((id) => valvesTo(car, id)),
  );
const lastOf = (car: Car, burners: readonly PartId[]) =>
  inFuelOrder(
    car,
    burners.flatMap((id) => lastValvesTo(car, id)),
  );

function inFuelOrder(car: Car, ids: readonly PartId[]): readonly PartId[] {
  return allFuelValves(car).filter((id) => ids.includes(id));
}

/** What lights a burner, as `lit-by` names it. */
export function igniters(car: Car): readonly PartId[] {
  return unique(Object.values(car.spec.burners).map((burner) => burner['lit-by']));
}

/** What heats a vaporizer. */
export function heaters(car: Car): readonly PartId[] {
  return unique(Object.values(car.spec.vaporizers ?? {}).flatMap((each) => each['heated-by']));
}

/** Duties of the fuel side, by name. */
export const fuelDuties: Duties = {
  'main-burner': { meaning: 'Burners whose job is `main`.', parts: mains },
  pilot: { meaning: 'Burners whose job is `pilot`.', parts: pilots },
  burner: { meaning: 'Every burner.', parts: (car) => Object.keys(car.spec.burners) },
  'main-vaporizer': {
    meaning: 'Vaporizers of the main burners.',
    parts: (car) => unique(mains(car).map((id) => car.spec.burners[id]?.vaporizer)),
  },
  'filled-tank': {
    meaning: 'Fuel tanks that are filled from a can: all but those a pump fills from another tank.',
    parts: (car) => without(fuelTanks(car), pumpedTanks(car)),
  },
  'charged-tank': {
    meaning: 'Fuel tanks with a pressure band.',
    parts: (car) =>
      keysWhere(car.spec.tanks, (tank, id) => tank.pressure !== undefined && fuelTanks(car).includes(id)),
  },
  'air-tank': {
    meaning: 'Fuel tanks with a pressure band that are charged with an air pump.',
    parts: (car) =>
      keysWhere(
        car.spec.tanks,
        (tank, id) =>
          tank.pressure !== undefined && fuelTanks(car).includes(id) && !pumpedTanks(car).includes(id),
      ),
  },
  'pumped-tank': { meaning: 'Fuel tanks that a pump fills from another tank.', parts: pumpedTanks },
  'fuel-valve': {
    meaning: 'Hand valves on any way from a fuel tank to a burner, from the tank forward.',
    parts: allFuelValves,
  },
  'pilot-valve': { meaning: 'Hand valves on the way to a pilot, from the tank forward.', parts: pilotValves },
  'pilot-feed-valve': {
    meaning:
      'Hand valves on the way to a pilot that are neither the last before it nor opened for pumping up a tank.',
    parts: (car) => without(pilotValves(car), [...lastOf(car, pilots(car)), ...supplyValves(car)]),
  },
  'pilot-last-valve': {
    meaning: 'The hand valves nearest to the pilots.',
    parts: (car) => lastOf(car, pilots(car)),
  },
  'main-valve': {
    meaning: 'Hand valves on the way to a main burner and not on the way to a pilot, from the tank forward.',
    parts: (car) => without(mainValves(car), pilotValves(car)),
  },
  'main-feed-valve': {
    meaning: 'Of those, the ones that are neither the last before a burner nor opened for pumping up a tank.',
    parts: (car) =>
      without(mainValves(car), [...pilotValves(car), ...lastOf(car, mains(car)), ...supplyValves(car)]),
  },
  'main-last-valve': {
    meaning: 'The hand valves nearest to the main burners, if no pilot hangs on them.',
    parts: (car) => without(lastOf(car, mains(car)), pilotValves(car)),
  },
  'main-hand-valve': {
    meaning:
      'For each main burner the valve it is worked with on the road: the nearest to it that a seated driver reaches, or else the last.',
    parts: (car) => unique(mains(car).flatMap((burner) => handValveOf(car, burner))),
  },
  'supply-valve': {
    meaning: 'Hand valves between a tank and the pressure tank that a pump fills from it.',
    parts: supplyValves,
  },
  'starting-valve': {
    meaning: 'Hand valves of a branch that sends pilot fuel to the main burner’s vaporizer.',
    parts: startingValves,
  },
  'fuel-electric-pump': {
    meaning: 'Fuel pumps driven by a motor.',
    parts: (car) =>
      keysWhere(
        car.spec.pumps,
        (pump, id) => pump.moves === 'fuel' && pump.drive === 'electric' && fuelPumps(car).includes(id),
      ),
  },
  'fuel-bypass': {
    meaning: 'Bypass valves of fuel pumps.',
    parts: (car) =>
      unique(Object.values(car.spec.pumps).map((pump) => (pump.moves === 'fuel' ? pump.bypass : undefined))),
  },
  'burner-fuel-gauge': {
    meaning: 'Gauges that read the pressure of the fuel at a burner or vaporizer.',
    parts: (car) =>
      keysWhere(
        car.spec.gauges,
        (gauge) =>
          gauge.reads === 'pressure' &&
          (gauge.of in car.spec.burners || gauge.of in (car.spec.vaporizers ?? {})),
      ),
  },
  blower: {
    meaning: 'Pumps that blow air to a burner.',
    parts: (car) =>
      keysWhere(
        car.spec.pumps,
        (pump, id) =>
          pump.moves === 'air' && pump.charges === undefined && (car.plant.out.get(id) ?? []).length > 0,
      ),
  },
  'fuel-drain': {
    meaning: 'Hand valves that let fuel out to the ground or the open air.',
    parts: (car) =>
      without(drainsOf(car, ['main fuel', 'pilot fuel']), [...allFuelValves(car), ...ventValves(car)]),
  },
  igniter: {
    meaning: 'What lights a burner by a switch: controls named in `lit-by`.',
    parts: (car) => igniters(car).filter((id) => id in car.spec.controls),
  },
  switch: {
    meaning: 'Every switch on the car, the key of the battery among them.',
    parts: (car) => keysWhere(car.spec.controls, (control) => control.kind === 'switch'),
  },
  'heater-switch': {
    meaning: 'Controls that heat a vaporizer by electricity.',
    parts: (car) => heaters(car).filter((id) => id in car.spec.controls),
  },
  'tank-vent-valve': { meaning: 'Valves that let the pressure off a tank.', parts: ventValves },
  'air-valve': {
    meaning: 'Hand valves on the air lines.',
    parts: (car) =>
      without(onLines(car, ['air']), [
        ...ventValves(car),
        ...allFuelValves(car),
        ...bottomAndTop(car),
        ...levelValves(car),
        ...glassCocks(car),
      ]),
  },
};
