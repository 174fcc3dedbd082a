/** Telling what is wrong on the car from what somebody merely does not know. */
import type { Model } from './model';
import type { State } from './state';
import { yes } from './values';

/** A state in which everything is known that can be. */
export function allKnown(model: Model, state: State): State {
  const knowing = state.slice();
  knowing.fill(yes, model.factsFrom);
  return knowing;
}
