/**
 * Length and climbing of a recorded way.
 *
 * Lengths are taken on the WGS 84 ellipsoid, with its radii of curvature at the middle of each short step (NIMA
 * TR8350.2). Recorded heights jump by metres from point to point and would add up to climbing that nobody drove; they
 * are first averaged over a stretch of road.
 */
import type { TrackPoint } from './gpx';

const equatorialRadiusM = 6378137;
const eccentricitySquared = 6.69437999014e-3;

/** Length of the short line between two points, m. */
export function stepM(a: TrackPoint, b: TrackPoint): number {
  const radians = Math.PI / 180;
  const middle = ((a.latitude + b.latitude) / 2) * radians;
  const turn = Math.abs(b.longitude - a.longitude);
  const east = Math.min(turn, 360 - turn) * radians;
  const flat = 1 - eccentricitySquared * Math.sin(middle) ** 2;
  const alongMeridian = (equatorialRadiusM * (1 - eccentricitySquared)) / flat ** 1.5;
  const alongParallel = (equatorialRadiusM / Math.sqrt(flat)) * Math.cos(middle);
  return Math.hypot(alongMeridian * (b.latitude - a.latitude) * radians, alongParallel * east);
}

/** One place of a way: how far along, how high (smoothed). */
export interface ProfilePoint {
  readonly atM: number;
  readonly elevationM: number;
}

/** A way by length and height. */
export interface Profile {
  readonly lengthM: number;
  readonly points: readonly ProfilePoint[];
  /** All that is climbed, and all that is fallen, m; nought if the file has no heights. */
  readonly climbM: number;
  readonly fallM: number;
  /** True if no point has a height, so that nothing is known of hills. */
  readonly withoutHeights: boolean;
}

/** The profile of a way. Heights are averaged over `windowM` each side of a place; missing ones lie between their neighbours. */
export function profileOf(track: readonly TrackPoint[], windowM = 100): Profile {
  let atM = 0;
  const places = track.map((point, index) => {
    const before = track[index - 1];
    if (before) atM += stepM(before, point);
    return { atM, elevationM: point.elevationM };
  });
  const withoutHeights = places.every((place) => place.elevationM === undefined);
  const points = smoothed(filledIn(places), windowM);
  let [climbM, fallM] = [0, 0];
  for (const [index, point] of points.entries()) {
    const rise = point.elevationM - (points[index - 1] ?? point).elevationM;
    if (rise > 0) climbM += rise;
    else fallM -= rise;
  }
  return { lengthM: atM, points, climbM, fallM, withoutHeights };
}

/** Climbing between two places of a profile, m. */
export function climbBetweenM(profile: Profile, fromM: number, toM: number): number {
  let climb = 0;
  for (const [index, point] of profile.points.entries()) {
    const before = profile.points[index - 1];
    if (!before || point.atM <= fromM || before.atM >= toM || point.atM <= before.atM) continue;
    const part = (Math.min(point.atM, toM) - Math.max(before.atM, fromM)) / (point.atM - before.atM);
    climb += Math.max(0, point.elevationM - before.elevationM) * part;
  }
  return climb;
}

/** Put heights where there are none: between the known ones, level before the first and after the last. */
function filledIn(
  places: readonly { atM: number; elevationM: number | undefined }[],
): readonly ProfilePoint[] {
  const known = places.flatMap(({ atM, elevationM }) =>
    elevationM === undefined ? [] : [{ atM, elevationM }],
  );
  let next = 0;
  return places.map(({ atM }) => {
    while (next < known.length && (known[next]?.atM ?? 0) < atM) next += 1;
    const [before, after] = [known[next - 1], known[next]];
    if (!before || !after) return { atM, elevationM: (before ?? after)?.elevationM ?? 0 };
    const share = (atM - before.atM) / (after.atM - before.atM);
    return { atM, elevationM: before.elevationM + share * (after.elevationM - before.elevationM) };
  });
}

/** Average of the height over the road within `windowM` each side: differences of its running integral, so each point costs little. */
function smoothed(points: readonly ProfilePoint[], windowM: number): readonly ProfilePoint[] {
  const total = points.at(-1)?.atM ?? 0;
  if (!(windowM > 0) || !(total > 0)) return points;
  const area = [0];
  for (const [index, point] of points.entries()) {
    const before = points[index - 1];
    if (before)
      area.push(
        (area[index - 1] ?? 0) + ((point.elevationM + before.elevationM) / 2) * (point.atM - before.atM),
      );
  }
  const integral = runningIntegral(points, area);
  const [low, high] = [integral(), integral()];
  return points.map(({ atM, elevationM }) => {
    const half = Math.min(windowM, atM, total - atM);
    if (half < 1e-6) return { atM, elevationM };
    return { atM, elevationM: (high(atM + half) - low(atM - half)) / (2 * half) };
  });
}

/** Makers of functions for the integral of the height up to a place; each remembers where it was, as places mostly rise. */
function runningIntegral(
  points: readonly ProfilePoint[],
  area: readonly number[],
): () => (atM: number) => number {
  return () => {
    let index = 0;
    return (atM) => {
      while (index > 0 && (points[index]?.atM ?? 0) > atM) index -= 1;
      while (index < points.length - 2 && (points[index + 1]?.atM ?? 0) <= atM) index += 1;
      const [a, b] = [points[index], points[index + 1]];
      if (!a || !b || b.atM <= a.atM) return area[index] ?? 0;
      const x = Math.min(Math.max(atM - a.atM, 0), b.atM - a.atM);
      const slope = (b.elevationM - a.elevationM) / (b.atM - a.atM);
      return (area[index] ?? 0) + x * (a.elevationM + (slope * x) / 2);
    };
  };
}
