import { at, isLit } from '../state';
import { no } from '../values';
import { everyCar, type Rule } from './rule';

export const mainOutdoors: Rule = {
  id: 'main-outdoors',
  code: 'rule-main-outdoors',
  group: 'people',
  title: 'the main burner is lit out of doors',
  reason: 'it takes the air out of a shed, and a flame that lights badly has a roof and walls to set alight',
  mend: 'bring the car out of doors before the main burner',
  asks: [],
  appliesTo: everyCar,
  atStep: ({ model, before, after, newlyLit }) =>
    newlyLit.some((id) => model.mains.includes(id) && !isLit(model, before, id)) &&
    at(after, model.slots.outdoors) === no
      ? 'the main burner is lit and the car is not known to be out of doors'
      : undefined,
};
