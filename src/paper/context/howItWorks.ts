/** How this car works, in a few sentences made from its own parts. */

import type { Car } from '../../car/car';
import { fuelRoutes } from '../../car/flow';
import { feedPumps, filledByTransfer, transferPumps, waterTanksBefore } from '../../car/waterPumps';

/** What the templates need to tell a newcomer how the car works: which of the usual parts it has, by name. */
export interface HowItWorks {
  readonly boiler: string;
  readonly boilerKind: string;
  /** A glass shows the boiler’s level. */
  readonly levelGlass: boolean;
  readonly engine: string;
  readonly superheater: string;
  readonly superheaterInFire: boolean;
  readonly condenser: string;
  readonly feedHeater: string;
  readonly feedPumps: readonly { readonly name: string; readonly drive: string }[];
  readonly transferPumps: readonly {
    readonly name: string;
    readonly drive: string;
    readonly from: readonly string[];
    readonly into: readonly string[];
  }[];
  /** The tanks that water is put into and drawn from to feed the boiler, those behind a transfer pump left out. */
  readonly waterTanks: readonly string[];
  readonly automatics: readonly { readonly name: string; readonly does: string }[];
  readonly mains: readonly {
    readonly name: string;
    readonly fuel: string;
    readonly tanks: readonly string[];
    readonly byWayOf: readonly string[];
    readonly vaporizer: string;
    readonly litBy: string;
  }[];
  readonly pilots: readonly {
    readonly name: string;
    readonly fuel: string;
    readonly tanks: readonly string[];
    readonly byWayOf: readonly string[];
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
        tanks: ends(car, id).map(name),
        byWayOf: between(car, id).map(name),
      }));
  return {
    boiler: spec.boiler.name,
    boilerKind: spec.boiler.kind,
    levelGlass: spec.boiler.level.some(({ gauge }) => spec.gauges[gauge]?.kind === 'glass'),
    engine: spec.engine.name,
    superheater: spec.superheater?.name ?? '',
    superheaterInFire: spec.superheater?.['in-the-fire'] === true,
    condenser: spec.condenser?.name ?? '',
    feedHeater: spec['feed-heater']?.name ?? '',
    feedPumps: feedPumps(car).map((id) => ({ name: name(id), drive: spec.pumps[id]?.drive ?? '' })),
    transferPumps: transferPumps(car).map((id) => ({
      name: name(id),
      drive: spec.pumps[id]?.drive ?? '',
      from: waterTanksBefore(car, id).map(name),
      into: filledByTransfer(car, id).map(name),
    })),
    waterTanks: waterTanksBefore(car, 'boiler').map(name),
    automatics: Object.values(spec.devices)
      .filter((device) => device.kind !== 'check-valve')
      .map(({ name: called, does }) => ({ name: called, does })),
    mains: burners('main'),
    pilots: burners('pilot'),
  };
}

/** The tanks each way of a burner's own fuel passes, the farthest upstream first. A starting branch brings another fuel. */
function ways(car: Car, burner: string): readonly (readonly string[])[] {
  const { fuel } = car.spec.burners[burner] ?? {};
  return fuelRoutes(car, burner)
    .map((route) => route.filter((id) => car.parts.get(id)?.kind === 'tank'))
    .filter(([first]) => car.spec.tanks[first ?? '']?.holds === fuel);
}

/** The tanks a burner's fuel begins at. */
function ends(car: Car, burner: string): readonly string[] {
  const later = new Set(between(car, burner));
  return [...new Set(ways(car, burner).flatMap(([first]) => first ?? []))].filter((id) => !later.has(id));
}

/** The tanks it passes on the way, such as a pressure tank. */
function between(car: Car, burner: string): readonly string[] {
  return [...new Set(ways(car, burner).flatMap((way) => way.slice(1)))];
}
