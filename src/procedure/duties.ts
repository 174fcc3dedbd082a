/**
 * Duties: what a part is for in the running of the car, worked out from the spec, so that the step library can
 * say "the throttle" or "the pilot’s valves" without knowing any one car.
 */
import type { Car, PartId } from '../car/car';
import { carriedDuties } from './duty/carried';
import { drainedDuties } from './duty/drained';
import type { Duties } from './duty/duty';
import { fuelDuties } from './duty/fuel';
import { gaugeDuties } from './duty/gauges';
import { steamDuties } from './duty/steam';
import { strainerDuties } from './duty/strainers';
import { waterDuties } from './duty/water';
import { oncePerCar } from './oncePerCar';

/** Every duty by name. */
export const duties: Duties = Object.fromEntries(
  Object.entries({
    ...steamDuties,
    ...waterDuties,
    ...drainedDuties,
    ...fuelDuties,
    ...strainerDuties,
    ...carriedDuties,
    ...gaugeDuties,
  }).map(([name, { meaning, parts }]) => [name, { meaning, parts: oncePerCar(parts) }]),
);

/** Names of the duties that a part of this car has, in the order of `duties`; those of every part of a kind say nothing and are left out. */
export function dutiesOf(car: Car, part: PartId): readonly string[] {
  return Object.entries(duties).flatMap(([name, duty]) =>
    !name.startsWith('every-') && duty.parts(car).includes(part) ? [name] : [],
  );
}
