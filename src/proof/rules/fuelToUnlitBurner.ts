import { nameOf } from '../effects/act';
import { isLit } from '../state';
import { everyCar, type Rule } from './rule';

export const fuelToUnlitBurner: Rule = {
  id: 'fuel-to-unlit-burner',
  code: 'rule-fuel-to-unlit-burner',
  group: 'fuel',
  title: 'no fuel comes to a burner that neither burns nor is being lit in that step',
  reason:
    'fuel that does not burn runs out under the car or hangs in the burner as vapour, and the next flame lights all of it at once',
  mend: 'shut a valve on the way to that burner first, or light the burner in the same step',
  asks: [],
  appliesTo: everyCar,
  atStep: ({ model, flows, before, during, after, fedBefore, fedAfter, lighting }) => {
    const fedDuring = during === after ? fedAfter : flows.fed(during);
    for (const burner of model.burners) {
      const fed = fedAfter.includes(burner) || fedDuring.includes(burner);
      if (!fed || isLit(model, after, burner)) continue;
      if (fedBefore.includes(burner) && !isLit(model, before, burner)) continue;
      const tried = lighting.includes(burner) ? ', and it does not catch' : '';
      return `fuel reaches ${nameOf(model, burner)}, which does not burn${tried}`;
    }
    return undefined;
  },
};
