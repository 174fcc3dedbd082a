/** Parts of the water side that several duties are made of. */
import type { Car, PartId } from '../../car/car';
import { partsInFlowOrder, routesTo } from '../../car/flow';
import { feedPumps, filledByTransfer, transferPumps } from '../../car/waterPumps';
import { inside } from './inside';
import { keysWhere, unique, valvesOf, without } from './pick';

/** Tanks that hold water. */
export const waterTanks = (car: Car) => keysWhere(car.spec.tanks, (tank) => tank.holds === 'water');

/** Bypass valves of the feed pumps. */
export const feedBypasses = (car: Car) => unique(feedPumps(car).map((id) => car.spec.pumps[id]?.bypass));

/** Hand valves on the way of the feed water, from the tank to the boiler, bypasses left out. */
export function feedValves(car: Car): readonly PartId[] {
  const tanks = waterTanks(car);
  const ways = routesTo(car.plant, 'boiler', (id) => tanks.includes(id), inside('water'));
  const injectors = feedPumps(car).filter((id) => overflows(car, id));
  return without(valvesOf(car, partsInFlowOrder(ways)), [
    ...feedBypasses(car),
    ...injectors.flatMap((id) => injectorValves(car, id)),
  ]);
}

/** Whether water that a pump does not force into the boiler runs out of it to the ground, as from an injector’s overflow. */
function overflows(car: Car, pump: PartId): boolean {
  const seen = new Set([pump]);
  for (const id of seen) {
    for (const { carries, to } of car.plant.out.get(id) ?? []) {
      if (carries !== 'water' || to === 'boiler') continue;
      if (to === 'ground' || to === 'open-air') return true;
      if (car.parts.get(to)?.kind === 'fitting') seen.add(to);
    }
  }
  return false;
}

/**
 * Of an injector: the hand valves that its water alone passes, from the tank forward. Left open they let the tank run out
 * of its overflow. Nothing for a pump without an overflow.
 */
export function injectorValves(car: Car, pump: PartId): readonly PartId[] {
  if (car.spec.pumps[pump]?.drive !== 'steam' || !overflows(car, pump)) return [];
  const tanks = waterTanks(car);
  const isTank = (id: PartId) => tanks.includes(id);
  const others = feedPumps(car).filter((id) => id !== pump);
  const shared = others.flatMap((id) => routesTo(car.plant, id, isTank, inside('water')).flat());
  const own = routesTo(car.plant, pump, isTank, inside('water'));
  return without(valvesOf(car, partsInFlowOrder(own)), shared);
}

/** Hand valves between the tanks that a transfer pump draws from and the tanks it fills, its bypass left out. */
export function transferValves(car: Car): readonly PartId[] {
  const tanks = waterTanks(car);
  const ways = transferPumps(car).flatMap((pump) => [
    ...routesTo(car.plant, pump, (id) => tanks.includes(id), inside('water')),
    ...filledByTransfer(car, pump).flatMap((tank) =>
      routesTo(car.plant, tank, (id) => id === pump, inside('water')),
    ),
  ]);
  const bypasses = transferPumps(car).map((id) => car.spec.pumps[id]?.bypass);
  return without(valvesOf(car, partsInFlowOrder(ways)), unique([...bypasses, ...feedValves(car)]));
}

/** Gauges that read the boiler’s level. */
export const glasses = (car: Car) =>
  unique(car.spec.boiler.level.map((way) => way.gauge)).filter((id) => car.spec.gauges[id] !== undefined);

/** The boiler’s own taps: blow-down, fill and vent. */
export function bottomAndTop(car: Car): readonly PartId[] {
  const { boiler } = car.spec;
  return unique([...boiler['blow-down'], boiler['fill-by'], boiler['lets-air-out-by']]);
}

/** Valves on which the boiler’s level is read. */
export function levelValves(car: Car): readonly PartId[] {
  return valvesOf(car, unique(car.spec.boiler.level.map((way) => way.gauge)));
}

/** Cocks of the gauges that read the boiler’s level. */
export function glassCocks(car: Car): readonly PartId[] {
  return unique(glasses(car).flatMap((id) => car.spec.gauges[id]?.cocks ?? []));
}

/** Valves that one such gauge is blown through: those next below it. */
export function drainsOfGlass(car: Car, glass: PartId): readonly PartId[] {
  return valvesOf(car, unique((car.plant.out.get(glass) ?? []).map((pipe) => pipe.to)));
}

/** Cocks through which water comes to one such gauge. */
export function waterCocksOfGlass(car: Car, glass: PartId): readonly PartId[] {
  return (car.spec.gauges[glass]?.cocks ?? []).filter((cock) =>
    (car.plant.out.get(cock) ?? []).some((pipe) => pipe.to === glass && pipe.carries === 'water'),
  );
}

/** Valves that such gauges are blown through. */
export function glassDrains(car: Car): readonly PartId[] {
  return unique(glasses(car).flatMap((id) => drainsOfGlass(car, id)));
}
