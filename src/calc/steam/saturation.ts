/**
 * The line on which water boils: IAPWS-IF97 region 4, and the liquid and steam on either side of it.
 *
 * Source: IAPWS R7-97(2012), section 8, Eq. 30 and 31 and Table 34.
 */
import { liquidWater } from './liquid';
import { lowestTemperatureK, region3TemperatureK, type WaterState } from './state';
import { steam } from './vapour';

const n1 = 1167.0521452767;
const n2 = -724213.16703206;
const n3 = -17.073846940092;
const n4 = 12020.82470247;
const n5 = -3232555.0322333;
const n6 = 14.91510861353;
const n7 = -4823.2657361591;
const n8 = 405113.40542057;
const n9 = -0.23855557567849;
const n10 = 650.17534844798;

const lowestPressurePa = 611.213;
const criticalTemperatureK = 647.096;
const criticalPressurePa = 22.064e6;

/** The pressure at which water of `temperatureK` boils, Pa; 273.15 K to 647.096 K. */
export function saturationPressurePa(temperatureK: number): number {
  if (!(temperatureK >= lowestTemperatureK && temperatureK <= criticalTemperatureK)) {
    throw new RangeError(`water does not boil at ${temperatureK} K at any pressure known here`);
  }
  const theta = temperatureK + n9 / (temperatureK - n10);
  const a = theta * theta + n1 * theta + n2;
  const b = n3 * theta * theta + n4 * theta + n5;
  const c = n6 * theta * theta + n7 * theta + n8;
  return 1e6 * ((2 * c) / (-b + Math.sqrt(b * b - 4 * a * c))) ** 4;
}

/** The temperature at which water boils under `pressurePa` (absolute), K; 611.213 Pa to 22.064 MPa. */
export function saturationTemperatureK(pressurePa: number): number {
  if (!(pressurePa >= lowestPressurePa && pressurePa <= criticalPressurePa)) {
    throw new RangeError(`water does not boil at ${pressurePa} Pa (absolute) at any temperature known here`);
  }
  const beta = (pressurePa / 1e6) ** 0.25;
  const e = beta * beta + n3 * beta + n6;
  const f = n1 * beta * beta + n4 * beta + n7;
  const g = n2 * beta * beta + n5 * beta + n8;
  const d = (2 * g) / (-f - Math.sqrt(f * f - 4 * e * g));
  return (n10 + d - Math.sqrt((n10 + d) ** 2 - 4 * (n9 + n10 * d))) / 2;
}

/** Water and steam standing in balance over each other. */
export interface Saturation {
  readonly pressurePa: number;
  readonly temperatureK: number;
  readonly liquid: WaterState;
  readonly steam: WaterState;
  /** Latent heat: what a kilogram takes to boil, J/kg. */
  readonly latentHeat: number;
}

/** Both sides of the boiling line at `pressurePa` (absolute); up to 16.5 MPa. */
export function saturationAtPressure(pressurePa: number): Saturation {
  return bothSides(pressurePa, saturationTemperatureK(pressurePa));
}

/** Both sides of the boiling line at `temperatureK`; up to 623.15 K. */
export function saturationAtTemperature(temperatureK: number): Saturation {
  return bothSides(saturationPressurePa(temperatureK), temperatureK);
}

/** The water's side alone of the boiling line at `temperatureK`; up to 623.15 K. */
export function boilingWater(temperatureK: number): WaterState {
  return waterSide(saturationPressurePa(temperatureK), temperatureK);
}

function bothSides(pressurePa: number, temperatureK: number): Saturation {
  const liquid = waterSide(pressurePa, temperatureK);
  const vapour = steam(pressurePa, temperatureK);
  return { pressurePa, temperatureK, liquid, steam: vapour, latentHeat: vapour.enthalpy - liquid.enthalpy };
}

function waterSide(pressurePa: number, temperatureK: number): WaterState {
  if (temperatureK > region3TemperatureK) {
    throw new RangeError(`steam at ${pressurePa} Pa is too near its critical point for this method`);
  }
  return liquidWater(pressurePa, temperatureK);
}
