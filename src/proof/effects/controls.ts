/** Locks, controls, motor pumps, things put in place, and the car’s own motion. */
import { at, of } from '../state';
import { motion, no, shut, steam, yes } from '../values';
import { cannot, type Effect, idle, nameOf, put } from './act';
import { lockOn } from './valves';

/** Put a lock on. */
export const lock: Effect = (act) => {
  const { model, step, before } = act;
  const slot = step.part === undefined ? undefined : model.slots.lock.get(step.part);
  if (slot === undefined || step.part === undefined) return;
  const held = model.car.spec.locks[step.part]?.locks;
  if (held !== undefined && of(before, model.slots.valve, held) !== shut) cannot(act, `${nameOf(model, held)} is not shut`);
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
    if (slot !== undefined) draft[slot] = value;
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

/** Let the car move under its own steam; a step that ends with the car standing pushes it by hand. */
export const move: Effect = (act) => {
  const { model, before, step } = act;
  if (step.sets.motion === 'standing') return;
  const { car, slots } = model;
  const brake = Object.keys(car.spec.controls).find((id) => car.spec.controls[id]?.kind === 'parking-brake' && of(before, slots.control, id) !== no);
  if (lockOn(model, before, car.spec.engine.throttle) !== undefined) cannot(act, 'the throttle is locked');
  else if (at(before, slots.steam) === steam.none) cannot(act, 'there is no steam');
  else if (at(before, slots.chocked) !== no) cannot(act, 'the wheels are chocked');
  else if (brake !== undefined) cannot(act, `${nameOf(model, brake)} is set`);
  else put(act, slots.motion, motion.creeping);
};

export const stop: Effect = (act) => put(act, act.model.slots.motion, motion.standing);
