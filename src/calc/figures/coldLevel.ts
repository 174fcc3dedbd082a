/** Where the level stands cold: water swells as it heats, so that a boiler filled cold to its working level is too full under steam. */
import type { Car } from '../../car/car';
import type { Diagnostic } from '../../diagnostic/diagnostic';
import { standardAir } from '../steam/atmosphere';
import { boilingWater, saturationTemperatureK } from '../steam/saturation';
import { waterDensity } from '../steam/water-at';

/** Water as it comes from the tap, K. */
const coldK = 288.15;

/**
 * By what share water swells from 15 °C to boiling at a gauge pressure (IAPWS-IF97).
 *
 * @param gaugePressurePa - Gauge pressure, Pa.
 */
export function swell(gaugePressurePa: number): number {
  const boiling = boilingWater(saturationTemperatureK(gaugePressurePa + standardAir(0).pressurePa));
  return boiling.specificVolume * waterDensity(coldK) - 1;
}

/** A boiler whose glass is read cold and under steam, and of which nothing says where it stands cold. */
export function coldLevelRemarks(car: Car): readonly Diagnostic[] {
  const { boiler, gauges } = car.spec;
  const readCold = boiler.level.some(
    ({ gauge, when, good }) => when !== 'steaming' && good === undefined && gauge in gauges,
  );
  if (boiler.kind === 'monotube' || !readCold || boiler['working-level-cold'] !== undefined) return [];
  const inHundred = Math.round(swell(boiler['working-pressure'].si) * 100);
  return [
    {
      code: 'figure-cold-level',
      severity: 'remark',
      at: car.spotOf('boiler.working-level'),
      message: 'nothing says where the level stands cold',
      found: `\`${boiler['working-level']}\`, cold as well as under steam`,
      expected: '`working-level-cold`, lower than the working level',
      mend: 'note where it stands cold on a morning after a day on which it was right under steam, and add it under `boiler`',
      notes: [
        `From 15 °C to working pressure water swells by ${inHundred} in 100, and the level rises with it: filled cold to the working level, the boiler is too full under steam.`,
      ],
    },
  ];
}
