/** When a fact can be found true: what has to be so on the car for a step to see what it expects to see. */
import type { PartId } from '../car/car';
import type { FactKey } from '../procedure/facts';
import { type Act, nameOf } from './effects/act';
import { canBeLit } from './effects/flames';
import { feedsBoiler } from './effects/stores';
import { anyFlame, at, burnsOn, flamesIn, isHot, isLit, of } from './state';
import { content, level, motion, no, pressure, shut, steam } from './values';

/** What is seen when the level is too low; the order of the day says what is done then. */
export const lowLevel = 'the boiler’s water is below its working level';

/** Why a fact cannot be found true, a clause in plain words; nothing if it can. */
type Contrary = (act: Act, part: PartId) => string | undefined;

const needsSteam: Contrary = ({ model, draft }) =>
  at(draft, model.slots.steam) === steam.none ? 'there is no steam' : undefined;
const needsNoSteam: Contrary = ({ model, draft }) =>
  at(draft, model.slots.steam) === steam.none ? undefined : 'there is pressure in the boiler';
const needsNoFlame: Contrary = ({ model, draft }) =>
  anyFlame(model, draft)
    ? `${flamesIn(model, draft)
        .map((id) => nameOf(model, id))
        .join(' and ')} burns`
    : undefined;
const needsContent: Contrary = ({ model, draft }, tank) =>
  of(draft, model.slots.content, tank) === content.empty ? `${nameOf(model, tank)} is empty` : undefined;
const needsThrottle: Contrary = (act, part) =>
  needsSteam(act, part) ??
  (of(act.draft, act.model.slots.valve, act.model.car.spec.engine.throttle) === shut
    ? 'the throttle is shut'
    : undefined);

const contraries: Readonly<Partial<Record<FactKey, Contrary>>> = {
  'no-loose-fuel': ({ model, draft }) =>
    at(draft, model.slots.spilt) === no ? undefined : 'fuel has run where it should not',
  'valve-as-parked': ({ model, before }, valve) => {
    const parked = model.car.spec.valves[valve]?.parked;
    const isShut = of(before, model.slots.valve, valve) === shut;
    return isShut === (parked === 'shut')
      ? undefined
      : `${nameOf(model, valve)} is ${isShut ? 'shut' : 'open'}`;
  },
  'brakes-hold': ({ model, draft }, control) =>
    of(draft, model.slots.control, control) === no &&
    model.car.spec.controls[control]?.kind === 'parking-brake'
      ? `${nameOf(model, control)} is not set`
      : undefined,
  'gauge-at-zero': needsNoSteam,
  'boiler-at-zero': needsNoSteam,
  'boiler-cool': (act, part) => needsNoSteam(act, part) ?? needsNoFlame(act, part),
  'water-enough': needsContent,
  'fuel-enough': needsContent,
  'level-known': levelCanBeRead,
  'level-twice': levelCanBeRead,
  'glass-true': ({ model, draft }, gauge) =>
    shutCock(
      model.car.spec.gauges[gauge]?.cocks,
      (id) => of(draft, model.slots.valve, id),
      (id) => nameOf(model, id),
    ),
  'feed-ready': canFeed,
  'feeds-against-pressure': (act, pump) => needsSteam(act, pump) ?? canFeed(act, pump),
  'tank-vented': ({ model, draft }, tank) =>
    of(draft, model.slots.pressure, tank) === pressure.none
      ? undefined
      : `${nameOf(model, tank)} is still under pressure`,
  'pressure-in-band': needsPressure,
  'pressure-holds': needsPressure,
  'vaporizer-hot': ({ model, draft }, vaporizer) =>
    isHot(model, draft, vaporizer)
      ? undefined
      : `${nameOf(model, vaporizer)} has not been heated for its time`,
  'igniter-proven': igniterWorks,
  'flame-good': ({ model, draft }, burner) =>
    isLit(model, draft, burner) ? undefined : `${nameOf(model, burner)} does not burn`,
  'burner-aired': ({ model, flows, draft }) => {
    const fed = model.mains.find((id) => flows.fed(draft).includes(id));
    if (fed !== undefined) return `fuel still comes to ${nameOf(model, fed)}`;
    const burning = model.mains.find((id) => burnsOn(model, draft, id));
    return burning === undefined ? undefined : `${nameOf(model, burning)} still burns`;
  },
  'fires-out': needsNoFlame,
  'no-flame-near': needsNoFlame,
  'burner-front-clear': ({ model, draft }) =>
    at(draft, model.slots.burnerFront) === no ? undefined : 'somebody stands in front of the burner',
  'blow-down-clear': ({ model, draft }) =>
    at(draft, model.slots.outlets) === no ? undefined : 'somebody stands by the blow-down outlets',
  'air-driven-out': needsSteam,
  'steam-gauge-alive': needsSteam,
  'no-steam-leaks': needsSteam,
  'cut-out-proven': ({ model, draft }, device) =>
    model.car.spec.devices[device]?.kind !== 'steam-automatic' ||
    at(draft, model.slots.steam) === steam.working
      ? undefined
      : 'the boiler is not at its working pressure',
  'safety-valve-proven': needsSteam,
  'superheater-flowed': needsThrottle,
  'brakes-tried': ({ model, draft, before }) =>
    at(draft, model.slots.motion) === motion.standing && at(before, model.slots.motion) === motion.standing
      ? 'the car does not move'
      : undefined,
  'valves-parked': ({ model, draft }) => {
    const odd = model.valves.find(
      (id) => (of(draft, model.slots.valve, id) === shut) !== (model.car.spec.valves[id]?.parked === 'shut'),
    );
    return odd === undefined
      ? undefined
      : `${nameOf(model, odd)} is ${of(draft, model.slots.valve, odd) === shut ? 'shut' : 'open'}`;
  },
};

/**
 * A level that is too low is seen to be. On a boiler without a joint for a hose it is read by feeding until it is
 * right, so that a pump which feeds makes it so.
 */
function levelCanBeRead({ model, flows, draft, step }: Act): string | undefined {
  const blocked = shutCock(
    model.car.spec.gauges[step.part ?? '']?.cocks,
    (id) => of(draft, model.slots.valve, id),
    (id) => nameOf(model, id),
  );
  if (blocked !== undefined) return blocked;
  if (at(draft, model.slots.level) > level.low) return undefined;
  const fedUp = model.car.spec.boiler['fill-by'] === undefined && at(draft, model.slots.ranDry) === no;
  const pumps = model.feedPumps.filter((id) => model.car.spec.pumps[id]?.drive !== 'engine');
  return fedUp && pumps.some((id) => feedsBoiler(model, flows, draft, id)) ? undefined : lowLevel;
}

function shutCock(
  cocks: readonly PartId[] | undefined,
  position: (id: PartId) => number,
  name: (id: PartId) => string,
): string | undefined {
  const blocked = cocks?.find((id) => position(id) === shut);
  return blocked === undefined ? undefined : `${name(blocked)} is shut, so that the glass shows nothing`;
}

function canFeed({ model, flows, draft, during }: Act, pump: PartId): string | undefined {
  return feedsBoiler(model, flows, during ?? draft, pump)
    ? undefined
    : `no water goes from ${nameOf(model, pump)} to the boiler`;
}

function needsPressure({ model, draft }: Act, tank: PartId): string | undefined {
  return of(draft, model.slots.pressure, tank) === pressure.none
    ? `there is no pressure on ${nameOf(model, tank)}`
    : undefined;
}

/** The igniter that is looked at; every one of them, if the step is not about one. */
function igniterWorks({ model, draft, step }: Act): string | undefined {
  const looked = model.igniters.includes(step.part ?? '')
    ? model.mains.filter((id) => model.car.spec.burners[id]?.['lit-by'] === step.part)
    : model.mains;
  const dead = looked.find((id) => !canBeLit(model, draft, id));
  return dead === undefined
    ? undefined
    : `${nameOf(model, model.car.spec.burners[dead]?.['lit-by'])} does not burn or work`;
}

/** Why a step cannot see what the fact says; nothing if it can, or if the fact is about things the model does not hold. */
export function contraryTo(act: Act, fact: FactKey, part: PartId): string | undefined {
  return contraries[fact]?.(act, part);
}
