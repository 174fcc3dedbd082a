/** The oiling chart: points that every such car has, and those of this car, as printed text. */
import type { World } from '../paper';
import { intervalWords } from './interval';

/** One row. */
export interface OilingRow {
  readonly point: string;
  /** The name of its place; empty where it is not given. */
  readonly place: string;
  readonly lubricant: string;
  readonly amount: string;
  /** How often: whichever comes first; empty where it is not given. */
  readonly days: string;
  readonly distance: string;
  readonly seasons: string;
  /** How the car is for it. */
  readonly state: string;
  readonly who: string;
}

/** Rows in the order of their rounds: those of the fewest days first, then those of distance and season. */
export function oilingContext({
  car,
  guide,
  phrases,
  words,
}: Pick<World, 'car' | 'guide' | 'phrases' | 'words'>): readonly OilingRow[] {
  const own = car.spec.oiling ?? [];
  const replaced = new Set(own.map((point) => point['instead-of']));
  const rows = [
    ...guide.upkeep.oiling
      .filter(({ id }) => !replaced.has(id))
      .map((row) => ({ ...row, place: row.place ?? '' })),
    ...own.map(({ place, who = 'keeper' as const, ...row }) => ({
      ...row,
      who,
      place: car.places.get(place ?? '')?.name ?? '',
    })),
  ];
  return rows
    .sort((a, b) => (a.every.days ?? Number.MAX_SAFE_INTEGER) - (b.every.days ?? Number.MAX_SAFE_INTEGER))
    .map(({ point, place, lubricant, amount, every, state, who }) => ({
      point,
      place,
      lubricant,
      amount,
      ...intervalWords(every, phrases),
      state: words.oiled[state],
      who: words['done-by'][who],
    }));
}
