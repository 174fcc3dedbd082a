import { at, burns } from '../state';
import { level } from '../values';
import { everyCar, type Rule } from './rule';

export const fireOnLowWater: Rule = {
  id: 'fire-on-low-water',
  code: 'rule-fire-on-low-water',
  group: 'water',
  title: 'no main burner burns on when the boiler’s water is low',
  reason: 'tubes that stand out of the water overheat while everything else looks well',
  mend: 'put the main burner out before the level is let down',
  asks: [],
  appliesTo: everyCar,
  atStep: ({ model, before, after }) => {
    const low = at(after, model.slots.level) <= level.low;
    const was = at(before, model.slots.level) <= level.low;
    return low && !was && model.mains.some((id) => burns(model, after, id))
      ? 'the water falls to its lowest level or below with the main burner on'
      : undefined;
  },
};
