import { isHeld, parkingBrakes } from '../held';
import { at, type State } from '../state';
import { no, steam } from '../values';
import type { Rule } from './rule';

export const carHeld: Rule = {
  id: 'car-held',
  code: 'rule-car-held',
  group: 'steam',
  title:
    'the car is chocked or its parking brake is set whenever there is steam and the driver’s seat is empty',
  reason: 'a throttle that leaks a little moves a car that nothing holds',
  mend: 'set the parking brake, or chock the wheels, before the driver leaves the seat',
  asks: [],
  onQuietSteps: true,
  appliesTo: (model) => parkingBrakes(model).length > 0,
  atStep: ({ model, before, after }) => {
    const { slots } = model;
    const loose = (state: State) =>
      at(state, slots.steam) !== steam.none && at(state, slots.seat) === no && !isHeld(model, state);
    return loose(after) && !loose(before)
      ? 'there is steam, nobody is in the driver’s seat, and nothing holds the car'
      : undefined;
  },
};
