/**
 * The table a keeper dips against, and the marks that go on a stick.
 */
import type { StickPoint } from './shape';
import type { Tank } from './tank';

/** Volumes at even steps of depth from nought; the last row is the full tank. */
export function chartByDepth(tank: Tank, stepM: number): readonly StickPoint[] {
  return evenSteps(stepM, tank.fullDepthM).map((depthM) => ({
    depthM,
    volumeM3: tank.volumeAtDepthM3(depthM),
  }));
}

/** Depths at even steps of volume from nought; the last row is the full tank. */
export function chartByVolume(tank: Tank, stepM3: number): readonly StickPoint[] {
  return evenSteps(stepM3, tank.capacityM3).map((volumeM3) => ({
    depthM: tank.depthAtVolumeM(volumeM3),
    volumeM3,
  }));
}

/** 0, step, 2 step … and `last` itself. A step that reaches `last` but for noise is not said twice. */
function evenSteps(step: number, last: number): readonly number[] {
  if (!(step > 0)) throw new RangeError('the steps of a stick chart must be more than nothing');
  const whole = Math.ceil(last / step - 1e-9);
  return [...Array.from({ length: Math.max(whole, 0) }, (_, index) => index * step), last];
}
