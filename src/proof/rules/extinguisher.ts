import { anyFlame, knows } from '../state';
import { everyCar, type Rule } from './rule';

export const extinguisher: Rule = {
  id: 'extinguisher',
  code: 'rule-extinguisher',
  group: 'people',
  title: 'an extinguisher is at hand before any flame is lit',
  reason: 'a fuel fire is put out in its first seconds or not at all',
  mend: 'stand the extinguisher by the burner before the torch is lit',
  asks: ['extinguisher-at-hand'],
  appliesTo: everyCar,
  atStep: ({ model, before, after }) =>
    anyFlame(model, after) && !anyFlame(model, before) && !knows(model, after, 'extinguisher-at-hand')
      ? 'a flame is lit and no extinguisher has been put at hand'
      : undefined,
};
