import { anyFlame, at, knows } from '../state';
import { no, steam } from '../values';
import { everyCar, type Rule } from './rule';

export const notLeftAlone: Rule = {
  id: 'not-left-alone',
  code: 'rule-not-left-alone',
  group: 'people',
  title: 'at a stop the car is left only with somebody who knows it, as long as it has steam or a flame',
  reason: 'steam makes itself and the pressure climbs while nobody looks',
  mend: 'end the stop with somebody who says that they have the car',
  asks: ['somebody-with-car'],
  appliesTo: everyCar,
  atEnd: ({ model, state, procedure }) => {
    const stop = procedure.phase === 'short-stop' || procedure.phase === 'taking-water';
    const live = at(state, model.slots.steam) !== steam.none || anyFlame(model, state);
    return stop && live && at(state, model.slots.seat) === no && !knows(model, state, 'somebody-with-car')
      ? 'the car has steam or a flame, the seat is empty, and nobody has been asked to stay'
      : undefined;
  },
};
