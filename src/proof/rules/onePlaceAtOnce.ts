import type { Place } from '../../car/car';
import { nameOf } from '../effects/act';
import { of } from '../state';
import { no } from '../values';
import { everyCar, type Rule } from './rule';

/** How far a hand reaches from where its owner stands, with a step aside. */
const reachM = 1;

/** Whether one person gets at both places without walking. */
export function withinReach(a: Place, b: Place): boolean {
  if (a.id === b.id || (a.reach === 'seated' && b.reach === 'seated')) return true;
  return Math.hypot(a.backM - b.backM, a.rightM - b.rightM) <= reachM;
}

/** Actions that put a hand on the part itself. */
const handling = new Set(['open', 'shut', 'crack', 'lock', 'unlock', 'set', 'release', 'pump']);

export const onePlaceAtOnce: Rule = {
  id: 'one-place-at-once',
  code: 'rule-one-place-at-once',
  group: 'people',
  title: 'no step needs one person in two places',
  reason: 'a step that cannot be done as it is written is done some other way',
  mend: 'split the step, or give a part of it to a helper',
  asks: [],
  onQuietSteps: true,
  appliesTo: everyCar,
  atStep: ({ model, step, lighting, before }) => {
    const { car } = model;
    const here = car.places.get(step.place ?? '');
    const worked = car.spec.pumps[step.part ?? '']?.['switched-by'] ?? step.part ?? '';
    const there = car.places.get(car.parts.get(worked)?.place ?? '');
    if (here === undefined) return undefined;
    if (handling.has(step.action) && there !== undefined && !withinReach(here, there))
      return `${nameOf(model, worked)} is at ${there.name}, and the step is done at ${here.name}`;
    if (step.who === 'helper') return undefined;
    for (const burner of lighting) {
      const igniter = car.parts.get(car.spec.burners[burner]?.['lit-by'] ?? '');
      const front = car.places.get(car.spec.burners[burner]?.place ?? '');
      const isHeld = igniter?.kind === 'equipment' && of(before, model.slots.placed, igniter.id) === no;
      if (isHeld && front !== undefined && !withinReach(here, front))
        return `${nameOf(model, igniter.id)} is held at ${front.name} while ${nameOf(model, step.part)} is worked at ${here.name}`;
    }
    return undefined;
  },
};
