import { at } from '../state';
import { no } from '../values';
import { everyCar, type Rule } from './rule';

export const vapourInBurner: Rule = {
  id: 'vapour-in-burner',
  code: 'rule-vapour-in-burner',
  group: 'fuel',
  title: 'a burner in which vapour may hang is aired before anything is lit in it',
  reason: 'a box full of vapour and air lights all at once',
  mend: 'air the burner through for its time before it is lit',
  asks: [],
  appliesTo: everyCar,
  atStep: ({ model, before, newlyLit }) =>
    newlyLit.length > 0 && at(before, model.slots.vapour) !== no
      ? 'vapour may hang in the burner that is lit'
      : undefined,
};
