import type { PartId } from '../../car/car';
import { fuelRoutes, type Route } from '../../car/flow';
import { nameOf } from '../effects/act';
import type { Model } from '../model';
import { of } from '../state';
import { shut } from '../values';
import { everyCar, type Rule } from './rule';

const routesOf = new WeakMap<
  Model,
  readonly { readonly route: Route; readonly valves: readonly PartId[] }[]
>();

function routes(model: Model) {
  const found =
    routesOf.get(model) ??
    model.burners
      .flatMap((burner) => fuelRoutes(model.car, burner))
      .map((route) => ({ route, valves: route.filter((id) => model.car.parts.get(id)?.kind === 'valve') }));
  routesOf.set(model, found);
  return found;
}

export const parkedFuelCut: Rule = {
  id: 'parked-fuel-cut',
  code: 'rule-parked-fuel-cut',
  group: 'fuel',
  title: 'put away, every fuel tank is cut from every burner, by two valves where the car has two',
  reason: 'one valve that weeps empties the tank into the burner by morning',
  mend: 'shut a second valve on that way before the car is left',
  asks: [],
  appliesTo: everyCar,
  atEnd: ({ model, state, parked }) => {
    if (!parked) return undefined;
    for (const { route, valves } of routes(model)) {
      const shutOnes = valves.filter((id) => of(state, model.slots.valve, id) === shut).length;
      if (shutOnes >= Math.min(2, valves.length)) continue;
      const way = `${nameOf(model, route[0])} and ${nameOf(model, route.at(-1))}`;
      return shutOnes === 0
        ? `no shut valve stands between ${way}`
        : `only one shut valve stands between ${way}`;
    }
    return undefined;
  },
};
