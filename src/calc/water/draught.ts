/**
 * Draught: how much air a fire gets while the car stands still, and how much fire that air can feed.
 *
 * A flue draws by the weight of the cold air outside over that of the hot gas inside (*Steam, Its Generation and Use*,
 * Babcock & Wilcox, "Chimneys and draft", formula 24). What the narrow ways of a boiler take of it stands in one
 * coefficient of flow. The air tells the fire by the heat that oxygen sets free, nearly the same for all such fuels
 * (C. Huggett, *Fire and Materials* 4 (1980) 61). Where something is assumed it errs to less fire.
 */
import { standardGravity } from '../../quantity/base-units';
import { standardAir } from '../steam/atmosphere';

/** Heat set free for each kilogram of oxygen, J/kg, within 5 in 100 (C. Huggett, 1980). */
const heatPerKgOxygen = 13.1e6;
/** Share of oxygen in dry air by mass (US Standard Atmosphere 1976: 20.9476 % by volume). */
const oxygenShare = 0.2314;

/** Heat that a kilogram of air can set free, J/kg. */
export const heatPerKgAir = heatPerKgOxygen * oxygenShare;

/** Air over what burning asks for, as a share of it; the most an oil fire is given (common practice, no source). */
export const excessAir = 0.5;

/** Gas constant of dry air, J/(kg K) (US Standard Atmosphere 1976); burnt gas is taken to weigh the same. */
const airConstant = 287.053;

/** Specific heat of burnt gas between 300 and 1800 K, J/(kg K) (from memory). */
const gasSpecificHeat = 1150;

/** Fuel to air by mass: about 43 MJ for each kilogram of a liquid fuel. */
const fuelToAir = heatPerKgAir / (1 + excessAir) / 43e6;

/**
 * Flow through a boiler over that of a free opening, for the same draught and area. Tubes of 10 mm by 350 mm take some 10
 * velocity heads by friction (Hagen and Poiseuille: 64 / Re × length / bore, with Re near 200) and going in and out
 * one and a half, which makes 1/√11.5; common practice, no source.
 */
export const flowCoefficient = 0.3;

/** Air, flue and gas. */
export interface Flue {
  /** From the fire up to the mouth, m. */
  readonly heightM: number;
  /** The narrowest way of the gas, m². */
  readonly freeAreaM2: number;
}

/** Pressure by which a flue draws, Pa. */
export function draughtPa(
  heightM: number,
  air: { readonly ambientPa: number; readonly airTemperatureK: number; readonly gasTemperatureK: number },
): number {
  const { ambientPa, airTemperatureK, gasTemperatureK } = air;
  return (
    ((standardGravity * heightM * ambientPa) / airConstant) * (1 / airTemperatureK - 1 / gasTemperatureK)
  );
}

/** Temperature of the gas that leaves a boiler of this efficiency, K: what the boiler does not take stays in the gas. */
export function gasTemperatureK(airTemperatureK: number, efficiency: number): number {
  const rise = heatPerKgAir / (1 + excessAir) / ((1 + fuelToAir) * gasSpecificHeat);
  return airTemperatureK + (1 - efficiency) * rise;
}

/** Air that a hot flue draws through the fire, kg/s. */
export function airDrawnKgPerS(
  flue: Flue,
  at: { readonly ambientPa: number; readonly airTemperatureK: number; readonly efficiency: number },
): number {
  const gasK = gasTemperatureK(at.airTemperatureK, at.efficiency);
  const density = at.ambientPa / (airConstant * gasK);
  const pull = draughtPa(flue.heightM, { ...at, gasTemperatureK: gasK });
  const speed = flowCoefficient * Math.sqrt((2 * pull) / density);
  return (density * speed * flue.freeAreaM2) / (1 + fuelToAir);
}

/** Air that a blower moves, kg/s, from its volume in the air of the sea. */
export function airBlownKgPerS(volumeM3PerS: number): number {
  return volumeM3PerS * standardAir(0).densityKgPerM3;
}

/** The most heat of burning (lower heating value) that so much air can feed cleanly, W. */
export function fireFedByAirW(airKgPerS: number): number {
  return (airKgPerS * heatPerKgAir) / (1 + excessAir);
}
