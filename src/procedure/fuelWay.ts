/**
 * The fuel side seen from a burner: which hand valves stand on the way to it, in the order of flow, and which of
 * them is the last before the flame.
 */
import type { Car, PartId } from '../car/car';
import { carrying, type PipeFilter, partsInFlowOrder, type Route, routesTo } from '../car/flow';
import { oncePerCar, oncePerPart } from './oncePerCar';

const mainFuel: PipeFilter = carrying('main fuel');
const anyFuel: PipeFilter = carrying('main fuel', 'pilot fuel');

/** Burners that do a job, in the order of the spec. */
export function burnersFor(car: Car, job: 'main' | 'pilot'): readonly PartId[] {
  return Object.entries(car.spec.burners).flatMap(([id, burner]) => (burner.job === job ? [id] : []));
}

/** Keys of the fuel tanks, in the order of the spec. */
export function fuelTanks(car: Car): readonly PartId[] {
  return Object.entries(car.spec.tanks).flatMap(([id, tank]) =>
    tank.holds === 'water' || tank.holds === 'cylinder-oil' ? [] : [id],
  );
}

/**
 * The tanks that no other tank fills through the pipes, among those from which fuel comes to `to`. Where two
 * tanks feed each other (a relief valve leads back), the one whose pipe comes first in the spec is the source.
 */
function sourceTanks(car: Car, to: PartId, use: PipeFilter): ReadonlySet<PartId> {
  const isTank = (id: PartId) => car.parts.get(id)?.kind === 'tank';
  const feeders = new Map<PartId, ReadonlySet<PartId>>();
  const feedersOf = (id: PartId) => {
    const known =
      feeders.get(id) ??
      new Set(routesTo(car.plant, id, isTank, use, true).flatMap((route) => route.slice(0, 1)));
    feeders.set(id, known);
    return known;
  };
  const firstPipe = (id: PartId) => Math.min(...(car.plant.out.get(id) ?? []).map((pipe) => pipe.index));
  return new Set(
    [...feedersOf(to)].filter((tank) =>
      [...feedersOf(tank)].every(
        (other) => other === tank || (feedersOf(other).has(tank) && firstPipe(tank) < firstPipe(other)),
      ),
    ),
  );
}

function routes(car: Car, to: PartId, use: PipeFilter): readonly Route[] {
  const sources = sourceTanks(car, to, use);
  return routesTo(car.plant, to, (id) => sources.has(id), use, true);
}

function onlyValves(car: Car, ids: readonly PartId[]): readonly PartId[] {
  return ids.filter((id) => car.parts.get(id)?.kind === 'valve');
}

/** Hand valves on the way of the fuel a burner runs on, from the tank forward. A pilot may take from either fuel. */
export const valvesTo = oncePerPart((car: Car, burner: PartId): readonly PartId[] => {
  const use = car.spec.burners[burner]?.job === 'main' ? mainFuel : anyFuel;
  return onlyValves(car, partsInFlowOrder(routes(car, burner, use)));
});

/** Every part, valves included, on the way of the fuel a burner runs on, from the tank forward. */
export const partsTo = oncePerPart((car: Car, burner: PartId): readonly PartId[] => {
  const use = car.spec.burners[burner]?.job === 'main' ? mainFuel : anyFuel;
  return partsInFlowOrder(routes(car, burner, use));
});

/** Hand valves on any way by which fuel of either kind can come to some burner, from the tanks forward. */
export const allFuelValves = oncePerCar((car: Car): readonly PartId[] => {
  const every = Object.keys(car.spec.burners).flatMap((burner) => routes(car, burner, anyFuel));
  return onlyValves(car, partsInFlowOrder(every));
});

/** Valves of the branches that send pilot fuel to a main burner’s vaporizer, from the source forward. */
export const startingValves = oncePerCar((car: Car): readonly PartId[] => {
  const used = new Set(Object.keys(car.spec.burners).flatMap((burner) => valvesTo(car, burner)));
  return allFuelValves(car).filter((id) => !used.has(id));
});

/** The hand valves nearest to a burner: those on its way with no other hand valve between them and the flame. */
export const lastValvesTo = oncePerPart((car: Car, burner: PartId): readonly PartId[] => {
  const use = car.spec.burners[burner]?.job === 'main' ? mainFuel : anyFuel;
  const last = new Set(
    routes(car, burner, use).flatMap((route) =>
      route.filter((id) => car.parts.get(id)?.kind === 'valve').slice(-1),
    ),
  );
  return valvesTo(car, burner).filter((id) => last.has(id));
});

/**
 * Fuel valves that are worked where a burner is lit, and that nobody has to go to in trouble: whatever comes through one of
 * them has passed another hand valve that a seated driver reaches.
 */
export const spareValvesAtBurners = oncePerCar((car: Car): readonly PartId[] => {
  const lit = new Set(Object.values(car.spec.burners).map(({ place }) => place));
  const isSeated = (id: PartId) => car.places.get(car.parts.get(id)?.place ?? '')?.reach === 'seated';
  const ways = Object.keys(car.spec.burners).flatMap((burner) =>
    routes(car, burner, anyFuel).map((route) => onlyValves(car, route)),
  );
  return allFuelValves(car).filter(
    (id) =>
      lit.has(car.parts.get(id)?.place ?? '') &&
      !isSeated(id) &&
      ways.every((way) => !way.includes(id) || way.some(isSeated)),
  );
});

/** Pressure tanks: fuel tanks that a pump fills from another tank. */
export const pumpedTanks = oncePerCar((car: Car): readonly PartId[] => {
  return fuelTanks(car).filter((tank) => wayInto(car, tank).length > 0);
});

/** Parts on the way from another tank, through a pump, into a tank; empty if there is no such way. */
const wayInto = oncePerPart((car: Car, tank: PartId): readonly PartId[] => {
  if (!Object.keys(car.spec.burners).some((burner) => partsTo(car, burner).includes(tank))) return [];
  const sources = sourceTanks(car, tank, anyFuel);
  if (sources.has(tank)) return [];
  const ways = routesTo(car.plant, tank, (id) => sources.has(id) && id !== tank, anyFuel, true).filter(
    (route) => route.some((id) => car.parts.get(id)?.kind === 'pump'),
  );
  return partsInFlowOrder(ways);
});

/** Hand valves between a source tank and a pressure tank, which stand open while it is pumped up. */
export const supplyValves = oncePerCar((car: Car): readonly PartId[] => {
  const last = new Set(Object.keys(car.spec.burners).flatMap((burner) => lastValvesTo(car, burner)));
  const found = new Set(pumpedTanks(car).flatMap((tank) => onlyValves(car, wayInto(car, tank))));
  return allFuelValves(car).filter((id) => found.has(id) && !last.has(id));
});

/** Fuel pumps on the way into a tank, or on the way to a burner if no tank is named. */
export function fuelPumps(car: Car, tank?: PartId): readonly PartId[] {
  const ways =
    tank === undefined
      ? Object.keys(car.spec.burners).flatMap((burner) => partsTo(car, burner))
      : wayInto(car, tank);
  return [...new Set(ways)].filter((id) => car.parts.get(id)?.kind === 'pump');
}

/**
 * The valve a main burner is worked with on the road: the nearest to it that a seated driver reaches, or else the
 * last. A valve that a pilot hangs on is never it.
 */
export const handValveOf = oncePerPart((car: Car, burner: PartId): readonly PartId[] => {
  const shared = new Set(burnersFor(car, 'pilot').flatMap((pilot) => valvesTo(car, pilot)));
  const own = valvesTo(car, burner).filter((id) => !shared.has(id));
  const seated = own.filter((id) => car.places.get(car.parts.get(id)?.place ?? '')?.reach === 'seated');
  return seated.length > 0 ? seated.slice(-1) : lastValvesTo(car, burner).filter((id) => !shared.has(id));
});

/** Valves of the branches that send pilot fuel to this main burner’s vaporizer, from the source forward. */
export const startingValvesTo = oncePerPart((car: Car, burner: PartId): readonly PartId[] => {
  const way = onlyValves(car, partsInFlowOrder(routes(car, burner, anyFuel)));
  return startingValves(car).filter((id) => way.includes(id));
});
