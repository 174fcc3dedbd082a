/** What undoes each fact, as the list of facts says it in words. */
import type { PartId } from '../car/car';
import { type FactKey, facts } from '../procedure/facts';
import type { Act } from './effects/act';
import { Events, tankOpened } from './events';
import type { Model } from './model';
import { at, isHot, of, type State } from './state';
import { content, level, no, pressure, shut, steam, yes } from './values';

/** Value of a fact that holds for one more step. */
const expiring = 2;

type Lapse = (events: Events, part: PartId) => boolean;

const anythingLit: Lapse = (events) => events.anythingLit;
const burnerLit: Lapse = (events) => events.burnerLit || events.steamRose;
const cooled: Lapse = (events) => events.cooled;
const levelDisturbed: Lapse = (events) => events.levelDisturbed || events.cooled;
const waterGone: Lapse = (events) => events.waterGone;
const stopped: Lapse = (events) => events.stopped;
const used: Lapse = ({ act: { draft, model } }, tank) =>
  of(draft, model.slots.content, tank) !== content.enough;

/** What undoes a fact within a day; a fact that is not listed holds until the car is put away. */
const lapses: Readonly<Partial<Record<FactKey, Lapse>>> = {
  'extinguisher-at-hand': ({ act: { step, model } }) =>
    step.action === 'remove' && model.car.spec.equipment[step.part ?? '']?.kind === 'extinguisher',
  'water-for-burns': (events) => events.ran,
  'no-loose-fuel': (events) =>
    events.fuelFilled ||
    (at(events.act.draft, events.act.model.slots.spilt) !== no &&
      at(events.act.before, events.act.model.slots.spilt) === no),
  'gauge-at-zero': (events) => events.steamRose,
  'boiler-at-zero': burnerLit,
  'boiler-cool': burnerLit,
  'oil-feeding': cooled,
  'water-enough': used,
  'level-known': levelDisturbed,
  'level-twice': levelDisturbed,
  'glass-true': ({ act: { model, draft } }, gauge) =>
    (model.car.spec.gauges[gauge]?.cocks ?? []).some((cock) => of(draft, model.slots.valve, cock) === shut),
  'feed-ready': waterGone,
  'feeds-against-pressure': (events, pump) => waterGone(events, pump) || events.cooled,
  'fuel-enough': used,
  'tank-vented': ({ act: { model, draft } }, tank) => of(draft, model.slots.pressure, tank) !== pressure.none,
  'tank-bonded': ({ act: { model, before, draft } }, tank) =>
    of(before, model.slots.cap, tank) === no && of(draft, model.slots.cap, tank) === yes,
  'pressure-in-band': (events, tank) =>
    isNotCharged(events, tank) ||
    (events.act.step.action === 'fill' && events.act.step.part === tank) ||
    events.ran,
  'pressure-holds': (events, tank) => tankOpened(events, tank) || isNotCharged(events, tank),
  'burner-pressure-good': ({ act: { model, draft } }) => fuelPumpsStopped(model, draft),
  // What becomes live as a burner is lit leads to its flame, and is watched.
  'joints-dry': (events) => events.newlyLive && events.act.lighting.length === 0,
  'vaporizer-hot': ({ act: { model, draft } }, vaporizer) => !isHot(model, draft, vaporizer),
  'igniter-proven': (events) => events.igniterDisturbed,
  'burner-aired': ({ act: { model, flows, before, draft } }) =>
    model.mains.some((id) => flows.in(before).fed.includes(id) && !flows.in(draft).fed.includes(id)),
  'fires-out': anythingLit,
  'no-flame-near': anythingLit,
  'way-clear': stopped,
  'steam-gauge-alive': cooled,
  'no-steam-leaks': cooled,
  'cut-out-proven': cooled,
  'chest-drained': stopped,
  'brakes-tried': stopped,
  'somebody-with-car': ({ act: { model, before, draft } }) =>
    at(before, model.slots.seat) === no && at(draft, model.slots.seat) !== no,
  'water-out': ({ act: { step } }) => step.action === 'fill',
  'valves-parked': ({ act: { before, draft, model } }) =>
    model.valves.some((id) => of(before, model.slots.valve, id) !== of(draft, model.slots.valve, id)),
};

/** The car has a motor pump for fuel, and it stands. */
function fuelPumpsStopped(model: Model, state: State): boolean {
  const pumps = Object.entries(model.car.spec.pumps).filter(
    ([, pump]) => pump.moves === 'fuel' && pump.drive === 'electric',
  );
  return pumps.length > 0 && pumps.every(([id]) => of(state, model.slots.pump, id) === no);
}

function isNotCharged({ act: { model, draft } }: Events, tank: PartId): boolean {
  return of(draft, model.slots.pressure, tank) !== pressure.charged;
}

/** Take back the facts that the act has undone. */
export function applyLapses(act: Act): void {
  const events = new Events(act);
  const { draft, model } = act;
  for (const { fact, part, slot } of factList(model)) {
    if (draft[slot] === no) continue;
    if (fact === 'burner-front-clear') clearFront(act, events, slot);
    else if (fact === 'blow-down-clear') clearOutlets(act, slot);
    else if (lapses[fact]?.(events, part ?? '') === true) draft[slot] = no;
  }
}

/** Take back what holds for one more step only, after a step that moves nothing. */
export function expire(act: Act): void {
  const { model, before, draft } = act;
  const front = model.slots.fact.get('burner-front-clear');
  const outlets = model.slots.fact.get('blow-down-clear');
  if (front !== undefined && before[front] === expiring) draft[front] = no;
  if (outlets !== undefined && before[outlets] === expiring) clearOutlets(act, outlets);
}

/** Somebody walking up undoes it; so does the end of the step after the lighting. */
function clearFront(act: Act, events: Events, slot: number): void {
  if (at(act.before, slot) === expiring || at(act.draft, act.model.slots.burnerFront) !== no)
    act.draft[slot] = no;
  else if (events.mainLit) act.draft[slot] = expiring;
}

/** It holds from tap to tap; the first step that is for something else ends the blow-down. */
function clearOutlets({ model, step, before, draft }: Act, slot: number): void {
  const onTap = step.part !== undefined && model.car.spec.boiler['blow-down'].includes(step.part);
  if (at(draft, model.slots.outlets) !== no || (at(before, slot) === expiring && !onTap)) draft[slot] = no;
  else if (onTap) draft[slot] = expiring;
}

interface FactSlot {
  readonly fact: FactKey;
  readonly part: PartId | undefined;
  readonly slot: number;
}

const listed = new WeakMap<Model, readonly FactSlot[]>();

/** Every fact of a car with its byte. */
function factList(model: Model): readonly FactSlot[] {
  const known = listed.get(model);
  if (known !== undefined) return known;
  const list = [...model.factSlots].flatMap(([fact, slots]) =>
    slots.map(({ part, slot }) => ({ fact, part, slot })),
  );
  listed.set(model, list);
  return list;
}

/** What is still so in the morning because nobody was there to change it. */
const overNight: ReadonlySet<FactKey> = new Set([
  'fires-out',
  'boiler-at-zero',
  'boiler-cool',
  'water-out',
  'log-written',
]);

/**
 * The car after a night: cold, its pressures and levels no longer known, and nothing known that has to be found out anew
 * each day. What holds longer than a day is kept.
 */
export function afterNight(model: Model, evening: State): State {
  const { slots } = model;
  const morning = evening.slice();
  for (const { fact, slot } of factList(model))
    if (facts[fact].lapses !== '' && !overNight.has(fact)) morning[slot] = no;
  for (const slot of slots.heat.values()) morning[slot] = 0;
  for (const slot of slots.content.values())
    if (at(morning, slot) === content.enough) morning[slot] = content.doubtful;
  for (const slot of slots.pressure.values())
    if (at(morning, slot) !== pressure.none) morning[slot] = pressure.unknown;
  morning[slots.steam] = steam.none;
  if (at(morning, slots.level) === level.enough) morning[slots.level] = level.doubtful;
  for (const slot of [
    slots.driverAt,
    slots.helperAt,
    slots.burnerFront,
    slots.outlets,
    slots.ranDry,
    slots.away,
    slots.outdoors,
    slots.vapour,
  ])
    morning[slot] = no;
  for (const slot of slots.placed.values()) morning[slot] = no;
  return morning;
}
