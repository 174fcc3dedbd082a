import { at, knows } from '../state';
import { motion } from '../values';
import { everyCar, type Rule } from './rule';

export const oilBeforeMotion: Rule = {
  id: 'oil-before-motion',
  code: 'rule-oil-before-motion',
  group: 'steam',
  title:
    'cylinder oil is checked before the car moves, and seen to feed before it runs where that can be seen',
  reason: 'a dry valve and piston score each other within a mile',
  mend: 'read the oil before the car moves, and look for it feeding at walking pace',
  asks: ['oil-enough', 'oil-feeding'],
  appliesTo: everyCar,
  atStep: ({ model, before, after }) => {
    const from = at(before, model.slots.motion);
    const to = at(after, model.slots.motion);
    if (to <= from) return undefined;
    if (!knows(model, before, 'oil-enough')) return 'the car moves and nobody has looked at the cylinder oil';
    const seen = model.car.spec.engine.oil.proof !== undefined;
    return to === motion.running && seen && !knows(model, after, 'oil-feeding')
      ? 'the car runs and nobody has seen oil going to the engine'
      : undefined;
  },
};
