import { nameOf } from '../effects/act';
import type { Model } from '../model';
import { at } from '../state';
import type { Rule } from './rule';

function handPumps({ car, feedPumps }: Model): readonly string[] {
  return feedPumps.filter((id) => car.spec.pumps[id]?.drive === 'hand');
}

export const coilFedByHand: Rule = {
  id: 'coil-fed-by-hand',
  code: 'rule-coil-fed-by-hand',
  group: 'water',
  title: 'where a monotube is fed by hand while it stands, somebody is at the pump when its burner is lit',
  reason: 'a coil holds so little water that it is dry within a minute of fire without feed',
  mend: 'have the helper go to the hand pump and try it before the burner is lit, and stay there',
  asks: [],
  appliesTo: (model) =>
    model.car.spec.boiler.kind === 'monotube' &&
    handPumps(model).length > 0 &&
    model.feedPumps.every((id) => model.car.spec.pumps[id]?.drive !== 'electric'),
  atStep: ({ model, after, newlyLit }) => {
    if (!newlyLit.some((id) => model.mains.includes(id))) return undefined;
    const pumps = handPumps(model);
    const helper = at(after, model.slots.helperAt);
    const manned = pumps.some((id) => {
      const place = model.car.spec.pumps[id]?.place;
      return place !== undefined && helper === 1 + model.places.indexOf(place);
    });
    return manned ? undefined : `the main burner is lit and nobody stands at ${nameOf(model, pumps[0])}`;
  },
};
