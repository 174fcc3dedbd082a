/** A way driven by this car: the fewest stops so that not even the pessimistic use eats the reserve. */
import type { Car } from '../../car/car';
import { bad, type Diagnostic, good, type Outcome } from '../../diagnostic/diagnostic';
import { litre, usGallon } from '../../quantity/base-units';
import { terrains } from '../../spec/schema/running';
import { solveRising } from '../numeric/bisection';
import type { Terrain } from '../range/trip-log';
import { nextTripUse } from '../range/use-fit';
import { planTour } from '../stops/tour';
import { climbOf, lengthsBetween, type Way, type WayPlace } from '../stops/way';
import { usedAlong } from '../track/tour-use';
import type { CarFigures } from './carFigures';
import { fillingM3 } from './planning';
import type { RangeChart } from './rangeChart';
import { type UsedOver, usedOver } from './use';

/** One leg, to the next place of the way. */
export interface TourLeg {
  readonly to: WayPlace;
  readonly distanceM: number;
  readonly climbM: number;
  /** Country, by length, m. */
  readonly lengths: Readonly<Record<Terrain, number>>;
  readonly water: UsedOver;
  readonly fuel: UsedOver;
  /** What is left over the reserve on arriving, if everything goes to the high end, m³. */
  readonly waterLeftM3: number;
  readonly fuelLeftM3: number;
  /** What to take on there. */
  readonly takeWater: boolean;
  readonly takeFuel: boolean;
}

/** The whole way. */
export interface CarTour {
  readonly way: Way;
  readonly legs: readonly TourLeg[];
  readonly stops: number;
  /** On the whole way. */
  readonly water: UsedOver;
  readonly fuel: UsedOver;
  /** Cylinder oil for it, m³; absent if its use is not known. */
  readonly oilM3?: number;
}

/** Plan a way. Fails if water or fuel is not known, or no choice of stops is enough. */
export function carTour(car: Car, figures: CarFigures, way: Way): Outcome<CarTour> {
  const { water, fuel } = figures;
  if (water === undefined || fuel === undefined) return bad([notKnown(figures)]);
  const [waterPerM, fuelPerM] = [planningUse(water), planningUse(fuel)];
  if (waterPerM === undefined || fuelPerM === undefined) return bad([notKnown(figures)]);
  const fillings = { waterM3: fillingM3(water), fuelM3: fillingM3(fuel) };
  const used = {
    lengthM: way.lengthM,
    waterUsedM3: usedAlong(way.stretches, waterPerM),
    fuelUsedM3: usedAlong(way.stretches, fuelPerM),
  };
  const plan = planTour({ ...used, stops: way.places }, fillings);
  if (!plan.ok) return bad([tooFar(way, plan, plan.lacks === 'water' ? used.waterUsedM3 : used.fuelUsedM3)]);
  const stopped = new Set(plan.stops);
  const chosen = way.places.map((place) => [...stopped].some((stop) => stop === place));
  const legs = legsOf(way, { water, fuel }, fillings, chosen);
  const whole = lengthsBetween(way.stretches, 0, way.lengthM);
  const oil = car.spec.engine.oil.use?.si;
  return good({
    way,
    legs,
    stops: plan.stops.length,
    water: over(water, whole),
    fuel: over(fuel, whole),
    ...(oil === undefined ? {} : { oilM3: oil * way.lengthM }),
  });
}

/**
 * Use for planning on each terrain, m³ per m, such that what it adds up to on a filling is the high end for exactly that
 * length: a short way's own luck is not averaged away, nor a long way's counted for every mile.
 */
export function planningUse({ use, ...chart }: RangeChart): Readonly<Record<Terrain, number>> | undefined {
  if (use.fit !== undefined) {
    const { fit } = use;
    const filling = fillingM3(chart);
    if (filling <= 0) return undefined;
    const high = (levelM: number): number => nextTripUse(fit, 1, levelM).high * levelM;
    const levelM = solveRising(high, filling, 1, (2 * filling) / fit.levelUse);
    const perLevelM = filling / levelM;
    return {
      level: perLevelM * use.ratios.level,
      rolling: perLevelM * use.ratios.rolling,
      hilly: perLevelM * use.ratios.hilly,
    };
  }
  const [level, rolling, hilly] = terrains.map((terrain) => use.byTerrain[terrain].planPerM);
  if (level === undefined || rolling === undefined || hilly === undefined) return undefined;
  return { level, rolling, hilly };
}

function legsOf(
  { stretches, places }: Way,
  charts: { readonly water: RangeChart; readonly fuel: RangeChart },
  fillings: { readonly waterM3: number; readonly fuelM3: number },
  chosen: readonly boolean[],
): readonly TourLeg[] {
  let [beforeM, waterFromM, fuelFromM] = [0, 0, 0];
  return places.map((to, index): TourLeg => {
    const lengths = lengthsBetween(stretches, beforeM, to.atM);
    const left = (chart: RangeChart, filling: number, fromM: number): number =>
      filling - over(chart, lengthsBetween(stretches, fromM, to.atM)).high;
    const stop = chosen[index] === true;
    const leg: TourLeg = {
      to,
      distanceM: to.atM - beforeM,
      climbM: climbOf(stretches, beforeM, to.atM),
      lengths,
      water: over(charts.water, lengths),
      fuel: over(charts.fuel, lengths),
      waterLeftM3: left(charts.water, fillings.waterM3, waterFromM),
      fuelLeftM3: left(charts.fuel, fillings.fuelM3, fuelFromM),
      takeWater: stop && to.water,
      takeFuel: stop && to.fuel,
    };
    beforeM = to.atM;
    if (leg.takeWater) waterFromM = to.atM;
    if (leg.takeFuel) fuelFromM = to.atM;
    return leg;
  });
}

function over({ use }: RangeChart, lengths: Readonly<Record<Terrain, number>>): UsedOver {
  const used = usedOver(use, lengths);
  if (used === undefined) throw new RangeError(`the use of ${use.liquid} is not known on every road`);
  return used;
}

function notKnown(figures: CarFigures): Diagnostic {
  const missing = figures.all.filter(
    ({ id, value }) => /^(water|fuel)-/.test(id) && value.kind === 'unknown',
  );
  return {
    code: 'tour-unknown',
    severity: 'error',
    message: 'no way can be planned while the use of water or fuel is not known',
    found: missing.map(({ name }) => name).join('; ') || 'tanks that hold no more than their reserve',
    expected: 'water and fuel known by the stick and by the mile',
    mend:
      missing.map(({ value }) => (value.kind === 'unknown' ? value.measure : '')).join('; ') ||
      'look at `reserve`',
  };
}

function tooFar(
  way: Way,
  { farthestM, lacks }: { readonly farthestM: number; readonly lacks: 'water' | 'fuel' },
  usedM3: (atM: number) => number,
): Diagnostic {
  const next = way.places.find(
    (place) => place.atM > farthestM && (place[lacks] || place.atM === way.lengthM),
  );
  const more = next === undefined ? 0 : usedM3(next.atM) - usedM3(farthestM);
  return {
    code: 'tour-too-far',
    severity: 'error',
    message: `with its reserve whole the car comes ${km(farthestM)} from the start, and then lacks ${lacks}`,
    found: `the next ${lacks === 'water' ? 'water' : 'fuel'} or the end: \`${next?.name ?? 'end'}\`, at ${km(next?.atM ?? way.lengthM)}`,
    expected: `a stop for ${lacks} before that`,
    mend: `find ${lacks} on the way, or carry ${(Math.ceil((more / litre) * 10) / 10).toFixed(1)} L (${(Math.ceil((more / usGallon) * 10) / 10).toFixed(1)} US gal) more in cans`,
  };
}

function km(metres: number): string {
  return `${(metres / 1000).toFixed(1)} km (${(metres / 1609.344).toFixed(1)} mi)`;
}
