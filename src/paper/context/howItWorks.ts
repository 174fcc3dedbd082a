/** How this car works, in a few sentences made from its own parts. */

import type { Car } from '../../car/car';
import { fuelRoutes } from '../../car/flow';

/** What the templates need to tell a newcomer how the car works: which of the usual parts it has, by name. */
export interface HowItWorks {
  readonly boiler: string;
  readonly boilerKind: string;
  readonly engine: string;
  readonly superheater: string;
  readonly condenser: string;
  readonly feedHeater: string;
  readonly enginePumps: readonly string[];
  readonly handPumps: readonly string[];
  readonly waterTank: string;
  readonly automatics: readonly { readonly name: string; readonly does: string }[];
  readonly mains: readonly {
    readonly name: string;
    readonly fuel: string;
    readonly tanks: readonly string[];
    readonly vaporizer: string;
    readonly litBy: string;
  }[];
  readonly pilots: readonly {
    readonly name: string;
    readonly fuel: string;
    readonly tanks: readonly string[];
    readonly litBy: string;
  }[];
}

/** Gather them. */
export function howItWorksContext(car: Car): HowItWorks {
  const { spec, parts } = car;
  const name = (id: string | undefined) => (id === undefined ? '' : (parts.get(id)?.name ?? id));
  const burners = (job: 'main' | 'pilot') =>
    Object.entries(spec.burners)
      .filter(([, burner]) => burner.job === job)
      .map(([id, burner]) => ({
        name: burner.name,
        fuel: spec.fuels[burner.fuel]?.name ?? burner.fuel,
        vaporizer: name(burner.vaporizer),
        litBy: name(burner['lit-by']),
        tanks: tanksOf(car, id).map(name),
      }));
  const pumps = (drive: (each: string) => boolean) =>
    Object.values(spec.pumps)
      .filter((pump) => pump.moves === 'water' && drive(pump.drive))
      .map((pump) => pump.name);
  return {
    boiler: spec.boiler.name,
    boilerKind: spec.boiler.kind,
    engine: spec.engine.name,
    superheater: spec.superheater?.name ?? '',
    condenser: spec.condenser?.name ?? '',
    feedHeater: spec['feed-heater']?.name ?? '',
    enginePumps: pumps((drive) => drive !== 'hand'),
    handPumps: pumps((drive) => drive === 'hand'),
    waterTank: Object.values(spec.tanks).find((tank) => tank.holds === 'water')?.name ?? '',
    automatics: Object.values(spec.devices)
      .filter((device) => device.kind !== 'check-valve')
      .map(({ name: called, does }) => ({ name: called, does })),
    mains: burners('main'),
    pilots: burners('pilot'),
  };
}

/** The tanks a burner's fuel comes from, the farthest upstream first. */
function tanksOf(car: Car, burner: string): readonly string[] {
  const routes = fuelRoutes(car, burner);
  const longest = routes.reduce<readonly string[]>(
    (best, route) => (route.length > best.length ? route : best),
    [],
  );
  return longest.filter((id) => car.parts.get(id)?.kind === 'tank');
}
