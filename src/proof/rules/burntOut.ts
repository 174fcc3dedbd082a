import { nameOf } from '../effects/act';
import { at, burnsOn } from '../state';
import { no } from '../values';
import type { Rule } from './rule';

export const burntOut: Rule = {
  id: 'burnt-out',
  code: 'rule-burnt-out',
  group: 'fuel',
  title:
    'a burner that burns on after its fuel is shut is taken for out only when somebody has waited and seen it out, and gets no fuel before',
  reason:
    'what lies in it burns for minutes: it lights vapour, boils water away and heats a boiler that nobody minds, and fresh fuel on a flame that has just gone turns to vapour and lights late',
  mend: 'wait until neither flame nor glow is seen in it, before anything that wants it out, before it is lit again, and before the car is left',
  asks: [],
  appliesTo: ({ burnOn }) => burnOn.size > 0,
  atStep: ({ model, step, before, after, fedBefore, fedAfter }) => {
    for (const id of model.burnOn) {
      if (step.action === 'put-out' && step.part === id && burnsOn(model, after, id))
        return `${nameOf(model, id)} burns on, and nobody has waited until it is out`;
      if (burnsOn(model, before, id) && fedAfter.includes(id) && !fedBefore.includes(id))
        return `fuel is let on to ${nameOf(model, id)}, and nobody has waited until it is out`;
    }
    return undefined;
  },
  atEnd: ({ model, state }) => {
    if (at(state, model.slots.seat) !== no) return undefined;
    const burning = [...model.burnOn].find((id) => burnsOn(model, state, id));
    return burning === undefined
      ? undefined
      : `${nameOf(model, burning)} burns on, the seat is empty, and nobody has waited until it is out`;
  },
};
