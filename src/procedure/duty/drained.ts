/** The duty of valves while a car stands with its water out. */
import type { Car, PartId } from '../../car/car';
import type { Duties } from './duty';
import { unique, valvesOf } from './pick';
import { steamDuties } from './steam';
import { waterDuties } from './water';

const all: Duties = { ...steamDuties, ...waterDuties };

/** Duties of what lets water out, or has water behind it; a level that is read on a gauge has no valve of its own. */
const ways = [
  ...['blow-down', 'water-drain', 'feed-bypass', 'glass-drain', 'drips', 'boiler-vent', 'feed-valve'],
  ...['level-cold', 'transfer-valve', 'injector-valve'],
];

function openWhenDrained(car: Car): readonly PartId[] {
  return valvesOf(car, unique(ways.flatMap((duty) => all[duty]?.parts(car) ?? [])));
}

/** Duties of a car whose water is out, by name. */
export const drainedDuties: Duties = {
  'open-when-drained': {
    meaning:
      'Every hand valve that stands open in a car whose water is out, so that none is left behind it: drains, vents, drips, and those on the way of the water.',
    parts: openWhenDrained,
  },
};
