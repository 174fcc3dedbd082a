/** Duties of strainers, by what is strained: how one is cleaned depends on it. */
import type { Car, PartId } from '../../car/car';
import type { Fluid } from '../../car/plant';
import type { Duties } from './duty';
import { keysWhere, without } from './pick';

const strainers = (car: Car) => keysWhere(car.spec.fittings, (fitting) => fitting.kind === 'strainer');

/** Strainers in pipes that carry one of these. */
function carryingTo(car: Car, fluids: readonly Fluid[]): readonly PartId[] {
  return strainers(car).filter((id) =>
    [...(car.plant.into.get(id) ?? []), ...(car.plant.out.get(id) ?? [])].some(({ carries }) =>
      fluids.includes(carries),
    ),
  );
}

const fuelStrainers = (car: Car) => carryingTo(car, ['main fuel', 'pilot fuel']);

/** Strainers next to a condenser in the pipe that takes its water away: oil from the engine stays in them. */
const condensateStrainers = (car: Car) =>
  carryingTo(car, ['water']).filter((id) =>
    (car.plant.into.get(id) ?? []).some(({ from }) => car.parts.get(from)?.kind === 'condenser'),
  );

const waterStrainers = (car: Car) => without(carryingTo(car, ['water']), condensateStrainers(car));

/** Duties of strainers, by name. */
export const strainerDuties: Duties = {
  strainer: { meaning: 'Strainers.', parts: strainers },
  'fuel-strainer': { meaning: 'Strainers of fuel.', parts: fuelStrainers },
  'water-strainer': { meaning: 'Strainers of water on its way from a tank.', parts: waterStrainers },
  'condensate-strainer': {
    meaning: 'What a condenser’s water passes next, where the oil stays.',
    parts: condensateStrainers,
  },
  'drained-strainer': {
    meaning: 'Strainers, separators among them, in a pipe that carries water: what keeps water in frost.',
    parts: (car) => carryingTo(car, ['water']),
  },
  'other-strainer': {
    meaning: 'Strainers of anything else.',
    parts: (car) =>
      without(strainers(car), [...fuelStrainers(car), ...waterStrainers(car), ...condensateStrainers(car)]),
  },
};
