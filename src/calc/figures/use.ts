/** What the car uses for a distance, by terrain: from the keeper's log where there is one, else from the keeper's readings. */
import type { Car } from '../../car/car';
import { type Quantity, quantity } from '../../quantity/quantity';
import { terrains } from '../../spec/schema/running';
import type { Figure } from '../figure';
import type { Terrain, TripLog } from '../range/trip-log';
import { fitUse, meanUse, nextTripUse, type TerrainRatios, type UseFit } from '../range/use-fit';

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
  const ratios = terrainRatios(readings);
  const fit = log === undefined || ratios === undefined ? undefined : fitUse(log.trips, liquid, ratios);
  const useOn = (terrain: Terrain): TerrainUse => {
    const reading = readings.get(terrain);
    if (fit !== undefined && ratios !== undefined)
      return fromLog(terrain, liquid, fit, ratios, readings, log?.file ?? '');
    return reading === undefined
      ? notMeasured(terrain, liquid)
      : fromReading(terrain, liquid, reading.use, reading.where);
  };
  return {
    liquid,
    byTerrain: { level: useOn('level'), rolling: useOn('rolling'), hilly: useOn('hilly') },
    ...(fit === undefined ? {} : { fit }),
  };
}

type Reading = { readonly use: Quantity<'volumePerDistance'>; readonly where: string };

/** How much more each terrain uses than level road, from the keeper's readings; nothing if one of them is missing. */
function terrainRatios(readings: ReadonlyMap<Terrain, Reading>): TerrainRatios | undefined {
  const [level, rolling, hilly] = terrains.map((terrain) => readings.get(terrain)?.use.si);
  if (level === undefined || rolling === undefined || hilly === undefined) return undefined;
  return {
    level: 1,
    rolling: Math.max(1, rolling / level),
    hilly: Math.max(1, rolling / level, hilly / level),
  };
}

function fromLog(
  terrain: Terrain,
  liquid: UsedLiquid,
  fit: UseFit,
  ratios: TerrainRatios,
  readings: ReadonlyMap<Terrain, Reading>,
  file: string,
): TerrainUse {
  const ratio = ratios[terrain];
  const plan = nextTripUse(fit, ratio, plannedTripM, (2 * planned - 100) / 100);
  const mean = meanUse(fit, ratio);
  const estimated = [...readings.values()].some((reading) => reading.use.estimated);
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
          from: `running.${liquid}-use`,
        },
      ],
      formula: `robust fit of use against distance through nought, × terrain ratio; planned with the use that ${planned} trips in 100 do not pass`,
      source: 'weighted least squares with Student’s interval; wild trips named and left out',
      checkedAgainst: 'NIST StRD NoInt1 and NoInt2',
      doubt: {
        basis: estimated ? 'estimated' : 'measured',
        share: plan.high / mean.mean - 1,
        words: `${fit.trips} trips; the terrain ratios are the keeper’s readings${estimated ? ', one of them an estimate' : ''}`,
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
