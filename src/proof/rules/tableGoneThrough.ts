import { knows } from '../state';
import { everyCar, type Rule } from './rule';

export const tableGoneThrough: Rule = {
  id: 'table-gone-through',
  code: 'rule-table-gone-through',
  group: 'completeness',
  title: 'the valve table is gone through valve by valve before the car is left',
  reason: 'a forgotten valve is found in the evening or by the damage in the morning',
  mend: 'end with going through the valve table',
  asks: ['valves-parked'],
  appliesTo: everyCar,
  atEnd: ({ model, state, parked }) =>
    parked && !knows(model, state, 'valves-parked')
      ? 'nobody has gone through the valve table since a valve was last moved'
      : undefined,
};
