import { at, knowsOfAny } from '../state';
import { steam } from '../values';
import { everyCar, type Rule } from './rule';

export const gaugeAlive: Rule = {
  id: 'gauge-alive',
  code: 'rule-gauge-alive',
  group: 'steam',
  title: 'the steam gauge is seen to rise before the boiler comes to its working pressure',
  reason: 'a gauge that is dead or shut off lets the pressure climb unseen',
  mend: 'read the steam gauge while the pressure is low',
  asks: ['steam-gauge-alive'],
  appliesTo: everyCar,
  atStep: ({ model, before, after }) =>
    at(before, model.slots.steam) !== steam.working &&
    at(after, model.slots.steam) === steam.working &&
    !knowsOfAny(model, before, 'steam-gauge-alive')
      ? 'the boiler comes to its working pressure and nobody has seen the steam gauge rise'
      : undefined,
};
