/** Whether a card that is laminated keeps a sealed edge of film once its corners are cut round and its hole is punched. */
import type { Diagnostic } from '../diagnostic/diagnostic';
import type { SpotOf } from './legibility';
import { laminatingEdgeMm } from './sheet';
import type { SilentTheme } from './theme';

/** What is wrong with the corners and the hole of a theme's cards. */
export function cardEdgeProblems({ card }: SilentTheme, spotOf: SpotOf): Diagnostic[] {
  const { cornerMm, hole } = card;
  const marginMm = Math.max(card.marginMm, laminatingEdgeMm);
  const cornerEdgeMm = edgeAtCorner(cornerMm, marginMm);
  const holeEdgeMm = hole.centreMm - hole.diameterMm / 2;
  return [
    ...(cornerEdgeMm < laminatingEdgeMm - 0.005
      ? [
          narrowEdge('the corners of cards are cut too near to what is printed', cornerEdgeMm, {
            at: spotOf(['card', 'cornerMm']),
            mend: 'cut the corners less round, or give cards a wider margin',
          }),
        ]
      : []),
    ...(hole.place !== 'none' && holeEdgeMm < laminatingEdgeMm - 0.005
      ? [
          narrowEdge('the hole of cards is too near to their edge', holeEdgeMm, {
            at: spotOf(['card', 'hole', 'centreMm']),
            mend: 'put the hole further in, or punch a smaller one',
          }),
        ]
      : []),
  ];
}

/** What is left between the corner of a card's margins and a corner cut to a radius. */
function edgeAtCorner(radiusMm: number, marginMm: number): number {
  return radiusMm <= marginMm ? marginMm : radiusMm - Math.SQRT2 * (radiusMm - marginMm);
}

function narrowEdge(
  message: string,
  leftMm: number,
  { at, mend }: Required<Pick<Diagnostic, 'at' | 'mend'>>,
): Diagnostic {
  return {
    code: 'theme-card-edge',
    severity: 'error',
    message,
    at,
    found: `${leftMm.toFixed(2)} mm of edge`,
    expected: `at least ${laminatingEdgeMm} mm, for the film to hold`,
    mend,
  };
}
