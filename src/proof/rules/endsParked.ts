import { nameOf } from '../effects/act';
import { of } from '../state';
import { shut } from '../values';
import { everyCar, type Rule } from './rule';

export const endsParked: Rule = {
  id: 'ends-parked',
  code: 'rule-ends-parked',
  group: 'completeness',
  title: 'what was opened is shut: when the car is put away every valve stands as the spec says',
  reason: 'whoever comes next trusts that the car stands as the paper says',
  mend: 'add the step that puts the valve back, or correct `parked` in the spec',
  asks: [],
  appliesTo: everyCar,
  atEnd: ({ model, state, parked }) => {
    if (!parked) return undefined;
    const odd = model.valves.filter(
      (id) => (of(state, model.slots.valve, id) === shut) !== (model.car.spec.valves[id]?.parked === 'shut'),
    );
    if (odd.length === 0) return undefined;
    return odd
      .map(
        (id) =>
          `${nameOf(model, id)} is left ${of(state, model.slots.valve, id) === shut ? 'shut' : 'open'}, and its place is ${model.car.spec.valves[id]?.parked}`,
      )
      .join('; ');
  },
};
