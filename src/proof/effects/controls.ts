/** Locks, controls, motor pumps, things put in place, and the car’s own motion. */
import { setBrake } from '../held';
import { at, of } from '../state';
import { motion, no, shut, steam, yes } from '../values';
import { type Act, cannot, type Effect, idle, nameOf, put } from './act';
import { lockOn } from './valves';

/** Put a lock on. */
export const lock: Effect = (act) => {
  const { model, step, before } = act;
  const slot = step.part === undefined ? undefined : model.slots.lock.get(step.part);
  if (slot === undefined || step.part === undefined) return;
  const held = model.car.spec.locks[step.part]?.locks;
  if (held !== undefined && of(before, model.slots.valve, held) !== shut)
    cannot(act, `${nameOf(model, held)} is not shut`);
  else put(act, slot, yes);
};

/** Take a lock off. */
export const unlock: Effect = (act) => {
  const { model, step, before } = act;
  const slot = step.part === undefined ? undefined : model.slots.lock.get(step.part);
  if (slot === undefined) return;
  if (at(before, slot) === no) idle(act, `${nameOf(model, step.part)} is off already`);
  put(act, slot, no);
};

function turn(value: number): Effect {
  return ({ model, step, draft }) => {
    const { part } = step;
    if (part === undefined) return;
    const slot = model.slots.control.get(part) ?? model.slots.pump.get(part);
    if (slot !== undefined) draft.set(slot, value);
  };
}

export const set = turn(yes);
export const release = turn(no);

function carry(value: number): Effect {
  return (act) => {
    const { model, step } = act;
    if (step.part === undefined) return;
    put(act, model.slots.placed.get(step.part), value);
    if (model.car.spec.equipment[step.part]?.kind === 'chocks') put(act, model.slots.chocked, value);
  };
}

export const place = carry(yes);
export const remove = carry(no);

/** What keeps the car from moving under its own steam, a clause; nothing if it can move. */
export function heldBy({ model, draft }: Act): string | undefined {
  const { car, slots } = model;
  const { throttle } = car.spec.engine;
  const brake = setBrake(model, draft);
  if (lockOn(model, draft, throttle) !== undefined) return 'the throttle is locked';
  if (of(draft, slots.valve, throttle) === shut) return 'the throttle is shut';
  if (at(draft, slots.steam) === steam.none) return 'there is no steam';
  if (at(draft, slots.chocked) !== no) return 'the wheels are chocked';
  return brake === undefined ? undefined : `${nameOf(model, brake)} is set`;
}

/** Let the car move. A step that ends with the car standing pushes it by hand. */
export const move: Effect = (act) => {
  if (act.step.sets.motion === undefined) setMotion(act, motion.creeping);
};

/** Set how the car moves; from standing it can only move if nothing holds it. */
export function setMotion(act: Act, to: number): void {
  const held =
    to !== motion.standing && at(act.before, act.model.slots.motion) === motion.standing
      ? heldBy(act)
      : undefined;
  if (held !== undefined) cannot(act, held);
  else put(act, act.model.slots.motion, to);
}

export const stop: Effect = (act) => put(act, act.model.slots.motion, motion.standing);
