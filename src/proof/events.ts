/** What happened in a step, read off the state before and after it; what undoes facts is told in these terms. */
import type { PartId } from '../car/car';
import type { Act } from './effects/act';
import { anyFlame, at, burns, of } from './state';
import { content, motion, no, pressure, steam } from './values';

/** What happened. */
export interface Events {
  readonly act: Act;
  readonly valveMoved: (valve: PartId) => boolean;
  readonly burnerLit: boolean;
  readonly anythingLit: boolean;
  readonly igniterDisturbed: boolean;
  readonly mainLit: boolean;
  readonly steamRose: boolean;
  readonly cooled: boolean;
  readonly levelDisturbed: boolean;
  readonly started: boolean;
  readonly stopped: boolean;
  readonly ran: boolean;
  readonly newlyLive: boolean;
  readonly waterGone: boolean;
  readonly fuelFilled: boolean;
}

/** What an act brought about. */
export function eventsOf(act: Act): Events {
  const { model, flows, before, draft, step } = act;
  const { slots } = model;
  const was = (slot: number) => at(before, slot);
  const is = (slot: number) => at(draft, slot);
  const newly = (id: PartId) => burns(model, draft, id) && !burns(model, before, id);
  const burnerLit = model.burners.some(newly);
  const anythingLit = burnerLit || (anyFlame(model, draft) && [...slots.flame.keys()].some(newly));
  const fuelFilled = step.action === 'fill' && step.part !== undefined && model.fuelTanks.includes(step.part);
  const pressureMoved = model.chargedTanks.some((id) => of(before, slots.pressure, id) !== of(draft, slots.pressure, id));
  const charged = step.action === 'charge' || step.action === 'vent';
  return {
    act, burnerLit, anythingLit, fuelFilled,
    valveMoved: (valve) => of(before, slots.valve, valve) !== of(draft, slots.valve, valve),
    igniterDisturbed: fuelFilled || pressureMoved || charged || igniterChanged(act) || is(slots.motion) !== motion.standing,
    mainLit: model.mains.some(newly),
    steamRose: was(slots.steam) === steam.none && is(slots.steam) !== steam.none,
    cooled: was(slots.steam) !== steam.none && is(slots.steam) === steam.none,
    levelDisturbed: disturbsLevel(act),
    started: was(slots.motion) === motion.standing && is(slots.motion) !== motion.standing,
    stopped: was(slots.motion) !== motion.standing && is(slots.motion) === motion.standing,
    ran: was(slots.motion) !== motion.running && is(slots.motion) === motion.running,
    get newlyLive() {
      return hasNewPipes(flows.in(before).fuel.pipes, flows.in(draft).fuel.pipes);
    },
    waterGone: model.waterTanks.some((id) => of(draft, slots.content, id) === content.empty && of(before, slots.content, id) !== content.empty),
  };
}

/** A pilot that went out or was lit anew, or an electric igniter that was switched off. */
function igniterChanged({ model, before, draft }: Act): boolean {
  return model.mains.some((main) => {
    const igniter = model.car.spec.burners[main]?.['lit-by'];
    if (igniter === undefined) return false;
    if (model.slots.control.has(igniter)) return of(before, model.slots.control, igniter) !== no && of(draft, model.slots.control, igniter) === no;
    return model.burners.includes(igniter) && burns(model, before, igniter) !== burns(model, draft, igniter);
  });
}

function disturbsLevel({ model, step, before, draft }: Act): boolean {
  const boilerWork = step.part === 'boiler' && (step.action === 'fill' || step.action === 'drain');
  return boilerWork || step.action === 'blow-down' || step.sets.level === 'not-known' || at(draft, model.slots.level) < at(before, model.slots.level);
}

function hasNewPipes(before: ReadonlySet<number>, after: ReadonlySet<number>): boolean {
  if (before === after) return false;
  for (const pipe of after) if (!before.has(pipe)) return true;
  return false;
}

/** Whether a tank was opened: its cap taken off or its pressure let off. */
export function tankOpened({ act }: Events, tank: PartId): boolean {
  const { model, before, draft } = act;
  const capOff = of(before, model.slots.cap, tank) !== no && of(draft, model.slots.cap, tank) === no;
  return capOff || (of(before, model.slots.pressure, tank) !== pressure.none && of(draft, model.slots.pressure, tank) === pressure.none);
}
