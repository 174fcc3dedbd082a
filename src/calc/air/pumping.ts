/**
 * Pumping up a charged tank, how long its charge lasts, and how long a pilot burns.
 */
import { type ChargedTank, cushionM3, deliveredDownToM3 } from './cushion';

/** An air pump. */
export interface AirPump {
  /** Volume swept by one stroke, m³. */
  readonly strokeM3: number;
  /** Share of it that really goes in, 0 to 1. */
  readonly delivers: number;
}

/**
 * Strokes from the pressure now to `topGaugePa`, rounded up. Each stroke takes in air of the place's pressure, and
 * the air in the tank has time to cool (Boyle's law).
 */
export function strokesToPumpUp(tank: ChargedTank, topGaugePa: number, pump: AirPump): number {
  const rise = topGaugePa - tank.gaugePa;
  if (rise <= 0) return 0;
  const freeAir = (cushionM3(tank) * rise) / tank.ambientPa;
  return Math.ceil(freeAir / (pump.strokeM3 * pump.delivers) - 1e-9);
}

/** Strokes of a liquid pump that moves `volumeM3`, rounded up. */
export function strokesToMove(volumeM3: number, pump: AirPump): number {
  return Math.ceil(volumeM3 / (pump.strokeM3 * pump.delivers) - 1e-9);
}

/** How long a burner can run, s: `untilPumping` on the charge of air it has, `untilEmpty` on the fuel it has. */
export interface Endurance {
  readonly untilPumpingS: number;
  readonly untilEmptyS: number;
}

/**
 * Endurance of a burner on a charged tank. `useM3PerS` should be its use at the top of the band, where it burns most;
 * fuel the outlet cannot draw is left out.
 */
export function endurance(
  tank: ChargedTank,
  burner: { readonly floorGaugePa: number; readonly useM3PerS: number; readonly unusableM3?: number },
): Endurance {
  if (!(burner.useM3PerS > 0)) throw new RangeError('an endurance needs a use that is more than nothing');
  const usable = Math.max(0, tank.fuelM3 - (burner.unusableM3 ?? 0));
  const delivered = Math.min(deliveredDownToM3(tank, burner.floorGaugePa), usable);
  return { untilPumpingS: delivered / burner.useM3PerS, untilEmptyS: usable / burner.useM3PerS };
}
