/**
 * How much more work rolling and hilly country takes than level road.
 *
 * The country is taken as parts climbing, parts falling and the rest level, at one gradient. Uphill the full load is
 * worked; downhill the weight helps, but what it gives beyond the resistance is braked away. Steam use is taken to go with
 * the work done.
 *
 * Published is how steep such roads are at the most: rural local roads laid out for 30 mph reach 7 % in level and 10 % in
 * rolling country (TxDOT Roadway Design Manual, Table 4-11, after AASHTO). The gradient of the hills here is less than
 * that, and with the shares of the way it is from memory: a keeper's own log or readings are better.
 */
import type { Terrain } from '../range/trip-log';
import { type RoadCar, roadLoad } from './road-load';

/** A kind of country. */
export interface TerrainProfile {
  /** Rise over run of its hills. */
  readonly gradient: number;
  /** Share of the way that climbs; as much falls. */
  readonly climbing: number;
}

/** The three kinds, from the easiest. */
export const terrainProfiles: Readonly<Record<Terrain, TerrainProfile>> = {
  level: { gradient: 0, climbing: 0 },
  rolling: { gradient: 0.05, climbing: 0.3 },
  hilly: { gradient: 0.08, climbing: 0.35 },
};

/** The steepest that rural local roads for 30 mph are laid out (TxDOT Roadway Design Manual, Table 4-11, after AASHTO). */
export const steepestLaidOut = { level: 0.07, rolling: 0.1 } as const;

/** Work at the wheels for each metre, J/m: the mean force that must be driven. */
export function workPerM(car: RoadCar, speedMPerS: number, profile: TerrainProfile): number {
  const driven = (gradient: number): number => Math.max(0, roadLoad(car, speedMPerS, gradient).forceN);
  const { gradient, climbing } = profile;
  return (1 - 2 * climbing) * driven(0) + climbing * (driven(gradient) + driven(-gradient));
}

/** Work on each terrain over that on level road: level is 1, and no harder terrain is less. */
export function terrainRatios(car: RoadCar, speedMPerS: number): Readonly<Record<Terrain, number>> {
  const level = workPerM(car, speedMPerS, terrainProfiles.level);
  const ratio = (terrain: Terrain): number =>
    Math.max(1, workPerM(car, speedMPerS, terrainProfiles[terrain]) / level);
  const rolling = ratio('rolling');
  return { level: 1, rolling, hilly: Math.max(rolling, ratio('hilly')) };
}

/**
 * The kind of country a way is, from its climbing: metres climbed for each metre gone. The bounds lie half-way between
 * the profiles.
 */
export function terrainOf(climbPerM: number): Terrain {
  const climb = (terrain: Terrain): number =>
    terrainProfiles[terrain].gradient * terrainProfiles[terrain].climbing;
  if (climbPerM < (climb('level') + climb('rolling')) / 2) return 'level';
  return climbPerM < (climb('rolling') + climb('hilly')) / 2 ? 'rolling' : 'hilly';
}
