import { allFuelValves } from '../../procedure/fuelWay';
import type { Phase } from '../../procedure/procedure';
import { nameOf } from '../effects/act';
import { of } from '../state';
import { shut } from '../values';
import { everyCar, type Rule } from './rule';

/** Parts of the day at whose end the car may be left alone. */
const leaving: ReadonlySet<Phase> = new Set(['shut-down', 'blow-down', 'overnight', 'lay-up']);

export const fuelValvesShutDown: Rule = {
  id: 'fuel-valves-shut-down',
  code: 'rule-fuel-valves-shut-down',
  group: 'fuel',
  title: 'from shutting down on every fuel valve is shut that is shut when the car is put away',
  reason: 'the car may stand alone, and one valve that weeps has to have another behind it',
  mend: 'shut every fuel valve as part of shutting down, from the burner back to the tank',
  asks: [],
  tidy: true,
  appliesTo: everyCar,
  atEnd: ({ model, state, procedure }) => {
    if (!leaving.has(procedure.phase)) return undefined;
    const left = allFuelValves(model.car).find(
      (id) => model.car.spec.valves[id]?.parked === 'shut' && of(state, model.slots.valve, id) !== shut,
    );
    return left === undefined ? undefined : `${nameOf(model, left)} is left open`;
  },
};
