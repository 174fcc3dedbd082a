/**
 * How far away is far enough: the line that lies everywhere at one distance around something.
 */

/** A place on the ground, in metres from the car's front end and its middle line. */
export interface Spot {
  readonly backM: number;
  readonly rightM: number;
}

/** Degrees between two points of a line. */
const stepDegrees = 4;

/**
 * The line at `distanceM` around the spots, taken together as what a string around them would hold: closed, in order.
 * It is the boundary of the Minkowski sum of their convex hull and a disc: for every direction the spot that lies
 * furthest that way, and from it the distance in that direction.
 */
export function standOff(spots: readonly Spot[], distanceM: number): readonly Spot[] {
  const [first] = spots;
  if (first === undefined) return [];
  return Array.from({ length: 360 / stepDegrees }, (_, index) => {
    const angle = (index * stepDegrees * Math.PI) / 180;
    const way = { backM: Math.sin(angle), rightM: Math.cos(angle) };
    const reach = (spot: Spot) => spot.backM * way.backM + spot.rightM * way.rightM;
    const furthest = spots.reduce((most, spot) => (reach(spot) > reach(most) + 1e-9 ? spot : most), first);
    return {
      backM: furthest.backM + distanceM * way.backM,
      rightM: furthest.rightM + distanceM * way.rightM,
    };
  });
}
