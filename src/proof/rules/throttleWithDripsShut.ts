import { at, knows, of } from '../state';
import { shut, steam } from '../values';
import { everyCar, type Rule } from './rule';

export const throttleWithDripsShut: Rule = {
  id: 'throttle-with-drips-shut',
  code: 'rule-throttle-with-drips-shut',
  group: 'steam',
  title: 'steam is let to an undrained engine only with the drips open',
  reason: 'steam turns to water on cold metal, and the water has nowhere to go',
  mend: 'open the drips before the throttle',
  asks: ['chest-drained'],
  appliesTo: everyCar,
  atStep: ({ model, before, after }) => {
    const { throttle, drips } = model.car.spec.engine;
    const opened =
      of(before, model.slots.valve, throttle) === shut && of(after, model.slots.valve, throttle) !== shut;
    if (!opened || at(after, model.slots.steam) === steam.none || knows(model, after, 'chest-drained'))
      return undefined;
    return drips.every((id) => of(after, model.slots.valve, id) === shut)
      ? 'the throttle is opened with the drips shut and the engine not drained'
      : undefined;
  },
};
