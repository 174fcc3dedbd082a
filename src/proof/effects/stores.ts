/** Filling, draining, charging and venting tanks and the boiler; working pumps. */
import type { PartId } from '../../car/car';
import { carrying, live } from '../../car/flow';
import { filledByTransfer } from '../../car/waterPumps';
import type { Flows } from '../flows';
import type { Model } from '../model';
import { at, of, type State } from '../state';
import { content, level, no, open, pressure, shut, steam, yes } from '../values';
import { type Act, cannot, type Effect, nameOf, put } from './act';

/**
 * Whether a pump, worked now, sends water into the boiler: water comes to it, the way on is open, its bypass is not wide open, and
 * steam comes to it if it is driven by steam of its own.
 */
export function feedsBoiler(model: Model, flows: Flows, state: State, pump: PartId): boolean {
  const { bypass, drive, moves } = model.car.spec.pumps[pump] ?? {};
  if (moves !== 'water' || (bypass !== undefined && of(state, model.slots.valve, bypass) === open))
    return false;
  const worked = working(model, state, pump);
  if (drive === 'steam' && !flows.reaches('steam', pump, worked)) return false;
  return flows.reaches('water', pump, worked) && flows.leads(pump, 'boiler', 'water', worked);
}

/** The state with one pump worked. */
export function working(model: Model, state: State, pump: PartId): State {
  const slot = model.slots.pump.get(pump);
  if (slot === undefined || at(state, slot) !== no) return state;
  const worked = state.draft();
  worked.set(slot, yes);
  return worked;
}

/** The pumps of air or fuel that put pressure on a tank. */
function chargers(model: Model, tank: PartId): readonly PartId[] {
  const { car } = model;
  const air = Object.entries(car.spec.pumps).flatMap(([id, pump]) =>
    pump.moves === 'air' && pump.charges === tank ? [id] : [],
  );
  const all = {
    open: new Set(model.valves),
    passing: new Set(Object.keys(car.spec.devices)),
    pumping: new Set<PartId>(),
  };
  const fuel = Object.entries(car.spec.pumps).flatMap(([id, pump]) => {
    const reached =
      pump.moves !== 'fuel'
        ? undefined
        : live(
            car,
            { ...all, pumping: new Set([id]), sources: new Set([id]) },
            carrying('main fuel', 'pilot fuel'),
          );
    return reached?.parts.has(tank) === true ? [id] : [];
  });
  return [...air, ...fuel];
}

function isVented(model: Model, state: State, tank: PartId): boolean {
  const valve = model.car.spec.tanks[tank]?.['vent-valve'];
  return valve !== undefined && of(state, model.slots.valve, valve) !== shut;
}

/** Work a pump by hand, or fill the tank the step names through its pump. */
export const pump: Effect = (act) => {
  const { model, step } = act;
  if (step.part === undefined) return;
  if (model.slots.pressure.has(step.part)) chargeTank(act, step.part);
  else if (step.part in model.car.spec.pumps) workPump(act, step.part);
};

function workPump(act: Act, id: PartId): void {
  const { model, flows, draft } = act;
  const each = model.car.spec.pumps[id];
  act.during = working(model, draft, id);
  if (each?.moves === 'water' && !model.feedPumps.includes(id)) pumpOver(act, id);
  else if (each?.moves === 'water') {
    const dry = model.waterTanks.every((tank) => of(draft, model.slots.content, tank) === content.empty);
    if (!feedsBoiler(model, flows, draft, id)) {
      if (!dry) cannot(act, `no water goes from ${nameOf(model, id)} to the boiler`);
    } else if (at(draft, model.slots.level) < level.doubtful) put(act, model.slots.level, level.doubtful);
  }
  if (each?.moves === 'air' && each.charges !== undefined) chargeTank(act, each.charges);
  if (each?.moves === 'fuel') pumpFuel(act, id);
}

/** Move water from one tank into another. */
function pumpOver(act: Act, id: PartId): void {
  const { model, flows, draft } = act;
  const worked = working(model, draft, id);
  const filled = filledByTransfer(model.car, id).filter((tank) => flows.leads(id, tank, 'water', worked));
  const steamDriven = model.car.spec.pumps[id]?.drive === 'steam';
  if (steamDriven && !flows.reaches('steam', id, worked))
    cannot(act, `no steam comes to ${nameOf(model, id)}`);
  else if (!flows.reaches('water', id, worked)) cannot(act, `no water comes to ${nameOf(model, id)}`);
  else if (filled.length === 0) cannot(act, `the way on from ${nameOf(model, id)} is shut`);
  for (const tank of filled) put(act, model.slots.content.get(tank), content.enough);
}

function pumpFuel(act: Act, id: PartId): void {
  const { model, flows, draft } = act;
  const worked = working(model, draft, id);
  if (!flows.reaches('fuel', id, worked)) {
    cannot(act, `no fuel comes to ${nameOf(model, id)}`);
    return;
  }
  for (const tank of model.fuelTanks) {
    if (!flows.leads(id, tank, 'fuel', worked)) continue;
    put(act, model.slots.content.get(tank), content.enough);
    if (isVented(model, draft, tank))
      cannot(
        act,
        `${nameOf(model, model.car.spec.tanks[tank]?.['vent-valve'])} is open, so no pressure builds`,
      );
    else put(act, model.slots.pressure.get(tank), pressure.charged);
  }
}

/** Put pressure on a tank. */
export const charge: Effect = (act) => {
  const { model, step } = act;
  if (step.part !== undefined && model.slots.pressure.has(step.part)) chargeTank(act, step.part);
  else pump(act);
};

/** Whether a pump, worked now, puts something into a tank: the way on is open, and fuel comes to it if it moves fuel. */
function pressesInto({ model, flows, draft }: Act, id: PartId, tank: PartId): boolean {
  const { moves, bypass } = model.car.spec.pumps[id] ?? {};
  if (moves === 'air') return flows.leads(id, tank, 'air', draft);
  if (bypass !== undefined && of(draft, model.slots.valve, bypass) !== shut) return false;
  return flows.reaches('fuel', id, working(model, draft, id)) && flows.leads(id, tank, 'fuel', draft);
}

function chargeTank(act: Act, tank: PartId): void {
  const { model, draft } = act;
  const pumps = chargers(model, tank);
  const open = pumps.filter((id) => pressesInto(act, id, tank));
  if (of(draft, model.slots.cap, tank) === no) cannot(act, `the cap of ${nameOf(model, tank)} is off`);
  else if (isVented(model, draft, tank))
    cannot(
      act,
      `${nameOf(model, model.car.spec.tanks[tank]?.['vent-valve'])} is open, so no pressure builds`,
    );
  else if (pumps.length > 0 && open.length === 0)
    cannot(act, `the way from ${nameOf(model, pumps[0])} to ${nameOf(model, tank)} is shut`);
  else {
    put(act, model.slots.pressure.get(tank), pressure.charged);
    if (at(draft, model.slots.content.get(tank)) === content.empty)
      put(act, model.slots.content.get(tank), content.doubtful);
  }
}

/** Let the pressure off a tank. */
export const vent: Effect = (act) => {
  const { model, step, draft } = act;
  if (step.part === undefined) return;
  const valve = model.slots.valve.get(step.part);
  if (valve !== undefined) put(act, valve, open);
  const by = model.car.spec.tanks[step.part]?.['vent-valve'];
  if (
    by !== undefined &&
    of(draft, model.slots.valve, by) === shut &&
    of(draft, model.slots.pressure, step.part) !== pressure.none
  )
    cannot(act, `${nameOf(model, by)} is shut, so that no pressure is let off`);
  else put(act, model.slots.pressure.get(step.part), pressure.none);
};

/** Fill a tank through its filler, or the boiler through its hose joint. */
export const fill: Effect = (act) => {
  const { model, step, before } = act;
  const { part } = step;
  if (part === undefined) return;
  if (part === 'boiler') {
    const by = model.car.spec.boiler['fill-by'];
    if (by !== undefined && model.slots.valve.has(by) && of(before, model.slots.valve, by) === shut)
      cannot(act, `${nameOf(model, by)} is shut, so no water goes in`);
    else put(act, model.slots.level, level.doubtful);
    return;
  }
  const off = of(before, model.slots.cap, part) === no || step.sets.cap === 'off';
  if (!off && model.fuelTanks.includes(part)) cannot(act, `the cap of ${nameOf(model, part)} is on`);
  else put(act, model.slots.content.get(part), content.enough);
};

/** Empty a tank or the boiler. */
export const drain: Effect = (act) => {
  const { model, step } = act;
  if (step.part === 'boiler') {
    put(act, model.slots.level, level.empty);
    return;
  }
  const valve = step.part === undefined ? undefined : model.slots.valve.get(step.part);
  if (valve !== undefined) put(act, valve, open);
  else put(act, step.part === undefined ? undefined : model.slots.content.get(step.part), content.empty);
};

/** Blow the boiler down: through the tap the step names if it names one, and through those that are open already. */
export const blowDown: Effect = (act) => {
  const { model, step, draft } = act;
  const named = step.part === undefined ? undefined : model.slots.valve.get(step.part);
  if (named !== undefined) {
    const during = draft.draft();
    during.set(named, open);
    act.during = during;
  } else if (!model.car.spec.boiler['blow-down'].some((tap) => of(draft, model.slots.valve, tap) !== shut))
    cannot(act, 'no blow-down tap is open');
  if (at(draft, model.slots.steam) === steam.none) cannot(act, 'there is no pressure to blow down with');
  put(act, model.slots.level, level.doubtful);
};
