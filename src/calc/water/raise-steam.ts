/**
 * How long the fire takes to raise steam: a curve of pressure against time.
 *
 * Formula: heat balance. What the fire gives, less what leaks to the air, warms the water (its enthalpy along the
 * boiling line, IAPWS-IF97) and the metal (specific heat times mass times rise). The steam over the water weighs
 * little and is left out. No published worked example was found for the whole; its parts are tested against the
 * steam tables and a table of specific heats.
 */
import { boilingWater, saturationPressurePa, saturationTemperatureK } from '../steam/saturation';
import { waterDensity } from '../steam/water-at';

/** Specific heat of boiler metal, J/(kg K) (engineering reference tables: carbon steel 0.49, copper 0.39 kJ/(kg K)). */
export const metalSpecificHeat = { steel: 490, copper: 390, castIron: 460 } as const;

/** A boiler with its fire. */
export interface BoilerHeating {
  /** Water in it, as measured cold, m³. */
  readonly waterM3: number;
  readonly metalKg: number;
  /** J/(kg K) */
  readonly metalSpecificHeat: number;
  /** Heat that reaches water and metal at full fire: fuel × heating value × efficiency, W. */
  readonly heatW: number;
  /** Heat that leaks to the air for each kelvin the boiler is warmer than it, W/K. */
  readonly lossWPerK: number;
  readonly airTemperatureK: number;
  readonly ambientPa: number;
  /** Temperature of water and metal when the fire is lit: the air's when cold, more when warm from yesterday. */
  readonly startTemperatureK: number;
}

/** One moment of raising steam. */
export interface RaisingPoint {
  readonly timeS: number;
  readonly temperatureK: number;
  /** Nought until the water boils. */
  readonly gaugePa: number;
}

/** The whole of it. */
export interface SteamRaising {
  /** False if the leaks eat all the heat before the pressure is reached; the curve ends there. */
  readonly reached: boolean;
  readonly points: readonly RaisingPoint[];
  readonly heatToWaterJ: number;
  readonly heatToMetalJ: number;
  readonly heatLostJ: number;
}

const stepK = 1;

/** From lighting the fire to `gaugePa`. */
export function raiseSteam(boiler: BoilerHeating, gaugePa: number): SteamRaising {
  const waterKg = boiler.waterM3 * waterDensity(Math.min(boiler.startTemperatureK, 293.15));
  const endK = saturationTemperatureK(gaugePa + boiler.ambientPa);
  const points = [pointAt(boiler, 0, boiler.startTemperatureK)];
  let [timeS, heatToWaterJ, heatToMetalJ, heatLostJ] = [0, 0, 0, 0];
  const done = (reached: boolean): SteamRaising => ({
    reached,
    points,
    heatToWaterJ,
    heatToMetalJ,
    heatLostJ,
  });
  let enthalpy = enthalpyOf(boiler.startTemperatureK);
  for (let from = boiler.startTemperatureK; from < endK; ) {
    const to = Math.min(from + stepK, endK);
    const after = enthalpyOf(to);
    const toWater = waterKg * (after - enthalpy);
    const toMetal = boiler.metalKg * boiler.metalSpecificHeat * (to - from);
    const lossW = boiler.lossWPerK * ((from + to) / 2 - boiler.airTemperatureK);
    const netW = boiler.heatW - lossW;
    if (!(netW > 0)) return done(false);
    const seconds = (toWater + toMetal) / netW;
    timeS += seconds;
    heatToWaterJ += toWater;
    heatToMetalJ += toMetal;
    heatLostJ += lossW * seconds;
    points.push(pointAt(boiler, timeS, to));
    [from, enthalpy] = [to, after];
  }
  return done(true);
}

/** The time at which a curve reaches `gaugePa`, s; undefined if it does not. Between points it runs straight. */
export function timeToGaugeS(raising: SteamRaising, gaugePa: number): number | undefined {
  const index = raising.points.findIndex((point) => point.gaugePa >= gaugePa * (1 - 1e-9));
  const [before, after] = [raising.points[index - 1], raising.points[index]];
  if (!after) return undefined;
  if (!before || after.gaugePa === before.gaugePa) return after.timeS;
  const share = Math.min(1, (gaugePa - before.gaugePa) / (after.gaugePa - before.gaugePa));
  return before.timeS + share * (after.timeS - before.timeS);
}

function pointAt({ ambientPa }: BoilerHeating, timeS: number, temperatureK: number): RaisingPoint {
  return { timeS, temperatureK, gaugePa: Math.max(0, saturationPressurePa(temperatureK) - ambientPa) };
}

function enthalpyOf(temperatureK: number): number {
  return boilingWater(temperatureK).enthalpy;
}
