import { at, knows, of } from '../state';
import { motion, shut } from '../values';
import { everyCar, type Rule } from './rule';

export const chestDrained: Rule = {
  id: 'chest-drained',
  code: 'rule-chest-drained',
  group: 'steam',
  title: 'the drips are open when the car first moves, and the chest is drained before it runs',
  reason: 'water does not give way before a piston; it bends the rod or breaks the cover',
  mend: 'open the drips before the throttle, and shut them only when dry steam comes',
  asks: ['chest-drained'],
  appliesTo: everyCar,
  atStep: ({ model, before, after }) => {
    const { slots } = model;
    const from = at(before, slots.motion);
    const to = at(after, slots.motion);
    if (to <= from) return undefined;
    if (knows(model, after, 'chest-drained')) return undefined;
    if (to === motion.running) return 'the car runs and nobody has seen dry steam at the drips';
    const drips = model.car.spec.engine.drips;
    return drips.every((id) => of(before, slots.valve, id) === shut)
      ? 'the car moves with the drips shut and water perhaps in the cylinders'
      : undefined;
  },
};
