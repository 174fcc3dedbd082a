import { nameOf } from '../effects/act';
import { at, knows } from '../state';
import { steam } from '../values';
import { everyCar, type Rule } from './rule';

export const airedBeforeRelight: Rule = {
  id: 'aired-before-relight',
  code: 'rule-aired-before-relight',
  group: 'fuel',
  title: 'a main burner that has been on is aired before it is lit again',
  reason: 'what is left of its fuel hangs in the hot burner as vapour',
  mend: 'listen that it is out, and let it air, before it is lit again',
  asks: ['burner-aired'],
  appliesTo: everyCar,
  atStep: ({ model, before, newlyLit }) => {
    if (at(before, model.slots.steam) === steam.none) return undefined;
    const main = newlyLit.find((id) => model.mains.includes(id) && !knows(model, before, 'burner-aired'));
    return main === undefined
      ? undefined
      : `${nameOf(model, main)} is lit again and has not been aired since it went out`;
  },
};
