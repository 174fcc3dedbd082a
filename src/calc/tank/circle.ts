/**
 * Circular segments: the wetted part of a round section.
 *
 * Formula: E. W. Weisstein, "Circular Segment", MathWorld.
 */

/** Area of the circle of `radius` that lies below the level `height` (from the centre, upwards), m². */
export function areaBelow(radius: number, height: number): number {
  if (height <= -radius) return 0;
  if (height >= radius) return Math.PI * radius * radius;
  return (
    radius * radius * Math.acos(-height / radius) + height * Math.sqrt(radius * radius - height * height)
  );
}
