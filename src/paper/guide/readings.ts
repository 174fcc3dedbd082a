/** How full each tank should be, as it is read: on a stick by depth, else by volume. */
import type { CarFigures } from '../../calc/figures/carFigures';
import type { TankModel } from '../../calc/figures/tankModel';
import type { Car, PartId } from '../../car/car';
import type { Values } from '../../language/wording';
import { quantity } from '../../quantity/quantity';
import type { Phrases } from '../phrase';

/**
 * `full`, `start` and `least` of every tank, and the same of every gauge that reads how much is in one: filled as far as
 * it may be, the least that a day begins with, and where the reserve begins. `least` is absent where no reserve is
 * written down; `under-air` is there for a tank with a pressure band.
 */
export function readingValues(
  car: Car,
  figures: Pick<CarFigures, 'sticks'>,
  phrases: Phrases,
): ReadonlyMap<PartId, Values> {
  const ofTanks = Object.entries(car.spec.tanks).map(([id, tank]): readonly [PartId, Values] => {
    const model = figures.sticks.find((chart) => chart.model.id === id)?.model;
    const filled = tank['fill-to'] ?? tank.capacity;
    const kept = (tank.unusable?.si ?? 0) + (tank.reserve?.si ?? 0);
    return [
      id,
      {
        full: amount(filled.si, 'down', model, phrases),
        start: amount(
          (tank['least-to-start'] ?? filled).si,
          tank['least-to-start'] ? 'up' : 'down',
          model,
          phrases,
        ),
        least: tank.reserve === undefined ? undefined : amount(kept, 'up', model, phrases),
        'under-air': tank.pressure === undefined ? undefined : 'yes',
      },
    ];
  });
  const byTank = new Map(ofTanks);
  const ofGauges = Object.entries(car.spec.gauges).flatMap(([id, { of, reads }]) => {
    const values = reads === 'level' ? byTank.get(of) : undefined;
    return values === undefined ? [] : [[id, values] as const];
  });
  return new Map([...ofTanks, ...ofGauges]);
}

/** A volume, and first its depth where the tank is read by stick; rounded to the safe side. */
function amount(
  volumeM3: number,
  rounding: 'up' | 'down',
  model: TankModel | undefined,
  { first, messages }: Phrases,
): string {
  const volume = first(quantity('volume', volumeM3), { rounding });
  if (model === undefined) return volume;
  const depthM = model.tank.depthAtVolumeM(Math.min(volumeM3, model.tank.capacityM3));
  return messages.say('depth-and-volume', {
    depth: first(quantity('length', depthM), { rounding }),
    volume,
  });
}
