import { nameOf } from '../effects/act';
import { at, flamesIn, of } from '../state';
import { no, steam } from '../values';
import { everyCar, type Rule } from './rule';

export const endsCold: Rule = {
  id: 'ends-cold',
  code: 'rule-ends-cold',
  group: 'completeness',
  title:
    'when the car is put away no flame burns, there is no pressure, the throttle is locked and every filler cap is on',
  reason: 'nobody is there to see what goes wrong',
  mend: 'add the step that is missing at the end of the day',
  asks: [],
  appliesTo: everyCar,
  atEnd: ({ model, state, parked }) => {
    if (!parked) return undefined;
    const running = [...model.slots.pump].find(([, slot]) => at(state, slot) !== no)?.[0];
    if (running !== undefined) return `${nameOf(model, running)} still runs`;
    const on = [...model.slots.control].find(
      ([id, slot]) => at(state, slot) !== no && model.car.spec.controls[id]?.kind === 'switch',
    )?.[0];
    if (on !== undefined) return `${nameOf(model, on)} is still on`;
    if (at(state, model.slots.steam) !== steam.none) return 'there is still pressure in the boiler';
    const flame = flamesIn(model, state)[0];
    if (flame !== undefined) return `${nameOf(model, flame)} still burns`;
    if (of(state, model.slots.lock, model.car.spec.engine['throttle-lock']) === no)
      return `${nameOf(model, model.car.spec.engine['throttle-lock'])} is off`;
    const cap = model.fuelTanks.find((id) => of(state, model.slots.cap, id) === no);
    return cap === undefined ? undefined : `the cap of ${nameOf(model, cap)} is off`;
  },
};
