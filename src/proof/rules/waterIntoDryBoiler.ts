import { at } from '../state';
import { level, no } from '../values';
import { everyCar, type Rule } from './rule';

export const waterIntoDryBoiler: Rule = {
  id: 'water-into-dry-boiler',
  code: 'rule-water-into-dry-boiler',
  group: 'water',
  title: 'no water goes into a boiler that ran dry with the fire on',
  reason: 'cold water on overheated metal turns to steam all at once and cracks what it touches',
  mend: 'put the fires out, let the boiler cool by itself, and have it looked at',
  asks: [],
  appliesTo: everyCar,
  atStep: ({ model, step, before }) => {
    const dry = at(before, model.slots.ranDry) !== no && at(before, model.slots.level) <= level.low;
    const fed =
      (step.action === 'pump' || step.action === 'set') && model.feedPumps.includes(step.part ?? '');
    return dry && (fed || (step.action === 'fill' && step.part === 'boiler'))
      ? 'the boiler has run dry with the fire on, and water is put into it'
      : undefined;
  },
};
