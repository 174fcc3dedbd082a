import { nameOf } from '../effects/act';
import { knows } from '../state';
import { lightsMainOnColdBoiler } from './coldStart';
import type { Rule } from './rule';

export const pressureHolds: Rule = {
  id: 'pressure-holds',
  code: 'rule-pressure-holds',
  group: 'fuel',
  title:
    'the pressure over the fuel has been watched and did not fall before the main burner is lit on a cold boiler',
  reason: 'a pressure that falls is fuel or air getting out, and with a fire lit the fuel finds it',
  mend: 'charge the tank, wait ten minutes, and read its gauge again',
  asks: ['pressure-holds'],
  appliesTo: (model) => model.chargedTanks.length > 0,
  atStep: (view) => {
    const { model, before } = view;
    if (!lightsMainOnColdBoiler(view)) return undefined;
    const tank = model.chargedTanks.find((id) => !knows(model, before, 'pressure-holds', id));
    return tank === undefined
      ? undefined
      : `the main burner is lit and nobody has watched whether the pressure of ${nameOf(model, tank)} holds`;
  },
};
