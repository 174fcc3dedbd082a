/** Lighting a burner on a cold boiler: the moment before which a day’s checks must be done. */
import { anyFlame, at } from '../state';
import { steam } from '../values';
import type { StepView } from './rule';

/** Whether the step lights a burner on a boiler without pressure. */
export function lightsOnColdBoiler({ model, before, newlyLit }: StepView): boolean {
  return newlyLit.length > 0 && at(before, model.slots.steam) === steam.none;
}

/** Whether the step lights the first flame of any kind on a boiler without pressure. */
export function firstFlame({ model, before, after }: StepView): boolean {
  return at(before, model.slots.steam) === steam.none && anyFlame(model, after) && !anyFlame(model, before);
}

/** Whether the step lights a main burner on a boiler without pressure. */
export function lightsMainOnColdBoiler(view: StepView): boolean {
  return lightsOnColdBoiler(view) && view.newlyLit.some((id) => view.model.mains.includes(id));
}
