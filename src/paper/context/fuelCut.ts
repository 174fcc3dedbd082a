/** What cuts the fuel, in the order of “Shut everything”: for a reader who looks for the one valve that does it all. */
import { duties } from '../../procedure/duties';
import type { Step } from '../../procedure/procedure';
import { seatedSteps } from '../../proof/escape';
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
  if (wayOut === undefined) return { seated: [], others: [] };
  const fromSeat = seatedSteps(car, wayOut);
  const cut = wayOut.steps.filter(
    ({ part, action }) => action === 'shut' && part !== undefined && fuel.includes(part),
  );
  const told = ({ part = '' }: Step): readonly FuelValve[] => {
    const valve = car.spec.valves[part];
    return valve === undefined
      ? []
      : [{ name: valve.name, tag: valve.tag, place: car.places.get(valve.place)?.name ?? '' }];
  };
  return {
    seated: cut.filter((step) => fromSeat.includes(step)).flatMap(told),
    others: cut.filter((step) => !fromSeat.includes(step)).flatMap(told),
  };
}
