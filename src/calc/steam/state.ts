/**
 * The properties of water or steam at one pressure and temperature, and the constants of IAPWS-IF97.
 */

/** Specific gas constant of water, J/(kg K) (IAPWS R7-97(2012), Eq. 1). */
export const gasConstant = 461.526;
/** Lowest temperature of the formulation, K. */
export const lowestTemperatureK = 273.15;
/** Above this temperature liquid and saturated steam belong to region 3, which no car needs, K. */
export const region3TemperatureK = 623.15;

/** One state of water. Enthalpy and entropy count from the liquid at the triple point. */
export interface WaterState {
  readonly pressurePa: number;
  readonly temperatureK: number;
  /** m³/kg */
  readonly specificVolume: number;
  /** J/kg */
  readonly enthalpy: number;
  /** J/kg */
  readonly internalEnergy: number;
  /** J/(kg K) */
  readonly entropy: number;
  /** At constant pressure, J/(kg K). */
  readonly specificHeat: number;
  /** m/s */
  readonly speedOfSound: number;
}

/** The dimensionless Gibbs energy of a region and its derivatives by reduced pressure (p) and inverse temperature (t). */
export interface Gibbs {
  readonly g: number;
  readonly p: number;
  readonly pp: number;
  readonly t: number;
  readonly tt: number;
  readonly pt: number;
}

/**
 * Properties from the Gibbs energy `gamma` at reduced pressure `pi` and inverse reduced temperature `tau`
 * (IAPWS R7-97(2012), Table 3; Table 12 gives the same for region 2 with gamma = ideal + residual).
 */
export function stateFromGibbs(
  pressurePa: number,
  temperatureK: number,
  pi: number,
  tau: number,
  gamma: Gibbs,
): WaterState {
  const rt = gasConstant * temperatureK;
  const mixed = gamma.p - tau * gamma.pt;
  return {
    pressurePa,
    temperatureK,
    specificVolume: (pi * gamma.p * rt) / pressurePa,
    enthalpy: rt * tau * gamma.t,
    internalEnergy: rt * (tau * gamma.t - pi * gamma.p),
    entropy: gasConstant * (tau * gamma.t - gamma.g),
    specificHeat: -gasConstant * tau * tau * gamma.tt,
    speedOfSound: Math.sqrt((rt * gamma.p * gamma.p) / ((mixed * mixed) / (tau * tau * gamma.tt) - gamma.pp)),
  };
}
