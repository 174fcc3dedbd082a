import { knows } from '../state';
import type { Rule } from './rule';

export const hoseIntoHotBoiler: Rule = {
  id: 'hose-into-hot-boiler',
  code: 'rule-hose-into-hot-boiler',
  group: 'water',
  title: 'a boiler is filled by hose only when it is cool to the touch',
  reason: 'cold water cracks or loosens what is hot, though there is no pressure any more',
  mend: 'feel that the boiler is cool before the hose is joined to it',
  asks: ['boiler-cool'],
  appliesTo: ({ car }) => car.spec.boiler['fill-by'] !== undefined,
  atStep: ({ model, step, before }) =>
    step.action === 'fill' && step.part === 'boiler' && !knows(model, before, 'boiler-cool')
      ? 'the boiler is filled by hose and nobody has felt whether it is cool'
      : undefined,
};
