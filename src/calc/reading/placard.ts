/**
 * How tall the letters of a caution must be for people who stand off: ropes, tags, notices.
 *
 * Source: ANSI Z535.2 9.2.3 and Z535.4 (letters in good light): message letters 1/300 of the safe viewing distance,
 * signal word 1/150 and at least one and a half times the message; no capital under 0.16 in.
 */

/** Heights of capitals, m. */
export interface PlacardHeights {
  readonly messageM: number;
  readonly signalWordM: number;
}

const leastCapitalM = 0.16 * 0.0254;

/** Heights for people at `distanceM`. */
export function placardHeights(distanceM: number): PlacardHeights {
  const messageM = Math.max(leastCapitalM, distanceM / 300);
  return { messageM, signalWordM: Math.max(distanceM / 150, 1.5 * messageM) };
}
