/**
 * How far people stand: the car on its ground from above, and around what can hurt a line at its distance, numbered as
 * in the table beside it.
 */
import type { FontSet } from '../font/metrics';
import type { Say } from '../language/messages';
import { type CarScale, inks } from './carScale';
import type { Drawing, Shape } from './drawing';
import { groundBars } from './scaleBar';
import { box, type Point, polygon, stroke, text } from './shapes';
import { type Spot, standOff } from './standOff';

/** A distance to be kept, from all around the car, from the way it moves on, or from some of its places. */
export interface StandLine {
  /** As it is numbered in the table. */
  readonly number: number;
  readonly distanceM: number;
  /** The distance as it is printed. */
  readonly distance: string;
  /** What it is kept from, in words. */
  readonly from: string;
  readonly around: 'car' | 'way' | readonly Spot[];
}

/** What the drawing is made from. */
export interface StandPlanInput {
  readonly name: string;
  readonly lengthM: number;
  readonly widthM: number;
  readonly lines: readonly StandLine[];
  readonly say: Say;
}

type Ground = Pick<StandPlanInput, 'lengthM' | 'widthM'>;

const widthPt = 400;
const mostHeightPt = 360;
const edgePt = 12;
const footPt = 26;
/** So that the bars of ten metres and thirty feet, and what is said beside them, have room. */
const mostPtPerM = 18;
const tagPt = { size: 8.5, height: 13, pad: 4 };
/** One pattern a line, so that lines are told apart where they cross. */
const dashes: readonly (readonly number[] | undefined)[] = [
  undefined,
  [7, 3],
  [2, 2.5],
  [9, 3, 2, 3],
  [1, 4],
  [4, 4],
];

/** Draws it. Its name is `stand`. */
export function drawStandPlan(input: StandPlanInput, fonts: FontSet): Drawing {
  const rings = input.lines.map((line) => ({ line, spots: ringOf(line, input) }));
  const spots = [...rings.flatMap(({ spots: ring }) => ring), ...cornersOf(input)];
  const backs = spots.map(({ backM }) => backM);
  const rights = spots.map(({ rightM }) => rightM);
  const [front, back] = [Math.min(...backs), Math.max(...backs)];
  const half = Math.max(...rights.map(Math.abs));
  const ptPerM = Math.min(
    mostPtPerM,
    (widthPt - 2 * edgePt) / (2 * half),
    (mostHeightPt - 2 * edgePt - footPt) / (back - front),
  );
  const scale: CarScale = {
    ptPerM,
    at: (backM, rightM) => ({ x: widthPt / 2 + rightM * ptPerM, y: edgePt + (backM - front) * ptPerM }),
  };
  const heightPt = 2 * edgePt + footPt + (back - front) * ptPerM;
  const drawn = rings.map(({ line, spots: ring }) => ({
    line,
    points: ring.map(({ backM, rightM }) => scale.at(backM, rightM)),
  }));
  return {
    name: 'stand',
    widthPt,
    heightPt,
    alt: input.say('stand-picture', {
      car: input.name,
      list: input.lines.map(({ number, distance, from }) => `${number}, ${distance}: ${from}`).join('. '),
    }),
    shapes: [
      ...drawn.map(({ points }, index) =>
        polygon(points, { stroke: stroke(0.9, inks.line, dashes[index % dashes.length]) }),
      ),
      ...carMark(input, scale),
      ...tagsFor(drawn, { fonts, car: cornersOf(input).map(({ backM, rightM }) => scale.at(backM, rightM)) }),
      ...groundBars({ x: edgePt, y: heightPt - 6 }, ptPerM),
      text({ x: widthPt - edgePt, y: heightPt - 6 }, input.say('stand-front', {}), {
        face: 'narrow',
        sizePt: 9,
        colour: inks.soft,
        anchor: 'end',
      }),
    ],
  };
}

function cornersOf({ lengthM, widthM }: Ground): readonly Spot[] {
  return [0, lengthM].flatMap((backM) => [-widthM / 2, widthM / 2].map((rightM) => ({ backM, rightM })));
}

/** The car as a mark with a point in front: at this scale an outline would be a blot. */
function carMark({ lengthM, widthM }: Ground, scale: CarScale): readonly Shape[] {
  const corner = (back: number, right: number) => scale.at(back * lengthM, right * widthM);
  const mark = [corner(0, 0), corner(0.22, 0.5), corner(1, 0.5), corner(1, -0.5), corner(0.22, -0.5)];
  return [polygon(mark, { fill: inks.line, stroke: stroke(1.4, inks.paper) })];
}

/** The line of one distance. On its way the car moves straight, in a lane as wide as itself. */
function ringOf({ around, distanceM }: StandLine, input: Ground): readonly Spot[] {
  if (around === 'car') return standOff(cornersOf(input), distanceM);
  if (around !== 'way') return standOff(around, distanceM);
  return cornersOf({ ...input, lengthM: input.lengthM + 2 * distanceM })
    .map(({ backM, rightM }) => ({ backM: backM - distanceM, rightM }))
    .sort((a, b) => a.backM - b.backM || a.rightM * Math.sign(a.backM) - b.rightM * Math.sign(b.backM));
}

interface DrawnLine {
  readonly line: StandLine;
  readonly points: readonly Point[];
}

/** A tag on each line, where other lines, tags and the car are furthest from it. */
function tagsFor(
  lines: readonly DrawnLine[],
  { fonts, car }: { fonts: FontSet; car: readonly Point[] },
): readonly Shape[] {
  const placed: { middle: Point; halfWidth: number }[] = [];
  return lines.flatMap(({ line, points }, index) => {
    const words = `${line.number}: ${line.distance}`;
    const halfWidth = fonts['narrow-bold'].widthOf(words, tagPt.size) / 2 + tagPt.pad;
    const others = [
      ...lines.flatMap(({ points: ring }, other) => (other === index ? [] : alongEdges(ring))),
      ...alongEdges([0, 1, 3, 2].flatMap((corner) => car[corner] ?? [])),
    ];
    const free = (middle: Point): number =>
      Math.min(
        ...others.map((point) => gap(middle, halfWidth, point)),
        ...placed.map((tag) => gap(middle, halfWidth + tag.halfWidth, tag.middle, tagPt.height)),
        middle.x - halfWidth - 2,
        widthPt - middle.x - halfWidth - 2,
      );
    const [best] = alongEdges(points)
      .map((middle) => ({ middle, room: Math.min(free(middle), 12) }))
      .sort((a, b) => b.room - a.room || a.middle.y - b.middle.y || a.middle.x - b.middle.x);
    if (best === undefined) return [];
    placed.push({ middle: best.middle, halfWidth });
    const { x, y } = best.middle;
    return [
      box(best.middle, 2 * halfWidth, tagPt.height, { fill: inks.paper, stroke: stroke(0.6, inks.line) }, 3),
      text({ x, y: y + tagPt.size * 0.35 }, words, {
        face: 'narrow-bold',
        sizePt: tagPt.size,
        colour: inks.line,
        anchor: 'middle',
      }),
    ];
  });
}

/** Points along a closed line, no further apart than a tag is high. */
function alongEdges(points: readonly Point[]): readonly Point[] {
  return points.flatMap((from, index) => {
    const to = points[(index + 1) % points.length] ?? from;
    const steps = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / tagPt.height));
    return Array.from({ length: steps }, (_, step) => ({
      x: from.x + ((to.x - from.x) * step) / steps,
      y: from.y + ((to.y - from.y) * step) / steps,
    }));
  });
}

/** From a tag's edge to a point, or to a tag `height` high; below zero inside. */
function gap(middle: Point, halfWidth: number, point: Point, height = 0): number {
  return Math.max(
    Math.abs(point.x - middle.x) - halfWidth,
    Math.abs(point.y - middle.y) - (tagPt.height + height) / 2,
  );
}
