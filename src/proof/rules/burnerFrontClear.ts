import { nameOf } from '../effects/act';
import { at, isLit, knows } from '../state';
import { no } from '../values';
import { everyCar, type Rule } from './rule';

export const burnerFrontClear: Rule = {
  id: 'burner-front-clear',
  code: 'rule-burner-front-clear',
  group: 'people',
  title: 'nobody is in front of the burner when main fuel is let on',
  reason: 'a late or wet light throws flame out of the burner’s front',
  mend: 'call the burner front clear, and hear the answer, right before main fuel is let on; work the valve from the seat, or give it a place of its own in the spec if it is reached from beside the burner',
  asks: ['burner-front-clear'],
  appliesTo: everyCar,
  atStep: ({ model, before, after, newlyFedMains }) => {
    const main = newlyFedMains.find((id) => !isLit(model, before, id));
    if (main === undefined) return undefined;
    const front = 1 + model.places.indexOf(model.car.spec.burners[main]?.place ?? '');
    if (at(before, model.slots.burnerFront) !== no) return 'somebody stands in front of the burner';
    const last = model.car.places.get(model.places[front - 1] ?? '');
    if (at(after, model.slots.driverAt) === front || at(after, model.slots.helperAt) === front)
      return `somebody is at ${last?.name ?? 'the burner'}, where ${nameOf(model, main)} is`;
    return knows(model, before, 'burner-front-clear')
      ? undefined
      : 'nobody has called the burner front clear';
  },
};
