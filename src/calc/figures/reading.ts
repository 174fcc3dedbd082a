/** How large type must be where each paper is read. */
import type { Car } from '../../car/car';
import type { Figure } from '../figure';
import { characterHeightM, legibleArcMinutes, sizeForHeightPt } from '../reading/character-height';

/** What a face's small letters measure, as a share of its size. */
export interface TypeFace {
  readonly name: string;
  readonly xHeight: number;
}

const distances = ['dash', 'lap', 'wall'] as const;

/** Sizes are told to a tenth of a point, rounded up. */
const stepPt = 0.1;

/** Least and preferred size at each reading distance of the spec. */
export function readingFigures({ spec }: Car, face: TypeFace): readonly Figure[] {
  return distances.flatMap((where) => {
    const distance = spec.print.distances[where];
    return (['least', 'preferred'] as const).map((which): Figure => {
      const minutes = legibleArcMinutes[which];
      const pt = sizeForHeightPt(characterHeightM(distance.si, minutes), face.xHeight, stepPt);
      return {
        id: `type-${where}-${which}`,
        name: `${which === 'least' ? 'smallest' : 'preferred'} type read at the distance of the ${where}`,
        value: { kind: 'words', words: `${pt.toFixed(1)} pt` },
        inputs: [
          { name: 'distance', value: distance, from: `print.distances.${where}` },
          { name: 'angle, minutes of arc', value: minutes, from: 'ISO 9241-303' },
          { name: 'x-height over size', value: Math.round(face.xHeight * 1000) / 1000, from: face.name },
        ],
        formula: '2 × distance × tan(half the angle) / x-height ratio; 1 pt = 1/72 in',
        source: 'ISO 9241-303 (formerly ISO 9241-3); NUREG-0700 rev. 2',
        checkedAgainst: 'heights of characters in the standards',
        doubt: { basis: 'computed', words: 'for good eyes in fair light' },
      };
    });
  });
}
