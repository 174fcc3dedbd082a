/** Parts of the water side that several duties are made of. */
import type { Car, PartId } from '../../car/car';
import { partsInFlowOrder, routesTo } from '../../car/flow';
import { inside } from './inside';
import { keysWhere, unique, valvesOf, without } from './pick';

/** Tanks that hold water. */
export const waterTanks = (car: Car) => keysWhere(car.spec.tanks, (tank) => tank.holds === 'water');

/** Bypass valves of the feed pumps. */
export const feedBypasses = (car: Car) =>
  unique(Object.values(car.spec.pumps).map((pump) => (pump.moves === 'water' ? pump.bypass : undefined)));

/** Hand valves on the way of the feed water, from the tank to the boiler, bypasses left out. */
export function feedValves(car: Car): readonly PartId[] {
  const tanks = waterTanks(car);
  const ways = routesTo(car.plant, 'boiler', (id) => tanks.includes(id), inside('water'));
  return without(valvesOf(car, partsInFlowOrder(ways)), feedBypasses(car));
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
