/** Doing one step: its effects, what they bring about, what is known afterwards. */
import type { FactKey } from '../procedure/facts';
import { facts } from '../procedure/facts';
import type { Step } from '../procedure/procedure';
import type { Action } from '../spec/schema/change';
import type { Act, Effect, Hitch } from './effects/act';
import { lock, move, place, release, remove, set, stop, unlock } from './effects/controls';
import { catchFire, light, putOut } from './effects/flames';
import { wait, warm } from './effects/heat';
import { walk } from './effects/people';
import { applySets } from './effects/sets';
import { settle } from './effects/settle';
import { blowDown, charge, drain, fill, pump, vent } from './effects/stores';
import { crackValve, openValve, shutValve } from './effects/valves';
import type { Flows } from './flows';
import { applyLapses, expire } from './lapses';
import type { Model } from './model';
import { at, igniterBits, type State } from './state';
import { contraryTo } from './truths';
import { content, level, no, pressure, yes } from './values';

/** A step done. */
export interface Applied {
  readonly before: State;
  /** How things are while the step is done, where that differs from its end. */
  readonly during: State;
  readonly after: State;
  /** Burners that the step was to light. */
  readonly lighting: readonly string[];
  readonly hitches: readonly Hitch[];
}

const nothing: Effect = () => undefined;

/** What each action does by itself. Looking, listening, calling and writing change nothing but what is known. */
const effects: Readonly<Record<Action, Effect>> = {
  look: nothing,
  listen: nothing,
  check: nothing,
  read: nothing,
  dip: nothing,
  oil: nothing,
  call: nothing,
  stand: nothing,
  write: nothing,
  open: openValve,
  shut: shutValve,
  crack: crackValve,
  fill,
  drain,
  pump,
  charge,
  vent,
  'blow-down': blowDown,
  warm,
  wait,
  light,
  'put-out': putOut,
  lock,
  unlock,
  set,
  release,
  place,
  remove,
  move,
  stop,
};

const quiet: ReadonlySet<Action> = new Set([
  'look',
  'listen',
  'check',
  'read',
  'dip',
  'oil',
  'call',
  'stand',
  'write',
]);

/** A step that moves nothing: somebody looks, listens or says something. */
export function isQuiet(step: Step): boolean {
  if (!quiet.has(step.action)) return false;
  for (const _ in step.sets) return false;
  return true;
}

/** Do a step in a state. */
export function apply(model: Model, flows: Flows, before: State, step: Step): Applied {
  const act: Act = {
    model,
    flows,
    step,
    before,
    draft: before.draft(),
    hitches: [],
    lighting: [],
    during: undefined,
  };
  walk(act);
  if (isQuiet(step)) expire(act);
  else {
    effects[step.action](act);
    applySets(act);
    if (act.lighting.length > 0) catchFire(act);
    settle(act);
    applyLapses(act);
  }
  if (step.proves.length > 0) learn(act);
  return {
    before,
    during: act.during ?? act.draft,
    after: act.draft,
    lighting: act.lighting,
    hitches: act.hitches,
  };
}

/** Note what the step proves, unless what it expects to see cannot be seen. */
function learn(act: Act): void {
  const { model, step, draft } = act;
  for (const key of step.proves) {
    if (!(key in facts)) continue;
    const fact = key as FactKey;
    const contrary = contraryTo(act, fact, step.part ?? '');
    if (contrary !== undefined) {
      act.hitches.push({ kind: 'contrary', what: contrary });
      continue;
    }
    const slot = model.slots.fact.get(facts[fact].of === 'car' ? fact : `${fact}/${step.part ?? ''}`);
    if (slot !== undefined)
      draft.set(slot, fact === 'igniter-proven' ? at(draft, slot) | igniterBits(model, step.part) : yes);
    resolve(act, fact);
  }
}

/** What was doubtful until it was read is so from now on. */
function resolve({ model, step, draft }: Act, fact: FactKey): void {
  const { slots } = model;
  const tank = step.part ?? '';
  const to = (slot: number | undefined, value: number) => {
    if (slot !== undefined) draft.set(slot, value);
  };
  if (fact === 'level-known') to(slots.level, level.enough);
  if (fact === 'water-enough' || fact === 'fuel-enough') to(slots.content.get(tank), content.enough);
  if (fact === 'pressure-in-band') to(slots.pressure.get(tank), pressure.charged);
  if (fact === 'boiler-cool') to(slots.ranDry, no);
  if (fact === 'burner-aired' && at(draft, slots.vapour) !== no) to(slots.vapour, no);
}
