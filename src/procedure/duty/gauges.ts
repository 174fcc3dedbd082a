/** Duties of gauges that no step names one by one: what each reads, so that every gauge of a car has one. */
import type { Car, PartId } from '../../car/car';
import type { Duties } from './duty';
import { keysWhere } from './pick';
import { glasses } from './waterParts';

type Gauge = Car['spec']['gauges'][string];

const gaugesWhere = (test: (gauge: Gauge, car: Car, id: PartId) => boolean) => (car: Car) =>
  keysWhere(car.spec.gauges, (gauge, id) => test(gauge, car, id));

const ofTank = (gauge: Gauge, car: Car) => gauge.of in car.spec.tanks;

/** Duties of gauges, by name. */
export const gaugeDuties: Duties = {
  'tank-pressure-gauge': {
    meaning: 'Gauges that read the pressure over a tank.',
    parts: gaugesWhere((gauge, car) => gauge.reads === 'pressure' && ofTank(gauge, car)),
  },
  'tank-level-gauge': {
    meaning: 'Gauges, glasses and sticks that read how much is in a tank.',
    parts: gaugesWhere((gauge, car) => gauge.reads === 'level' && ofTank(gauge, car)),
  },
  'level-indicator': {
    meaning: 'Gauges other than glasses that read the boiler’s level.',
    parts: gaugesWhere(
      (gauge, car, id) => gauge.reads === 'level' && gauge.kind !== 'glass' && glasses(car).includes(id),
    ),
  },
  'feed-flow-gauge': {
    meaning: 'Gauges that show the feed on its way to the boiler.',
    parts: gaugesWhere((gauge) => gauge.reads === 'flow' && gauge.of === 'boiler'),
  },
  'oil-flow-gauge': {
    meaning: 'Gauges that show the oil on its way to the engine.',
    parts: gaugesWhere((gauge) => gauge.reads === 'flow' && gauge.of === 'engine'),
  },
  'every-gauge': {
    meaning: 'Every gauge, in the order of the spec.',
    parts: (car) => Object.keys(car.spec.gauges),
  },
  'every-tank': {
    meaning: 'Every tank, in the order of the spec.',
    parts: (car) => Object.keys(car.spec.tanks),
  },
};
