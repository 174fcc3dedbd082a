/** Duties of the steam side and the engine. */
import type { Car, PartId } from '../../car/car';
import { partsInFlowOrder, routesTo } from '../../car/flow';
import type { Duties } from './duty';
import { inside } from './inside';
import { onLines } from './lines';
import { keysWhere, unique, valvesOf, without } from './pick';
import { bottomAndTop, glassCocks, levelValves } from './waterParts';

function steamWay(car: Car): readonly PartId[] {
  return valvesOf(
    car,
    partsInFlowOrder(routesTo(car.plant, 'engine', (id) => id === 'boiler', inside('steam'))),
  );
}

/** Duties of the steam side, by name. */
export const steamDuties: Duties = {
  engine: { meaning: 'The engine.', parts: () => ['engine'] },
  throttle: { meaning: 'The throttle.', parts: (car) => [car.spec.engine.throttle] },
  'throttle-lock': {
    meaning: 'What locks the throttle shut.',
    parts: (car) => [car.spec.engine['throttle-lock']],
  },
  drips: {
    meaning: 'The valves that drain the steam chest and cylinders.',
    parts: (car) => car.spec.engine.drips,
  },
  reverse: {
    meaning: 'The control for forward and reverse.',
    parts: (car) => unique([car.spec.engine.reverse]),
  },
  'steam-stop-valve': {
    meaning: 'Hand valves between boiler and engine other than the throttle.',
    parts: (car) => without(steamWay(car), [car.spec.engine.throttle, ...car.spec.engine.drips]),
  },
  'steam-side-valve': {
    meaning: 'Hand valves on other steam lines: whistle, heater, steam pump.',
    parts: (car) =>
      without(onLines(car, ['steam', 'exhaust']), [
        ...steamWay(car),
        ...car.spec.engine.drips,
        car.spec.engine.throttle,
        ...bottomAndTop(car),
        ...levelValves(car),
        ...glassCocks(car),
      ]),
  },
  'oil-tank': { meaning: 'The tank of cylinder oil.', parts: (car) => unique([car.spec.engine.oil.tank]) },
  'oil-engine-pump': {
    meaning: 'The pump of cylinder oil, if the engine drives it.',
    parts: (car) => unique([car.spec.engine.oil.pump]).filter((id) => car.spec.pumps[id]?.drive === 'engine'),
  },
  'oil-hand-pump': {
    meaning: 'The pump of cylinder oil, if it is worked by hand.',
    parts: (car) => unique([car.spec.engine.oil.pump]).filter((id) => car.spec.pumps[id]?.drive === 'hand'),
  },
  'oil-valve': { meaning: 'Hand valves on the oil lines.', parts: (car) => onLines(car, ['oil']) },
  superheater: {
    meaning: 'The superheater.',
    parts: (car) => (car.spec.superheater === undefined ? [] : ['superheater']),
  },
  condenser: {
    meaning: 'The condenser.',
    parts: (car) => (car.spec.condenser === undefined ? [] : ['condenser']),
  },
  muffler: {
    meaning: 'Mufflers of the exhaust.',
    parts: (car) => keysWhere(car.spec.fittings, ({ kind }) => kind === 'muffler'),
  },
  'steam-gauge': {
    meaning: 'Gauges that read the boiler’s pressure.',
    parts: (car) =>
      keysWhere(car.spec.gauges, (gauge) => gauge.reads === 'pressure' && gauge.of === 'boiler'),
  },
  'condenser-gauge': {
    meaning: 'Gauges that read the condenser.',
    parts: (car) => keysWhere(car.spec.gauges, (gauge) => gauge.of === 'condenser'),
  },
  'hot-gauge': {
    meaning: 'Gauges that read a temperature.',
    parts: (car) => keysWhere(car.spec.gauges, (gauge) => gauge.reads === 'temperature'),
  },
  'coil-gauge': {
    meaning: 'Temperature gauges that tell of the water in a coil: hot is too little, cool is too much.',
    parts: (car) =>
      car.spec.boiler.kind === 'monotube'
        ? keysWhere(car.spec.gauges, (gauge) => gauge.reads === 'temperature')
        : [],
  },
  'safety-valve': { meaning: 'The safety valve.', parts: (car) => [car.spec.boiler['safety-valve']] },
};
