import type { PartId } from '../../car/car';
import { duties } from '../../procedure/duties';
import { nameOf } from '../effects/act';
import type { Model } from '../model';
import { at, of } from '../state';
import { shut, steam } from '../values';
import { everyCar, type Rule } from './rule';

const known = new WeakMap<Model, readonly PartId[]>();

/** Taps that let the boiler’s water or steam out or in, or empty the tank it is fed from, and have no business open when it steams. */
function taps(model: Model): readonly PartId[] {
  const before = known.get(model);
  if (before !== undefined) return before;
  const { boiler } = model.car.spec;
  // a cock that is read under steam too is cracked for it, and may let the air out as steam is raised
  const steaming = new Set(boiler.level.flatMap((way) => (way.when === 'cold' ? [] : [way.gauge])));
  const coldWays = boiler.level.flatMap(({ gauge }) => (steaming.has(gauge) ? [] : [gauge]));
  const drains = ['water-drain', 'glass-drain'].flatMap((duty) => duties[duty]?.parts(model.car) ?? []);
  const found = [...boiler['blow-down'], boiler['fill-by'], ...coldWays, ...drains].flatMap((id) =>
    id !== undefined && model.slots.valve.has(id) ? [id] : [],
  );
  known.set(model, found);
  return found;
}

export const boilerTapsShut: Rule = {
  id: 'boiler-taps-shut',
  code: 'rule-boiler-taps-shut',
  group: 'water',
  title:
    'the taps by which the boiler is filled, emptied or read cold, and the drains of the water tanks, are shut before the main burner is lit, and its vent before it steams at pressure',
  reason: 'the boiler empties itself through an open tap as soon as it has pressure, with the fire on',
  mend: 'shut the tap before the main burner',
  asks: [],
  appliesTo: everyCar,
  atStep: ({ model, before, after, newlyLit }) => {
    const lit = newlyLit.some((id) => model.mains.includes(id));
    const tap = lit ? taps(model).find((id) => of(after, model.slots.valve, id) !== shut) : undefined;
    if (tap !== undefined) return `the main burner is lit while ${nameOf(model, tap)} is open`;
    const vent = model.car.spec.boiler['lets-air-out-by'];
    const up =
      at(after, model.slots.steam) === steam.working && at(before, model.slots.steam) !== steam.working;
    return up && vent !== undefined && of(after, model.slots.valve, vent) !== shut
      ? `the boiler comes to its working pressure with ${nameOf(model, vent)} open`
      : undefined;
  },
};
