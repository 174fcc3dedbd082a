import { at } from '../state';
import { steam } from '../values';
import { blowsDown } from './firesOutForBlowDown';
import type { Rule } from './rule';

export const blowDownPressure: Rule = {
  id: 'blow-down-pressure',
  code: 'rule-blow-down-pressure',
  group: 'water',
  title: 'the boiler is blown down at no more than the pressure the spec gives for it',
  reason: 'above it the boiler empties faster than anybody can watch, and the outlets jump',
  mend: 'wait until the steam gauge has fallen to the blow-down pressure',
  asks: [],
  appliesTo: (model) => model.car.spec.boiler['blow-down-pressure'] !== undefined,
  atStep: (view) =>
    blowsDown(view) && at(view.before, view.model.slots.steam) > steam.blowDown
      ? 'the boiler is at its working pressure'
      : undefined,
};
