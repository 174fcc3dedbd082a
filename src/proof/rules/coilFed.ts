import { nameOf } from '../effects/act';
import { isFeeding } from '../feeding';
import { burns } from '../state';
import type { Rule } from './rule';

export const coilFed: Rule = {
  id: 'coil-fed',
  code: 'rule-coil-fed',
  group: 'water',
  title: 'a coil is fed for as long as its main burner burns',
  reason: 'a coil holds so little water that its tube is red within seconds of fire without feed',
  mend: 'shut the burner before the feed is taken away or the car comes to a stand, or switch on a pump that feeds while it stands',
  asks: [],
  appliesTo: (model) => model.car.spec.boiler.kind === 'monotube',
  atStep: ({ model, flows, step, after }) => {
    const burning = model.mains.find((id) => burns(model, after, id));
    if (burning === undefined) return undefined;
    // whoever pumps in this very step feeds it
    if (step.action === 'pump' && model.feedPumps.includes(step.part ?? '')) return undefined;
    const fed = model.feedPumps.some((id) => isFeeding(model, flows, after, id));
    return fed ? undefined : `${nameOf(model, burning)} burns and nothing feeds the coil`;
  },
};
