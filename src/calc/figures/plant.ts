/** Heat and steam of this car's plant: what the fire gives, what a kilogram of steam takes. */
import type { Car, PartId } from '../../car/car';
import { blendProperties } from '../fuel/blend';
import type { Liquids } from '../fuel/liquids';
import { absolutePressurePa, standardAir } from '../steam/atmosphere';
import { steamMaking } from '../steam/evaporation';
import { blendOfFuel, liquidsOf } from './blends';

/** Feed water as it comes from the tank, 15 °C. */
export const feedK = 288.15;

/** Where the spec says no efficiency: small old boilers with vaporizing burners, 50 to 75 % (from memory). */
export const usualEfficiency = 0.6;

/** The burner that makes steam: the first of them. */
export function mainBurnerOf({
  spec,
}: Car): { readonly id: PartId; readonly burner: Car['spec']['burners'][string] } | undefined {
  const found = Object.entries(spec.burners).find(([, burner]) => burner.job === 'main');
  return found === undefined ? undefined : { id: found[0], burner: found[1] };
}

/** Heat of burning a volume of a fuel of the car, with the water of burning gone as vapour, J/m³. */
export function fuelHeatPerM3(car: Car, fuelId: string, library: Liquids): number {
  return blendProperties(blendOfFuel(car, fuelId, liquidsOf(car, library))).lowerHeatPerM3;
}

/** Share of the fuel's heat that reaches the water. */
export function efficiencyOf({ spec }: Car): number {
  return spec.boiler.efficiency?.si ?? usualEfficiency;
}

/** Heat from cold feed to dry saturated steam at working pressure, J/kg. */
export function heatPerKgSteam({ spec }: Car): number {
  return steamMaking({
    pressurePa: absolutePressurePa(spec.boiler['working-pressure'].si, standardAir(0).pressurePa),
    feedTemperatureK: feedK,
  }).heatPerKg;
}
