/**
 * How far people stand: the car on its ground from above, and around what can hurt a line at its distance, numbered as
 * in the table beside it.
 */
import type { FontSet } from '../font/metrics';
import type { Say } from '../language/messages';
import { type CarScale, inks } from './carScale';
import type { Drawing, Shape } from './drawing';
import { groundBars } from './scaleBar';
import { polygon, stroke, text } from './shapes';
import { standLabels } from './standLabels';
import { type Spot, standOff } from './standOff';

/** A distance to be kept, from all around the car, from the way it moves on, or from some of its places. */
export interface StandLine {
  /** As it is numbered in the table. */
  readonly number: number;
  readonly distanceM: number;
  /** The distance as it is printed. */
  readonly distance: string;
  /** What it is kept from, in words, and in a few. */
  readonly from: string;
  readonly short: string;
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

const widthPt = 470;
/** The column of labels on the right. */
const labelPt = 112;
const stubPt = 14;
const mostHeightPt = 360;
const edgePt = 12;
const footPt = 26;
/** So that the bars of ten metres and thirty feet, and what is said beside them, have room. */
const mostPtPerM = 18;
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
  const [left, right] = [Math.min(...rights), Math.max(...rights)];
  const fieldPt = widthPt - labelPt - stubPt - 2 * edgePt;
  const ptPerM = Math.min(
    mostPtPerM,
    fieldPt / (right - left),
    (mostHeightPt - 2 * edgePt - footPt) / (back - front),
  );
  const middlePt = edgePt + fieldPt / 2;
  const scale: CarScale = {
    ptPerM,
    at: (backM, rightM) => ({
      x: middlePt + (rightM - (left + right) / 2) * ptPerM,
      y: edgePt + (backM - front) * ptPerM,
    }),
  };
  const drawn = rings.map(({ line, spots: ring }) => ({
    line,
    points: ring.map(({ backM, rightM }) => scale.at(backM, rightM)),
  }));
  const labels = standLabels(
    drawn,
    { edge: edgePt + fieldPt + stubPt / 2, left: widthPt - labelPt, widthPt: labelPt, top: edgePt },
    fonts,
  );
  const heightPt = Math.max(edgePt + (back - front) * ptPerM, labels.bottom) + edgePt + footPt;
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
      ...labels.shapes,
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
