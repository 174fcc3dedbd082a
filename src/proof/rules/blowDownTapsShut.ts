import { nameOf } from '../effects/act';
import { at, of } from '../state';
import { shut, steam } from '../values';
import { everyCar, type Rule } from './rule';

export const blowDownTapsShut: Rule = {
  id: 'blow-down-taps-shut',
  code: 'rule-blow-down-taps-shut',
  group: 'water',
  title: 'every blow-down tap is shut when a procedure ends with pressure in the boiler',
  reason: 'the boiler goes on emptying itself, under a hot casing and past whoever walks by',
  mend: 'shut each tap as soon as it has blown, and look that its outlet stops',
  asks: [],
  appliesTo: everyCar,
  atEnd: ({ model, state }) => {
    if (at(state, model.slots.steam) === steam.none) return undefined;
    const open = model.car.spec.boiler['blow-down'].find((tap) => of(state, model.slots.valve, tap) !== shut);
    return open === undefined ? undefined : `${nameOf(model, open)} is left open`;
  },
};
