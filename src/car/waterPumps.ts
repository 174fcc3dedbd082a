/** Pumps that move water, by where it goes: into the boiler, or only from one tank into another. */
import type { Car, PartId } from './car';
import { carrying, routesTo } from './routes';

type Piped = Pick<Car, 'parts' | 'plant' | 'spec'>;

/** The tanks and the boiler that a pump’s water comes to, as far as the first of them on each way; by its bypass to none. */
function comesTo({ parts, plant, spec }: Piped, pump: PartId): ReadonlySet<PartId> {
  const bypass = spec.pumps[pump]?.bypass;
  const seen = new Set([pump]);
  const ends = new Set<PartId>();
  for (const id of seen) {
    for (const { carries, to } of plant.out.get(id) ?? []) {
      if (carries !== 'water' || to === bypass) continue;
      if (to === 'boiler' || parts.get(to)?.kind === 'tank') ends.add(to);
      else seen.add(to);
    }
  }
  return ends;
}

function waterPumpsWhere(car: Piped, test: (ends: ReadonlySet<PartId>) => boolean): readonly PartId[] {
  return Object.entries(car.spec.pumps).flatMap(([id, { moves }]) =>
    moves === 'water' && test(comesTo(car, id)) ? [id] : [],
  );
}

/** Pumps whose water comes to the boiler with no tank between, in the order of the spec. */
export function feedPumps(car: Piped): readonly PartId[] {
  return waterPumpsWhere(car, (ends) => ends.has('boiler'));
}

/** Pumps whose water comes to a tank and never to the boiler: they move it over from another tank, or bring it in. */
export function transferPumps(car: Piped): readonly PartId[] {
  return waterPumpsWhere(car, (ends) => ends.size > 0 && !ends.has('boiler'));
}

/** The water tanks whose water comes to a part with no tank between, in the order of the spec. */
export function waterTanksBefore({ spec, plant }: Piped, part: PartId): readonly PartId[] {
  const isWater = (id: PartId) => spec.tanks[id]?.holds === 'water';
  const first = new Set(routesTo(plant, part, isWater, carrying('water')).flatMap(([id]) => id ?? []));
  return Object.keys(spec.tanks).filter((id) => first.has(id));
}

/** The tanks that a transfer pump fills. */
export function filledByTransfer(car: Piped, pump: PartId): readonly PartId[] {
  return [...comesTo(car, pump)].filter((id) => id !== 'boiler');
}
