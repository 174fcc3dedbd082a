import { at, knows } from '../state';
import { motion } from '../values';
import { everyCar, type Rule } from './rule';

export const wayClear: Rule = {
  id: 'way-clear',
  code: 'rule-way-clear',
  group: 'people',
  title: 'the way is seen to be clear before the car moves',
  reason: 'a steam car starts without a sound',
  mend: 'look all round and call out right before the car moves',
  asks: ['way-clear'],
  appliesTo: everyCar,
  atStep: ({ model, before, after }) =>
    at(before, model.slots.motion) === motion.standing &&
    at(after, model.slots.motion) !== motion.standing &&
    !knows(model, before, 'way-clear')
      ? 'the car moves and nobody has looked that the way is clear'
      : undefined,
};
