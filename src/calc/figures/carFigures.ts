/** Every figure of one car. */
import type { Car } from '../../car/car';
import type { UnitSystem } from '../../quantity/dimension';
import { findUnit } from '../../quantity/spelling';
import { toSi } from '../../quantity/unit';
import { terrains } from '../../spec/schema/running';
import type { Figure } from '../figure';
import type { Liquids } from '../fuel/liquids';
import type { TripLog } from '../range/trip-log';
import type { Timeline } from '../time/timeline';
import { type BlendChart, blendCharts } from './blends';
import { blowDownFigures, blowDownIntervalFigure, steamHeatFigures } from './boilerFigures';
import { burningOnFigures } from './burningOn';
import { type ChargedFigures, chargedFigures } from './charged';
import { bandsNotKnown } from './chargedNotKnown';
import { evaporationFigures, heatFoundShare } from './evaporationFigures';
import { feedFigures } from './feed';
import { type FuelHeat, fuelHeats, liquidFigures } from './fuelHeats';
import { type FuelHazard, fuelHazards } from './hazards';
import { honest } from './honest';
import { otherTankFigures, otherTanks } from './otherTanks';
import { type Planning, planningOf } from './planning';
import { type RaisingFigures, raisingFigures } from './raising';
import {
  gaugeMarks,
  plannedTank,
  printedStepM,
  type RangeChart,
  rangeChart,
  rangeNotKnown,
  rangesFor,
} from './rangeChart';
import { readingFigures, type TypeFace } from './reading';
import { oilFigures, roadSpeedTable, speedFigures } from './road';
import { type SteamRow, steamTable } from './steamTable';
import { type StickChart, stickChart, sticksNotKnown } from './stickCharts';
import { stickStep } from './stickStep';
import { tankModels } from './tankModel';
import { type StartUpFigures, startUpFigures } from './timeline';
import { type ToppingUpChart, toppingUpCharts } from './toppingUp';
import { type LiquidUse, liquidUse } from './use';

/** The figures of a car, by what they are for, and all of them in a list. */
export interface CarFigures {
  readonly sticks: readonly StickChart[];
  readonly steam: readonly SteamRow[];
  readonly blends: readonly BlendChart[];
  readonly toppingUp: readonly ToppingUpChart[];
  /** What is used for a distance, also where no tank can be read. */
  readonly uses: { readonly water: LiquidUse; readonly fuel: LiquidUse };
  readonly water?: RangeChart;
  readonly fuel?: RangeChart;
  readonly planning: Planning;
  /** Share of the fuel’s heat found again in the steam, by the readings; absent where they do not tell. */
  readonly heatFound?: number;
  readonly heats: readonly FuelHeat[];
  readonly hazards: readonly FuelHazard[];
  readonly charged: readonly ChargedFigures[];
  readonly raising: RaisingFigures;
  readonly startUp: StartUpFigures;
  readonly blowDownInterval: Figure;
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
  readonly timeline: Timeline;
  /** The face whose small letters decide how large type must be. */
  readonly face: TypeFace;
  readonly log?: TripLog;
  readonly system: UnitSystem;
}

/** Work out everything. */
export function carFigures(car: Car, sources: FigureSources): CarFigures {
  const { liquids, log, system } = sources;
  const models = tankModels(car);
  const sticks = models
    .filter((model) => car.spec.tanks[model.id]?.read === 'stick')
    .map((model) => stickChart(model, system));
  const uses = {
    water: liquidUse(car, 'water', log, liquids),
    fuel: liquidUse(car, 'fuel', log, liquids),
  };
  const chartFor = (liquid: 'water' | 'fuel'): RangeChart | undefined => {
    const model = plannedTank(car, liquid, models);
    if (model === undefined) return undefined;
    const others = otherTanks(car, liquid, model.id);
    return rangeChart({ model, use: uses[liquid], marks: gaugeMarks(car, model.id), others }, system);
  };
  const [water, fuel] = [chartFor('water'), chartFor('fuel')];
  const heatFound = heatFoundShare(car, uses, liquids);
  const parts = {
    sticks,
    steam: steamTable(car),
    blends: blendCharts(car, liquids, volumesToMix(system)),
    toppingUp: toppingUpCharts(car, sticks, liquids),
    uses,
    planning: planningOf(water, fuel, printedStepM[system]),
    heats: fuelHeats(car, liquids),
    hazards: fuelHazards(car, liquids),
    charged: chargedFigures(car),
    raising: raisingFigures(car, liquids),
    blowDownInterval: blowDownIntervalFigure(car, uses.water),
    ...(heatFound === undefined ? {} : { heatFound }),
    ...(water === undefined ? {} : { water }),
    ...(fuel === undefined ? {} : { fuel }),
  };
  const withTimes = { ...parts, startUp: startUpFigures(car, sources.timeline, parts.raising) };
  return { ...withTimes, all: listed(car, withTimes, sources).map(honest) };
}

/** Every figure in the order of the manual. */
function listed(
  car: Car,
  figures: Omit<CarFigures, 'all'>,
  { liquids, face, system }: FigureSources,
): readonly Figure[] {
  const ofLiquid = (liquid: 'water' | 'fuel'): readonly Figure[] => [
    ...terrains.map((terrain) => figures.uses[liquid].byTerrain[terrain].figure),
    figures[liquid]?.figure ?? rangeNotKnown(liquid),
    ...otherFigures(car, figures[liquid], system),
    ...stickStepFigures(car, figures[liquid], system),
  ];
  return [
    ...figures.sticks.map((chart) => chart.figure),
    ...sticksNotKnown(car, tankModels(car)),
    ...figures.blends.map((chart) => chart.figure),
    ...figures.toppingUp.map((chart) => chart.figure),
    ...liquidFigures(car, liquids),
    ...figures.heats.flatMap((heat) => heat.figures),
    ...figures.hazards.flatMap((hazard) => hazard.figures),
    ...figures.charged.flatMap((each) => each.figures),
    ...bandsNotKnown(car),
    ...figures.startUp.figures,
    ...figures.raising.figures,
    ...ofLiquid('water'),
    ...ofLiquid('fuel'),
    ...figures.planning.figures,
    ...feedFigures(car, figures.uses, liquids),
    ...speedFigures(car),
    roadSpeedTable(car, system),
    ...oilFigures(car),
    ...blowDownFigures(car, liquids),
    figures.blowDownInterval,
    ...steamHeatFigures(car),
    ...evaporationFigures(car, figures.uses, liquids),
    ...burningOnFigures(car, liquids),
    ...figures.steam.map((row) => row.figure),
    ...readingFigures(car, face),
  ];
}

function otherFigures(car: Car, chart: RangeChart | undefined, system: UnitSystem): readonly Figure[] {
  if (chart === undefined) return [];
  const { liquid, others, use } = chart;
  return otherTankFigures(car, liquid, others, use, (usable) => rangesFor(usable, use, printedStepM[system]));
}

/** Only a tank that is read by stick has steps of one. */
function stickStepFigures(
  { spec }: Car,
  chart: RangeChart | undefined,
  system: UnitSystem,
): readonly Figure[] {
  if (chart === undefined || spec.tanks[chart.model.id]?.read !== 'stick') return [];
  const step = stickStep(chart, system);
  return step === undefined ? [] : [step.figure];
}

function volumesToMix(system: UnitSystem): readonly number[] {
  const { unit: name, amounts } = mixedAmounts[system];
  const unit = findUnit('volume', name);
  if (unit === undefined) throw new RangeError(`\`${name}\` is not a unit of volume`);
  return amounts.map((amount) => toSi(amount, unit));
}
