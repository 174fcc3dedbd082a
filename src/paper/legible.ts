/** Type sizes from how far away a paper is read. */
import { type Face, type FontSet, faces } from '../font/metrics';
import { handDistanceM, heightSeenMm, leastArcMinutes, preferredArcMinutes } from '../layout/legibility';
import { pointsPerMm } from '../layout/sheet';

/** Larger type than this angle reads no better and turns more faces; ISO 9241-303 prefers 20 to 22 minutes of arc. */
const mostUsefulArcMinutes = 22;

/**
 * The smallest size of each face, in points, whose small letters (x-height, the face's own) are seen under 16 minutes of arc
 * from `distanceM`. ISO 9241-303 asks that of capitals; small letters are the stricter reading of it, for lamplight.
 */
export function leastSizes(fonts: FontSet, distanceM: number): Readonly<Record<Face, number>> {
  return bySize((face) => sizeFor(fonts, face, distanceM, leastArcMinutes));
}

/** The smallest size of each face for a book in the hand, where the angle is asked of capitals and figures. */
export function leastBookSizes(fonts: FontSet): Readonly<Record<Face, number>> {
  const heightPt = heightSeenMm(handDistanceM, leastArcMinutes) * pointsPerMm;
  return bySize((face) => heightPt / fonts[face].capHeight);
}

/**
 * Small letters read by what light there is: where by day 16 minutes of arc are the least, here they are the 20 that ISO 9241-303
 * prefers, in a bold face; they grow no further than to 24, the most that NUREG-0700 (rev. 2) names.
 */
const darkArcMinutes = { least: preferredArcMinutes, most: 24 };

/** The smallest and the largest size of each face for words read in the dark from `distanceM`. */
export function darkSizes(fonts: FontSet, distanceM: number) {
  return {
    leastPt: bySize((face) => sizeFor(fonts, face, distanceM, darkArcMinutes.least)),
    mostPt: sizeFor(fonts, 'narrow-bold', distanceM, darkArcMinutes.most),
  };
}

/** The size at which small letters are seen under the preferred 20 minutes of arc. */
export function preferredPt(fonts: FontSet, face: Face, distanceM: number): number {
  return sizeFor(fonts, face, distanceM, preferredArcMinutes);
}

/** The largest useful size of card type, in points. */
export function mostUsefulPt(fonts: FontSet, distanceM: number): number {
  return sizeFor(fonts, 'narrow', distanceM, mostUsefulArcMinutes);
}

function sizeFor(fonts: FontSet, face: Face, distanceM: number, arcMinutes: number): number {
  return (heightSeenMm(distanceM, arcMinutes) * pointsPerMm) / fonts[face].xHeight;
}

function bySize(size: (face: Face) => number): Readonly<Record<Face, number>> {
  return Object.fromEntries(faces.map((face) => [face, size(face)])) as Record<Face, number>;
}
