import { nameOf } from '../effects/act';
import { at, knows } from '../state';
import { motion } from '../values';
import { everyCar, type Rule } from './rule';

export const provenBeforeRoad: Rule = {
  id: 'proven-before-road',
  code: 'rule-proven-before-road',
  group: 'steam',
  title: 'leaks have been looked for and the automatic has been seen to shut the burner before the car moves',
  reason: 'on the road nobody stands by to put right what should have acted by itself',
  mend: 'look for leaks at low pressure, and watch the automatic act at its figure, while the car still stands',
  asks: ['no-steam-leaks', 'cut-out-proven'],
  appliesTo: everyCar,
  atStep: ({ model, before, after }) => {
    if (
      at(before, model.slots.motion) !== motion.standing ||
      at(after, model.slots.motion) === motion.standing
    )
      return undefined;
    if (!knows(model, before, 'no-steam-leaks')) return 'the car moves and nobody has looked for steam leaks';
    const automatic = Object.entries(model.car.spec.devices).find(
      ([id, device]) => device.kind === 'steam-automatic' && !knows(model, before, 'cut-out-proven', id),
    )?.[0];
    return automatic === undefined
      ? undefined
      : `the car moves and nobody has seen ${nameOf(model, automatic)} shut the burner`;
  },
};
