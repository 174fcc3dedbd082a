/**
 * Water at any pressure and temperature a car meets, liquid or steam as it may be.
 */
import { liquidWater } from './liquid';
import { saturationPressurePa } from './saturation';
import { lowestTemperatureK, region3TemperatureK, type WaterState } from './state';
import { steam } from './vapour';

const highestPressurePa = 16.5e6;
const highestTemperatureK = 1073.15;

/** Properties of water at `pressurePa` (absolute) and `temperatureK`; on the boiling line itself, of the liquid. */
export function waterAt(pressurePa: number, temperatureK: number): WaterState {
  const inRange =
    temperatureK >= lowestTemperatureK &&
    temperatureK <= highestTemperatureK &&
    pressurePa > 0 &&
    pressurePa <= highestPressurePa;
  if (!inRange) {
    throw new RangeError(
      `no properties of water are known here at ${pressurePa} Pa (absolute) and ${temperatureK} K`,
    );
  }
  const isLiquid = temperatureK <= region3TemperatureK && pressurePa >= saturationPressurePa(temperatureK);
  return isLiquid ? liquidWater(pressurePa, temperatureK) : steam(pressurePa, temperatureK);
}

/** Density of liquid water under one atmosphere, kg/m³; 0 °C to 99 °C. */
export function waterDensity(temperatureK: number): number {
  return 1 / liquidWater(101325, temperatureK).specificVolume;
}
