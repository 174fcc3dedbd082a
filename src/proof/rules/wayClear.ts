import { at, knows, of } from '../state';
import { motion, shut, steam } from '../values';
import { everyCar, type Rule } from './rule';

export const wayClear: Rule = {
  id: 'way-clear',
  code: 'rule-way-clear',
  group: 'people',
  title: 'the way is seen to be clear before steam is let to the engine and before the car moves',
  reason:
    'a steam car starts without a sound, and with a brake that slips it starts as soon as the throttle is touched',
  mend: 'look all round and call out right before the throttle is touched',
  asks: ['way-clear'],
  appliesTo: everyCar,
  atStep: ({ model, before, after }) => {
    if (at(before, model.slots.motion) !== motion.standing) return undefined;
    if (knows(model, before, 'way-clear')) return undefined;
    if (at(after, model.slots.motion) !== motion.standing)
      return 'the car moves and nobody has looked that the way is clear';
    const { throttle } = model.car.spec.engine;
    const opened =
      of(before, model.slots.valve, throttle) === shut && of(after, model.slots.valve, throttle) !== shut;
    return opened && at(before, model.slots.steam) !== steam.none
      ? 'steam is let to the engine and nobody has looked that the way is clear'
      : undefined;
  },
};
