/** A way to be driven: its stretches by country, and the places on it where something can be had. */
import type { Terrain } from '../range/trip-log';
import type { Stretch } from '../track/tour-use';

/** A place on the way. */
export interface WayPlace {
  readonly name: string;
  readonly atM: number;
  readonly water: boolean;
  readonly fuel: boolean;
  readonly note: string;
}

/** How the country of the stretches is known. */
export type Heights =
  /** The list of legs says it. */
  | { readonly kind: 'said' }
  /** From recorded heights, averaged over `windowM` each side of a place. */
  | { readonly kind: 'smoothed'; readonly windowM: number; readonly climbM: number }
  /** The track has no heights: the hilliest is taken. */
  | { readonly kind: 'none' };

/** A way from its start to its end; the last place is the end. */
export interface Way {
  readonly lengthM: number;
  readonly stretches: readonly Stretch[];
  readonly places: readonly WayPlace[];
  readonly heights: Heights;
}

/** Length of each country between two places of a way, m. */
export function lengthsBetween(
  stretches: readonly Stretch[],
  fromM: number,
  toM: number,
): Readonly<Record<Terrain, number>> {
  const lengths = { level: 0, rolling: 0, hilly: 0 };
  for (const stretch of stretches)
    lengths[stretch.terrain] += Math.max(0, Math.min(toM, stretch.toM) - Math.max(fromM, stretch.fromM));
  return lengths;
}

/** Climbing between two places of a way, m, shared evenly over each stretch. */
export function climbOf(stretches: readonly Stretch[], fromM: number, toM: number): number {
  return stretches.reduce((sum, stretch) => {
    const part = Math.max(0, Math.min(toM, stretch.toM) - Math.max(fromM, stretch.fromM));
    return sum + (stretch.climbM * part) / (stretch.toM - stretch.fromM);
  }, 0);
}
