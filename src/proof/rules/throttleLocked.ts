import { nameOf } from '../effects/act';
import { at, of, type State } from '../state';
import { no, steam } from '../values';
import { everyCar, type Rule } from './rule';

export const throttleLocked: Rule = {
  id: 'throttle-locked',
  code: 'rule-throttle-locked',
  group: 'steam',
  title: 'the throttle is locked whenever there is steam and the driver’s seat is empty',
  reason: 'a touch of the throttle sends the car off with nobody in it',
  mend: 'lock the throttle before the driver leaves the seat; unlock it only when seated again',
  asks: [],
  onQuietSteps: true,
  appliesTo: everyCar,
  atStep: ({ model, before, after }) => {
    const free = (state: State) =>
      at(state, model.slots.steam) !== steam.none &&
      at(state, model.slots.seat) === no &&
      of(state, model.slots.lock, model.car.spec.engine['throttle-lock']) === no;
    return free(after) && !free(before)
      ? `there is steam, nobody is in the driver’s seat, and ${nameOf(model, model.car.spec.engine['throttle-lock'])} is off`
      : undefined;
  },
};
