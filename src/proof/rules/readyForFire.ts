import type { FactKey } from '../../procedure/facts';
import { knows } from '../state';
import { firstFlame } from './coldStart';
import { everyCar, type Rule } from './rule';

const asked: readonly (readonly [FactKey, string])[] = [
  ['log-read', 'nobody has read how the car was left'],
  ['faults-closed', 'nobody has asked whether a fault stands open that forbids a fire'],
  ['inspection-in-date', 'nobody has looked whether the boiler’s inspection is in date'],
  ['fire-allowed', 'nobody has asked whether a fire may be lit here today'],
  ['people-briefed', 'nobody has agreed who does what'],
  ['water-for-burns', 'no water for burns has been put ready'],
  ['dressed-right', 'nobody has seen to it that clothes and gloves are right'],
];

export const readyForFire: Rule = {
  id: 'ready-for-fire',
  code: 'rule-ready-for-fire',
  group: 'people',
  title:
    'the log, open faults, the inspection, leave to light a fire, people, clothes and water for burns are seen to before the first flame on a cold boiler',
  reason: 'what is found with the fire lit is found too late',
  mend: 'go through them before anything is lit',
  asks: [
    'log-read',
    'faults-closed',
    'inspection-in-date',
    'fire-allowed',
    'people-briefed',
    'water-for-burns',
    'dressed-right',
  ],
  appliesTo: everyCar,
  atStep: (view) =>
    firstFlame(view) ? asked.find(([fact]) => !knows(view.model, view.before, fact))?.[1] : undefined,
};
