/**
 * What a boiler does: heat given to each kilogram, equivalent evaporation, boiler horsepower.
 *
 * Equivalent evaporation states any evaporation as if the feed had entered at 212 °F and left as steam at
 * 212 °F; a boiler horsepower is 34.5 lb/h of that (ASME rule of 1884, in Cyclopedia of Mechanical Engineering,
 * vol. 4, "Horse-power of boilers").
 */
import { saturationAtPressure, saturationAtTemperature } from './saturation';
import { waterAt } from './water-at';

const poundPerHour = 0.45359237 / 3600;
const boilingAt212FahrenheitK = 373.15;

/** Steam made from feed water, and the heat it took. */
export interface SteamMaking {
  /** Heat taken up by each kilogram from feed to steam, J/kg. */
  readonly heatPerKg: number;
  /** How much more heat that is than evaporation from and at 212 °F takes. */
  readonly factorOfEvaporation: number;
}

/**
 * Heat from feed to steam. The steam is dry saturated unless `dryness` says how much of it is steam
 * (0.97 = three parts in a hundred still water) or `superheatK` how far it is heated past boiling.
 */
export function steamMaking(of: {
  readonly pressurePa: number;
  readonly feedTemperatureK: number;
  readonly dryness?: number;
  readonly superheatK?: number;
}): SteamMaking {
  const { pressurePa, feedTemperatureK, dryness = 1, superheatK = 0 } = of;
  const boiling = saturationAtPressure(pressurePa);
  const made =
    superheatK > 0
      ? waterAt(pressurePa, boiling.temperatureK + superheatK).enthalpy
      : boiling.liquid.enthalpy + dryness * boiling.latentHeat;
  const heatPerKg = made - waterAt(pressurePa, feedTemperatureK).enthalpy;
  return { heatPerKg, factorOfEvaporation: heatPerKg / latentHeatAt212Fahrenheit() };
}

/** Latent heat at 212 °F, J/kg. */
export function latentHeatAt212Fahrenheit(): number {
  return saturationAtTemperature(boilingAt212FahrenheitK).latentHeat;
}

/** The same evaporation as if from and at 212 °F, kg/s. */
export function equivalentEvaporationKgPerS(evaporationKgPerS: number, making: SteamMaking): number {
  return evaporationKgPerS * making.factorOfEvaporation;
}

/** Boiler horsepower of an equivalent evaporation in kg/s. */
export function boilerHorsepower(equivalentKgPerS: number): number {
  return equivalentKgPerS / (34.5 * poundPerHour);
}
