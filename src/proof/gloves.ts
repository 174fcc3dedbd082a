/** Gloves of a car, and that they come off. */
import type { PartId } from '../car/car';
import type { Model } from './model';

/** The gloves that a car carries. */
export function gloves({ car }: Model): readonly PartId[] {
  return Object.keys(car.spec.equipment).filter((id) => car.spec.equipment[id]?.kind === 'gloves');
}
