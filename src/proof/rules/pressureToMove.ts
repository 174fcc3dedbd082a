import { at } from '../state';
import { motion, steam } from '../values';
import { everyCar, type Rule } from './rule';

export const pressureToMove: Rule = {
  id: 'pressure-to-move',
  code: 'rule-pressure-to-move',
  group: 'steam',
  title: 'the car moves off only with its boiler at working pressure',
  reason: 'a car that stops for want of steam stops where it must not',
  mend: 'wait until the steam gauge is in its band',
  asks: [],
  appliesTo: everyCar,
  atStep: ({ model, before, after }) =>
    at(before, model.slots.motion) === motion.standing &&
    at(after, model.slots.motion) !== motion.standing &&
    at(before, model.slots.steam) !== steam.working &&
    at(after, model.slots.steam) !== steam.working
      ? 'the boiler is not at its working pressure'
      : undefined,
};
