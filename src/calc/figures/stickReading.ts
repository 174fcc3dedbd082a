/**
 * A depth as it is read on a stick. Every paper that tells a depth tells it by this one rule, so that no two of them send the driver to
 * different marks of the same stick: a depth that must be reached is told by the mark above it, one that must not be passed by the mark
 * below it.
 */
import { inch } from '../../quantity/base-units';
import type { UnitSystem } from '../../quantity/dimension';
import { roundTo } from '../../quantity/rounding';

/** What is asked of a depth: that there be at least so much in the tank, or no more. */
export type DepthAsked = 'reach' | 'keep-under';

/** From mark to mark of a stick, as near as it is read: an eighth of an inch, a millimetre. */
export const stickMarkM: Readonly<Record<UnitSystem, number>> = {
  us: inch / 8,
  imperial: inch / 8,
  metric: 0.001,
};

/** A scribed line is about so wide: what lies within its width of a mark is that mark. Common practice, no source. */
export const markWidthM = 0.00025;

/** The mark of the stick for a depth, m. */
export function depthOnStick(depthM: number, asked: DepthAsked, system: UnitSystem): number {
  const step = stickMarkM[system];
  const nearest = roundTo(depthM, step, 'nearest');
  if (Math.abs(nearest - depthM) <= markWidthM) return nearest;
  return roundTo(depthM, step, asked === 'reach' ? 'up' : 'down');
}
