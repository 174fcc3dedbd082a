import { burns, knows } from '../state';
import { everyCar, type Rule } from './rule';

export const levelKnownAgain: Rule = {
  id: 'level-known-again',
  code: 'rule-level-known-again',
  group: 'water',
  title: 'the level is read again after water has been put into or let out of the boiler',
  reason: 'what was read before the fill says nothing about the level after it',
  mend: 'end with a reading of the level',
  asks: ['level-known'],
  appliesTo: everyCar,
  atEnd: ({ model, state }) =>
    model.mains.some((id) => burns(model, state, id)) && !knows(model, state, 'level-known')
      ? 'the procedure ends with the main burner on and a level that nobody knows'
      : undefined,
};
