/** What the strip of a dipstick is drawn from, and where a depth stands on it. */
import type { Say } from '../language/messages';
import { ptPerMm } from './printedSize';

/** One mark of a scale: how deep, and its figure; a mark without a figure is a fine one. */
export interface DipstickMark {
  readonly depthMm: number;
  readonly words: string;
}

/** One mark of a scale whose lines are of more than two lengths. */
export interface ScaleMark extends DipstickMark {
  /** How long its line is, as a part of the longest of its scale. Left out, it is the longest with a figure and short without. */
  readonly reach?: number;
}

/** One of the scales of a strip: what it counts, and its marks. */
export interface DipstickScale {
  readonly unit: string;
  readonly marks: readonly ScaleMark[];
}

/** What a strip is drawn from. */
export interface DipstickInput {
  readonly name: string;
  /** Which tank; the first line of the head. */
  readonly tank: string;
  /** Further lines of the head: the car, its issue and fingerprint, which piece it is. */
  readonly head: readonly string[];
  /** Edges; the right one is left bare if the car prints in one system of units. */
  readonly left: DipstickScale;
  readonly right?: DipstickScale;
  /** Depths, on the left of the line between the edges; and in a second unit, if the car prints in two, on its right. */
  readonly depths: DipstickScale;
  readonly secondDepths?: DipstickScale;
  /** Lines across the whole strip, each with its name, such as where the reserve begins. */
  readonly levels: readonly DipstickMark[];
  /** Depths under which the strip is grey, and under which it is light grey. */
  readonly cannotBeDrawnMm: number;
  readonly reserveMm: number;
  /** The part of the stick on this piece. */
  readonly fromMm: number;
  readonly toMm: number;
  /** Lines at which this piece is joined to the next, with their letter. */
  readonly joins: readonly DipstickMark[];
  /** What stands below the strip: that the stick ends there, or that it goes on. */
  readonly foot: string;
  /** Words for whoever cannot see it. */
  readonly say: Say;
}

/** Room of the head above the strip and of the foot below it. */
export const stripEndsPt = { head: 84, foot: 18 } as const;

/** Where a depth stands on the strip, in points from the top of the drawing. */
export function depthY({ toMm }: Pick<DipstickInput, 'toMm'>, depthMm: number): number {
  return stripEndsPt.head + (toMm - depthMm) * ptPerMm;
}

/** Height of the drawing of a stretch of stick. */
export function stripHeightPt({ fromMm, toMm }: Pick<DipstickInput, 'fromMm' | 'toMm'>): number {
  return stripEndsPt.head + (toMm - fromMm) * ptPerMm + stripEndsPt.foot;
}

/** Whether a depth is on this piece. */
export const isOnPiece = ({ fromMm, toMm }: DipstickInput, depthMm: number): boolean =>
  depthMm >= fromMm - 1e-6 && depthMm <= toMm + 1e-6;

/** Where the lines across the strip run. They are carried onto the stick, so that no figure stands on one and none is broken. */
export function linesAcross(input: DipstickInput): readonly number[] {
  return [...input.levels, ...input.joins]
    .filter(({ depthMm }) => isOnPiece(input, depthMm))
    .map(({ depthMm }) => depthY(input, depthMm));
}

/** Whether another piece goes on above this one: it shares the line that they are joined at. */
export function goesOnAbove({ joins, fromMm, toMm }: DipstickInput): boolean {
  return joins.some(({ depthMm }) => depthMm > (fromMm + toMm) / 2);
}
