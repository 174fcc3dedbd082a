/**
 * The glass as the driver sees it, with the water at the level to be kept and what is too high and too low: small, in type
 * for the distance at which the card is read.
 */
import type { FontSet } from '../font/metrics';
import type { Say } from '../language/messages';
import { inks } from './carScale';
import type { Drawing, Shape } from './drawing';
import { box, polyline, stroke, text } from './shapes';
import { spreadLabels } from './spreadLabels';
import { wrapLine } from './wrapLine';

/** A level that is marked: the one to keep, or one that the water must not pass. */
export interface GlassMark {
  readonly kind: 'working' | 'highest' | 'lowest';
  /** How far up the part of the glass in which water is seen, from 0 to 1. */
  readonly share: number;
  readonly name: string;
  /** What the car itself says of it; not printed beside it, where every line is a glance. */
  readonly detail?: string;
}

/** What the drawing is made from. */
export interface GlassInput {
  /** The glass, with its tag. */
  readonly glass: string;
  readonly marks: readonly GlassMark[];
  readonly say: Say;
  /** Size of its words. */
  readonly sizePt: number;
  readonly widthPt: number;
  /** The least height of what is seen in the glass, pt; left out, as much as its words need. */
  readonly leastSeenPt?: number;
}

/** Lengths in sizes of its words: the glass, its fittings, and the way from it to the words. */
const em = { glass: 1.3, seen: 4.2, fitting: 0.55, leader: 1.5, edge: 0.5, leading: 1.2 };

/** Draws it. Its name is `glass`. */
export function drawGlass(
  { glass, marks, say, sizePt, widthPt, leastSeenPt = 0 }: GlassInput,
  fonts: FontSet,
): Drawing {
  const middle = (em.edge + em.glass / 2 + 0.2) * sizePt;
  const labelX = (2 * em.edge + em.glass + em.leader) * sizePt;
  const lead = em.leading * sizePt;
  const ordered = [...marks].sort((a, b) => b.share - a.share);
  const labels = ordered.map(({ kind, name }) =>
    wrapLine(name, fonts[faceOf(kind)], sizePt, widthPt - labelX - 1, widthPt - labelX - 1),
  );
  const lines = labels.reduce((sum, each) => sum + each.length, 0);
  const seenPt = Math.max(em.seen * sizePt, lines * lead, leastSeenPt);
  const top = em.fitting * sizePt + 1;
  const bottom = top + seenPt;
  const heightPt = bottom + em.fitting * sizePt + 1;
  const yOf = (share: number) => bottom - share * seenPt;
  const tops = spreadLabels(
    ordered.map(({ share }, index) => ({
      middle: yOf(share) - lead / 2 + 5,
      heightPt: (labels[index]?.length ?? 0) * lead,
    })),
    { top: 1, bottom: heightPt - 1, gapPt: 0 },
  );
  const half = (em.glass / 2) * sizePt;
  const working = marks.find(({ kind }) => kind === 'working');
  const water = working === undefined ? [] : [waterShape(middle, yOf(working.share), bottom, 2 * half)];
  return {
    name: 'glass',
    widthPt,
    heightPt,
    alt: say('glass-picture', { glass, list: ordered.map(said).join('. ') }),
    shapes: [
      ...water,
      box({ x: middle, y: (top + bottom) / 2 }, 2 * half, seenPt, { stroke: stroke(1.2, inks.line) }),
      ...[top, bottom].map((y) => fitting(middle, y, half, sizePt)),
      ...ordered.flatMap(({ kind, share }, index) => {
        const y = yOf(share);
        const labelTop = tops[index] ?? y;
        return [
          polyline(
            [
              { x: middle - half - 0.2 * sizePt, y },
              { x: middle + half + 0.2 * sizePt, y },
              { x: labelX - 0.3 * sizePt, y: labelTop + lead / 2 },
            ],
            lineOf(kind),
          ),
          ...(labels[index] ?? []).map((line, at) =>
            text({ x: labelX, y: labelTop + (at + 0.5) * lead + 0.34 * sizePt }, line, {
              face: faceOf(kind),
              sizePt,
              colour: inks.line,
            }),
          ),
        ];
      }),
    ],
  };
}

function waterShape(middle: number, top: number, bottom: number, width: number): Shape {
  return box({ x: middle, y: (top + bottom) / 2 }, width, bottom - top, { fill: inks.seat });
}

/** The end of the glass in its fitting, above or below what is seen of the water. */
function fitting(middle: number, edge: number, half: number, sizePt: number): Shape {
  const height = em.fitting * sizePt;
  const y = edge < height * 2 ? edge - height / 2 : edge + height / 2;
  return box({ x: middle, y }, 2.3 * half, height, { fill: inks.tyre, stroke: stroke(1, inks.line) }, 2);
}

function faceOf(kind: GlassMark['kind']) {
  return kind === 'working' ? 'narrow-bold' : 'narrow';
}

/** The level to keep is a whole line, the others are broken, so that they differ without colour. */
function lineOf(kind: GlassMark['kind']) {
  return kind === 'working' ? stroke(2.2, inks.line) : stroke(1.1, inks.line, [4, 3]);
}

function said({ name, detail }: GlassMark): string {
  return detail === undefined ? name : `${name}, ${detail}`;
}
