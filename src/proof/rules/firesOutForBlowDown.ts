import { nameOf } from '../effects/act';
import { anyFlame, flamesIn, knows, of } from '../state';
import { shut } from '../values';
import { everyCar, type Rule, type StepView } from './rule';

/** Whether the step opens a blow-down tap or blows down. */
export function blowsDown({ model, step, before, during, after }: StepView): boolean {
  if (step.action === 'blow-down') return true;
  return model.car.spec.boiler['blow-down'].some(
    (tap) =>
      of(before, model.slots.valve, tap) === shut &&
      (of(after, model.slots.valve, tap) !== shut || of(during, model.slots.valve, tap) !== shut),
  );
}

export const firesOutForBlowDown: Rule = {
  id: 'fires-out-for-blow-down',
  code: 'rule-fires-out-for-blow-down',
  group: 'water',
  title: 'every fire is out, and seen to be out, before the boiler is blown down or drained',
  reason: 'blowing down takes the water off the tubes while the fire is under them',
  mend: 'put out every burner, and look and listen, before a blow-down tap is opened',
  asks: ['fires-out'],
  appliesTo: everyCar,
  atStep: (view) => {
    const { model, step, before } = view;
    const drains = step.action === 'drain' && step.part === 'boiler';
    if (!drains && !blowsDown(view)) return undefined;
    if (anyFlame(model, before))
      return `${flamesIn(model, before)
        .map((id) => nameOf(model, id))
        .join(' and ')} burns`;
    return knows(model, before, 'fires-out') ? undefined : 'nobody has looked that every fire is out';
  },
};
