/** Opening, shutting and cracking valves. */
import type { PartId } from '../../car/car';
import type { Model } from '../model';
import { at, of, type State } from '../state';
import { cracked, no, open, shut } from '../values';
import { cannot, type Effect, idle, nameOf, put } from './act';

/** The lock that holds a part, if it is on. */
export function lockOn(model: Model, state: State, part: PartId): PartId | undefined {
  return Object.entries(model.car.spec.locks).find(
    ([id, lock]) => lock.locks === part && of(state, model.slots.lock, id) !== no,
  )?.[0];
}

function move(position: number): Effect {
  return (act) => {
    const { model, step, before } = act;
    const slot = step.part === undefined ? undefined : model.slots.valve.get(step.part);
    if (slot === undefined || step.part === undefined) return;
    const was = at(before, slot);
    const lock = position === shut ? undefined : lockOn(model, before, step.part);
    if (lock !== undefined) {
      cannot(act, `${nameOf(model, lock)} is on`);
      return;
    }
    if (was === position && position !== shut)
      idle(act, `${nameOf(model, step.part)} is ${position === open ? 'open' : 'cracked'} already`);
    put(act, slot, position);
  };
}

export const openValve = move(open);
export const shutValve = move(shut);
export const crackValve = move(cracked);
