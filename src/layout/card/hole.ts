/**
 * The work that is done on a card once it is printed: the corners are rounded, and a hole is punched for a ring or a cord.
 * No text comes near the hole; where both are to be, thin lines say so on sheets of cards put together.
 */
import type { Colour, PathPiece } from '../../drawing/drawing';
import { rule } from '../blocks/marks';
import type { PlacedItem } from '../frame';
import { laminatingEdgeMm, pointsPerMm } from '../sheet';
import type { SilentTheme } from '../theme';
import type { Sheet } from '../types';

/** The hole of a card as a theme has it. */
export type Hole = SilentTheme['card']['hole'];

/** What the hole takes from the head of every face, in points. */
export interface HoleRoom {
  /** From the side, left of the head on fronts and right of it on backs. */
  readonly besidePt: number;
  /** Above the head. */
  readonly abovePt: number;
  /** Least height of the head with what is above it. */
  readonly leastPt: number;
}

/** Room for no hole. */
export const noHole: HoleRoom = { besidePt: 0, abovePt: 0, leastPt: 0 };

/**
 * Room for the hole and for the film that must be sealed round it: as wide as the edge that a laminated card keeps free.
 * Nothing where the hole is in the margin, or where there is none.
 */
export function roomForHole({ place, centreMm, diameterMm }: Hole, { margins }: Sheet): HoleRoom {
  const keepPt = (centreMm + diameterMm / 2 + laminatingEdgeMm) * pointsPerMm;
  const down = Math.max(0, keepPt - margins.top);
  const across = Math.max(0, keepPt - margins.left);
  if (place === 'none' || down === 0 || across === 0) return noHole;
  return place === 'corner'
    ? { besidePt: across, abovePt: 0, leastPt: down }
    : { besidePt: 0, abovePt: down, leastPt: down };
}

/** The colour of each guide: that of ink on what is printed there. */
export interface GuideInks {
  readonly corners: Colour;
  readonly hole: Colour;
}

const finePt = 0.35;

/** Where a front is to be rounded and punched. Backs are cut and punched with it, and show nothing. */
export function guides(
  card: SilentTheme['card'],
  { widthPt, heightPt }: Sheet,
  inks: GuideInks,
): PlacedItem[] {
  return [
    ...corners(card.cornerMm * pointsPerMm, widthPt, heightPt, inks.corners),
    ...holeGuide(card.hole, widthPt, inks.hole),
  ];
}

function corners(radiusPt: number, widthPt: number, heightPt: number, colour: Colour): PlacedItem[] {
  if (radiusPt === 0) return [];
  const quarter = (x: number, y: number, right: number, down: number): PlacedItem => {
    const pieces: PathPiece[] = [
      { op: 'move', x, y: y + down * radiusPt },
      {
        op: 'curve',
        x1: x,
        y1: y + down * radiusPt * (1 - roundness),
        x2: x + right * radiusPt * (1 - roundness),
        y2: y,
        x: x + right * radiusPt,
        y,
      },
    ];
    return { kind: 'shape', shape: { kind: 'path', pieces, paint: { stroke: { colour, widthPt: finePt } } } };
  };
  return [
    quarter(0, 0, 1, 1),
    quarter(widthPt, 0, -1, 1),
    quarter(0, heightPt, 1, -1),
    quarter(widthPt, heightPt, -1, -1),
  ];
}

/** Length of the handles of a curve that is nearly a quarter of a circle, as a share of the radius: 4/3 (√2 − 1). */
const roundness = (4 / 3) * (Math.SQRT2 - 1);

/** A circle of the hole's size, with a cross to set the punch by. */
function holeGuide({ place, centreMm, diameterMm }: Hole, widthPt: number, colour: Colour): PlacedItem[] {
  if (place === 'none') return [];
  const cy = centreMm * pointsPerMm;
  const cx = place === 'corner' ? cy : widthPt / 2;
  const r = (diameterMm / 2) * pointsPerMm;
  const stroke = { colour, widthPt: finePt };
  const upright: PathPiece[] = [
    { op: 'move', x: cx, y: cy - r },
    { op: 'line', x: cx, y: cy + r },
  ];
  return [
    { kind: 'shape', shape: { kind: 'circle', cx, cy, r, paint: { stroke } } },
    rule(cx - r, cy, 2 * r, colour, finePt),
    { kind: 'shape', shape: { kind: 'path', pieces: upright, paint: { stroke } } },
  ];
}
