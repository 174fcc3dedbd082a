import { nameOf } from '../effects/act';
import { at, burns } from '../state';
import { motion } from '../values';
import type { Rule } from './rule';

export const torchOut: Rule = {
  id: 'torch-out',
  code: 'rule-torch-out',
  group: 'fuel',
  title: 'the torch is out when the car moves and when the procedure is done',
  reason: 'a torch left alight is a flame that nobody watches',
  mend: 'put the torch out as soon as the burner burns by itself',
  asks: [],
  appliesTo: (model) => model.torches.length > 0,
  atStep: ({ model, after, before }) => {
    const starts =
      at(before, model.slots.motion) === motion.standing && at(after, model.slots.motion) !== motion.standing;
    const torch = starts ? model.torches.find((id) => burns(model, after, id)) : undefined;
    return torch === undefined ? undefined : `${nameOf(model, torch)} burns while the car moves off`;
  },
  atEnd: ({ model, state }) => {
    const torch = model.torches.find((id) => burns(model, state, id));
    return torch === undefined ? undefined : `${nameOf(model, torch)} still burns at the end`;
  },
};
