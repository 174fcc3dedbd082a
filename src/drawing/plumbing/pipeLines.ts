/**
 * How pipes are drawn, told apart by line and not by colour.
 */
import type { Fluid } from '../../car/plant';
import { inks } from '../carScale';
import type { Shape } from '../drawing';
import { type Point, polyline } from '../shapes';

interface PipeLine {
  readonly widthPt: number;
  readonly dashPt?: readonly number[];
  /** Width of a white core, which makes two thin lines of a thick one. */
  readonly corePt?: number;
}

const looks: Readonly<Record<Fluid, PipeLine>> = {
  'main fuel': { widthPt: 2.1 },
  'pilot fuel': { widthPt: 1.3, dashPt: [6, 2.5] },
  water: { widthPt: 3.3, corePt: 1.8 },
  steam: { widthPt: 1.7 },
  exhaust: { widthPt: 1.3, dashPt: [9, 2.5, 1.5, 2.5] },
  oil: { widthPt: 1.3, dashPt: [3, 2] },
  air: { widthPt: 0.6 },
};

/** Where pipes cross, the lower one is broken for this much beside the upper. */
const haloPt = 2;

/** A pipe through points. */
export function pipe(points: readonly Point[], carries: Fluid): readonly Shape[] {
  const { widthPt, dashPt, corePt } = looks[carries];
  const butt = { colour: inks.line, widthPt, ...(dashPt ? { dashPt } : {}) } as const;
  return [
    polyline(points, butt),
    ...(corePt === undefined ? [] : [polyline(points, { colour: inks.paper, widthPt: corePt })]),
  ];
}

/** What clears the way for a pipe that crosses others. */
export function halo(points: readonly Point[], carries: Fluid): Shape {
  return polyline(points, { colour: inks.paper, widthPt: looks[carries].widthPt + 2 * haloPt });
}
