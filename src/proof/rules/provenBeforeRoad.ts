import { nameOf } from '../effects/act';
import { at, knows, knowsOfAny } from '../state';
import { motion } from '../values';
import { everyCar, type Rule } from './rule';

export const provenBeforeRoad: Rule = {
  id: 'proven-before-road',
  code: 'rule-proven-before-road',
  group: 'steam',
  title:
    'leaks have been looked for, a pump has been seen to feed against the pressure and the automatic to shut the burner before the car moves',
  reason: 'on the road nobody stands by to put right what should have acted by itself',
  mend: 'look for leaks at low pressure, feed against the pressure, and watch the automatic act at its figure, while the car still stands',
  asks: ['no-steam-leaks', 'feeds-against-pressure', 'cut-out-proven'],
  appliesTo: everyCar,
  atStep: ({ model, before, after }) => {
    if (
      at(before, model.slots.motion) !== motion.standing ||
      at(after, model.slots.motion) === motion.standing
    )
      return undefined;
    if (!knows(model, before, 'no-steam-leaks')) return 'the car moves and nobody has looked for steam leaks';
    const standing = model.feedPumps.some((id) => model.car.spec.pumps[id]?.drive !== 'engine');
    if (standing && !knowsOfAny(model, before, 'feeds-against-pressure'))
      return 'the car moves and no pump has been seen to feed against the pressure';
    const automatic = Object.entries(model.car.spec.devices).find(
      ([id, device]) => device.kind === 'steam-automatic' && !knows(model, before, 'cut-out-proven', id),
    )?.[0];
    return automatic === undefined
      ? undefined
      : `the car moves and nobody has seen ${nameOf(model, automatic)} shut the burner`;
  },
};
