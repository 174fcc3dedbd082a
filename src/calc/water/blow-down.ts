/**
 * Blowing down: what it costs in water and heat, and how often the hardness of the water asks for it.
 */
import { saturationAtPressure } from '../steam/saturation';
import { waterAt, waterDensity } from '../steam/water-at';

/** What a blow-down loses. */
export interface BlowDownLoss {
  /** Mass of the boiling water let go. */
  readonly massKg: number;
  /** The cold feed that will replace it, m³. */
  readonly feedM3: number;
  /** Heat let go, above that of the feed, J. */
  readonly heatJ: number;
}

/** Loss of letting `boilerWaterM3` of boiling water go at `pressurePa` (absolute). Source: steam tables (IAPWS-IF97). */
export function blowDownLoss(blow: {
  readonly pressurePa: number;
  readonly boilerWaterM3: number;
  readonly feedTemperatureK: number;
}): BlowDownLoss {
  const { liquid } = saturationAtPressure(blow.pressurePa);
  const massKg = blow.boilerWaterM3 / liquid.specificVolume;
  const feed = waterAt(blow.pressurePa, blow.feedTemperatureK);
  return {
    massKg,
    feedM3: massKg / waterDensity(blow.feedTemperatureK),
    heatJ: massKg * (liquid.enthalpy - feed.enthalpy),
  };
}

/** When to blow down. */
export interface BlowDownInterval {
  /** Feed water that may go through the boiler from one blow-down to the next, m³. */
  readonly feedM3: number;
  /** How many times harder than the feed the boiler water is when it is blown down. */
  readonly timesFeed: number;
}

/**
 * Feed water between blow-downs, from its hardness and the most the boiler may hold (what the boiler inspector or
 * water treatment allows), both in the same measure.
 *
 * Formula: what comes in with the feed equals what goes out with the blow-down; feed in one round = blown volume ×
 * limit / hardness (the balance behind the trade's "cycles of concentration": blow-down = evaporation / (cycles − 1)).
 */
export function blowDownInterval(of: {
  readonly boilerWaterM3: number;
  /** Share of the boiler's water that is let go each time, 0 to 1. */
  readonly shareBlown: number;
  readonly feedHardness: number;
  readonly mostHardness: number;
}): BlowDownInterval {
  const timesFeed = of.mostHardness / of.feedHardness;
  if (!(timesFeed > 1)) throw new RangeError('the feed water is already as hard as the boiler water may be');
  return { feedM3: of.boilerWaterM3 * of.shareBlown * timesFeed, timesFeed };
}
