/** Duties of the water side. */
import type { Car, PartId } from '../../car/car';
import { feedPumps, transferPumps } from '../../car/waterPumps';
import type { Duties } from './duty';
import { drainsOf } from './lines';
import { unique, without } from './pick';
import { ventValves } from './vents';
import {
  feedBypasses,
  feedValves,
  glassCocks,
  glassDrains,
  glasses,
  injectorValves,
  levelValves,
  transferValves,
  waterTanks,
} from './waterParts';

function isTubeTap(car: Car, id: PartId): boolean {
  const hasTube = Object.values(car.spec.equipment).some((each) => each.kind === 'tube');
  const ways = car.spec.boiler.level.filter((way) => way.gauge === id);
  return hasTube && ways.length > 0 && ways.every((way) => way.when === 'cold');
}

function waterDrains(car: Car): readonly PartId[] {
  return without(drainsOf(car, ['water']), ventValves(car));
}

/** Whether a pipe leads from one of these straight to the part. */
function isNextTo(car: Car, sources: readonly PartId[], id: PartId): boolean {
  return car.plant.pipes.some(({ from, to }) => to === id && sources.includes(from));
}

function levelWays(car: Car, when: 'cold' | 'steaming'): readonly PartId[] {
  return unique(
    car.spec.boiler.level.map((way) => (way.when === when || way.when === 'both' ? way.gauge : undefined)),
  );
}

/** Duties of the water side, by name. */
export const waterDuties: Duties = {
  boiler: { meaning: 'The boiler.', parts: () => ['boiler'] },
  'water-tank': { meaning: 'Tanks that hold water.', parts: waterTanks },
  'feed-valve': {
    meaning: 'Hand valves on the way of the water from its tank to the boiler, bypasses left out.',
    parts: feedValves,
  },
  'feed-engine-pump': {
    meaning: 'Feed pumps driven by the engine.',
    parts: (car) => feedPumps(car).filter((id) => car.spec.pumps[id]?.drive === 'engine'),
  },
  'feed-electric-pump': {
    meaning: 'Feed pumps driven by a motor.',
    parts: (car) => feedPumps(car).filter((id) => car.spec.pumps[id]?.drive === 'electric'),
  },
  'feed-hand-pump': {
    meaning: 'Feed pumps worked by hand.',
    parts: (car) => feedPumps(car).filter((id) => car.spec.pumps[id]?.drive === 'hand'),
  },
  'standing-pump': {
    meaning: 'Feed pumps that can be worked while the car stands: by hand, motor or their own steam.',
    parts: (car) => feedPumps(car).filter((id) => car.spec.pumps[id]?.drive !== 'engine'),
  },
  'transfer-pump': {
    meaning: 'Pumps that move water from one tank into another, worked by hand, motor or their own steam.',
    parts: (car) => transferPumps(car).filter((id) => car.spec.pumps[id]?.drive !== 'engine'),
  },
  'transfer-valve': {
    meaning: 'Hand valves on the way of the water to and from such a pump, bypasses left out.',
    parts: transferValves,
  },
  'injector-valve': {
    meaning:
      'Hand valves on the water of a pump driven by its own steam that has an overflow, and of no other.',
    parts: (car) => unique(feedPumps(car).flatMap((id) => injectorValves(car, id))),
  },
  'feed-bypass': { meaning: 'Bypass valves of the feed pumps.', parts: feedBypasses },
  'road-bypass': {
    meaning: 'Bypass valves of the feed pumps that run while the car moves.',
    parts: (car) =>
      unique(
        feedPumps(car).map((id) =>
          car.spec.pumps[id]?.drive === 'hand' ? undefined : car.spec.pumps[id]?.bypass,
        ),
      ),
  },
  'level-cold': {
    meaning: 'Ways of reading the boiler’s level that work cold, the best first.',
    parts: (car) => levelWays(car, 'cold'),
  },
  'level-steaming': {
    meaning: 'Ways of reading the boiler’s level that work under steam, the best first.',
    parts: (car) => levelWays(car, 'steaming'),
  },
  'level-any': {
    meaning:
      'Every way of reading the boiler’s level: those that work both cold and under steam, then those that work cold.',
    parts: (car) =>
      unique([
        ...levelWays(car, 'cold').filter((id) => levelWays(car, 'steaming').includes(id)),
        ...levelWays(car, 'cold'),
        ...car.spec.boiler.level.map((way) => way.gauge),
      ]),
  },
  'level-glass': {
    meaning: 'Gauge glasses that read the boiler’s level.',
    parts: (car) => glasses(car).filter((id) => car.spec.gauges[id]?.kind === 'glass'),
  },
  'glass-cock': { meaning: 'The cocks of the gauges that read the boiler’s level.', parts: glassCocks },
  'glass-drain': {
    meaning: 'The valve that blows through a gauge that reads the boiler’s level.',
    parts: glassDrains,
  },
  'tube-tap': {
    meaning: 'Taps on which a clear tube is put to read the level cold.',
    parts: (car) => levelValves(car).filter((id) => isTubeTap(car, id)),
  },
  'try-cock': {
    meaning: 'Other valves on which the level is read: try cocks.',
    parts: (car) => levelValves(car).filter((id) => !isTubeTap(car, id)),
  },
  'blow-down': {
    meaning: 'Blow-down valves, in the order they are opened.',
    parts: (car) => car.spec.boiler['blow-down'],
  },
  'boiler-fill': {
    meaning: 'Where a hose is put on to fill the boiler cold.',
    parts: (car) => unique([car.spec.boiler['fill-by']]),
  },
  'boiler-vent': {
    meaning: 'The valve that lets air in or out of the boiler.',
    parts: (car) => unique([car.spec.boiler['lets-air-out-by']]),
  },
  'water-drain': {
    meaning: 'Hand valves that let water out to the ground or the open air, blow-down and vents left out.',
    parts: waterDrains,
  },
  'feed-heater': {
    meaning: 'The feed-water heater.',
    parts: (car) => (car.spec['feed-heater'] === undefined ? [] : ['feed-heater']),
  },
  'water-tank-drain': {
    meaning: 'Of those, the ones that empty a water tank.',
    parts: (car) => waterDrains(car).filter((id) => isNextTo(car, waterTanks(car), id)),
  },
};
