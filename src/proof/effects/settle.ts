/** What follows by nature from what a step did: starved flames go out, opened tanks lose their pressure, unheated metal cools. */
import { at, burns, isLit, of } from '../state';
import { burningOut, content, level, motion, no, pressure, shut, steam, yes } from '../values';
import type { Act } from './act';
import { isHeated } from './heat';

/** Let the car settle after a step. */
export function settle(act: Act): void {
  losePressure(act);
  starve(act);
  cool(act);
  soilBurners(act);
  runDry(act);
  flowThroughSuperheater(act);
  use(act);
}

function losePressure({ model, draft }: Act): void {
  for (const [tank, slot] of model.slots.pressure) {
    const vent = model.car.spec.tanks[tank]?.['vent-valve'];
    if (at(draft, slot) === pressure.none) continue;
    const opened =
      at(draft, model.slots.cap.get(tank)) === no ||
      (vent !== undefined && of(draft, model.slots.valve, vent) !== shut);
    if (opened) draft.set(slot, pressure.none);
  }
}

/** A flame without fuel goes out at once, or burns on for a while where the spec says that it does. */
function starve({ model, flows, draft }: Act): void {
  const lit = model.burners.filter((id) => isLit(model, draft, id));
  if (lit.length === 0) return;
  const fed = flows.fed(draft);
  for (const id of lit)
    if (!fed.includes(id)) draft.set(model.slots.flame.get(id) ?? 0, model.burnOn.has(id) ? burningOut : no);
}

function cool({ model, draft }: Act): void {
  for (const [id, slot] of model.slots.heat)
    if (at(draft, slot) > 0 && !isHeated(model, draft, id)) draft.set(slot, 0);
}

/** Fuel that runs into a burner which does not burn for certain lies there, and its vapour hangs there. */
function soilBurners({ model, flows, draft }: Act): void {
  if (!flows.fed(draft).some((id) => !isLit(model, draft, id))) return;
  draft.set(model.slots.vapour, yes);
  draft.set(model.slots.spilt, yes);
}

function runDry({ model, draft }: Act): void {
  if (model.mains.some((id) => burns(model, draft, id)) && at(draft, model.slots.level) <= level.low)
    draft.set(model.slots.ranDry, yes);
}

function flowThroughSuperheater({ model, flows, draft }: Act): void {
  if (!model.mains.some((id) => burns(model, draft, id))) draft.set(model.slots.flowed, no);
  else if (at(draft, model.slots.steam) !== steam.none && flows.reaches('steam', 'engine', draft))
    draft.set(model.slots.flowed, yes);
}

/** On the road water and fuel are used, so that what was read in a tank is no longer true. */
function use({ model, draft, before }: Act): void {
  const { motion: slot } = model.slots;
  if (!draft.hasChanged(slot, before) || at(draft, slot) !== motion.running) return;
  for (const slot of model.slots.content.values())
    if (at(draft, slot) === content.enough) draft.set(slot, content.doubtful);
}
