import { nameOf } from '../effects/act';
import { knows } from '../state';
import { everyCar, type Rule } from './rule';

export const bondedForFilling: Rule = {
  id: 'bonded-for-filling',
  code: 'rule-bonded-for-filling',
  group: 'fuel',
  title: 'can and tank touch metal to metal before fuel is poured',
  reason: 'pouring makes static, and one spark lights the vapour at the filler',
  mend: 'bring can and filler together, or join them by wire, before pouring',
  asks: ['tank-bonded'],
  appliesTo: everyCar,
  atStep: ({ model, step, before, after }) => {
    const { part } = step;
    if (step.action !== 'fill' || part === undefined || !model.fuelTanks.includes(part)) return undefined;
    return knows(model, before, 'tank-bonded', part) || knows(model, after, 'tank-bonded', part)
      ? undefined
      : `fuel is poured into ${nameOf(model, part)} and the can has not been joined to it`;
  },
};
