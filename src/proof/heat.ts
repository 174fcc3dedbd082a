/** How long each vaporizer has to be heated before its fuel is turned on, from the spec. */
import type { Car, PartId } from '../car/car';

/** Longest time that fits a byte; nothing on a car is soaked for longer. */
const most = 250;

/**
 * Minutes of heat each vaporizer needs: its own `warm-first`, or the least soak of a pilot that heats it, whichever is
 * longer; one minute where the spec gives neither, so that heating at all is still asked for.
 */
export function vaporizerNeeds(car: Car): ReadonlyMap<PartId, number> {
  return new Map(
    Object.entries(car.spec.vaporizers ?? {}).map(([id, vaporizer]) => {
      const soaks = vaporizer['heated-by'].flatMap((heater) => {
        const burner = car.spec.burners[heater];
        return burner?.job === 'pilot' && burner.soak !== undefined && burner.vaporizer !== id
          ? [burner.soak.least.si]
          : [];
      });
      const seconds = Math.max(60, vaporizer['warm-first']?.si ?? 0, ...soaks);
      return [id, Math.min(most, Math.ceil(seconds / 60 - 1e-9))];
    }),
  );
}
