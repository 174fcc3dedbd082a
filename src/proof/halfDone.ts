/** A step that is broken off in its middle. */
import type { Model } from './model';
import { at, type State } from './state';
import type { Moment } from './trace';
import { cracked } from './values';

/** When in a step something begins. */
export type WhenInStep = 'before' | 'half done' | 'done';

/** The step broken off: the valve between shut and open, the pump worked, nothing lit yet. Nothing if it has no middle. */
export function halfDone(model: Model, { step, before, during, after }: Moment): State | undefined {
  if (during !== after) return during;
  const slot = step.part === undefined ? undefined : model.slots.valve.get(step.part);
  if (slot === undefined || at(before, slot) === at(after, slot)) return undefined;
  const half = before.draft();
  half.set(slot, cracked);
  return half;
}
