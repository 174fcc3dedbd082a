import { nameOf } from '../effects/act';
import { flamesIn, of } from '../state';
import { no } from '../values';
import { everyCar, type Rule } from './rule';

export const endsCold: Rule = {
  id: 'ends-cold',
  code: 'rule-ends-cold',
  group: 'completeness',
  title: 'when the car is put away no flame burns, the throttle is locked and every filler cap is on',
  reason: 'nobody is there to see what goes wrong',
  mend: 'add the step that is missing at the end of the day',
  asks: [],
  appliesTo: everyCar,
  atEnd: ({ model, state, parked }) => {
    if (!parked) return undefined;
    const flame = flamesIn(model, state)[0];
    if (flame !== undefined) return `${nameOf(model, flame)} still burns`;
    if (of(state, model.slots.lock, model.car.spec.engine['throttle-lock']) === no)
      return `${nameOf(model, model.car.spec.engine['throttle-lock'])} is off`;
    const cap = model.fuelTanks.find((id) => of(state, model.slots.cap, id) === no);
    return cap === undefined ? undefined : `the cap of ${nameOf(model, cap)} is off`;
  },
};
