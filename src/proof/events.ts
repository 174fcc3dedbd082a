/** What happened in a step, read off the state before and after it; what undoes facts is told in these terms. */
import type { PartId } from '../car/car';
import type { Act } from './effects/act';
import { anyFlame, at, burns, of } from './state';
import { content, motion, no, pressure, steam } from './values';

/** What an act brought about. Each question is answered when it is asked. */
export class Events {
  constructor(readonly act: Act) {}

  /** A burner was lit. */
  get burnerLit(): boolean {
    const { model, before, draft } = this.act;
    return model.burners.some((id) => burns(model, draft, id) && !burns(model, before, id));
  }

  /** A main burner was lit. */
  get mainLit(): boolean {
    const { model, before, draft } = this.act;
    return model.mains.some((id) => burns(model, draft, id) && !burns(model, before, id));
  }

  /** A burner or a torch was lit. */
  get anythingLit(): boolean {
    const { model, before, draft } = this.act;
    return (
      anyFlame(model, draft) &&
      [...model.slots.flame.values()].some((slot) => at(draft, slot) !== no && at(before, slot) === no)
    );
  }

  get steamRose(): boolean {
    return (
      this.was(this.act.model.slots.steam) === steam.none &&
      this.is(this.act.model.slots.steam) !== steam.none
    );
  }

  get cooled(): boolean {
    return (
      this.was(this.act.model.slots.steam) !== steam.none &&
      this.is(this.act.model.slots.steam) === steam.none
    );
  }

  get stopped(): boolean {
    return (
      this.was(this.act.model.slots.motion) !== motion.standing &&
      this.is(this.act.model.slots.motion) === motion.standing
    );
  }

  /** The car drove off. */
  get ran(): boolean {
    return (
      this.was(this.act.model.slots.motion) !== motion.running &&
      this.is(this.act.model.slots.motion) === motion.running
    );
  }

  get fuelFilled(): boolean {
    const { model, step } = this.act;
    return step.action === 'fill' && step.part !== undefined && model.fuelTanks.includes(step.part);
  }

  /** What lights the main burner went out, was lit anew, or may have: a tank was charged, vented or filled, or the car moved. */
  get igniterDisturbed(): boolean {
    const { model, before, draft, step } = this.act;
    const handled = step.action === 'charge' || step.action === 'vent' || this.fuelFilled;
    const moved = model.chargedTanks.some(
      (id) => of(before, model.slots.pressure, id) !== of(draft, model.slots.pressure, id),
    );
    return handled || moved || this.is(model.slots.motion) !== motion.standing || this.igniterChanged;
  }

  /** Water was put into or let out of the boiler, or its level is said not to be known. */
  get levelDisturbed(): boolean {
    const { model, step } = this.act;
    const boilerWork = step.part === 'boiler' && (step.action === 'fill' || step.action === 'drain');
    return (
      boilerWork ||
      step.action === 'blow-down' ||
      step.sets.level === 'not-known' ||
      this.is(model.slots.level) < this.was(model.slots.level)
    );
  }

  /** A length of the fuel line became live that was not. */
  get newlyLive(): boolean {
    const { flows, before, draft } = this.act;
    const was = flows.in(before).fuel.pipes;
    const is = flows.in(draft).fuel.pipes;
    if (was === is) return false;
    for (const pipe of is) if (!was.has(pipe)) return true;
    return false;
  }

  get waterGone(): boolean {
    const { model, before, draft } = this.act;
    return model.waterTanks.some(
      (id) =>
        of(draft, model.slots.content, id) === content.empty &&
        of(before, model.slots.content, id) !== content.empty,
    );
  }

  private get igniterChanged(): boolean {
    const { model, before, draft } = this.act;
    return model.mains.some((main) => {
      const igniter = model.car.spec.burners[main]?.['lit-by'];
      if (igniter === undefined) return false;
      if (model.slots.control.has(igniter))
        return (
          of(before, model.slots.control, igniter) !== no && of(draft, model.slots.control, igniter) === no
        );
      return (
        model.burners.includes(igniter) && burns(model, before, igniter) !== burns(model, draft, igniter)
      );
    });
  }

  private was(slot: number): number {
    return at(this.act.before, slot);
  }

  private is(slot: number): number {
    return at(this.act.draft, slot);
  }
}

/** Whether a tank was opened: its cap taken off or its pressure let off. */
export function tankOpened({ act }: Events, tank: PartId): boolean {
  const { model, before, draft } = act;
  const capOff = of(before, model.slots.cap, tank) !== no && of(draft, model.slots.cap, tank) === no;
  return (
    capOff ||
    (of(before, model.slots.pressure, tank) !== pressure.none &&
      of(draft, model.slots.pressure, tank) === pressure.none)
  );
}
