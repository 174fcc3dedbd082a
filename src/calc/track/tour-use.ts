/**
 * What a way will use, place by place: its stretches told as level, rolling or hilly by their climbing.
 */
import type { Terrain } from '../range/trip-log';
import { terrainOf } from '../road/terrain';
import { climbBetweenM, type Profile } from './profile';

/** A stretch of a way, of one kind of country. */
export interface Stretch {
  readonly fromM: number;
  readonly toM: number;
  readonly terrain: Terrain;
  readonly climbM: number;
}

/** Cut a way into even stretches of about `stretchM` and tell the country of each. */
export function stretchesOf(profile: Profile, stretchM = 3000): readonly Stretch[] {
  const count = Math.max(1, Math.round(profile.lengthM / stretchM));
  const length = profile.lengthM / count;
  return Array.from({ length: count }, (_, index) => {
    const [fromM, toM] = [index * length, (index + 1) * length];
    const climbM = climbBetweenM(profile, fromM, toM);
    return { fromM, toM, climbM, terrain: terrainOf(climbM / length) };
  });
}

/** Use from the start to any place, m³, from use on each terrain (m³ per m). Rises evenly within a stretch. */
export function usedAlong(
  stretches: readonly Stretch[],
  usePerM: Readonly<Record<Terrain, number>>,
): (atM: number) => number {
  return (atM) =>
    stretches.reduce(
      (sum, { fromM, toM, terrain }) => sum + Math.max(0, Math.min(atM, toM) - fromM) * usePerM[terrain],
      0,
    );
}
