/** What the car uses for a distance, by terrain: from the keeper's log where there is one, else from readings, else from physics. */
import type { Car } from '../../car/car';
import { terrains } from '../../spec/schema/running';
import type { Liquids } from '../fuel/liquids';
import type { Terrain, TripLog } from '../range/trip-log';
import {
  fitUse,
  levelLengthOf,
  nextTripUse,
  stopsPerM,
  type TerrainRatios,
  type UseFit,
} from '../range/use-fit';
import { stopAsLevelRoadM } from '../road/stops';
import { terrainRatios as roadRatios } from '../road/terrain';
import { roadCarOf } from './roadCar';
import {
  fromFewTrips,
  fromLog,
  fromOtherTerrain,
  fromReading,
  fromWork,
  notMeasured,
  type Ratios,
  type Reading,
  type TerrainUse,
  type UsedLiquid,
} from './useFigures';
import { useFromWork } from './workUse';

export type { TerrainUse, UsedLiquid } from './useFigures';

/** Use of one liquid on every terrain. */
export interface LiquidUse {
  readonly liquid: UsedLiquid;
  readonly byTerrain: Readonly<Record<Terrain, TerrainUse>>;
  /** How much more each terrain uses, with the stops of the log, than level road without a stop. */
  readonly ratios: TerrainRatios;
  /** The fit to the log, if there was one. */
  readonly fit?: UseFit;
}

/** Use of one liquid. `log` is the keeper's log, if the spec names one. */
export function liquidUse(
  car: Car,
  liquid: UsedLiquid,
  log: TripLog | undefined,
  liquids: Liquids,
): LiquidUse {
  const readings = new Map(
    (car.spec.running[`${liquid}-use`] ?? []).map((reading) => [reading.terrain, reading]),
  );
  const ratios = terrainRatios(car, readings, log);
  const fit = log === undefined ? undefined : fitUse(log.trips, liquid, ratios.by, ratios.stop.asLevelM);
  const few = log === undefined ? undefined : fewTrips(log, liquid, ratios);
  const useOn = (terrain: Terrain): TerrainUse => {
    if (fit !== undefined) return fromLog(terrain, liquid, fit, ratios, log?.file ?? '');
    const reading = readings.get(terrain);
    if (reading !== undefined) return fromReading(liquid, reading);
    const other = nearestReading(terrain, readings);
    if (other !== undefined) return fromOtherTerrain(terrain, liquid, other, ratios);
    if (few !== undefined) return fromFewTrips(terrain, liquid, few, ratios);
    const worked = useFromWork(car, liquid, terrain, liquids);
    return worked === undefined ? notMeasured(terrain, liquid) : fromWork(terrain, liquid, worked);
  };
  return {
    liquid,
    ratios: ratios.driven,
    byTerrain: neverEasier({ level: useOn('level'), rolling: useOn('rolling'), hilly: useOn('hilly') }),
    ...(fit === undefined ? {} : { fit }),
  };
}

/** What is used over lengths of each terrain (m): the mean, and what nine trips in ten lie between, m³. */
export interface UsedOver {
  readonly mean: number;
  readonly low: number;
  readonly high: number;
}

/** Use over a way; undefined if it is not known on a terrain that the way has. */
export function usedOver(use: LiquidUse, lengths: Readonly<Record<Terrain, number>>): UsedOver | undefined {
  if (use.fit !== undefined) {
    const levelM = levelLengthM(lengths, use.ratios);
    if (levelM === 0) return { mean: 0, low: 0, high: 0 };
    const { mean, low, high } = nextTripUse(use.fit, 1, levelM);
    return { mean: mean * levelM, low: low * levelM, high: high * levelM };
  }
  const parts = terrains
    .filter((terrain) => lengths[terrain] > 0)
    .map((terrain) => {
      const { meanPerM, planPerM } = use.byTerrain[terrain];
      return { length: lengths[terrain], meanPerM, planPerM };
    });
  let [mean, high] = [0, 0];
  for (const { length, meanPerM, planPerM } of parts) {
    if (meanPerM === undefined || planPerM === undefined) return undefined;
    mean += length * meanPerM;
    high += length * planPerM;
  }
  return { mean, low: Math.max(0, 2 * mean - high), high };
}

/** The length of level road that takes as much. */
export function levelLengthM(lengths: Readonly<Record<Terrain, number>>, ratios: TerrainRatios): number {
  return terrains.reduce((sum, terrain) => sum + lengths[terrain] * ratios[terrain], 0);
}

/** From the keeper's readings if there is one for every terrain; else from the road load of the car. */
function terrainRatios(car: Car, readings: ReadonlyMap<Terrain, Reading>, log: TripLog | undefined): Ratios {
  const perM = log === undefined ? 0 : stopsPerM(log.trips);
  const asLevelM = stopAsLevelRoadM(roadCarOf(car), car.spec.running['usual-speed'].si);
  const { by, ...told } = roadRatiosOf(car, readings);
  const more = perM * asLevelM;
  const driven = { level: by.level + more, rolling: by.rolling + more, hilly: by.hilly + more };
  return { by, driven, stop: { asLevelM, perM }, ...told };
}

function roadRatiosOf(
  car: Car,
  readings: ReadonlyMap<Terrain, Reading>,
): Pick<Ratios, 'by' | 'basis' | 'estimated'> {
  const [level, rolling, hilly] = terrains.map((terrain) => readings.get(terrain)?.use);
  if (level === undefined || rolling === undefined || hilly === undefined) {
    return {
      by: roadRatios(roadCarOf(car), car.spec.running['usual-speed'].si),
      basis: 'physics',
      estimated: true,
    };
  }
  const middle = Math.max(1, rolling.si / level.si);
  return {
    by: { level: 1, rolling: middle, hilly: Math.max(middle, hilly.si / level.si) },
    basis: 'readings',
    estimated: level.estimated || rolling.estimated || hilly.estimated,
  };
}

/** The reading on the terrain most like this one; of two as like, the harder, which errs to using more. */
function nearestReading(terrain: Terrain, readings: ReadonlyMap<Terrain, Reading>): Reading | undefined {
  const place = (of: Terrain): number => terrains.indexOf(of);
  return [...readings.values()].sort(
    (a, b) =>
      Math.abs(place(a.terrain) - place(terrain)) - Math.abs(place(b.terrain) - place(terrain)) ||
      place(b.terrain) - place(a.terrain),
  )[0];
}

/** A log too short for a fit; undefined if no trip measured the liquid. */
function fewTrips(log: TripLog, liquid: UsedLiquid, { by, stop }: Ratios) {
  const measured = log.trips.flatMap((trip) => {
    const used = liquid === 'water' ? trip.waterM3 : trip.fuelM3;
    return used === undefined ? [] : [{ used, levelM: levelLengthOf(trip, by, stop) }];
  });
  if (measured.length === 0) return undefined;
  const sum = (of: (each: (typeof measured)[number]) => number): number =>
    measured.reduce((total, each) => total + of(each), 0);
  return {
    count: measured.length,
    levelPerM: sum(({ used }) => used) / sum(({ levelM }) => levelM),
    file: log.file,
  };
}

/** A harder terrain is never planned with less than an easier one, whatever the readings say. */
function neverEasier(by: Readonly<Record<Terrain, TerrainUse>>): LiquidUse['byTerrain'] {
  const atLeast = (use: TerrainUse, easier: TerrainUse): TerrainUse =>
    use.planPerM !== undefined && easier.planPerM !== undefined && use.planPerM < easier.planPerM
      ? raisedTo(use, easier.planPerM)
      : use;
  const rolling = atLeast(by.rolling, by.level);
  return { level: by.level, rolling, hilly: atLeast(by.hilly, rolling) };
}

function raisedTo(use: TerrainUse, planPerM: number): TerrainUse {
  const { value } = use.figure;
  return {
    ...use,
    planPerM,
    figure: {
      ...use.figure,
      value: value.kind === 'quantity' ? { ...value, quantity: { ...value.quantity, si: planPerM } } : value,
      formula: `${use.figure.formula}; not less than on easier road`,
    },
  };
}
