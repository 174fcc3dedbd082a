import { at, isLit, knows } from '../state';
import { level } from '../values';
import { everyCar, type Rule } from './rule';

export const flameWithoutLevel: Rule = {
  id: 'flame-without-level',
  code: 'rule-flame-without-level',
  group: 'water',
  title: 'no burner is lit before the boiler’s level is known and enough',
  reason: 'a fire under tubes without water ruins them in minutes and can burst the boiler',
  mend: 'read the level, and fill to the working level, before the first burner is lit',
  asks: ['level-known'],
  appliesTo: everyCar,
  atStep: ({ model, before, after, newlyLit, newlyFedMains }) => {
    const first = newlyLit[0] ?? newlyFedMains.find((id) => !isLit(model, before, id));
    if (first === undefined) return undefined;
    if (at(after, model.slots.level) <= level.low)
      return 'a burner is lit while the boiler’s level is below its working level';
    return knows(model, before, 'level-known') || knows(model, after, 'level-known')
      ? undefined
      : 'a burner is lit while nobody has read the boiler’s level';
  },
};
