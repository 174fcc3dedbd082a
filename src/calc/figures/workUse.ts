/**
 * What the car would use by physics alone, where nothing was measured at all: work at the wheels, steam for the work,
 * fuel for the steam. Wide on purpose: engines of this kind differ three to one.
 */
import type { Car } from '../../car/car';
import { mechanicalHorsepowerHourJ, pound } from '../../quantity/base-units';
import { quantity } from '../../quantity/quantity';
import type { FigureInput } from '../figure';
import type { Liquids } from '../fuel/liquids';
import type { Terrain } from '../range/trip-log';
import { estimatedUse } from '../road/consumption';
import { surfaceRolling } from '../road/road-load';
import { stopWorkJ, usualStopsPerM } from '../road/stops';
import { terrainProfiles, workPerM } from '../road/terrain';
import { waterDensity } from '../steam/water-at';
import { efficiencyOf, feedK, fuelHeatPerM3, heatPerKgSteam, mainBurnerOf, usualEfficiency } from './plant';
import { roadCarOf } from './roadCar';
import type { UsedLiquid } from './useFigures';

/**
 * Steam that engine, pipes, pumps and drips take for work at the wheels, lb for each hp h. Published is what good engines
 * take at their best: 30 (Cyclopedia of Mechanical Engineering vol. 4, the engine behind the boiler horsepower), 25 to 35
 * for ordinary simple engines (C. H. Benjamin, of tests about 1905). A small one that is throttled, cold and never at its best load
 * takes twice to four times that at the wheels (from memory).
 */
const publishedSteamRate = 30;
const steamRateLbPerHpH = { middle: 2 * publishedSteamRate, high: 4 * publishedSteamRate } as const;

/** Use on a terrain; undefined for the water of a condensing car, which physics does not tell, and without a main burner. */
export function useFromWork(
  car: Car,
  liquid: UsedLiquid,
  terrain: Terrain,
  liquids: Liquids,
): { readonly mean: number; readonly high: number; readonly inputs: readonly FigureInput[] } | undefined {
  const main = mainBurnerOf(car);
  if (main === undefined || (liquid === 'water' && car.spec.engine.exhaust === 'condenser')) return undefined;
  const road = roadCarOf(car);
  const gravel = { ...road, rolling: Math.max(road.rolling, surfaceRolling['dry packed gravel']) };
  const speed = car.spec.running['usual-speed'];
  const work =
    workPerM(gravel, speed.si, terrainProfiles[terrain]) + usualStopsPerM * stopWorkJ(gravel, speed.si);
  const useAt = (rate: number): number => {
    const use = estimatedUse(
      {
        steamRateKgPerJ: (rate * pound) / mechanicalHorsepowerHourJ,
        heatPerKg: heatPerKgSteam(car),
        boilerEfficiency: efficiencyOf(car),
        fuelHeatPerM3: fuelHeatPerM3(car, main.burner.fuel, liquids),
        feedDensityKgPerM3: waterDensity(feedK),
      },
      work,
    );
    return liquid === 'water' ? use.waterPerM : use.fuelPerM;
  };
  const efficiency: FigureInput = {
    name: 'efficiency',
    value: car.spec.boiler.efficiency ?? `${usualEfficiency * 100} %, from memory`,
    from: 'boiler.efficiency',
  };
  return {
    mean: useAt(steamRateLbPerHpH.middle),
    high: useAt(steamRateLbPerHpH.high),
    inputs: [
      {
        name: 'mass with every seat taken',
        value: quantity('mass', road.massKg, true),
        from: 'running.mass-empty',
      },
      { name: 'usual speed', value: speed, from: 'running.usual-speed' },
      {
        name: 'distance from stop to stop',
        value: quantity('distance', 1 / usualStopsPerM),
        from: 'taken; common practice, no source',
      },
      {
        name: 'force to be driven, stops with it, on the mean',
        value: quantity('force', work, true),
        from: 'road load',
      },
      {
        name: 'steam for the work, lb for each hp h',
        value: `${steamRateLbPerHpH.middle}, at most ${steamRateLbPerHpH.high}`,
        from: `twice and four times the published ${publishedSteamRate} of good engines at their best`,
      },
      ...(liquid === 'fuel' ? [efficiency] : []),
    ],
  };
}
