/** Places down a strip at which words stand on no line and over no other words. */

/** A stretch down a drawing, in points. */
export interface Stretch {
  readonly top: number;
  readonly bottom: number;
}

/** What words have to keep clear of. */
export interface InTheWay {
  /** Middles of lines across. */
  readonly lines: readonly number[];
  /** Stretches that other words take up. */
  readonly taken: readonly Stretch[];
  /** Words stay between its ends. */
  readonly room: Stretch;
}

/** Between words and the middle of a line beside them: half the line, and paper. */
const besideLinePt = 1.9;

/** Between words above each other, where there is room for it, and at the least. */
const apartPt = { good: 1.5, least: 0.5 } as const;

/** How much farther words go for the sake of more room. */
const worthPt = 6;

/**
 * The middle of words that reach `half` up and down: at `y`, or as near to it as nothing is in their way, above rather than below. They
 * crowd other words only where a place with room is much farther; where nothing is clear at all, they stay at `y`.
 */
export function clearMiddle(y: number, half: number, { lines, taken, room }: InTheWay): number {
  const fromLine = half + besideLinePt;
  const hair = 1e-6;
  const isFree = (at: number, apart: number) =>
    at - half >= room.top - hair &&
    at + half <= room.bottom + hair &&
    lines.every((each) => Math.abs(each - at) >= fromLine - hair) &&
    taken.every(({ top, bottom }) => at + half <= top - apart + hair || at - half >= bottom + apart - hair);
  const places = [
    y,
    ...lines.flatMap((at) => [at - fromLine, at + fromLine]),
    ...Object.values(apartPt).flatMap((apart) =>
      taken.flatMap(({ top, bottom }) => [top - half - apart, bottom + half + apart]),
    ),
    room.top + half,
    room.bottom - half,
  ].sort((one, other) => Math.abs(one - y) - Math.abs(other - y) || one - other);
  const find = (apart: number) => places.find((at) => isFree(at, apart));
  const [good, least = y] = [find(apartPt.good), find(apartPt.least)];
  return good !== undefined && Math.abs(good - y) <= Math.abs(least - y) + worthPt ? good : least;
}
