/** What the car uses for a distance, by terrain: from the keeper's log where there is one, else from the keeper's readings. */
import type { Car } from '../../car/car';
import { type Quantity, quantity } from '../../quantity/quantity';
import { terrains } from '../../spec/schema/running';
import type { Figure } from '../figure';
import type { Terrain, TripLog } from '../range/trip-log';
import { fitUse, meanUse, nextTripUse, type TerrainRatios, type UseFit } from '../range/use-fit';
import { type RoadCar, surfaceRolling, tyreRolling } from '../road/road-load';
import { terrainRatios as roadRatios } from '../road/terrain';

/** Which liquid. */
export type UsedLiquid = 'water' | 'fuel';

/** Use on one terrain. */
export interface TerrainUse {
  readonly terrain: Terrain;
  /** What to plan with, m³ per m: the high end where the scatter is known. Absent if nothing was measured. */
  readonly planPerM?: number;
  /** The middle of what is known, m³ per m. */
  readonly meanPerM?: number;
  readonly figure: Figure;
}

/** Use of one liquid on every terrain. */
export interface LiquidUse {
  readonly liquid: UsedLiquid;
  readonly byTerrain: Readonly<Record<Terrain, TerrainUse>>;
  /** The fit to the log, if there was one. */
  readonly fit?: UseFit;
}

/** A day's stretch between fillings, for which one trip's own luck is reckoned in. */
const plannedTripM = 30_000;

/** Chance, in the hundred, that a trip uses no more than what is planned with. */
const planned = 95;

/** Use of one liquid. `log` is the keeper's log, if the spec names one. */
export function liquidUse(car: Car, liquid: UsedLiquid, log: TripLog | undefined): LiquidUse {
  const readings = new Map(
    (car.spec.running[`${liquid}-use`] ?? []).map((reading) => [reading.terrain, reading]),
  );
  const ratios = terrainRatios(car, readings);
  const fit = log === undefined ? undefined : fitUse(log.trips, liquid, ratios.by);
  const useOn = (terrain: Terrain): TerrainUse => {
    const reading = readings.get(terrain);
    if (fit !== undefined) return fromLog(terrain, liquid, fit, ratios, log?.file ?? '');
    if (reading !== undefined) return fromReading(terrain, liquid, reading.use, reading.where);
    const [other] = readings.values();
    return other === undefined
      ? notMeasured(terrain, liquid)
      : fromOtherTerrain(terrain, liquid, other, ratios.by);
  };
  return {
    liquid,
    byTerrain: { level: useOn('level'), rolling: useOn('rolling'), hilly: useOn('hilly') },
    ...(fit === undefined ? {} : { fit }),
  };
}

interface Reading {
  readonly terrain: Terrain;
  readonly use: Quantity<'volumePerDistance'>;
  readonly where: string;
}

/** How much more each terrain uses than level road, and where that is known from. */
interface Ratios {
  readonly by: TerrainRatios;
  readonly basis: 'readings' | 'physics';
  readonly estimated: boolean;
}

/** From the keeper's readings if there is one for every terrain; else from the road load of the car. */
function terrainRatios(car: Car, readings: ReadonlyMap<Terrain, Reading>): Ratios {
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

/** Four people and their things; common practice, no source. */
const loadKg = 320;
/** Upright open body, and its area over width times height; from memory. */
const usualDrag = 0.9;
const usualAreaShare = 0.8;
const usualHeightM = 1.9;

/** The car as road and air feel it, with usual values where the spec is silent. */
function roadCarOf({ spec }: Car): RoadCar {
  const { front, tyres } = spec.running;
  return {
    massKg: spec.running['mass-empty'].si + loadKg,
    rolling:
      tyres.pressure === undefined
        ? surfaceRolling['worn asphalt']
        : tyreRolling(tyres.pressure.si, spec.running['usual-speed'].si),
    dragCoefficient: front?.['drag-coefficient'] ?? usualDrag,
    frontalAreaM2:
      front?.area.si ?? usualAreaShare * spec.car.width.si * (spec.car.height?.si ?? usualHeightM),
  };
}

function fromLog(
  terrain: Terrain,
  liquid: UsedLiquid,
  fit: UseFit,
  { by, basis, estimated }: Ratios,
  file: string,
): TerrainUse {
  const ratio = by[terrain];
  const plan = nextTripUse(fit, ratio, plannedTripM, (2 * planned - 100) / 100);
  const mean = meanUse(fit, ratio);
  const ratioWords =
    basis === 'physics'
      ? 'how much harder each terrain is was worked out from the road load'
      : `how much harder each terrain is comes from the keeper’s readings${estimated ? ', one of them an estimate' : ''}`;
  return {
    terrain,
    planPerM: plan.high,
    meanPerM: mean.mean,
    figure: {
      id: `${liquid}-use-${terrain}`,
      name: `${liquid} used on ${terrain} road, for planning`,
      value: { kind: 'quantity', quantity: quantity('volumePerDistance', plan.high), rounding: 'up' },
      inputs: [
        { name: 'trips in the log', value: fit.trips, from: file },
        {
          name: 'trips left out as wild',
          value:
            fit.wild.length === 0
              ? 'none'
              : fit.wild.map(({ trip }) => `${trip.date} (line ${trip.line})`).join(', '),
          from: file,
        },
        { name: 'middle of the fit', value: quantity('volumePerDistance', mean.mean), from: file },
        {
          name: `use on ${terrain} road over use on level road`,
          value: Math.round(ratio * 1000) / 1000,
          from: basis === 'physics' ? 'road load' : `running.${liquid}-use`,
        },
      ],
      formula: `robust fit of use against distance through nought, × terrain ratio; planned with the use that ${planned} trips in 100 do not pass`,
      source: 'weighted least squares with Student’s interval; wild trips named and left out',
      checkedAgainst: 'NIST StRD NoInt1 and NoInt2',
      doubt: {
        basis: estimated ? 'estimated' : 'measured',
        share: plan.high / mean.mean - 1,
        words: `${fit.trips} trips; ${ratioWords}`,
      },
    },
  };
}

function fromReading(
  terrain: Terrain,
  liquid: UsedLiquid,
  use: Quantity<'volumePerDistance'>,
  where: string,
): TerrainUse {
  return {
    terrain,
    planPerM: use.si,
    meanPerM: use.si,
    figure: {
      id: `${liquid}-use-${terrain}`,
      name: `${liquid} used on ${terrain} road`,
      value: { kind: 'quantity', quantity: use, rounding: 'up' },
      inputs: [{ name: 'the keeper’s reading', value: use, from: `running.${liquid}-use` }],
      formula: 'as read',
      source: where,
      checkedAgainst: 'nothing published; it is this car’s own',
      doubt: {
        basis: use.estimated ? 'estimated' : 'measured',
        words: 'a single figure; how far trips scatter about it is not known, so the reserve must bear it',
      },
    },
  };
}

/** Physics gives the ratio between terrains, the one reading gives the level. */
function fromOtherTerrain(
  terrain: Terrain,
  liquid: UsedLiquid,
  other: Reading,
  by: TerrainRatios,
): TerrainUse {
  const ratio = by[terrain] / by[other.terrain];
  const use = quantity('volumePerDistance', other.use.si * ratio, true);
  return {
    terrain,
    planPerM: use.si,
    meanPerM: use.si,
    figure: {
      id: `${liquid}-use-${terrain}`,
      name: `${liquid} used on ${terrain} road`,
      value: { kind: 'quantity', quantity: use, rounding: 'up' },
      inputs: [
        {
          name: `the keeper’s reading on ${other.terrain} road`,
          value: other.use,
          from: `running.${liquid}-use`,
        },
        {
          name: `${terrain} over ${other.terrain} road`,
          value: Math.round(ratio * 1000) / 1000,
          from: 'road load',
        },
      ],
      formula: 'reading × work for each distance on this terrain / on that one',
      source: 'rolling, climbing and air (Bosch Automotive Handbook, from memory); gradients assumed',
      checkedAgainst: 'nothing published for such cars',
      doubt: { basis: 'estimated', share: 0.25, words: 'not measured on this terrain' },
    },
  };
}

function notMeasured(terrain: Terrain, liquid: UsedLiquid): TerrainUse {
  return {
    terrain,
    figure: {
      id: `${liquid}-use-${terrain}`,
      name: `${liquid} used on ${terrain} road`,
      value: {
        kind: 'unknown',
        measure: `fill up, drive a marked distance of ${terrain} road, fill up again, and write what went in over the distance into \`running\``,
      },
      inputs: [],
      formula: 'not known',
      source: 'not measured yet',
      checkedAgainst: 'nothing published; it is this car’s own',
      doubt: { basis: 'unknown', words: 'not measured' },
    },
  };
}
