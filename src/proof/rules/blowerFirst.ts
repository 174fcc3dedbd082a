import type { PartId } from '../../car/car';
import { nameOf } from '../effects/act';
import type { Model } from '../model';
import { isLit, knows, of } from '../state';
import { no } from '../values';
import type { Rule } from './rule';

/** Motor blowers on an air line to a main burner. */
function blowers({ car, mains }: Model): readonly PartId[] {
  const near = mains.flatMap((id) =>
    (car.plant.into.get(id) ?? []).flatMap((pipe) => (pipe.carries === 'air' ? [pipe.from] : [])),
  );
  return near.filter((id) => car.spec.pumps[id]?.drive === 'electric');
}

export const blowerFirst: Rule = {
  id: 'blower-first',
  code: 'rule-blower-first',
  group: 'fuel',
  title: 'the blower runs, and has aired the burner, before main fuel is let on, where the car has one',
  reason: 'fuel sprayed into still air lights late, and what hung in the burner from before lights with it',
  mend: 'switch the blower on and let it blow for its time before the fuel',
  asks: ['burner-aired'],
  appliesTo: (model) => blowers(model).length > 0,
  atStep: ({ model, before, newlyFedMains }) => {
    if (!newlyFedMains.some((id) => !isLit(model, before, id))) return undefined;
    const still = blowers(model).find((id) => of(before, model.slots.pump, id) === no);
    if (still !== undefined) return `main fuel is let on and ${nameOf(model, still)} does not run`;
    return knows(model, before, 'burner-aired')
      ? undefined
      : 'main fuel is let on and the burner has not been aired';
  },
};
