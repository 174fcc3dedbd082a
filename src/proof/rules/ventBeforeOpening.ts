import { nameOf } from '../effects/act';
import { knows, of } from '../state';
import { no, pressure } from '../values';
import type { Rule } from './rule';

export const ventBeforeOpening: Rule = {
  id: 'vent-before-opening',
  code: 'rule-vent-before-opening',
  group: 'fuel',
  title: 'an air-charged tank is vented before its filler is opened',
  reason: 'pressure throws the cap and a spray of fuel at whoever opens it',
  mend: 'let the pressure off, and see that it is gone, before the cap is touched',
  asks: ['tank-vented'],
  onQuietSteps: true,
  appliesTo: (model) => model.chargedTanks.length > 0,
  atStep: ({ model, step, before, after }) => {
    const tank = step.part;
    if (tank === undefined || !model.chargedTanks.includes(tank)) return undefined;
    const capOff = of(before, model.slots.cap, tank) !== no && of(after, model.slots.cap, tank) === no;
    if (!capOff && step.action !== 'fill' && step.action !== 'dip') return undefined;
    if (of(before, model.slots.cap, tank) === no) return undefined;
    if (of(before, model.slots.pressure, tank) !== pressure.none)
      return `${nameOf(model, tank)} is still under pressure, or may be`;
    return knows(model, before, 'tank-vented', tank)
      ? undefined
      : `nobody has seen that the pressure of ${nameOf(model, tank)} is gone`;
  },
};
