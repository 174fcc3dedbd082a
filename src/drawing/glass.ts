/**
 * The glass as the driver sees it, with the water at the level to be kept and what is too high and too low: small, in type
 * for the distance at which the card is read.
 */
import type { FontSet } from '../font/metrics';
import type { Say } from '../language/messages';
import { inks } from './carScale';
import type { Drawing, Shape } from './drawing';
import { box, polyline, stroke, text } from './shapes';
import { spreadEvenly } from './spreadLabels';
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

/** Lengths in sizes of its words: the glass, its fittings, the way from it to the words, and how far aside of a line its words may stand. */
const em = { glass: 1.3, seen: 4.2, fitting: 0.55, leader: 1.5, edge: 0.5, leading: 1.2, aside: 0.4 };

/** Draws it. Its name is `glass`. */
export function drawGlass(
  { glass, marks, say, sizePt, widthPt, leastSeenPt = 0 }: GlassInput,
  fonts: FontSet,
): Drawing {
  const middle = (em.edge + em.glass / 2 + 0.2) * sizePt;
  const labelX = (2 * em.edge + em.glass + em.leader) * sizePt;
  const lead = em.leading * sizePt;
  const ordered = [...marks].sort((a, b) => b.share - a.share);
  const labels = ordered.map(({ kind, share, name }) =>
    wrapLine(
      [fractionOf(share), name].filter((word) => word !== '').join(' '),
      fonts[faceOf(kind)],
      sizePt,
      widthPt - labelX - 1,
      widthPt - labelX - 1,
    ),
  );
  const lines = labels.reduce((sum, each) => sum + each.length, 0);
  const seenPt = Math.max(em.seen * sizePt, lines * lead, leastSeenPt);
  const top = em.fitting * sizePt + 1;
  const bottom = top + seenPt;
  const heightPt = bottom + em.fitting * sizePt + 1;
  const yOf = (share: number) => bottom - share * seenPt;
  // the leader goes to the first line of a label of several
  const tops = spreadEvenly(
    ordered.map(({ share }, index) => {
      const count = labels[index]?.length ?? 0;
      return { middle: yOf(share) + ((count - 1) * lead) / 2, heightPt: count * lead };
    }),
    { top: 1, bottom: heightPt - 1 },
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
        const aside = labelTop + lead / 2 - y;
        return [
          polyline(
            [
              { x: middle - half - 0.2 * sizePt, y },
              { x: middle + half + 0.2 * sizePt, y },
              // straight as long as it comes to an end beside its words
              { x: labelX - 0.3 * sizePt, y: Math.abs(aside) <= em.aside * sizePt ? y : y + aside },
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

/** Parts that a glass is read in by eye. */
const parts = [2, 3, 4, 5, 6, 8];

/** How far from such a part a level may stand and still be named by it: less than is seen. */
const nearPart = 0.01;

/** A height in the glass as a fraction that an eye can judge, such as `1/4`; empty if it is near none. */
function fractionOf(share: number): string {
  for (const under of parts) {
    const over = Math.round(share * under);
    if (over > 0 && over < under && Math.abs(share - over / under) <= nearPart) return `${over}/${under}`;
  }
  return '';
}

function said({ name, detail, share }: GlassMark): string {
  const height = detail ?? fractionOf(share);
  return height === '' ? name : `${name}, ${height}`;
}
