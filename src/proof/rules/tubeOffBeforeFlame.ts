import { nameOf } from '../effects/act';
import { of } from '../state';
import { no } from '../values';
import type { Rule } from './rule';

export const tubeOffBeforeFlame: Rule = {
  id: 'tube-off-before-flame',
  code: 'rule-tube-off-before-flame',
  group: 'water',
  title: 'the clear tube is off the boiler before a burner is lit',
  reason: 'it melts, and with a tap left open the boiler empties through it',
  mend: 'shut the tap and take the tube off before a burner is lit',
  asks: [],
  appliesTo: ({ car }) => Object.values(car.spec.equipment).some((each) => each.kind === 'tube'),
  atStep: ({ model, after, newlyLit }) => {
    if (newlyLit.length === 0) return undefined;
    const tube = Object.keys(model.car.spec.equipment).find(
      (id) => model.car.spec.equipment[id]?.kind === 'tube' && of(after, model.slots.placed, id) !== no,
    );
    return tube === undefined ? undefined : `a burner is lit while ${nameOf(model, tube)} is still on`;
  },
};
