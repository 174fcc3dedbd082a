/**
 * What the car uses for a distance, from the keeper's own log.
 *
 * The ratios between terrains come from physics (`road/terrain.ts`) or from the keeper's readings; the log gives the
 * level. Every trip, its stops with it, is turned into the length of level road that would have used as much; use is proportional to that
 * length, with a scatter that grows as its square root (so that two trips count as one of both lengths). The fit goes
 * through nought, names wild trips and leaves them out, and gives Student's interval.
 */
import { robustFit } from '../numeric/robust-fit';
import { studentQuantile } from '../numeric/student';
import type { Terrain, Trip } from './trip-log';

/** How much more each terrain uses than level road driven without a stop. */
export type TerrainRatios = Readonly<Record<Terrain, number>>;

/** A trip left out of the fit. */
export interface WildTrip {
  readonly trip: Trip;
  /** What was used over what the fit says: above 1 if it was more. */
  readonly timesExpected: number;
}

/** Use of one liquid by distance. */
export interface UseFit {
  readonly liquid: 'water' | 'fuel';
  /** On level road driven without a stop, m³ per m. */
  readonly levelUse: number;
  /** Standard error of `levelUse`, m³ per m. */
  readonly standardError: number;
  /** Scatter of one trip: standard deviation of its use over the square root of its level length, m³ per √m. */
  readonly scatter: number;
  readonly degreesOfFreedom: number;
  readonly trips: number;
  readonly wild: readonly WildTrip[];
}

/** Fewer trips than this say nothing of their own scatter that could be planned by. */
const leastTrips = 3;

/** How often the trips of a log stopped for each metre, on the mean of those that say; nought if none says. */
export function stopsPerM(trips: readonly Trip[]): number {
  const said = trips.filter(({ stops }) => stops !== undefined);
  const distanceM = said.reduce((sum, trip) => sum + trip.distanceM, 0);
  return distanceM > 0 ? said.reduce((sum, { stops = 0 }) => sum + stops, 0) / distanceM : 0;
}

/** A trip as level road without a stop, m. One that does not say its stops is taken to have had the mean of the log. */
export function levelLengthOf(
  trip: Trip,
  ratios: TerrainRatios,
  stop: { readonly asLevelM: number; readonly perM: number },
): number {
  const stops = trip.stops ?? trip.distanceM * stop.perM;
  return trip.distanceM * ratios[trip.terrain] + stops * stop.asLevelM;
}

/**
 * Fit the use of one liquid; undefined if fewer than three trips of the log measured it. `stopAsLevelM` is the level road
 * that takes as much as one stop.
 */
export function fitUse(
  trips: readonly Trip[],
  liquid: 'water' | 'fuel',
  ratios: TerrainRatios,
  stopAsLevelM = 0,
): UseFit | undefined {
  const stop = { asLevelM: stopAsLevelM, perM: stopsPerM(trips) };
  const measured = trips.flatMap((trip) => {
    const used = liquid === 'water' ? trip.waterM3 : trip.fuelM3;
    return used === undefined ? [] : [{ trip, used, levelM: levelLengthOf(trip, ratios, stop) }];
  });
  if (measured.length < leastTrips) return undefined;
  const robust = robustFit(
    measured.map(({ levelM }) => [Math.sqrt(levelM)]),
    measured.map(({ used, levelM }) => used / Math.sqrt(levelM)),
  );
  const [levelUse = Number.NaN] = robust.fit.coefficients;
  const [standardError = Number.NaN] = robust.fit.standardErrors;
  return {
    liquid,
    levelUse,
    standardError,
    scatter: robust.fit.residualDeviation,
    degreesOfFreedom: robust.fit.degreesOfFreedom,
    trips: robust.kept.length,
    wild: robust.wild.flatMap(({ index }) => {
      const one = measured[index];
      return one ? [{ trip: one.trip, timesExpected: one.used / (levelUse * one.levelM) }] : [];
    }),
  };
}

/** Use per distance on a terrain: the mean, and the interval it lies in with a chance of `confidence` (both sides). */
export interface UseInterval {
  /** m³ per m */
  readonly mean: number;
  readonly low: number;
  readonly high: number;
}

/** The mean use on a terrain and how surely it is known. */
export function meanUse(fit: UseFit, ratio: number, confidence = 0.95): UseInterval {
  const half = studentQuantile((1 + confidence) / 2, fit.degreesOfFreedom) * fit.standardError;
  return around(fit.levelUse, half, ratio);
}

/** What the next trip of `distanceM` may use, its own luck included: for planning, take `high`. */
export function nextTripUse(fit: UseFit, ratio: number, distanceM: number, confidence = 0.9): UseInterval {
  const levelM = distanceM * ratio;
  const deviation = Math.sqrt(fit.standardError ** 2 + fit.scatter ** 2 / levelM);
  return around(fit.levelUse, studentQuantile((1 + confidence) / 2, fit.degreesOfFreedom) * deviation, ratio);
}

function around(mean: number, half: number, ratio: number): UseInterval {
  return { mean: mean * ratio, low: Math.max(0, mean - half) * ratio, high: (mean + half) * ratio };
}
