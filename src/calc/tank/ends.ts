/**
 * The ends (heads) of round tanks, all bulging outwards.
 *
 * Source: D. Jones, "Calculating Tank Volume" (2003) for the shapes and for the conical end lying on its side;
 * the ellipsoidal end by the area of its half-elliptical slices. Dished and torispherical ends lying on their side
 * are integrated along the axis over circular segments.
 */
import { integrate } from '../numeric/quadrature';
import { areaBelow } from './circle';

/** One end of a round tank. Depths are how far it bulges along the axis, inside, m. */
export type TankEnd =
  | { readonly kind: 'flat' }
  /** Half an ellipsoid. A 2:1 end is a quarter of the diameter deep. */
  | { readonly kind: 'ellipsoidal'; readonly depthM: number }
  /** A cap of a sphere (dished end). */
  | { readonly kind: 'spherical'; readonly depthM: number }
  | { readonly kind: 'hemispherical' }
  | { readonly kind: 'conical'; readonly depthM: number }
  /** A dish with a rounded corner; radii as shares of the tank's diameter. */
  | { readonly kind: 'torispherical'; readonly dishRadiusShare: number; readonly cornerRadiusShare: number };

/** An end of 2:1 ellipsoidal form for a tank of the given diameter. */
export function twoToOneEnd(diameterM: number): TankEnd {
  return { kind: 'ellipsoidal', depthM: diameterM / 4 };
}

/** How far an end bulges along the axis, m. */
export function endDepthM(end: TankEnd, radiusM: number): number {
  switch (end.kind) {
    case 'flat':
      return 0;
    case 'hemispherical':
      return radiusM;
    case 'torispherical':
      return torisphere(end, radiusM).depth;
    default:
      return end.depthM;
  }
}

/** Volume of an end between its open mouth and a plane `distanceM` beyond it along the axis, m³. */
export function endVolumeFromMouthM3(end: TankEnd, radiusM: number, distanceM: number): number {
  const depth = endDepthM(end, radiusM);
  if (depth === 0) return 0;
  const x = Math.min(Math.max(distanceM, 0), depth);
  switch (end.kind) {
    case 'conical':
      return ((Math.PI * radiusM * radiusM * depth) / 3) * (1 - (1 - x / depth) ** 3);
    case 'spherical':
    case 'torispherical':
      return arcsVolume(arcsOf(end, radiusM), x);
    default:
      return Math.PI * radiusM * radiusM * (x - x ** 3 / (3 * depth * depth));
  }
}

/** Volume of an end lying on its side, filled to `levelM` above the lowest point of the round, m³. */
export function endVolumeOnSideM3(end: TankEnd, radiusM: number, levelM: number): number {
  const level = Math.min(Math.max(levelM, 0), 2 * radiusM);
  switch (end.kind) {
    case 'flat':
      return 0;
    case 'ellipsoidal':
    case 'hemispherical':
      return ((Math.PI * endDepthM(end, radiusM) * level * level) / 2) * (1 - level / (3 * radiusM));
    case 'conical':
      return coneOnSide(end.depthM, radiusM, level);
    default:
      return arcsOnSide(arcsOf(end, radiusM), level - radiusM);
  }
}

/**
 * D. Jones (2003), conical heads; one head. All three terms are taken from the half-chord, so that their noise cancels
 * where the level just touches the round.
 */
function coneOnSide(depth: number, radius: number, level: number): number {
  const half = (Math.PI * radius * radius * depth) / 6;
  const m = Math.abs(radius - level) / radius;
  if (m < 1e-12) return half;
  const halfChord = Math.sqrt(level * (2 * radius - level)) / radius;
  const k = Math.atan2(halfChord, m) + m ** 3 * Math.asinh(halfChord / m) - 2 * m * halfChord;
  const small = (depth * radius * radius * k) / 3;
  return level <= radius ? small : 2 * half - small;
}

/** A piece of an end's profile: an arc of `arcRadius` about (centreX along the axis, centreR off it). */
interface Arc {
  readonly arcRadius: number;
  readonly centreX: number;
  readonly centreR: number;
  /** Along the axis from the mouth. */
  readonly fromX: number;
  readonly toX: number;
}

function torisphere(end: TankEnd & { kind: 'torispherical' }, radius: number) {
  const dish = 2 * radius * end.dishRadiusShare;
  const corner = 2 * radius * end.cornerRadiusShare;
  const sine = (radius - corner) / (dish - corner);
  const cosine = Math.sqrt(1 - sine * sine);
  return { dish, corner, depth: dish - (dish - corner) * cosine, joinX: corner * cosine };
}

function arcsOf(end: TankEnd & { kind: 'spherical' | 'torispherical' }, radius: number): readonly Arc[] {
  if (end.kind === 'spherical') {
    const sphere = (radius * radius + end.depthM * end.depthM) / (2 * end.depthM);
    return [{ arcRadius: sphere, centreX: end.depthM - sphere, centreR: 0, fromX: 0, toX: end.depthM }];
  }
  const { dish, corner, depth, joinX } = torisphere(end, radius);
  return [
    { arcRadius: corner, centreX: 0, centreR: radius - corner, fromX: 0, toX: joinX },
    { arcRadius: dish, centreX: depth - dish, centreR: 0, fromX: joinX, toX: depth },
  ];
}

function profileRadius(arc: Arc, x: number): number {
  const along = x - arc.centreX;
  return arc.centreR + Math.sqrt(Math.max(0, arc.arcRadius * arc.arcRadius - along * along));
}

/** Volume of revolution from the mouth to `x`: the exact integral of π r² over each arc. */
function arcsVolume(arcs: readonly Arc[], x: number): number {
  return arcs.reduce((sum, arc) => {
    const to = Math.min(x, arc.toX);
    return to > arc.fromX ? sum + arcPrimitive(arc, to) - arcPrimitive(arc, arc.fromX) : sum;
  }, 0);
}

function arcPrimitive({ arcRadius, centreX, centreR }: Arc, x: number): number {
  const s = Math.min(Math.max(x - centreX, -arcRadius), arcRadius);
  const underArc =
    (s * Math.sqrt(arcRadius * arcRadius - s * s) + arcRadius * arcRadius * Math.asin(s / arcRadius)) / 2;
  return Math.PI * ((centreR * centreR + arcRadius * arcRadius) * s - s ** 3 / 3 + 2 * centreR * underArc);
}

/** Segments below `height` (from the axis) added up along the axis, each arc cut where its round just meets the level. */
function arcsOnSide(arcs: readonly Arc[], height: number): number {
  return arcs.reduce((sum, arc) => {
    const reach = Math.abs(height) - arc.centreR;
    const meet =
      reach < 0 || reach > arc.arcRadius
        ? Number.NaN
        : arc.centreX + Math.sqrt(arc.arcRadius ** 2 - reach ** 2);
    const cuts = meet > arc.fromX && meet < arc.toX ? [arc.fromX, meet, arc.toX] : [arc.fromX, arc.toX];
    return (
      sum + cuts.slice(1).reduce((part, to, index) => part + alongArc(arc, height, cuts[index] ?? to, to), 0)
    );
  }, 0);
}

function alongArc(arc: Arc, height: number, from: number, to: number): number {
  return integrate((x) => areaBelow(profileRadius(arc, x), height), from, to);
}
