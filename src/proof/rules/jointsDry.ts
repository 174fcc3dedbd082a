import { knows } from '../state';
import { lightsOnColdBoiler } from './coldStart';
import { everyCar, type Rule } from './rule';

export const jointsDry: Rule = {
  id: 'joints-dry',
  code: 'rule-joints-dry',
  group: 'fuel',
  title: 'the live fuel line has been looked along for wet joints before a burner is lit on it cold',
  reason: 'a drip outside the burner lights from the burner',
  mend: 'look along the pipe after its valves are open and before the burner is lit',
  asks: ['joints-dry'],
  appliesTo: everyCar,
  atStep: (view) =>
    lightsOnColdBoiler(view) && !knows(view.model, view.before, 'joints-dry')
      ? 'a burner is lit and nobody has looked along the fuel line since it was made live'
      : undefined,
};
