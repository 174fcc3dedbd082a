import { nameOf } from '../effects/act';
import { at, burns, of } from '../state';
import { motion, no } from '../values';
import type { Rule } from './rule';

export const coilNotFlooded: Rule = {
  id: 'coil-not-flooded',
  code: 'rule-coil-not-flooded',
  group: 'water',
  title: 'nothing goes on feeding a coil of a standing car once its fire is out',
  reason: 'a coil is full within minutes, and what comes after goes over into the engine as water',
  mend: 'switch the feed pump off once the fire is out and the coil has cooled',
  asks: [],
  tidy: true,
  appliesTo: (model) => model.car.spec.boiler.kind === 'monotube',
  atEnd: ({ model, state }) => {
    if (at(state, model.slots.motion) !== motion.standing) return undefined;
    if (model.mains.some((id) => burns(model, state, id))) return undefined;
    const left = model.feedPumps.find((id) => of(state, model.slots.pump, id) !== no);
    return left === undefined ? undefined : `no main burner burns and ${nameOf(model, left)} goes on feeding`;
  },
};
