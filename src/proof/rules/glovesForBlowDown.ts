import { gloves } from '../gloves';
import { at, of } from '../state';
import { no, steam } from '../values';
import { blowsDown } from './firesOutForBlowDown';
import type { Rule } from './rule';

export const glovesForBlowDown: Rule = {
  id: 'gloves-for-blow-down',
  code: 'rule-gloves-for-blow-down',
  group: 'people',
  title: 'gloves are on before a blow-down tap is opened under pressure, where the car carries gloves',
  reason: 'the tap grows too hot to hold, and has to be shut again all the same',
  mend: 'put the gloves on before the tap is touched',
  asks: [],
  appliesTo: (model) => gloves(model).length > 0,
  atStep: (view) => {
    const { model, before } = view;
    if (at(before, model.slots.steam) === steam.none || !blowsDown(view)) return undefined;
    return gloves(model).some((id) => of(before, model.slots.placed, id) !== no)
      ? undefined
      : 'a blow-down tap is opened bare-handed';
  },
};
