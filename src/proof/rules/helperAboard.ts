import { at } from '../state';
import { motion } from '../values';
import type { Rule } from './rule';

export const helperAboard: Rule = {
  id: 'helper-aboard',
  code: 'rule-helper-aboard',
  group: 'people',
  title: 'on a car with one seat nobody but the driver has anything to do while it moves',
  reason: 'there is nobody else on it',
  mend: 'bring it within reach of the seat, if it is say so under `places`, or have the car stopped for it',
  asks: [],
  onQuietSteps: true,
  appliesTo: (model) => model.car.spec.car.seats < 2,
  atStep: ({ model, step, before, after }) =>
    step.who === 'helper' &&
    step.part !== undefined &&
    at(before, model.slots.motion) !== motion.standing &&
    at(after, model.slots.motion) !== motion.standing
      ? 'a helper has something to do while the car moves, and the car has one seat'
      : undefined,
};
