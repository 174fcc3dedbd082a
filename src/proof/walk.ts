/**
 * Walking round the car. A person keeps beside the car, half a step off its outline, so every place is a point on one
 * closed path round it; whoever sits in it got in at the driver’s side.
 */
import type { Car, Place } from '../car/car';

/** How far off the outline of the car a person walks, in metres. */
const offM = 0.5;

/** A path round the car, told as distances along it, in metres, from its front left corner to the right and on round. */
export class Round {
  readonly lengthM: number;
  private readonly longM: number;
  private readonly wideM: number;
  private readonly seatBackM: number;
  private readonly driverSide: 1 | -1;

  constructor(car: Car) {
    this.longM = car.spec.car.length.si + 2 * offM;
    this.wideM = car.spec.car.width.si + 2 * offM;
    this.lengthM = 2 * (this.longM + this.wideM);
    this.driverSide = car.spec.car['driver-side'] === 'left' ? -1 : 1;
    this.seatBackM =
      car.places.get(car.parts.get(car.spec.engine.throttle)?.place ?? '')?.backM ??
      car.spec.car.length.si / 2;
  }

  /** Where on the path one stands for a place: the nearest point of it. For a place reached from the seat, beside the seat. */
  spotOf(place: Place): number {
    const seated = place.reach === 'seated';
    const right = seated ? this.driverSide * this.wideM : place.rightM;
    const x = clamp(right + this.wideM / 2, this.wideM);
    const y = clamp((seated ? this.seatBackM : place.backM) + offM, this.longM);
    const { wideM, longM } = this;
    const sides = [
      { away: y, spot: x },
      { away: wideM - x, spot: wideM + y },
      { away: longM - y, spot: wideM + longM + (wideM - x) },
      { away: x, spot: 2 * wideM + longM + (longM - y) },
    ];
    return sides.reduce((best, side) => (side.away < best.away - 1e-9 ? side : best)).spot % this.lengthM;
  }

  /** The shorter way between two spots, in metres. */
  between(a: number, b: number): number {
    const way = Math.abs(a - b) % this.lengthM;
    return Math.min(way, this.lengthM - way);
  }
}

function clamp(value: number, most: number): number {
  return Math.min(most, Math.max(0, value));
}

/** An order of calling at spots, and how far it is to walk. */
export interface Walk {
  /** Positions in the list of spots, in the order they are called at. */
  readonly order: readonly number[];
  readonly lengthM: number;
}

/**
 * The shortest walk that calls at every spot, from where one is and, if that is given, to where one goes on.
 *
 * Exact for any number of spots: on a closed path, what has been walked past at any time is one stretch of it, and the
 * walker stands at one of its two ends. The best way to each such stretch and end is built up spot by spot
 * (R. Bellman, Dynamic Programming, 1957). Of equally short walks the one whose `weights` come earlier is taken.
 */
export function shortestWalk(
  round: Round,
  spots: readonly number[],
  from: number | undefined,
  to: number | undefined,
  weights: readonly number[] = [],
): Walk {
  if (spots.length === 0)
    return { order: [], lengthM: from === undefined || to === undefined ? 0 : round.between(from, to) };
  const starts = from === undefined ? spots.map((_, index) => index) : [undefined];
  const walks = starts.map((first) =>
    new Sweep(round, spots, from ?? spots[first ?? 0] ?? 0, to, weights).best(),
  );
  return walks.reduce((best, walk) => (better(walk, best) ? walk : best)).walk;
}

interface Scored {
  readonly walk: Walk;
  /** Weighted lateness; less is earlier. */
  readonly late: number;
}

function better(a: Scored, b: Scored): boolean {
  if (Math.abs(a.walk.lengthM - b.walk.lengthM) > 1e-9) return a.walk.lengthM < b.walk.lengthM;
  return a.late < b.late - 1e-12;
}

interface Leg {
  readonly lengthM: number;
  readonly late: number;
  readonly calls: number;
  readonly before: Leg | undefined;
  readonly called: readonly number[];
}

/** One walk outward from a start, to the left and to the right of it by turns. */
class Sweep {
  /** Spots in the order in which they are met going one way round from the start. */
  private readonly ring: readonly number[];
  private readonly place: readonly number[];

  constructor(
    private readonly round: Round,
    spots: readonly number[],
    private readonly start: number,
    private readonly to: number | undefined,
    private readonly weights: readonly number[],
  ) {
    const ahead = (index: number) =>
      ((((spots[index] ?? 0) - start) % round.lengthM) + round.lengthM) % round.lengthM;
    this.ring = spots.map((_, index) => index).sort((a, b) => ahead(a) - ahead(b) || a - b);
    this.place = this.ring.map(ahead);
  }

  best(): Scored {
    const count = this.ring.length;
    const blank: Leg = { lengthM: 0, late: 0, calls: 0, before: undefined, called: [] };
    // legs[side] by how many spots were called at going ahead; the rest of those called at so far were behind.
    let legs: (readonly [Leg | undefined, Leg | undefined])[] = [[blank, blank]];
    for (let called = 0; called < count; called += 1) {
      const next: [Leg | undefined, Leg | undefined][] = Array.from({ length: called + 2 }, () => [
        undefined,
        undefined,
      ]);
      legs.forEach((pair, ahead) => {
        const behind = called - ahead;
        pair.forEach((leg, side) => {
          if (leg === undefined) return;
          const here = this.position(side === 0 ? ahead : behind, side);
          this.offer(next, ahead + 1, 0, this.go(leg, here, ahead, 0));
          this.offer(next, ahead, 1, this.go(leg, here, behind, 1));
        });
      });
      legs = next;
    }
    return legs
      .flatMap((pair, ahead) =>
        pair.flatMap((leg, side) =>
          leg === undefined
            ? []
            : [this.finish(leg, this.position(side === 0 ? ahead : count - ahead, side))],
        ),
      )
      .reduce((a, b) => (better(b, a) ? b : a));
  }

  /** How far ahead of the start (or behind it) one stands after calling at so many spots on that side. */
  private position(calls: number, side: number): number {
    if (calls === 0) return 0;
    const at =
      side === 0
        ? (this.place[calls - 1] ?? 0)
        : this.round.lengthM - (this.place[this.place.length - calls] ?? 0);
    return side === 0 ? at : -at;
  }

  private go(leg: Leg, here: number, calls: number, side: number): Leg {
    const there = this.position(calls + 1, side);
    const index = (side === 0 ? this.ring[calls] : this.ring[this.ring.length - 1 - calls]) ?? 0;
    const straight = Math.abs(there - here);
    const lengthM = leg.lengthM + Math.min(straight, Math.abs(this.round.lengthM - straight));
    return {
      lengthM,
      late: leg.late + (this.weights[index] ?? 0) * leg.calls,
      calls: leg.calls + 1,
      before: leg,
      called: [index],
    };
  }

  private offer(next: [Leg | undefined, Leg | undefined][], ahead: number, side: 0 | 1, leg: Leg): void {
    const pair = next[ahead];
    if (pair === undefined) return;
    const known = pair[side];
    const shorter = known === undefined || leg.lengthM < known.lengthM - 1e-9;
    const earlier =
      known !== undefined && Math.abs(leg.lengthM - known.lengthM) <= 1e-9 && leg.late < known.late;
    if (shorter || earlier) pair[side] = leg;
  }

  private finish(leg: Leg, here: number): Scored {
    const order: number[] = [];
    for (let at: Leg | undefined = leg; at !== undefined; at = at.before) order.unshift(...at.called);
    const spot = (this.start + here + 2 * this.round.lengthM) % this.round.lengthM;
    const rest = this.to === undefined ? 0 : this.round.between(spot, this.to);
    return { walk: { order, lengthM: leg.lengthM + rest }, late: leg.late };
  }
}

/** How far an order of spots is to walk. */
export function walkLength(
  round: Round,
  spots: readonly number[],
  from: number | undefined,
  to: number | undefined,
): number {
  const all = [...(from === undefined ? [] : [from]), ...spots, ...(to === undefined ? [] : [to])];
  return all.slice(1).reduce((sum, spot, index) => sum + round.between(all[index] ?? spot, spot), 0);
}
