import { nameOf } from '../effects/act';
import { canBeLit } from '../effects/flames';
import { hasSeenIgniter, isLit } from '../state';
import type { Rule } from './rule';

export const igniterProven: Rule = {
  id: 'igniter-proven',
  code: 'rule-igniter-proven',
  group: 'fuel',
  title:
    'main fuel is let on only when what lights it was seen to work, and nothing since could have put it out',
  reason: 'main fuel that finds no flame floods the burner, and lights late with a blow',
  mend: 'look at the pilot, or try the spark, right before the main burner valve is opened',
  asks: ['igniter-proven'],
  appliesTo: ({ car, mains }) =>
    mains.some((id) => {
      const kind = car.parts.get(car.spec.burners[id]?.['lit-by'] ?? '')?.kind;
      return kind === 'burner' || kind === 'control';
    }),
  atStep: ({ model, before, newlyFedMains }) => {
    for (const main of newlyFedMains) {
      const igniter = model.car.spec.burners[main]?.['lit-by'];
      if (!canBeLit(model, before, main))
        return `${nameOf(model, igniter)} does not burn or work when main fuel is let on`;
      const kind = model.car.parts.get(igniter ?? '')?.kind;
      if (
        (kind === 'burner' || kind === 'control') &&
        !isLit(model, before, main) &&
        igniter !== undefined &&
        !hasSeenIgniter(model, before, igniter)
      )
        return `main fuel is let on and nobody has looked at ${nameOf(model, igniter)} since it could have gone out`;
    }
    return undefined;
  },
};
