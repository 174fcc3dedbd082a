/** Vent valves of tanks. */
import type { Car, PartId } from '../../car/car';
import { unique } from './pick';

/** Valves that let the pressure off tanks. */
export function ventValves(car: Car): readonly PartId[] {
  return unique(Object.values(car.spec.tanks).map((tank) => tank['vent-valve']));
}
