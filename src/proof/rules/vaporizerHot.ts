import { nameOf } from '../effects/act';
import { isHot, isLit, knows } from '../state';
import type { Rule } from './rule';

export const vaporizerHot: Rule = {
  id: 'vaporizer-hot',
  code: 'rule-vaporizer-hot',
  group: 'fuel',
  title:
    'fuel is let to a burner only when its vaporizer has had its time of heating and shows that it is hot',
  reason: 'a cold vaporizer passes liquid fuel, which burns yellow and runs out under the car alight',
  mend: 'keep the time of warming or soaking, and look for the sign of heat, before the fuel is let on',
  asks: ['vaporizer-hot'],
  appliesTo: ({ car }) => Object.keys(car.spec.vaporizers ?? {}).length > 0,
  atStep: ({ model, before, after, fedBefore, fedAfter }) => {
    for (const burner of model.burners) {
      const vaporizer = model.car.spec.burners[burner]?.vaporizer;
      if (
        vaporizer === undefined ||
        !fedAfter.includes(burner) ||
        fedBefore.includes(burner) ||
        isLit(model, before, burner)
      )
        continue;
      if (!isHot(model, before, vaporizer) && !isHot(model, after, vaporizer))
        return `fuel is let on and ${nameOf(model, vaporizer)} has not been heated for its time`;
      if (model.mains.includes(burner) && !knows(model, before, 'vaporizer-hot', vaporizer))
        return `fuel is let on and nobody has seen that ${nameOf(model, vaporizer)} is hot`;
    }
    return undefined;
  },
};
