/** How long a burner burns on. */
import type { Quantity } from '../quantity/quantity';
import type { CarSpec } from './schema/carSpec';

/** For how long, at the most, a burner burns on after its fuel is shut; nothing if it goes out at once. */
export function burnsOnOf(burner: CarSpec['burners'][string] | undefined): Quantity<'time'> | undefined {
  const time = burner?.['burns-on'];
  return time === undefined || time.si === 0 ? undefined : time;
}
