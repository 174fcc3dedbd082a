/** What cuts the fuel, in the order of “Shut everything”: for a reader who looks for the one valve that does it all. */
import { duties } from '../../procedure/duties';
import type { World } from '../paper';

/** A valve that cuts fuel. */
export interface FuelValve {
  readonly name: string;
  readonly tag: string;
  readonly place: string;
}

/** The valves that cut fuel, in the order in which they are shut: those reached from the seat, and the others. */
export interface FuelCut {
  readonly seated: readonly FuelValve[];
  readonly others: readonly FuelValve[];
}

/** The valves that “Shut everything” shuts on the ways of fuel. */
export function fuelCutContext({ car, proof }: World): FuelCut {
  const fuel = duties['fuel-valve']?.parts(car) ?? [];
  const wayOut = proof.procedures.find(({ id }) => id === 'shut-everything');
  const shut = (wayOut?.steps ?? []).flatMap(({ part, action }) => {
    const valve =
      action === 'shut' && part !== undefined && fuel.includes(part) ? car.spec.valves[part] : undefined;
    const place = car.places.get(valve?.place ?? '');
    return valve === undefined || place === undefined ? [] : [{ valve, place }];
  });
  const told = (isSeated: boolean) =>
    shut
      .filter(({ place }) => (place.reach === 'seated') === isSeated)
      .map(({ valve: { name, tag }, place }) => ({ name, tag, place: place.name }));
  return { seated: told(true), others: told(false) };
}
