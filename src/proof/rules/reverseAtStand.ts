import { at, of } from '../state';
import { motion, shut } from '../values';
import type { Rule } from './rule';

export const reverseAtStand: Rule = {
  id: 'reverse-at-stand',
  code: 'rule-reverse-at-stand',
  group: 'steam',
  title: 'outside of trouble the reverse is set only with the car at a stand and its throttle shut',
  reason: 'set in motion it locks the wheels, and with steam on the car leaps the other way',
  mend: 'shut the throttle and bring the car to a stand before the step that sets the reverse',
  asks: [],
  appliesTo: ({ car }) => car.spec.engine.reverse !== undefined,
  atStep: ({ model, procedure, step, before }) => {
    const { reverse, throttle } = model.car.spec.engine;
    if (procedure.phase === 'emergency' || step.action !== 'set' || step.part !== reverse) return undefined;
    if (at(before, model.slots.motion) !== motion.standing) return 'the reverse is set while the car moves';
    return of(before, model.slots.valve, throttle) === shut
      ? undefined
      : 'the reverse is set while steam comes to the engine';
  },
};
