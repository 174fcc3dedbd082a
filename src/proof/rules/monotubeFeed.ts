import type { PartId } from '../../car/car';
import { nameOf } from '../effects/act';
import type { Model } from '../model';
import { knowsOfAny, of } from '../state';
import { no } from '../values';
import type { Rule } from './rule';

function motorPumps({ car, feedPumps }: Model): readonly PartId[] {
  return feedPumps.filter((id) => car.spec.pumps[id]?.drive === 'electric');
}

export const monotubeFeed: Rule = {
  id: 'monotube-feed',
  code: 'rule-monotube-feed',
  group: 'water',
  title: 'the motor feed pump of a monotube runs, and is seen to move water, when its burner is lit',
  reason: 'a coil holds so little water that it is dry within a minute of fire without feed',
  mend: 'switch the feed pump on, and then see the feed flow, before the burner is lit',
  asks: ['feed-ready'],
  appliesTo: (model) => model.car.spec.boiler.kind === 'monotube' && motorPumps(model).length > 0,
  atStep: ({ model, after, newlyLit }) => {
    if (!newlyLit.some((id) => model.mains.includes(id))) return undefined;
    const pumps = motorPumps(model);
    if (pumps.every((id) => of(after, model.slots.pump, id) === no))
      return `the main burner is lit and ${nameOf(model, pumps[0])} does not run`;
    return knowsOfAny(model, after, 'feed-ready')
      ? undefined
      : `the main burner is lit and ${nameOf(model, pumps[0])} has not been seen to move water since it was switched on`;
  },
};
