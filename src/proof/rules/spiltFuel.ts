import { at, knows } from '../state';
import { no } from '../values';
import { everyCar, type Rule } from './rule';

export const spiltFuel: Rule = {
  id: 'spilt-fuel',
  code: 'rule-spilt-fuel',
  group: 'fuel',
  title: 'nothing is lit before the burner and the ground under it have been seen free of spilt fuel',
  reason: 'a valve that wept overnight leaves a pool that lights with the first flame',
  mend: 'look into the burner and under the car, and wipe dry, before anything is lit',
  asks: ['no-loose-fuel'],
  appliesTo: everyCar,
  atStep: ({ model, before, newlyLit }) => {
    if (newlyLit.length === 0) return undefined;
    if (at(before, model.slots.spilt) !== no) return 'a burner is lit where fuel has run before';
    return knows(model, before, 'no-loose-fuel')
      ? undefined
      : 'a burner is lit and nobody has looked for spilt fuel';
  },
};
