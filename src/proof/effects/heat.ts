/** Warming vaporizers and letting time pass. */
import type { PartId } from '../../car/car';
import type { Model } from '../model';
import { at, isLit, of, type State } from '../state';
import { no } from '../values';
import { type Act, cannot, type Effect, nameOf } from './act';

/** Whether something heats a vaporizer now: a burner or torch that burns, a heater that is switched on. */
export function isHeated(model: Model, state: State, vaporizer: PartId): boolean {
  return (model.car.spec.vaporizers?.[vaporizer]?.['heated-by'] ?? []).some(
    (heater) => isLit(model, state, heater) || of(state, model.slots.control, heater) !== no,
  );
}

/** Add minutes of heat to every vaporizer that is heated; `undefined` is as long as it takes. */
export function soak(act: Act, minutes: number | undefined): void {
  const { model, draft } = act;
  for (const [id, slot] of model.slots.heat) {
    const needed = model.heatNeeded.get(id) ?? 1;
    if (isHeated(model, draft, id))
      draft.set(slot, Math.min(needed, minutes === undefined ? needed : at(draft, slot) + minutes));
  }
}

/** Heat a vaporizer for the minutes the step gives, or as long as it needs. */
export const warm: Effect = (act) => {
  const { model, step, draft } = act;
  const { part } = step;
  if (part !== undefined && model.slots.heat.has(part) && !isHeated(model, draft, part))
    cannot(act, `nothing heats ${nameOf(model, part)}`);
  if (typeof step.sets.minutes !== 'number') soak(act, undefined);
};

/** Wait: for the minutes the step gives, or until what it waits for is seen. */
export const wait: Effect = (act) => {
  if (typeof act.step.sets.minutes !== 'number') soak(act, undefined);
};
