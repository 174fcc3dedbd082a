import type { PartId } from '../../car/car';
import { carrying, live } from '../../car/flow';
import { lastValvesTo, startingValves } from '../../procedure/fuelWay';
import { nameOf } from '../effects/act';
import type { Model } from '../model';
import { of, type State } from '../state';
import { open, shut } from '../values';
import type { Rule, StepView } from './rule';

interface Starting {
  readonly branch: readonly PartId[];
  readonly last: readonly PartId[];
}

const known = new WeakMap<Model, Starting>();

function starting(model: Model): Starting {
  const found = known.get(model) ?? {
    branch: startingValves(model.car),
    last: model.mains.flatMap((id) => lastValvesTo(model.car, id)),
  };
  known.set(model, found);
  return found;
}

function both(view: StepView, state: State): string | undefined {
  const { model } = view;
  const { branch, last } = starting(model);
  const wide = last.find((id) => of(state, model.slots.valve, id) === open);
  const from = branch.find((id) => of(state, model.slots.valve, id) !== shut);
  return wide === undefined || from === undefined
    ? undefined
    : `${nameOf(model, wide)} is opened past its first crack while ${nameOf(model, from)} is still open`;
}

export const twoFuels: Rule = {
  id: 'two-fuels',
  code: 'rule-two-fuels',
  group: 'fuel',
  title: 'the starting branch is shut again before the main burner valve is opened past its first crack',
  reason: 'two fuels at different pressures in one vaporizer push each other back into the wrong tank',
  mend: 'shut the starting valve first, then open the main burner valve',
  asks: [],
  appliesTo: (model) => starting(model).branch.length > 0 && hasBranchToVaporizer(model),
  atStep: (view) =>
    view.before === view.after || both(view, view.before) !== undefined ? undefined : both(view, view.after),
};

/** Whether pilot fuel can reach a main burner’s vaporizer at all. */
function hasBranchToVaporizer(model: Model): boolean {
  const everything = {
    open: new Set(model.valves),
    passing: new Set(Object.keys(model.car.spec.devices)),
    pumping: new Set<PartId>(),
    sources: new Set(model.fuelTanks),
  };
  const reached = live(model.car, everything, carrying('pilot fuel')).parts;
  return model.mains.some((id) => reached.has(model.car.spec.burners[id]?.vaporizer ?? ''));
}
