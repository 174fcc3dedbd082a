/** What stepping through a procedure makes of the car, and telling it in words. */
import type { Procedure, Step } from '../procedure/procedure';
import type { Applied } from './apply';
import { nameOf } from './effects/act';
import type { Deed, Learnt } from './lessons';
import type { Model } from './model';
import { at, flamesIn, type State } from './state';
import { contents, levels, motions, positions, pressures, steams } from './values';

/** What doing a step is, in all states that are alike to it. */
export interface Doing extends Pick<Applied, 'lighting' | 'hitches'> {
  readonly after: Deed;
  /** Nothing if all is meanwhile as it is at the end. */
  readonly during: Deed | undefined;
}

/** One step of a trace. */
export interface Moment extends Applied {
  readonly step: Step;
  /** What it was done by, and what that depends on. */
  readonly doing: Learnt<Doing>;
}

/** A procedure stepped through from a state. */
export interface Trace {
  readonly procedure: Procedure;
  readonly start: State;
  readonly moments: readonly Moment[];
  readonly end: State;
}

/** What differs between two states, each a clause such as `pilot valve (P1): shut → open`. Facts are told by their keys. */
export function differences(model: Model, before: State, after: State): readonly string[] {
  const found: string[] = [];
  for (const { name, slot, words } of namedSlots(model)) {
    const was = at(before, slot);
    const is = at(after, slot);
    if (was !== is) found.push(`${name}: ${words(was)} → ${words(is)}`);
  }
  return found;
}

/** Everything of a state that is not at nothing, each a clause; facts left out. */
export function describe(model: Model, state: State): readonly string[] {
  return namedSlots(model).flatMap(({ name, slot, words }) =>
    slot >= model.factsFrom || at(state, slot) === 0 ? [] : [`${name}: ${words(at(state, slot))}`],
  );
}

interface NamedSlot {
  readonly name: string;
  readonly slot: number;
  readonly words: (value: number) => string;
}

const named = new WeakMap<Model, readonly NamedSlot[]>();

const from = (list: readonly string[]) => (value: number) => list[value] ?? String(value);

function namedSlots(model: Model): readonly NamedSlot[] {
  const known = named.get(model);
  if (known !== undefined) return known;
  const { slots } = model;
  const each = (map: ReadonlyMap<string, number>, what: string, words: (value: number) => string) =>
    [...map].map(([id, slot]) => ({ name: `${nameOf(model, id).replace(/^the /, '')}${what}`, slot, words }));
  const one = (name: string, slot: number, words: (value: number) => string) => ({ name, slot, words });
  const yesNo = from(['no', 'yes']);
  const where = (value: number) =>
    value === 0 ? 'nowhere in particular' : (model.car.places.get(model.places[value - 1] ?? '')?.name ?? '');
  const all = [
    ...each(slots.valve, '', from(positions)),
    ...each(slots.pump, '', from(['stopped', 'running'])),
    ...each(slots.content, '', from(contents)),
    one('car', slots.motion, from(motions)),
    one('steam', slots.steam, from(steams)),
    one('level', slots.level, from(levels)),
    ...each(slots.pressure, ', pressure', from(pressures)),
    ...each(slots.cap, ', cap on', yesNo),
    ...each(slots.flame, ', lit', from(['no', 'yes', 'burning on'])),
    ...each(slots.heat, ', minutes of heat', String),
    ...each(slots.lock, ', on', yesNo),
    ...each(slots.control, ', set', yesNo),
    ...each(slots.placed, ', in place', yesNo),
    one('driver in the seat', slots.seat, yesNo),
    one('driver at', slots.driverAt, where),
    one('helper at', slots.helperAt, where),
    one('somebody at the burner front', slots.burnerFront, yesNo),
    one('somebody at the blow-down outlets', slots.outlets, yesNo),
    one('chocked', slots.chocked, yesNo),
    one('out of doors', slots.outdoors, yesNo),
    one('vapour in a burner', slots.vapour, yesNo),
    one('fuel spilt', slots.spilt, yesNo),
    one('boiler ran dry', slots.ranDry, yesNo),
    one('superheater flowed', slots.flowed, yesNo),
    one('people away', slots.away, yesNo),
    ...[...slots.fact].map(([key, slot]) => one(key, slot, from(['no', 'known', 'known for one more step']))),
  ];
  named.set(model, all);
  return all;
}

/** A trace as text: each step, what it changed, what did not go as written. */
export function showTrace(model: Model, trace: Trace): string {
  const lines = [`${trace.procedure.title}`];
  trace.moments.forEach(({ step, before, after, hitches }, index) => {
    lines.push(`${String(index + 1).padStart(3)}. ${step.say}`);
    for (const difference of differences(model, before, after)) lines.push(`       ${difference}`);
    for (const hitch of hitches) lines.push(`     ! ${hitch.what}`);
  });
  const flames = flamesIn(model, trace.end).map((id) => nameOf(model, id));
  lines.push(`     at the end: ${flames.length === 0 ? 'no flame' : `${flames.join(', ')} lit`}`);
  return `${lines.join('\n')}\n`;
}
