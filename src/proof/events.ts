/** What happened in a step, read off the state before and after it; what undoes facts is told in these terms. */
import type { PartId } from '../car/car';
import type { Act } from './effects/act';
import { at } from './state';
import { content, motion, no, pressure, steam, yes } from './values';

/** What an act brought about. Each question is answered when it is asked. */
export class Events {
  /** Undoing a fact changes nothing that decides what flows where, so this is asked once. */
  private knownFlowChange: boolean | undefined;

  constructor(readonly act: Act) {}

  /** A burner was lit. */
  get burnerLit(): boolean {
    return this.act.model.burners.some((id) => this.lit(id));
  }

  /** A main burner was lit. */
  get mainLit(): boolean {
    return this.act.model.mains.some((id) => this.lit(id));
  }

  /** A burner or a torch was lit. */
  get anythingLit(): boolean {
    for (const slot of this.act.model.slots.flame.values()) if (this.left(slot, no)) return true;
    return false;
  }

  get steamRose(): boolean {
    return this.left(this.act.model.slots.steam, steam.none);
  }

  get cooled(): boolean {
    return this.came(this.act.model.slots.steam, steam.none);
  }

  get stopped(): boolean {
    return this.came(this.act.model.slots.motion, motion.standing);
  }

  /** The car drove off. */
  get ran(): boolean {
    return this.came(this.act.model.slots.motion, motion.running);
  }

  get gotIn(): boolean {
    return this.left(this.act.model.slots.seat, no);
  }

  get anyValveMoved(): boolean {
    for (const slot of this.act.model.slots.valve.values()) if (this.changed(slot)) return true;
    return false;
  }

  get fuelFilled(): boolean {
    const { model, step } = this.act;
    return step.action === 'fill' && step.part !== undefined && model.fuelTanks.includes(step.part);
  }

  /** What lights the main burner went out, was lit anew, or may have: a tank was charged, vented or filled, or the car moved. */
  get igniterDisturbed(): boolean {
    const { model, draft, step } = this.act;
    const handled = step.action === 'charge' || step.action === 'vent' || this.fuelFilled;
    const moved = model.chargedTanks.some((id) => this.changed(model.slots.pressure.get(id)));
    return handled || moved || at(draft, model.slots.motion) !== motion.standing || this.igniterChanged;
  }

  /** Water was put into or let out of the boiler, or its level is said not to be known. */
  get levelDisturbed(): boolean {
    const { model, step, before, draft } = this.act;
    const { level } = model.slots;
    const boilerWork = step.part === 'boiler' && (step.action === 'fill' || step.action === 'drain');
    return (
      boilerWork ||
      step.action === 'blow-down' ||
      step.sets.level === 'not-known' ||
      (this.changed(level) && at(draft, level) < at(before, level))
    );
  }

  /** A length of the fuel line became live that was not. */
  get newlyLive(): boolean {
    const { flows, before, draft } = this.act;
    if (!this.flowChanged) return false;
    const was = flows.fuelPipes(before);
    const is = flows.fuelPipes(draft);
    if (was === is) return false;
    for (const pipe of is) if (!was.has(pipe)) return true;
    return false;
  }

  get waterGone(): boolean {
    const { waterTanks, slots } = this.act.model;
    return waterTanks.some((id) => this.came(slots.content.get(id), content.empty));
  }

  /** Fuel no longer comes to a main burner. */
  get mainCut(): boolean {
    const { model, flows, before, draft } = this.act;
    return (
      this.flowChanged &&
      model.mains.some((id) => flows.fed(before).includes(id) && !flows.fed(draft).includes(id))
    );
  }

  /** Something that decides what flows where stands otherwise than before. */
  get flowChanged(): boolean {
    this.knownFlowChange ??= this.anyFlowSlotChanged();
    return this.knownFlowChange;
  }

  private anyFlowSlotChanged(): boolean {
    for (let slot = 0; slot < this.act.model.flowSize; slot += 1) if (this.changed(slot)) return true;
    return false;
  }

  private get igniterChanged(): boolean {
    const { model } = this.act;
    return model.mains.some((main) => {
      const igniter = model.car.spec.burners[main]?.['lit-by'];
      if (igniter === undefined) return false;
      const control = model.slots.control.get(igniter);
      if (control !== undefined) return this.came(control, no);
      return model.burners.includes(igniter) && this.changed(model.slots.flame.get(igniter));
    });
  }

  /** Whether a byte is another than before. It is not looked at if the step has not set it. */
  changed(slot: number | undefined): boolean {
    return this.act.draft.hasChanged(slot, this.act.before);
  }

  /** Whether a byte has come to be something that it was not. */
  came(slot: number | undefined, value: number): boolean {
    return this.changed(slot) && at(this.act.draft, slot) === value;
  }

  /** Whether a byte has ceased to be something that it was. */
  left(slot: number | undefined, value: number): boolean {
    return this.changed(slot) && at(this.act.before, slot) === value;
  }

  private lit(id: PartId): boolean {
    return this.came(this.act.model.slots.flame.get(id), yes);
  }
}

/** Whether a tank was opened: its cap taken off or its pressure let off. */
export function tankOpened(events: Events, tank: PartId): boolean {
  const { slots } = events.act.model;
  return events.came(slots.cap.get(tank), no) || events.came(slots.pressure.get(tank), pressure.none);
}
