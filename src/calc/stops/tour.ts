/**
 * Planning a tour by water and fuel together: the fewest stops, and the legs between them.
 *
 * Method: dynamic programming over stops. After a stop all that matters is where water and where fuel were last taken;
 * of two ways with as many stops, one that took both no earlier is never worse, so only such ways are kept.
 */

/** A place on the way where something can be had; the tanks are then filled with it. */
export interface TourStop {
  readonly name: string;
  readonly atM: number;
  readonly water: boolean;
  readonly fuel: boolean;
}

/** A way, by what it uses. Both functions rise with the place, from nought at the start. */
export interface Tour {
  readonly lengthM: number;
  /** Water used from the start to a place, m³. */
  waterUsedM3(atM: number): number;
  /** Fuel used from the start to a place, m³. */
  fuelUsedM3(atM: number): number;
  readonly stops: readonly TourStop[];
}

/** What may be planned with on a filling (usable, reserve kept back), m³. */
export interface Fillings {
  readonly waterM3: number;
  readonly fuelM3: number;
}

/** From one stop to the next. */
export interface Leg {
  readonly from: string;
  readonly to: string;
  readonly lengthM: number;
  readonly waterUsedM3: number;
  readonly fuelUsedM3: number;
  /** What is left over the reserve on arriving, before filling. */
  readonly waterLeftM3: number;
  readonly fuelLeftM3: number;
}

/** A tour that can be driven, or how far it can. */
export type TourPlan =
  | { readonly ok: true; readonly stops: readonly TourStop[]; readonly legs: readonly Leg[] }
  /** No choice of stops goes farther than `farthestM`; `lacks` is what runs out there. */
  | { readonly ok: false; readonly farthestM: number; readonly lacks: 'water' | 'fuel' };

/** One way of having come to a stop. */
interface Way {
  readonly at: Point;
  readonly lastWaterM: number;
  readonly lastFuelM: number;
  readonly before?: Way;
}

interface Point {
  readonly atM: number;
  readonly stop?: TourStop;
}

/** How much over a filling a leg may take and still count as within it: rounding only. */
const noise = 1 + 1e-9;

/** The fewest stops that bring the car to the end, starting full. */
export function planTour(tour: Tour, fillings: Fillings): TourPlan {
  const stops = tour.stops.filter(
    (stop) => stop.atM > 0 && stop.atM < tour.lengthM && (stop.water || stop.fuel),
  );
  const points: Point[] = [...stops].sort((a, b) => a.atM - b.atM).map((stop) => ({ atM: stop.atM, stop }));
  const end: Point = { atM: tour.lengthM };
  let front: Way[] = [{ at: { atM: 0 }, lastWaterM: 0, lastFuelM: 0 }];
  const best = new Map<Point, Way[]>();
  let farthest: TourPlan & { ok: false } = { ok: false, farthestM: 0, lacks: 'water' };
  while (front.length > 0) {
    for (const way of front) {
      const reach = reachOf(tour, fillings, way);
      if (reach.atM >= tour.lengthM) return drawn(tour, fillings, arrive(way, end));
      if (reach.atM >= farthest.farthestM) farthest = { ok: false, farthestM: reach.atM, lacks: reach.lacks };
    }
    front = nextFront(tour, fillings, front, points, best);
  }
  return farthest;
}

function nextFront(
  tour: Tour,
  fillings: Fillings,
  front: readonly Way[],
  points: readonly Point[],
  best: Map<Point, Way[]>,
): Way[] {
  const fresh: Way[] = [];
  for (const way of front) {
    for (const point of points) {
      if (point.atM <= way.at.atM) continue;
      if (!within(tour, fillings, way, point.atM)) break;
      const next = arrive(way, point);
      const known = best.get(point) ?? [];
      if (known.some((other) => other.lastWaterM >= next.lastWaterM && other.lastFuelM >= next.lastFuelM))
        continue;
      best.set(point, [...known.filter((other) => !isNoBetter(other, next)), next]);
      fresh.push(next);
    }
  }
  return fresh.filter((way) => (best.get(way.at) ?? []).includes(way));
}

function isNoBetter(way: Way, than: Way): boolean {
  return way.lastWaterM <= than.lastWaterM && way.lastFuelM <= than.lastFuelM;
}

function arrive(way: Way, at: Point): Way {
  return {
    at,
    lastWaterM: at.stop?.water ? at.atM : way.lastWaterM,
    lastFuelM: at.stop?.fuel ? at.atM : way.lastFuelM,
    before: way,
  };
}

function within(tour: Tour, fillings: Fillings, way: Way, atM: number): boolean {
  return (
    waterSince(tour, way, atM) <= fillings.waterM3 * noise &&
    fuelSince(tour, way, atM) <= fillings.fuelM3 * noise
  );
}

function waterSince(tour: Tour, way: Way, atM: number): number {
  return tour.waterUsedM3(atM) - tour.waterUsedM3(way.lastWaterM);
}

function fuelSince(tour: Tour, way: Way, atM: number): number {
  return tour.fuelUsedM3(atM) - tour.fuelUsedM3(way.lastFuelM);
}

/** How far the car comes from here without stopping again, and what runs out there. */
function reachOf(tour: Tour, fillings: Fillings, way: Way): { atM: number; lacks: 'water' | 'fuel' } {
  if (within(tour, fillings, way, tour.lengthM)) return { atM: tour.lengthM, lacks: 'water' };
  let [near, far] = [way.at.atM, tour.lengthM];
  while (far - near > 0.5) {
    const middle = (near + far) / 2;
    if (within(tour, fillings, way, middle)) near = middle;
    else far = middle;
  }
  return { atM: near, lacks: waterSince(tour, way, far) > fillings.waterM3 * noise ? 'water' : 'fuel' };
}

function drawn(tour: Tour, fillings: Fillings, last: Way): TourPlan {
  const ways: Way[] = [];
  for (let way: Way | undefined = last; way; way = way.before) ways.unshift(way);
  const nameOf = ({ at }: Way): string => at.stop?.name ?? (at.atM === 0 ? 'start' : 'end');
  const legs = ways.slice(1).map((way, index): Leg => {
    const before = ways[index] ?? way;
    const [from, to] = [before.at.atM, way.at.atM];
    return {
      from: nameOf(before),
      to: nameOf(way),
      lengthM: to - from,
      waterUsedM3: tour.waterUsedM3(to) - tour.waterUsedM3(from),
      fuelUsedM3: tour.fuelUsedM3(to) - tour.fuelUsedM3(from),
      waterLeftM3: fillings.waterM3 - waterSince(tour, before, to),
      fuelLeftM3: fillings.fuelM3 - fuelSince(tour, before, to),
    };
  });
  return { ok: true, stops: ways.flatMap((way) => way.at.stop ?? []), legs };
}
