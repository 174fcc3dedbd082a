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

/** Undoes a fact wherever it is known. */
type Lapse = (events: Events) => boolean;

/** Undoes a fact of one part. */
type PartLapse = (events: Events, part: PartId) => boolean;

const anythingLit: Lapse = (events) => events.anythingLit;
const burnerLit: Lapse = (events) => events.burnerLit || events.steamRose;
const cooled: Lapse = (events) => events.cooled;
const levelDisturbed: Lapse = (events) => events.levelDisturbed || events.cooled;
const waterGone: Lapse = (events) => events.waterGone;
const stopped: Lapse = (events) => events.stopped;
const filled: Lapse = ({ act: { step } }) => step.action === 'fill';
/** It is known only of a tank that is full enough, so that nothing lapses as long as the content stays as it is. */
const used: PartLapse = (events, tank) =>
  events.left(events.act.model.slots.content.get(tank), content.enough);

/** What undoes a fact within a day, on whatever part; a fact that is listed nowhere holds until the car is put away. */
const lapses: Readonly<Partial<Record<FactKey, Lapse>>> = {
  'extinguisher-at-hand': ({ act: { step, model } }) =>
    step.action === 'remove' && model.car.spec.equipment[step.part ?? '']?.kind === 'extinguisher',
  'water-for-burns': (events) => events.ran,
  'no-loose-fuel': (events) => events.fuelFilled || events.left(events.act.model.slots.spilt, no),
  'gauge-at-zero': (events) => events.steamRose,
  'boiler-at-zero': burnerLit,
  'boiler-cool': burnerLit,
  'oil-feeding': cooled,
  'level-known': levelDisturbed,
  'level-twice': levelDisturbed,
  'burner-pressure-good': ({ act: { model, draft } }) => fuelPumpsStopped(model, draft),
  // What becomes live as a burner is lit leads to its flame, and is watched.
  'joints-dry': (events) => events.act.lighting.length === 0 && events.newlyLive,
  'igniter-proven': (events) => events.igniterDisturbed,
  'burner-aired': (events) => events.mainCut,
  'fires-out': anythingLit,
  'no-flame-near': anythingLit,
  'way-clear': stopped,
  'steam-gauge-alive': cooled,
  'no-steam-leaks': cooled,
  'cut-out-proven': cooled,
  'chest-drained': stopped,
  'brakes-tried': stopped,
  'somebody-with-car': (events) => events.gotIn,
  'water-out': filled,
  'water-pipes-empty': filled,
  'valves-parked': (events) => events.anyValveMoved,
};

/** What undoes a fact of one part and leaves it of others. */
const lapsesOfPart: Readonly<Partial<Record<FactKey, PartLapse>>> = {
  'water-enough': used,
  'fuel-enough': used,
  'glass-true': (events, gauge) => {
    const { car, slots } = events.act.model;
    return (car.spec.gauges[gauge]?.cocks ?? []).some((cock) => events.came(slots.valve.get(cock), shut));
  },
  'feed-ready': (events, pump) => waterGone(events) || coilPumpStopped(events, pump),
  'feeds-against-pressure': (events) => waterGone(events) || events.cooled,
  'pump-empty': filled,
  'tank-vented': ({ act: { model, draft } }, tank) => of(draft, model.slots.pressure, tank) !== pressure.none,
  'tank-bonded': (events, tank) => events.came(events.act.model.slots.cap.get(tank), yes),
  'pressure-in-band': (events, tank) =>
    isNotCharged(events, tank) ||
    (events.act.step.action === 'fill' && events.act.step.part === tank) ||
    events.ran,
  'pressure-holds': (events, tank) => tankOpened(events, tank) || isNotCharged(events, tank),
  'vaporizer-hot': ({ act: { model, draft } }, vaporizer) => !isHot(model, draft, vaporizer),
};

/** The motor pump that feeds a coil stands: that it moved water before it was switched off says nothing of the next time. */
function coilPumpStopped({ act: { model, draft } }: Events, pump: PartId): boolean {
  const { boiler, pumps } = model.car.spec;
  return (
    boiler.kind === 'monotube' &&
    pumps[pump]?.drive === 'electric' &&
    of(draft, model.slots.pump, pump) === no
  );
}

/** The car has a motor pump for fuel, and it stands. */
function fuelPumpsStopped(model: Model, state: State): boolean {
  const pumps = motorFuelPumps(model);
  return pumps.length > 0 && pumps.every((id) => of(state, model.slots.pump, id) === no);
}

function motorFuelPumps(model: Model): readonly PartId[] {
  const known = motorPumps.get(model);
  if (known !== undefined) return known;
  const found = Object.entries(model.car.spec.pumps).flatMap(([id, { moves, drive }]) =>
    moves === 'fuel' && drive === 'electric' ? [id] : [],
  );
  motorPumps.set(model, found);
  return found;
}

const motorPumps = new WeakMap<Model, readonly PartId[]>();

function isNotCharged({ act: { model, draft } }: Events, tank: PartId): boolean {
  return of(draft, model.slots.pressure, tank) !== pressure.charged;
}

/** Take back the facts that the act has undone. */
export function applyLapses(act: Act): void {
  const events = new Events(act);
  const { draft, model } = act;
  const { anywhere, onPart, front, outlets } = lapsesIn(model);
  if (front !== undefined && at(draft, front) !== no) clearFront(act, events, front);
  if (outlets !== undefined && at(draft, outlets) !== no) clearOutlets(act, outlets);
  // not asked first whether a fact is known: what a step does is to depend on as few bytes as can be
  for (const { lapse, slots } of anywhere) if (lapse(events)) for (const slot of slots) draft.set(slot, no);
  for (const { lapse, part, slot } of onPart) if (lapse(events, part)) draft.set(slot, no);
}

/** Take back what holds for one more step only, after a step that moves nothing. */
export function expire(act: Act): void {
  const { model, before, draft } = act;
  const front = model.slots.fact.get('burner-front-clear');
  const outlets = model.slots.fact.get('blow-down-clear');
  if (front !== undefined && at(before, front) === expiring) draft.set(front, no);
  if (outlets !== undefined && at(before, outlets) === expiring) clearOutlets(act, outlets);
}

/** Somebody walking up undoes it; so does the end of the step after the lighting. */
function clearFront(act: Act, events: Events, slot: number): void {
  if (at(act.before, slot) === expiring || at(act.draft, act.model.slots.burnerFront) !== no)
    act.draft.set(slot, no);
  else if (events.mainLit) act.draft.set(slot, expiring);
}

/** It holds from tap to tap; the first step that is for something else ends the blow-down. */
function clearOutlets({ model, step, before, draft }: Act, slot: number): void {
  const onTap = step.part !== undefined && model.car.spec.boiler['blow-down'].includes(step.part);
  if (at(draft, model.slots.outlets) !== no || (at(before, slot) === expiring && !onTap)) draft.set(slot, no);
  else if (onTap) draft.set(slot, expiring);
}

/** The bytes of a car's facts by what undoes them, so that each thing that can have happened is asked once. */
interface LapsesOfCar {
  readonly anywhere: readonly { readonly lapse: Lapse; readonly slots: readonly number[] }[];
  readonly onPart: readonly { readonly lapse: PartLapse; readonly part: PartId; readonly slot: number }[];
  /** Two facts that hold for one more step. */
  readonly front: number | undefined;
  readonly outlets: number | undefined;
}

const listed = new WeakMap<Model, LapsesOfCar>();

function lapsesIn(model: Model): LapsesOfCar {
  const known = listed.get(model);
  if (known !== undefined) return known;
  const anywhere = new Map<Lapse, number[]>();
  const onPart = [...model.factSlots].flatMap(([fact, slots]) => {
    const [lapse, ofPart] = [lapses[fact], lapsesOfPart[fact]];
    if (lapse !== undefined)
      anywhere.set(lapse, [...(anywhere.get(lapse) ?? []), ...slots.map(({ slot }) => slot)]);
    return ofPart === undefined
      ? []
      : slots.map(({ part, slot }) => ({ lapse: ofPart, part: part ?? '', slot }));
  });
  const list = {
    anywhere: [...anywhere].map(([lapse, slots]) => ({ lapse, slots })),
    onPart,
    front: model.slots.fact.get('burner-front-clear'),
    outlets: model.slots.fact.get('blow-down-clear'),
  };
  listed.set(model, list);
  return list;
}

/** What is still so in the morning because nobody was there to change it. */
const overNight: ReadonlySet<FactKey> = new Set([
  'fires-out',
  'boiler-at-zero',
  'boiler-cool',
  'water-out',
  'pump-empty',
  'water-pipes-empty',
  'log-written',
]);

/**
 * The car after a night: cold, its pressures and levels no longer known, and nothing known that has to be found out anew
 * each day. What holds longer than a day is kept.
 */
export function afterNight(model: Model, evening: State): State {
  const { slots } = model;
  const morning = evening.draft();
  for (const [fact, all] of model.factSlots)
    if (facts[fact].lapses !== '' && !overNight.has(fact)) for (const { slot } of all) morning.set(slot, no);
  for (const slot of slots.heat.values()) morning.set(slot, 0);
  for (const slot of slots.content.values())
    if (at(morning, slot) === content.enough) morning.set(slot, content.doubtful);
  for (const slot of slots.pressure.values())
    if (at(morning, slot) !== pressure.none) morning.set(slot, pressure.unknown);
  morning.set(slots.steam, steam.none);
  if (at(morning, slots.level) === level.enough) morning.set(slots.level, level.doubtful);
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
    morning.set(slot, no);
  for (const slot of slots.placed.values()) morning.set(slot, no);
  return morning;
}
