import { nameOf } from '../effects/act';
import { at, isLit, of } from '../state';
import { motion, shut } from '../values';
import { everyCar, type Rule } from './rule';

export const cameIn: Rule = {
  id: 'came-in',
  code: 'rule-came-in',
  group: 'steam',
  title: 'the car comes in with its main burner out, and comes to a stand with its throttle shut',
  reason:
    'a burner that is put out at the door has no draught to clear it, and what is left in it lights late',
  mend: 'shut the main burner a minute before arriving, and end with the throttle shut and the car standing',
  asks: [],
  tidy: true,
  appliesTo: everyCar,
  atEnd: ({ model, state, procedure }) => {
    if (procedure.phase !== 'coming-in') return undefined;
    if (at(state, model.slots.motion) !== motion.standing) return 'the car still moves';
    if (of(state, model.slots.valve, model.car.spec.engine.throttle) !== shut)
      return 'the throttle is still open';
    // one that burns on has no fuel any more, and whoever shuts down waits for it
    const main = model.mains.find((id) => isLit(model, state, id));
    return main === undefined ? undefined : `${nameOf(model, main)} still burns`;
  },
};
