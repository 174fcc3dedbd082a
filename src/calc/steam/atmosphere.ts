/**
 * The air by altitude: US Standard Atmosphere 1976, the same as ISO 2533:1975 below 11 km.
 */
import { saturationTemperatureK } from './saturation';

const seaLevelPa = 101325;
const seaLevelK = 288.15;
const lapseKPerM = 0.0065;
/** g0 M / (R L) with the constants of the standard. */
const exponent = 5.25588;
const earthRadiusM = 6356766;
/** Specific gas constant of dry air in the standard, J/(kg K). */
const airGasConstant = 287.05287;

/** Air at one altitude of the standard atmosphere. */
export interface StandardAir {
  readonly pressurePa: number;
  readonly temperatureK: number;
  readonly densityKgPerM3: number;
}

/** Standard air at a geopotential altitude, -1000 m to 11,000 m. For roads, altitude on the map will do. */
export function standardAir(altitudeM: number): StandardAir {
  if (!(altitudeM >= -1000 && altitudeM <= 11000)) {
    throw new RangeError(
      `the standard atmosphere is used here from -1000 m to 11,000 m, not at ${altitudeM} m`,
    );
  }
  const temperatureK = seaLevelK - lapseKPerM * altitudeM;
  const pressurePa = seaLevelPa * (temperatureK / seaLevelK) ** exponent;
  return { pressurePa, temperatureK, densityKgPerM3: pressurePa / (airGasConstant * temperatureK) };
}

/** Geopotential altitude of a true (geometric) height above the sea, m. */
export function geopotentialAltitudeM(heightM: number): number {
  return (earthRadiusM * heightM) / (earthRadiusM + heightM);
}

/** The temperature at which water boils in the open at an altitude, K. */
export function openBoilingPointK(altitudeM: number): number {
  return saturationTemperatureK(standardAir(altitudeM).pressurePa);
}

/** A gauge pressure as an absolute one, by the air it is read in. */
export function absolutePressurePa(gaugePressurePa: number, ambientPa: number): number {
  return gaugePressurePa + ambientPa;
}
