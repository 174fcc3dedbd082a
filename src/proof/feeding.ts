/** Whether the boiler is fed, whatever is done meanwhile. */
import { feedsBoiler } from './effects/stores';
import type { Flows } from './flows';
import type { Model } from './model';
import { at, of, type State } from './state';
import { motion, no } from './values';

/** A pump that feeds beside the step at hand: driven by steam that reaches it, by the engine while that turns, by a motor that is on, or worked by somebody who was set to it. */
export function isFeeding(model: Model, flows: Flows, state: State, pump: string): boolean {
  const { drive } = model.car.spec.pumps[pump] ?? {};
  if (drive === 'engine' && at(state, model.slots.motion) === motion.standing) return false;
  if ((drive === 'electric' || drive === 'hand') && of(state, model.slots.pump, pump) === no) return false;
  return feedsBoiler(model, flows, state, pump);
}
