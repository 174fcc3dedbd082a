/**
 * Feed pumps driven by the engine: what they deliver over a distance, against what the car uses over it.
 *
 * Formula: volume swept × strokes over the distance × share delivered (common practice, no source).
 */

/** A pump that turns with the engine. */
export interface EnginePump {
  /** Volume swept by one stroke, m³. */
  readonly strokeM3: number;
  readonly strokesPerEngineTurn: number;
  /** Share of it that is really delivered, 0 to 1. */
  readonly delivers: number;
}

/** Water a pump moves for a distance, m³ per m. */
export function deliveryPerM(pump: EnginePump, engineTurnsPerM: number): number {
  return pump.strokeM3 * pump.strokesPerEngineTurn * pump.delivers * engineTurnsPerM;
}

/** Supply against use. */
export interface FeedBalance {
  /** What the pumps deliver with their bypasses shut, m³ per m. */
  readonly deliveryPerM: number;
  readonly usePerM: number;
  /** Share of each mile with the bypass shut that just keeps the level; above 1 the pumps cannot keep up. */
  readonly shareShut: number;
  readonly keepsUp: boolean;
}

/** How long of each mile the bypass must be shut. */
export function feedBalance(
  pumps: readonly EnginePump[],
  engineTurnsPerM: number,
  usePerM: number,
): FeedBalance {
  const delivery = pumps.reduce((sum, pump) => sum + deliveryPerM(pump, engineTurnsPerM), 0);
  const shareShut = delivery > 0 ? usePerM / delivery : Number.POSITIVE_INFINITY;
  return { deliveryPerM: delivery, usePerM, shareShut, keepsUp: shareShut <= 1 };
}
