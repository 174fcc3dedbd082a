import { at, type State } from '../state';
import { motion, no } from '../values';
import { everyCar, type Rule } from './rule';

export const driverStaysWithMovingCar: Rule = {
  id: 'driver-in-seat',
  code: 'rule-driver-in-seat',
  group: 'people',
  title: 'the driver is in the seat whenever the car moves',
  reason: 'nobody else can shut the throttle in time',
  mend: 'let the driver get in before the car moves, and stop it before the driver gets out',
  asks: [],
  onQuietSteps: true,
  appliesTo: everyCar,
  atStep: ({ model, before, after }) => {
    const loose = (state: State) =>
      at(state, model.slots.motion) !== motion.standing && at(state, model.slots.seat) === no;
    return loose(after) && !loose(before) ? 'the car moves and the driver’s seat is empty' : undefined;
  },
};
