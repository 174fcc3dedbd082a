/** The car as road and air feel it, with usual values where the spec is silent. */
import type { Car } from '../../car/car';
import { type RoadCar, surfaceRolling, tyreRolling } from '../road/road-load';

/** A person with what they carry; common practice, no source. */
const personKg = 80;
/**
 * Upright open body: published is that the first boxy cars were above 0.7 (University of Houston, Engines of Our Ingenuity
 * no. 1520); how far above, and the area over width times height, are from memory and err to more air.
 */
const usualDrag = 0.9;
const usualAreaShare = 0.8;
const usualHeightM = 1.9;

/** Every seat taken. Tyres of known pressure roll by it; others as on worn asphalt. */
export function roadCarOf({ spec }: Car): RoadCar {
  const { front, tyres } = spec.running;
  return {
    massKg: spec.running['mass-empty'].si + spec.car.seats * personKg,
    rolling:
      tyres.pressure === undefined
        ? surfaceRolling['worn asphalt']
        : tyreRolling(tyres.pressure.si, spec.running['usual-speed'].si),
    dragCoefficient: front?.['drag-coefficient'] ?? usualDrag,
    frontalAreaM2:
      front?.area.si ?? usualAreaShare * spec.car.width.si * (spec.car.height?.si ?? usualHeightM),
  };
}
