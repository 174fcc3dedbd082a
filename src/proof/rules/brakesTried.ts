import { at, knowsOfAny } from '../state';
import { motion } from '../values';
import type { Rule } from './rule';

export const brakesTried: Rule = {
  id: 'brakes-tried',
  code: 'rule-brakes-tried',
  group: 'steam',
  title: 'the brake is seen to hold before the car moves, and is tried at walking pace before it runs',
  reason: 'a brake that has stood in the damp may not hold, and a steam engine pulls without warning',
  mend: 'try the brake standing, and again at walking pace, before the road',
  asks: ['brakes-hold', 'brakes-tried'],
  appliesTo: (model) =>
    Object.values(model.car.spec.controls).some(
      (control) => control.kind === 'brake' || control.kind === 'parking-brake',
    ),
  atStep: ({ model, before, after }) => {
    const from = at(before, model.slots.motion);
    const to = at(after, model.slots.motion);
    if (to <= from) return undefined;
    if (to === motion.running)
      return knowsOfAny(model, before, 'brakes-tried')
        ? undefined
        : 'the car runs and the brake has not been tried at walking pace';
    return knowsOfAny(model, before, 'brakes-hold')
      ? undefined
      : 'the car moves and nobody has seen that the brake holds';
  },
};
