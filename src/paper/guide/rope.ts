/** Where the rope is put up for a demonstration: at the farthest of the distances of the guide that this car has. */
import type * as z from 'zod';
import type { Car } from '../../car/car';
import type { Values } from '../../language/wording';
import { holds, select } from '../../procedure/select';
import type { Phrases } from '../phrase';
import type { docentForm } from './forms';

type Distance = z.output<typeof docentForm>['distances'][number];

/**
 * `first` is the farthest distance of all, `later` the farthest of those that still hold once the fuel is put away; paced out, in the
 * keeper’s units, rounded up. Absent where no distance is left.
 */
export function ropeValues(
  car: Car,
  distances: readonly Distance[],
  { paced }: Pick<Phrases, 'paced'>,
): Values {
  const own = distances.filter(
    ({ when, of }) => holds(car, when) && (of === undefined || select(car, of).length > 0),
  );
  const farthest = (of: readonly Distance[]): string | undefined => {
    const [far] = of.map(({ least }) => least).sort((a, b) => b.si - a.si);
    return far === undefined ? undefined : paced(far);
  };
  return { first: farthest(own), later: farthest(own.filter(({ fuel }) => fuel !== true)) };
}
