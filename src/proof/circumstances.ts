/** Whether what an emergency says of the car at its beginning and at its end is so. */
import type { Beginning, Ending } from '../procedure/circumstances';
import { nameOf } from './effects/act';
import { isFeeding } from './feeding';
import type { Flows } from './flows';
import { isHeld } from './held';
import type { Model } from './model';
import { anyFlame, at, burns, flamesIn, isLit, of, type State } from './state';
import { motion, no, shut, steam } from './values';

type IsSo = (model: Model, flows: Flows, state: State) => boolean;

const steamUp: IsSo = ({ slots }, _, state) => at(state, slots.steam) !== steam.none;
const throttleOpen = ({ car, slots }: Model, state: State) =>
  of(state, slots.valve, car.spec.engine.throttle) !== shut;

const isSo: Readonly<Record<Beginning, IsSo>> = {
  'flame-or-steam': (model, flows, state) => anyFlame(model, state) || steamUp(model, flows, state),
  'steam-up': steamUp,
  'steam-at-work': ({ slots }, _, state) => at(state, slots.steam) === steam.working,
  burning: (model, _, state) => model.burners.some((id) => burns(model, state, id)),
  'main-burning': (model, _, state) => model.mains.some((id) => burns(model, state, id)),
  'fuel-on': (_, flows, state) => flows.fed(state).length > 0,
  'main-fuel-on': ({ mains }, flows, state) => flows.fed(state).some((id) => mains.includes(id)),
  'no-unlit-fuel': (model, flows, state) => flows.fed(state).every((id) => isLit(model, state, id)),
  pulling: (model, flows, state) => steamUp(model, flows, state) && throttleOpen(model, state),
  moving: ({ slots }, _, state) => at(state, slots.motion) !== motion.standing,
};

/** Whether all of these are so in a state. */
export function areSo(model: Model, flows: Flows, state: State, which: readonly Beginning[]): boolean {
  return which.every((each) => isSo[each](model, flows, state));
}

/** What is so that must not be, a clause in plain words; nothing if all is well. */
type Undone = (model: Model, flows: Flows, state: State) => string | undefined;

const undone: Readonly<Record<Ending, Undone>> = {
  'no-flame': (model, _, state) => {
    const lit = flamesIn(model, state)[0];
    return lit === undefined ? undefined : `${nameOf(model, lit)} burns`;
  },
  'no-fuel': (model, flows, state) => fed(model, flows.fed(state)),
  'no-main-fuel': (model, flows, state) =>
    fed(
      model,
      flows.fed(state).filter((id) => model.mains.includes(id)),
    ),
  'no-spark': (model, _, state) => {
    const on = model.igniters.find((id) => of(state, model.slots.control, id) !== no);
    return on === undefined ? undefined : `${nameOf(model, on)} is on`;
  },
  'no-feed': (model, flows, state) => {
    // whoever was at a hand pump has let go of it
    const feeding = Object.entries(model.car.spec.pumps).find(
      ([id, { drive }]) => drive !== 'hand' && isFeeding(model, flows, state, id),
    )?.[0];
    return feeding === undefined ? undefined : `${nameOf(model, feeding)} feeds the boiler`;
  },
  'throttle-shut': (model, _, state) =>
    throttleOpen(model, state) ? `${nameOf(model, model.car.spec.engine.throttle)} is open` : undefined,
  'throttle-locked': (model, _, state) => {
    const lock = model.car.spec.engine['throttle-lock'];
    return of(state, model.slots.lock, lock) === no ? `${nameOf(model, lock)} is off` : undefined;
  },
  standing: ({ slots }, _, state) =>
    at(state, slots.motion) === motion.standing ? undefined : 'the car moves',
  held: (model, _, state) => (isHeld(model, state) ? undefined : 'nothing holds the car'),
};

/** Something that should be so at the end of an emergency, and what is so instead, a clause. */
export interface NotSo {
  readonly ending: Ending;
  readonly what: string;
}

/** What of these is not so in a state. */
export function notSo(model: Model, flows: Flows, state: State, which: readonly Ending[]): readonly NotSo[] {
  return which.flatMap((ending) => {
    const what = undone[ending](model, flows, state);
    return what === undefined ? [] : [{ ending, what }];
  });
}

function fed(model: Model, burners: readonly string[]): string | undefined {
  const [first] = burners;
  return first === undefined ? undefined : `fuel comes to ${nameOf(model, first)}`;
}
