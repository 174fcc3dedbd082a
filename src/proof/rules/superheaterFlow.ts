import { at, burns } from '../state';
import { motion, no, steam } from '../values';
import type { Rule } from './rule';

export const superheaterFlow: Rule = {
  id: 'superheater-flow',
  code: 'rule-superheater-flow',
  group: 'steam',
  title:
    'steam is let through a superheater that stands in the fire before the boiler is at its working pressure and before the car moves',
  reason: 'a superheater with no steam in it grows red in the fire and gives way when steam comes',
  mend: 'open the throttle a little with the drips open while steam is raised',
  asks: [],
  appliesTo: (model) => model.car.spec.superheater?.['in-the-fire'] === true,
  atStep: ({ model, before, after }) => {
    const up =
      at(before, model.slots.steam) !== steam.working && at(after, model.slots.steam) === steam.working;
    const off =
      at(before, model.slots.motion) === motion.standing && at(after, model.slots.motion) !== motion.standing;
    const fire = model.mains.some((id) => burns(model, after, id));
    return (up || off) && fire && at(after, model.slots.flowed) === no
      ? 'the main burner has been on and no steam has gone through the superheater'
      : undefined;
  },
};
