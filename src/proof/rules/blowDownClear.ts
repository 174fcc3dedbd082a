import { at, knows } from '../state';
import { no, steam } from '../values';
import { blowsDown } from './firesOutForBlowDown';
import { everyCar, type Rule } from './rule';

export const blowDownClear: Rule = {
  id: 'blow-down-clear',
  code: 'rule-blow-down-clear',
  group: 'people',
  title: 'nobody is by the blow-down outlets when a tap is opened',
  reason: 'water above its boiling point comes out as a jet of steam that scalds through clothes',
  mend: 'look on both sides and call out right before the tap is opened',
  asks: ['blow-down-clear'],
  appliesTo: everyCar,
  atStep: (view) => {
    if (!blowsDown(view)) return undefined;
    const { model, before } = view;
    if (at(before, model.slots.steam) === steam.none) return undefined;
    if (at(before, model.slots.outlets) !== no) return 'somebody stands by the blow-down outlets';
    return knows(model, before, 'blow-down-clear')
      ? undefined
      : 'nobody has looked that the blow-down outlets are clear';
  },
};
