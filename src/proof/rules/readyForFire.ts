import type { FactKey } from '../../procedure/facts';
import { anyFlame, knows } from '../state';
import { everyCar, type Rule } from './rule';

const asked: readonly (readonly [FactKey, string])[] = [
  ['faults-closed', 'nobody has asked whether a fault stands open that forbids a fire'],
  ['inspection-in-date', 'nobody has looked whether the boiler’s inspection is in date'],
  ['dressed-right', 'nobody has seen to it that clothes and gloves are right'],
];

export const readyForFire: Rule = {
  id: 'ready-for-fire', code: 'rule-ready-for-fire', group: 'people',
  title: 'open faults, the inspection and clothes are gone through before the first flame',
  reason: 'what is found with the fire lit is found too late',
  mend: 'go through them before anything is lit',
  appliesTo: everyCar,
  atStep: ({ model, before, after }) => (anyFlame(model, after) && !anyFlame(model, before) ? asked.find(([fact]) => !knows(model, before, fact))?.[1] : undefined),
};
