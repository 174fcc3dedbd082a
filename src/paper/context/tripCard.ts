/** The blank card of a trip: this car’s rules of thumb, and room for what is read and taken on at every stop. */
import { planningOf } from '../../calc/figures/planning';
import { printedStepM, type RangeChart, rangeChart } from '../../calc/figures/rangeChart';
import { depthOnStick, stickMarkM } from '../../calc/figures/stickReading';
import { type StickStep, stickStep } from '../../calc/figures/stickStep';
import type { Terrain } from '../../calc/range/trip-log';
import type { UnitSystem } from '../../quantity/dimension';
import { quantity } from '../../quantity/quantity';
import { roundTo } from '../../quantity/rounding';
import { terrains } from '../../spec/schema/running';
import type { World } from '../paper';
import { planningContext } from './fuelAndWater';

/** The card in one system of units. */
export interface TripFaceContext {
  readonly system: UnitSystem;
  /** What distances, depths and amounts are written in. */
  readonly units: { readonly distance: string; readonly depth: string; readonly volume: string };
  /** One road in each row; what is not known is a dash. */
  readonly rules: readonly {
    readonly road: string;
    readonly first: string;
    readonly between: string;
    readonly turnBack: string;
    readonly water: string;
    readonly fuel: string;
  }[];
  /** The step of the stick that `water` and `fuel` of a rule are for; empty if neither is read by one. */
  readonly step: string;
  /** Depths at which the reserve begins, by tank; none for a tank under air, which nobody opens on the road. */
  readonly reserves: readonly { readonly tank: string; readonly at: string }[];
  /** Tanks read by stick that are under air while the car runs. */
  readonly underAir: readonly string[];
  /** A leg worked out on the hardest road that is known; nothing if the water is not read by stick. */
  readonly example: TripExample | null;
  /** Whether water and fuel are read by stick; other tanks are read on their gauge or glass. */
  readonly sticks: { readonly water: boolean; readonly fuel: boolean };
  /** Whether fuel is read before and after a leg: a tank read by stick that is under air is not opened for it. */
  readonly fuelRead: boolean;
  readonly stops: readonly number[];
}

/** What a leg takes of the water stick, and what the stick must show before it. */
export interface TripExample {
  readonly distance: string;
  readonly road: string;
  /** What the stick shows before the leg, at the least, and after it: where the reserve begins. */
  readonly start: string;
  readonly end: string;
  /** By the printed step of the stick it would take more: that is told for the narrowest part of the tank, and rounded down. */
  readonly overLeast: boolean;
}

/** Rows for stops: more than a day has. */
const stopRows = 8;

/** A face for each system of units that the car prints in. */
export function tripCardContext(world: World): { readonly faces: readonly TripFaceContext[] } {
  return {
    faces: world.phrases.systems.map((system, index) =>
      faceOf(world, system, index === 0 ? 'first' : 'second'),
    ),
  };
}

function faceOf(world: World, system: UnitSystem, which: 'first' | 'second'): TripFaceContext {
  const { car, figures, phrases, words } = world;
  const charts = [figures.water, figures.fuel].map((chart) => chart && rangeChart(chart, system));
  const [water, fuel] = charts;
  const byStick = (chart: RangeChart | undefined): chart is RangeChart =>
    chart !== undefined && car.spec.tanks[chart.model.id]?.read === 'stick';
  const steps = charts.map((chart) => (byStick(chart) ? stickStep(chart, system) : undefined));
  const plans = planningOf(water, fuel, printedStepM[system]);
  const planned = new Map(
    planningContext(world, plans, which).map((plan, index) => [plans.byTerrain[index]?.terrain, plan]),
  );
  const told = (step: StickStep | undefined, terrain: Terrain): string => {
    const metres = step?.rangeM[terrain];
    return metres === undefined
      ? ''
      : phrases[which](quantity('distance', metres), { rounding: 'down', decimals: 1 });
  };
  const [known] = steps.filter((step) => step !== undefined);
  const isUnderAir = ({ model }: RangeChart) => car.spec.tanks[model.id]?.pressure !== undefined;
  const keptToM = ({ model }: RangeChart) => model.tank.depthAtVolumeM(model.unusableM3 + model.reserveM3);
  return {
    system,
    units: {
      distance: phrases.unit('distance', system),
      depth: phrases.unit('length', system),
      volume: phrases.unit('volume', system),
    },
    rules: terrains.map((terrain) => ({
      road: words.terrain[terrain],
      first: planned.get(terrain)?.first ?? '',
      between: planned.get(terrain)?.between ?? '',
      turnBack: planned.get(terrain)?.turnBack ?? '',
      water: told(steps[0], terrain),
      fuel: told(steps[1], terrain),
    })),
    step: known === undefined ? '' : phrases[which](quantity('length', known.stepM)),
    reserves: charts
      .filter(byStick)
      .filter((chart) => !isUnderAir(chart))
      .map((chart) => ({
        tank: chart.model.name,
        at: phrases[which](quantity('length', depthOnStick(keptToM(chart), 'reach', system))),
      })),
    underAir: charts
      .filter(byStick)
      .filter(isUnderAir)
      .map(({ model }) => model.name),
    example:
      steps[0] === undefined || !byStick(water)
        ? null
        : exampleOf(world, {
            chart: water,
            step: steps[0],
            keptToM: keptToM(water),
            system,
            which,
          }),
    sticks: { water: byStick(water), fuel: byStick(fuel) },
    fuelRead: !(byStick(fuel) && isUnderAir(fuel)),
    stops: Array.from({ length: stopRows }, (_, index) => index + 1),
  };
}

/** How long the leg of the example may be, in whole units of distance: the longest for which the tank holds enough. */
const exampleUnits = [10, 5, 4, 3, 2, 1];

/**
 * Read off the stick chart from the depth of the reserve upward, as the range table is, so that both say the same of the same stick.
 * Both depths are worked with as they are printed.
 */
function exampleOf(
  { phrases, words }: World,
  {
    chart: { model, use, full },
    step,
    keptToM,
    system,
    which,
  }: {
    readonly chart: RangeChart;
    readonly step: StickStep;
    readonly keptToM: number;
    readonly system: UnitSystem;
    readonly which: 'first' | 'second';
  },
): TripExample | null {
  const terrain = terrains.findLast((each) => use.byTerrain[each].planPerM !== undefined);
  const perM = terrain && use.byTerrain[terrain].planPerM;
  if (terrain === undefined || perM === undefined) return null;
  const endM = depthOnStick(keptToM, 'reach', system);
  const neededM3 = (legM: number) => model.tank.volumeAtDepthM3(endM) + perM * legM;
  const startOf = (legM: number) =>
    roundTo(model.tank.depthAtVolumeM(neededM3(legM)), stickMarkM[system], 'up');
  const fullM3 = model.tank.volumeAtDepthM3(full.depthM);
  const legM = exampleUnits
    .map((units) => units * printedStepM[system])
    .find((each) => neededM3(each) <= fullM3 && startOf(each) <= full.depthM + 1e-9);
  if (legM === undefined) return null;
  const startM = startOf(legM);
  const byStepsM = ((startM - endM) / step.stepM) * (step.rangeM[terrain] ?? 0);
  return {
    distance: phrases[which](quantity('distance', legM)),
    road: words.terrain[terrain],
    end: phrases[which](quantity('length', endM)),
    start: phrases[which](quantity('length', startM)),
    overLeast: byStepsM < legM,
  };
}
