/** Every figure of one car. */
import type { Car } from '../../car/car';
import type { UnitSystem } from '../../quantity/dimension';
import { findUnit } from '../../quantity/spelling';
import { toSi } from '../../quantity/unit';
import { terrains } from '../../spec/schema/running';
import type { Figure } from '../figure';
import type { Liquids } from '../fuel/liquids';
import type { TripLog } from '../range/trip-log';
import { type BlendChart, blendCharts } from './blends';
import { type ChargedFigures, chargedFigures } from './charged';
import { type FuelHazard, fuelHazards } from './hazards';
import { type RaisingFigures, raisingFigures } from './raising';
import { plannedTank, type RangeChart, rangeChart } from './rangeChart';
import { blowDownFigures, feedFigures, oilFigures, speedFigures, steamHeatFigures } from './road';
import { type SteamRow, steamTable } from './steamTable';
import { type StickChart, stickChart } from './stickCharts';
import { tankModels } from './tankModel';
import { liquidUse } from './use';

/** The figures of a car, by what they are for, and all of them in a list. */
export interface CarFigures {
  readonly sticks: readonly StickChart[];
  readonly steam: readonly SteamRow[];
  readonly blends: readonly BlendChart[];
  readonly water?: RangeChart;
  readonly fuel?: RangeChart;
  readonly hazards: readonly FuelHazard[];
  readonly charged: readonly ChargedFigures[];
  readonly raising: RaisingFigures;
  /** Every figure, each once, in the order the manual prints them. */
  readonly all: readonly Figure[];
}

/** Round amounts that fuel is mixed in, in the containers people have. */
const mixedAmounts: Readonly<
  Record<UnitSystem, { readonly unit: string; readonly amounts: readonly number[] }>
> = {
  us: { unit: 'US gal', amounts: [1, 2, 5, 10, 15] },
  imperial: { unit: 'imp gal', amounts: [1, 2, 5, 10, 15] },
  metric: { unit: 'L', amounts: [5, 10, 20, 40, 60] },
};

/** What the figures are worked out from, beside the car. */
export interface FigureSources {
  readonly liquids: Liquids;
  readonly log?: TripLog;
  readonly system: UnitSystem;
}

/** Work out everything. */
export function carFigures(car: Car, { liquids, log, system }: FigureSources): CarFigures {
  const models = tankModels(car);
  const sticks = models
    .filter((model) => car.spec.tanks[model.id]?.read === 'stick')
    .map((model) => stickChart(model, system));
  const steam = steamTable(car);
  const blends = blendCharts(car, liquids, volumesToMix(system));
  const ranges = (['water', 'fuel'] as const).map((liquid) => {
    const model = plannedTank(car, liquid, models);
    return model === undefined ? undefined : rangeChart(model, liquidUse(car, liquid, log), system);
  });
  const [water, fuel] = ranges;
  const rangeFigures = ranges.flatMap((chart) =>
    chart === undefined
      ? []
      : [...terrains.map((terrain) => chart.use.byTerrain[terrain].figure), chart.figure],
  );
  const hazards = fuelHazards(car, liquids);
  const charged = chargedFigures(car);
  const raising = raisingFigures(car, liquids);
  return {
    sticks,
    steam,
    blends,
    hazards,
    charged,
    raising,
    ...(water === undefined ? {} : { water }),
    ...(fuel === undefined ? {} : { fuel }),
    all: [
      ...sticks.map((chart) => chart.figure),
      ...blends.map((chart) => chart.figure),
      ...hazards.flatMap((hazard) => hazard.figures),
      ...charged.flatMap((each) => each.figures),
      ...raising.figures,
      ...rangeFigures,
      ...feedFigures(car, water),
      ...speedFigures(car),
      ...oilFigures(car),
      ...blowDownFigures(car),
      ...steamHeatFigures(car),
      ...steam.map((row) => row.figure),
    ],
  };
}

function volumesToMix(system: UnitSystem): readonly number[] {
  const { unit: name, amounts } = mixedAmounts[system];
  const unit = findUnit('volume', name);
  if (unit === undefined) throw new RangeError(`\`${name}\` is not a unit of volume`);
  return amounts.map((amount) => toSi(amount, unit));
}
