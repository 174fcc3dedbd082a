import { at, knows } from '../state';
import { motion } from '../values';
import { everyCar, type Rule } from './rule';

export const lookedOverBeforeMotion: Rule = {
  id: 'looked-over-before-motion',
  code: 'rule-looked-over-before-motion',
  group: 'steam',
  title: 'wheels, steering and drive are looked over and every bearing is oiled before the car moves',
  reason: 'a loose wheel or a dry bearing gives no sign before it fails',
  mend: 'go through running gear and oiling points on the walk-round',
  asks: ['running-gear-sound', 'bearings-oiled'],
  appliesTo: everyCar,
  atStep: ({ model, before, after }) => {
    if (
      at(before, model.slots.motion) !== motion.standing ||
      at(after, model.slots.motion) === motion.standing
    )
      return undefined;
    if (!knows(model, before, 'running-gear-sound'))
      return 'the car moves and nobody has looked over wheels, steering and drive';
    return knows(model, before, 'bearings-oiled')
      ? undefined
      : 'the car moves and nobody has oiled its bearings';
  },
};
