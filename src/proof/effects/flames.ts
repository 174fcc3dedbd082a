/** Lighting and putting out. */
import type { PartId } from '../../car/car';
import type { Model } from '../model';
import { at, burns, burnsOn, isLit, of, type State } from '../state';
import { no, yes } from '../values';
import { type Act, cannot, type Effect, idle, nameOf, put } from './act';

/** Light a burner, or a torch, which is then in the hand. A burner is lit at the end of the step, once the step’s settings are made. */
export const light: Effect = (act) => {
  const { model, step, before } = act;
  if (step.part === undefined) return;
  if (model.burners.includes(step.part)) {
    act.lighting.push(step.part);
    return;
  }
  const slot = model.slots.flame.get(step.part) ?? model.slots.control.get(step.part);
  if (slot !== undefined && at(before, slot) !== no) idle(act, `${nameOf(model, step.part)} is lit already`);
  put(act, slot, yes);
  put(act, model.slots.placed.get(step.part), no);
};

/**
 * Put out a torch, or see that a burner is out. A burner goes out by its fuel; as long as fuel comes to it, it burns on,
 * and whoever looks sees it. One that burns on with its fuel shut is not put out by looking: it is waited for.
 */
export const putOut: Effect = (act) => {
  const { model, flows, step, draft } = act;
  if (step.part === undefined) return;
  if (
    model.burners.includes(step.part) &&
    burns(model, draft, step.part) &&
    flows.fed(draft).includes(step.part)
  ) {
    act.hitches.push({ kind: 'contrary', what: `${nameOf(model, step.part)} still burns` });
  } else if (!burnsOn(model, draft, step.part)) put(act, model.slots.flame.get(step.part), no);
};

/** Wait at a burner, or within sight of it, until it is seen to be out. One to which fuel comes is never out. */
export function seeBurntOut(act: Act, burner: PartId): void {
  const { model, flows, draft } = act;
  if (!burns(model, draft, burner)) return;
  if (flows.fed(draft).includes(burner))
    act.hitches.push({ kind: 'contrary', what: `${nameOf(model, burner)} still burns` });
  else put(act, model.slots.flame.get(burner), no);
}

/** Whether what lights a burner works at the moment. A match or anything else that is no torch is taken to work. */
export function canBeLit(model: Model, state: State, burner: PartId): boolean {
  const igniter = model.car.spec.burners[burner]?.['lit-by'];
  if (igniter === undefined) return true;
  if (model.slots.flame.has(igniter)) return isLit(model, state, igniter);
  return !model.slots.control.has(igniter) || of(state, model.slots.control, igniter) !== no;
}

/** Let the burners catch that are lit in this step. */
export function catchFire(act: Act): void {
  const { model, flows, draft } = act;
  for (const burner of act.lighting) {
    if (isLit(model, draft, burner)) {
      if (act.step.action === 'light') idle(act, `${nameOf(model, burner)} burns already`);
    } else if (!flows.fed(draft).includes(burner)) cannot(act, `no fuel reaches ${nameOf(model, burner)}`);
    else if (!canBeLit(model, draft, burner))
      cannot(
        act,
        `${nameOf(model, model.car.spec.burners[burner]?.['lit-by'])} does not work or does not burn`,
      );
    else put(act, model.slots.flame.get(burner), yes);
  }
}
