/** What a step sets beyond its action. */
import type { SettingKey } from '../../procedure/facts';
import { gloves } from '../gloves';
import { at } from '../state';
import { content, level, motion, no, steam, yes } from '../values';
import { type Act, put } from './act';
import { setMotion } from './controls';
import { seeBurntOut } from './flames';
import { soak } from './heat';

type Value = string | number | boolean;

const steamWords: Readonly<Record<string, number>> = {
  none: steam.none,
  low: steam.low,
  'blow-down': steam.blowDown,
  working: steam.working,
};
const levelWords: Readonly<Record<string, number>> = {
  'not-known': level.doubtful,
  enough: level.enough,
  low: level.low,
  empty: level.empty,
};
const motionWords: Readonly<Record<string, number>> = {
  standing: motion.standing,
  creeping: motion.creeping,
  running: motion.running,
};

function truth(value: Value): number {
  return value === true || value === 'yes' ? yes : no;
}

function contentOf(act: Act, value: Value): void {
  const { part } = act.step;
  if (part !== undefined)
    put(act, act.model.slots.content.get(part), value === 'full' ? content.enough : content.empty);
}

/** One way of setting for each setting the library knows. */
const setters: Readonly<Record<SettingKey, (act: Act, value: Value) => void>> = {
  seat: (act, value) => {
    put(act, act.model.slots.seat, value === 'driver' ? yes : no);
    // nobody counts on gloves that were put on before the drive
    if (value === 'driver') for (const id of gloves(act.model)) put(act, act.model.slots.placed.get(id), no);
  },
  outdoors: (act, value) => put(act, act.model.slots.outdoors, truth(value)),
  chocked: (act, value) => put(act, act.model.slots.chocked, truth(value)),
  motion: (act, value) => setMotion(act, motionWords[String(value)] ?? motion.standing),
  'burner-front': (act, value) => {
    put(act, act.model.slots.burnerFront, value === 'somebody' ? yes : no);
    if (value === 'clear') stepBack(act);
  },
  'blow-down-outlets': (act, value) => put(act, act.model.slots.outlets, value === 'somebody' ? yes : no),
  lighting: (act, value) => {
    if (!act.lighting.includes(String(value))) act.lighting.push(String(value));
  },
  'burnt-out': (act, value) => seeBurntOut(act, String(value)),
  steam: (act, value) => put(act, act.model.slots.steam, steamWords[String(value)] ?? steam.none),
  level: (act, value) => put(act, act.model.slots.level, levelWords[String(value)] ?? level.doubtful),
  cap: (act, value) =>
    put(
      act,
      act.step.part === undefined ? undefined : act.model.slots.cap.get(act.step.part),
      value === 'on' ? yes : no,
    ),
  minutes: (act, value) => soak(act, Number(value)),
  'vapour-in-burner': (act, value) => put(act, act.model.slots.vapour, truth(value)),
  'loose-fuel': (act, value) => put(act, act.model.slots.spilt, truth(value)),
  water: contentOf,
  fuel: contentOf,
  people: (act, value) => put(act, act.model.slots.away, value === 'away' ? yes : no),
};

/** Whoever stood at a burner has stepped back from it. */
function stepBack(act: Act): void {
  const { model, draft } = act;
  const fronts = burnerPlaces(act);
  for (const slot of [model.slots.driverAt, model.slots.helperAt])
    if (fronts.has(at(draft, slot))) put(act, slot, 0);
}

/** Places of the main burners, as they stand in a state. */
function burnerPlaces({ model }: Act): ReadonlySet<number> {
  return new Set(model.mains.map((id) => 1 + model.places.indexOf(model.car.spec.burners[id]?.place ?? '')));
}

/** Make the settings of the step. A light that was not struck at all changes nothing by its settings. */
export function applySets(act: Act): void {
  for (const [key, value] of Object.entries(act.step.sets))
    if (key in setters) setters[key as SettingKey](act, value);
}
