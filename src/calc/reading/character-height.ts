/**
 * How tall letters must be to be read from where the reader stands.
 *
 * Formula: height = 2 × distance × tan(half the angle). Angles: ISO 9241-3 (now ISO 9241-303): 16 minutes of arc at
 * the least, 20 to 22 preferred; NUREG-0700 rev. 2 gives the same span.
 */

/** Minutes of arc a character must fill. */
export const legibleArcMinutes = { least: 16, preferred: 20 } as const;

const arcMinute = Math.PI / 180 / 60;
/** 1/72 of an inch, m. */
const pointM = 0.0254 / 72;

/** Height of a character that fills `arcMinutes` at `distanceM`, m. */
export function characterHeightM(distanceM: number, arcMinutes: number): number {
  return 2 * distanceM * Math.tan((arcMinutes * arcMinute) / 2);
}

/** Sizes of type for one distance. */
export interface TypeSizes {
  readonly leastPt: number;
  readonly preferredPt: number;
}

/**
 * Sizes of type, in points, whose letters are tall enough at `distanceM`.
 *
 * `heightRatio` is the height of the letters that count over the size of the type: a face's x-height ratio for running
 * words, its capital-height ratio for capitals and numerals. Sizes are rounded up to whole steps of `stepPt`.
 */
export function typeSizes(distanceM: number, heightRatio: number, stepPt = 0.5): TypeSizes {
  return {
    leastPt: sizeForHeightPt(characterHeightM(distanceM, legibleArcMinutes.least), heightRatio, stepPt),
    preferredPt: sizeForHeightPt(
      characterHeightM(distanceM, legibleArcMinutes.preferred),
      heightRatio,
      stepPt,
    ),
  };
}

/** The size of type, in points, whose letters are `heightM` tall, rounded up to whole steps. */
export function sizeForHeightPt(heightM: number, heightRatio: number, stepPt: number): number {
  if (!(heightM > 0 && heightRatio > 0 && stepPt > 0)) {
    throw new RangeError('a size of type needs a height, a ratio and a step of more than nothing');
  }
  return Math.ceil(heightM / pointM / heightRatio / stepPt - 1e-9) * stepPt;
}
