/**
 * Circular segments: the wetted part of a round section.
 *
 * Formula: E. W. Weisstein, "Circular Segment", MathWorld.
 */

/**
 * Area of the circle of `radius` that lies below the level `height` (from the centre, upwards), m². The half-chord is
 * used for both the sector and the triangle, so that their noise cancels where the level just touches the circle.
 */
export function areaBelow(radius: number, height: number): number {
  if (height <= -radius) return 0;
  if (height >= radius) return Math.PI * radius * radius;
  const halfChord = Math.sqrt((radius - height) * (radius + height));
  return radius * radius * Math.atan2(halfChord, -height) + height * halfChord;
}
