/**
 * The plan: the car from above, front upwards, with every place numbered and named, and the tags of what is found there.
 */
import type { FontSet } from '../font/metrics';
import type { Say } from '../language/messages';
import { meet } from './calloutColumn';
import { type Callout, type CalloutPoint, type CalloutRoom, placeCallouts } from './callouts';
import type { OutlineInput } from './carBody';
import { carOutline } from './carOutline';
import { type CarScale, inks } from './carScale';
import { driverMark, type Overdrawn } from './carSeats';
import type { Drawing, Shape } from './drawing';
import { calloutIndentPt, calloutSizePt, calloutStyle, labelShapes, leaderShapes } from './numberedCallouts';
import { scaleBars } from './scaleBar';
import { polygon, polyline, stroke, text } from './shapes';

/** A place of the car and the tagged parts found there. */
export interface PlanPlace {
  readonly id: string;
  /** As it is numbered in the papers. */
  readonly number: number;
  readonly name: string;
  readonly backM: number;
  readonly rightM: number;
  readonly items: readonly { readonly tag: string; readonly name: string }[];
}

/** What a plan is drawn from. */
export interface PlanInput extends OutlineInput {
  /** The car's name. */
  readonly name: string;
  readonly places: readonly PlanPlace[];
  /** The words of the drawing. */
  readonly say: Say;
  /** Width of the drawing; 480 pt fits a letter and an A4 page. */
  readonly widthPt?: number;
  /** Height it is drawn at unless the labels need more. */
  readonly heightPt?: number;
}

const head = 34;
const foot = 34;

/** Draws the plan. Its name is `plan`. */
export function drawPlan(input: PlanInput, fonts: FontSet): Drawing {
  const widthPt = input.widthPt ?? 480;
  const { room, scale, callouts, heightPt } = bestSheet(input, fonts, widthPt, input.heightPt ?? 560);
  const numbers = input.places.map(({ number }) => number);
  return {
    name: 'plan',
    widthPt,
    heightPt,
    alt: altWords(input),
    shapes: [
      ...carOutline(input, scale),
      ...callouts.flatMap(leaderShapes),
      ...driverMark(
        input,
        scale,
        { says: input.say('driver-seat', {}), font: fonts.narrow },
        overdrawn(callouts),
      ),
      ...frontMark(scale, room, callouts, input.say),
      ...callouts.flatMap((callout) => labelShapes(callout, numbers)),
      ...scaleBars({ x: room.left, y: heightPt - 6 }, scale.ptPerM),
      ...scaleNote(widthPt - 2, heightPt, input.say),
    ],
  };
}

function overdrawn(callouts: readonly Callout[]): Overdrawn {
  return { leaders: callouts.map(({ leader }) => leader), dots: callouts.map(({ anchor }) => anchor) };
}

interface Sheet {
  readonly room: CalloutRoom;
  readonly scale: CarScale;
  readonly callouts: readonly Callout[];
  readonly overflowPt: number;
  readonly heightPt: number;
}

/** The largest car that leaves its labels room enough; if even a small one does not, a taller drawing. */
function bestSheet(input: PlanInput, fonts: FontSet, widthPt: number, heightPt: number): Sheet {
  for (const share of [0.38, 0.34, 0.3, 0.26]) {
    const sheet = layOut(input, fonts, widthPt, heightPt, share);
    if (sheet.overflowPt === 0) return sheet;
  }
  const { overflowPt } = layOut(input, fonts, widthPt, heightPt, 0.3);
  return layOut(input, fonts, widthPt, heightPt + overflowPt, 0.3);
}

/** The car in the middle, no wider than `share` of the drawing; labels at both sides. */
function layOut(input: PlanInput, fonts: FontSet, widthPt: number, mostPt: number, share: number): Sheet {
  const room = mostPt - head - foot;
  const ptPerM = Math.min(room / input.lengthM, (widthPt * share) / input.widthM);
  const carPt = input.lengthM * ptPerM;
  const exact = place(input, fonts, widthPt, ptPerM, carPt + head + foot);
  if (exact.overflowPt === 0 || carPt === room) return exact;
  const heightPt = Math.min(mostPt, exact.heightPt + exact.overflowPt);
  return place(input, fonts, widthPt, ptPerM, heightPt);
}

function place(input: PlanInput, fonts: FontSet, widthPt: number, ptPerM: number, heightPt: number): Sheet {
  const half = (input.widthM * ptPerM) / 2 + 9;
  const stubPt = 8;
  const middle = widthPt / 2;
  const carTop = head + (heightPt - head - foot - input.lengthM * ptPerM) / 2;
  const room: CalloutRoom = {
    left: middle - half,
    right: middle + half,
    top: 2,
    bottom: heightPt - foot,
    labelWidthPt: middle - half - stubPt - calloutIndentPt - 4,
    stubPt,
  };
  const scale: CarScale = {
    ptPerM,
    at: (backM, rightM) => ({ x: middle + rightM * ptPerM, y: carTop + backM * ptPerM }),
  };
  const points = input.places.map((one) => pointOf(one, scale, room));
  const placed = placeCallouts(points, room, calloutStyle(fonts));
  return { room, scale, heightPt, ...placed };
}

/** The tags at a place, in one line; the tables by place say what each is. */
export function tagsOf(items: PlanPlace['items']): string {
  return items.map(({ tag }) => tag).join(', ');
}

/** A place outside the car's width, such as a mirror, is drawn at the edge of the drawing's part. */
function pointOf(
  { backM, rightM, name, items }: PlanPlace,
  scale: CarScale,
  room: CalloutRoom,
): CalloutPoint {
  const { x, y } = scale.at(backM, rightM);
  const inside = Math.min(room.right - 4, Math.max(room.left + 4, x));
  return {
    x: inside,
    y,
    lines: [
      { text: name, face: 'narrow' },
      ...(items.length === 0 ? [] : [{ text: tagsOf(items), face: 'narrow-bold' } as const]),
    ],
  };
}

/** An arrow before the car, and the word, on the side of it where no leader runs. */
function frontMark(
  scale: CarScale,
  room: CalloutRoom,
  callouts: readonly Callout[],
  say: Say,
): readonly Shape[] {
  const { x, y } = scale.at(0, 0);
  const tip = Math.max(room.top + 4, y - 28);
  const [near, far, middle] = [8, 34, tip + 7];
  const isFree = (side: number): boolean =>
    callouts.every(({ leader: [, from, to] }) =>
      [middle - 6, middle, middle + 6].every(
        (level) => !meet(from, to, { x: x + side * near, y: level }, { x: x + side * far, y: level }),
      ),
    );
  const side = !isFree(1) && isFree(-1) ? -1 : 1;
  return [
    polyline(
      [
        { x, y: y - 6 },
        { x, y: tip + 6 },
      ],
      stroke(1.2, inks.line),
    ),
    polygon(
      [
        { x, y: tip },
        { x: x + 4, y: tip + 9 },
        { x: x - 4, y: tip + 9 },
      ],
      { fill: inks.line },
    ),
    text({ x: x + side * (near + 1), y: tip + 10 }, say('front', {}), {
      face: 'narrow-bold',
      sizePt: 10,
      colour: inks.line,
      anchor: side > 0 ? 'start' : 'end',
    }),
  ];
}

/** What of the drawing may be measured. */
function scaleNote(x: number, heightPt: number, say: Say): readonly Shape[] {
  const lines = [say('plan-to-scale', {}), say('rest-outline', {})];
  return lines.map((line, index) =>
    text({ x, y: heightPt - 17 + index * 12 }, line, {
      face: 'narrow',
      sizePt: calloutSizePt,
      colour: inks.soft,
      anchor: 'end',
    }),
  );
}

function altWords({ name, places, say }: PlanInput): string {
  const list = places.map(({ number, name: place, items }) => {
    const parts = items.map((item) => `${item.tag} ${item.name}`).join(', ');
    return `${number}, ${place}${parts === '' ? '' : `: ${parts}`}`;
  });
  return say('plan-picture', { car: name, count: places.length, list: list.join('. ') });
}
