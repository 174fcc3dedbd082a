/**
 * The car from its left side, front to the left, with the places whose height is known: how high what stands there is.
 */
import type { FontSet } from '../font/metrics';
import type { Say } from '../language/messages';
import { type CalloutPoint, type CalloutRoom, type PlacedCallouts, placeCallouts } from './callouts';
import type { OutlineInput } from './carBody';
import { inks } from './carScale';
import type { Drawing, Shape } from './drawing';
import { calloutIndentPt, calloutStyle, labelShapes, leaderShapes } from './numberedCallouts';
import { tagsOf } from './plan';
import { scaleBars } from './scaleBar';
import { polyline, stroke, text } from './shapes';
import { type SideScale, sideOutline } from './sideOutline';

/** A place with its height, and the tagged parts there. */
export interface SidePlace {
  /** As it is numbered in the papers. */
  readonly number: number;
  readonly backM: number;
  readonly upM: number;
  /** The height, as it is printed. */
  readonly height: string;
  readonly items: readonly { readonly tag: string; readonly name: string }[];
}

/** What a side view is drawn from. */
export interface SideInput extends OutlineInput {
  /** The car's name. */
  readonly name: string;
  /** To the top of the windscreen or hood, if it is known. */
  readonly heightM?: number;
  readonly places: readonly SidePlace[];
  /** The words of the drawing. */
  readonly say: Say;
  readonly widthPt?: number;
}

const labelWidthPt = 78;
const stubPt = 8;
const margin = 14;
const foot = 40;

/** Draws the side view. Its name is `side`. */
export function drawSide(input: SideInput, fonts: FontSet): Drawing {
  const widthPt = input.widthPt ?? 480;
  const half = labelWidthPt + calloutIndentPt + stubPt + 2;
  const room = { left: half, right: widthPt - half };
  const ptPerM = (room.right - room.left - 2 * margin) / input.lengthM;
  const tallM = Math.max(input.heightM ?? 1.7, ...input.places.map(({ upM }) => upM + 0.1));
  const carPt = tallM * ptPerM + 12;
  const { overflowPt } = place(input, fonts, room, ptPerM, carPt, carPt);
  const at = (more: number) => {
    const bodyPt = carPt + overflowPt + more;
    return { bodyPt, ...place(input, fonts, room, ptPerM, carPt, bodyPt) };
  };
  const { bodyPt, callouts } = morePt.reduce((best, more) => {
    const sheet = best.runOver === 0 ? best : at(more);
    return sheet.runOver < best.runOver ? sheet : best;
  }, at(0));
  const scale = scaleFor(room.left, ptPerM, (bodyPt + carPt) / 2);
  const numbers = input.places.map(({ number }) => number);
  const ground = scale.at(0, 0).y;
  return {
    name: 'side',
    widthPt,
    heightPt: bodyPt + foot,
    alt: altWords(input),
    shapes: [
      ...sideOutline(input, scale),
      groundLine(room.left, room.right, ground),
      ...callouts.flatMap(leaderShapes),
      ...callouts.flatMap((callout) => labelShapes(callout, numbers)),
      ...scaleBars({ x: room.left + margin, y: bodyPt + foot - 6 }, ptPerM),
      text(
        { x: widthPt - 2, y: bodyPt + foot - 3 },
        `${input.say('places-to-scale', {})} ${input.say('rest-outline', {})}`,
        {
          face: 'narrow',
          sizePt: 9,
          colour: inks.soft,
          anchor: 'end',
        },
      ),
    ],
  };
}

/** Heights added for labels to move in, where leaders would else run over points. */
const morePt = [12, 24, 36, 48];

/** The car stands on a line just above `bottom`. */
function scaleFor(left: number, ptPerM: number, bottom: number): SideScale {
  return {
    ptPerM,
    at: (backM, upM) => ({ x: left + margin + backM * ptPerM, y: bottom - 6 - upM * ptPerM }),
  };
}

function place(
  input: SideInput,
  fonts: FontSet,
  { left, right }: { readonly left: number; readonly right: number },
  ptPerM: number,
  carPt: number,
  bodyPt: number,
): PlacedCallouts {
  const scale = scaleFor(left, ptPerM, (bodyPt + carPt) / 2);
  const room: CalloutRoom = { left, right, top: 2, bottom: bodyPt, labelWidthPt, stubPt };
  const points = input.places.map(({ backM, upM, height, items }): CalloutPoint => {
    const { x, y } = scale.at(backM, upM);
    const inside = Math.min(right - 4, Math.max(left + 4, x));
    return {
      x: inside,
      y,
      lines: [
        { text: tagsOf(items), face: 'narrow-bold' },
        { text: input.say('height-up', { height }), face: 'narrow' },
      ],
    };
  });
  return placeCallouts(points, room, calloutStyle(fonts));
}

function groundLine(left: number, right: number, y: number): Shape {
  return polyline(
    [
      { x: left, y },
      { x: right, y },
    ],
    stroke(1, inks.line),
  );
}

function altWords({ name, places, say }: SideInput): string {
  const list = places.map(({ number, height, items }) => {
    const parts = items.map(({ tag, name: part }) => `${tag} ${part}`).join(', ');
    return `${number}, ${say('above-ground', { height })}: ${parts}`;
  });
  return say('side-picture', { car: name, count: places.length, list: list.join('. ') });
}
