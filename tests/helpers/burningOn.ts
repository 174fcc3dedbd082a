/** Cars whose burners burn on, made from others. */
import type { Car } from '../../src/car/car';
import { quantity } from '../../src/quantity/quantity';

/** The same car, all or some of its burners burning on for four minutes after their fuel is shut. */
export function burningOn(car: Car, ...which: readonly string[]): Car {
  const burners = Object.fromEntries(
    Object.entries(car.spec.burners).map(([id, burner]) => [
      id,
      which.length === 0 || which.includes(id) ? { ...burner, 'burns-on': quantity('time', 240) } : burner,
    ]),
  );
  return { ...car, spec: { ...car.spec, burners } };
}
