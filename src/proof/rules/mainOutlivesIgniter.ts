import { nameOf } from '../effects/act';
import { isLit } from '../state';
import type { Rule } from './rule';

export const mainOutlivesIgniter: Rule = {
  id: 'main-outlives-pilot',
  code: 'rule-main-outlives-pilot',
  group: 'fuel',
  title: 'the pilot is never put out while the main burner is on',
  reason:
    'the automatic shuts the main burner and opens it again by itself; without a pilot it then opens onto nothing',
  mend: 'put the main burner out before its pilot',
  asks: [],
  appliesTo: ({ car, mains, burners }) =>
    mains.some((id) => burners.includes(car.spec.burners[id]?.['lit-by'] ?? '')),
  atStep: ({ model, before, after, fedAfter }) => {
    const main = model.mains.find((id) => {
      const pilot = model.car.spec.burners[id]?.['lit-by'];
      return (
        pilot !== undefined &&
        model.burners.includes(pilot) &&
        fedAfter.includes(id) &&
        isLit(model, before, pilot) &&
        !isLit(model, after, pilot)
      );
    });
    return main === undefined
      ? undefined
      : `${nameOf(model, model.car.spec.burners[main]?.['lit-by'])} goes out while fuel still comes to ${nameOf(model, main)}`;
  },
};
