/** How full each tank should be, as it is read: on a stick by depth, else by volume. */
import type { CarFigures } from '../../calc/figures/carFigures';
import { type DepthAsked, depthOnStick } from '../../calc/figures/stickReading';
import type { TankModel } from '../../calc/figures/tankModel';
import type { Car, PartId } from '../../car/car';
import type { Values } from '../../language/wording';
import { quantity } from '../../quantity/quantity';
import type { Phrases } from '../phrase';

/**
 * `full`, `start` and `least` of every tank, and the same of every gauge that reads how much is in one: filled as far as
 * it may be, the least that a day begins with, and where the reserve begins. `least` is absent where no reserve is
 * written down; `starts-full` is there where a day begins with no less than all that may be filled in, `under-air` for a
 * tank with a pressure band.
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
        full: amount(filled.si, 'keep-under', model, phrases),
        start: amount(
          (tank['least-to-start'] ?? filled).si,
          tank['least-to-start'] ? 'reach' : 'keep-under',
          model,
          phrases,
        ),
        'starts-full': tank['least-to-start'] === undefined ? 'yes' : undefined,
        least: tank.reserve === undefined ? undefined : amount(kept, 'reach', model, phrases),
        'under-air': tank.pressure === undefined ? undefined : 'yes',
      },
    ];
  });
  const byTank = new Map(ofTanks);
  const ofGauges = Object.entries(car.spec.gauges).flatMap(([id, { of, reads }]) => {
    const values = reads === 'level' ? byTank.get(of) : undefined;
    if (values === undefined) return [];
    const mark = leastMark(car.spec.tanks[of]);
    return [
      [id, mark === undefined || values.least === undefined ? values : { ...values, least: mark }] as const,
    ];
  });
  return new Map([...ofTanks, ...ofGauges]);
}

/** The lowest mark of a tank’s gauge that still has its reserve and what cannot be drawn under it; nothing without such marks. */
function leastMark(tank: Car['spec']['tanks'][string] | undefined): string | undefined {
  const kept = (tank?.unusable?.si ?? 0) + (tank?.reserve?.si ?? 0);
  return [...(tank?.marks ?? [])]
    .sort((a, b) => a.volume.si - b.volume.si)
    .find(({ volume }) => volume.si >= kept)?.mark;
}

/** A volume, and beside it its depth where the tank is read by stick; rounded to the safe side. */
function amount(
  volumeM3: number,
  asked: DepthAsked,
  model: TankModel | undefined,
  { first, messages, systems: [system = 'metric'] }: Phrases,
): string {
  const volume = first(quantity('volume', volumeM3), { rounding: asked === 'reach' ? 'up' : 'down' });
  if (model === undefined) return volume;
  const depthM = model.tank.depthAtVolumeM(Math.min(volumeM3, model.tank.capacityM3));
  return messages.say('depth-and-volume', {
    depth: first(quantity('length', depthOnStick(depthM, asked, system))),
    volume,
  });
}
