/**
 * How far the car goes on what is in its tanks: always with the reserve kept back, always rounded down.
 *
 * Method: usable volume over use per distance (common practice, no source).
 */
import { roundTo } from '../../quantity/rounding';
import type { Tank } from '../tank/tank';
import type { Terrain } from './trip-log';

/** What part of a tank may be planned with. */
export interface KeptBack {
  /** What the outlet cannot draw, m³. */
  readonly unusableM3: number;
  /** Kept for what was not planned, m³. */
  readonly reserveM3: number;
}

/** Volume that may be planned with, m³. */
export function usableM3(volumeM3: number, { unusableM3, reserveM3 }: KeptBack): number {
  return Math.max(0, volumeM3 - unusableM3 - reserveM3);
}

/** Distance on a usable volume, rounded down to whole steps, m. `usePerM` in m³ per m. */
export function rangeM(usable: number, usePerM: number, stepM: number): number {
  if (!(usePerM > 0)) throw new RangeError('a range needs a use that is more than nothing');
  return Math.max(0, roundTo(usable / usePerM, stepM, 'down'));
}

/** One line of a range table. */
export interface RangeRow {
  readonly depthM: number;
  readonly volumeM3: number;
  readonly usableM3: number;
  readonly rangeM: Readonly<Record<Terrain, number>>;
}

/** What a range table is made from. */
export interface RangeTableInput extends KeptBack {
  readonly tank: Tank;
  /** The most the tank is filled to, if less than brim full, m³. */
  readonly fillToM3?: number;
  /** Use on each terrain, m³ per m. */
  readonly usePerM: Readonly<Record<Terrain, number>>;
  /** Steps of the stick, and of the distances printed, m. */
  readonly stickStepM: number;
  readonly rangeStepM: number;
}

/** Range by stick reading, from empty to full. */
export function rangeTable(input: RangeTableInput): readonly RangeRow[] {
  const { tank, usePerM, stickStepM, rangeStepM } = input;
  if (!(stickStepM > 0)) throw new RangeError('the steps of a stick must be more than nothing');
  const top = tank.depthAtVolumeM(Math.min(input.fillToM3 ?? tank.capacityM3, tank.capacityM3));
  const count = Math.floor(top / stickStepM + 1e-9);
  const depths = Array.from({ length: count + 1 }, (_, index) => index * stickStepM);
  if (top - count * stickStepM > 1e-6) depths.push(top);
  return depths.map((depthM) => {
    const volumeM3 = tank.volumeAtDepthM3(depthM);
    const usable = usableM3(volumeM3, input);
    const on = (terrain: Terrain): number => rangeM(usable, usePerM[terrain], rangeStepM);
    return {
      depthM,
      volumeM3,
      usableM3: usable,
      rangeM: { level: on('level'), rolling: on('rolling'), hilly: on('hilly') },
    };
  });
}

/** Something that is used up on the way. */
export interface Supply {
  readonly name: string;
  readonly usableM3: number;
  /** m³ per m */
  readonly usePerM: number;
}

/** How far one supply lasts. */
export interface SupplyRange {
  readonly name: string;
  readonly rangeM: number;
}

/** Supplies in the order in which they run out, the first one first. */
export function runsOutFirst(supplies: readonly Supply[]): readonly SupplyRange[] {
  return supplies
    .map(({ name, usableM3: usable, usePerM }) => ({ name, rangeM: usable / usePerM }))
    .sort((a, b) => a.rangeM - b.rangeM);
}

/** A supply seen from the way out and the way home. */
export interface SupplyThereAndBack {
  readonly name: string;
  readonly usableM3: number;
  readonly useOutPerM: number;
  readonly useHomePerM: number;
}

/** Where to turn back at the latest, so as to be home with the reserve whole: distance out, m, and what sets it. */
export function turnBackAt(supplies: readonly SupplyThereAndBack[], stepM: number): SupplyRange | undefined {
  const [first] = supplies
    .map(({ name, usableM3: usable, useOutPerM, useHomePerM }) => ({
      name,
      rangeM: rangeM(usable, useOutPerM + useHomePerM, stepM),
    }))
    .sort((a, b) => a.rangeM - b.rangeM);
  return first;
}
