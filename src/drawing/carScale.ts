/**
 * From metres on the car to points on the paper, and the inks it is drawn with.
 */
import type { PathPiece } from './drawing';
import { type Point, stroke } from './shapes';

/** Where a place of the car, in metres, is on the paper. */
export interface CarScale {
  readonly ptPerM: number;
  at(backM: number, rightM: number): Point;
}

/** Colours that stay apart on a grey printer. */
export const inks = {
  line: '#1a1a1a',
  soft: '#6b6b6b',
  tyre: '#cfcfca',
  body: '#f1f1ee',
  seat: '#dcdcd7',
  /** The steering wheel, where most leaders end or pass: seen, but no line as dark as they are. */
  wheel: '#8a8a86',
  paper: '#ffffff',
} as const;

/** The lines it is drawn with, by weight. */
export const lines = {
  heavy: stroke(1.2, inks.line),
  middle: stroke(0.75, inks.line),
  fine: stroke(0.45, inks.soft),
} as const;

/** A step along half an outline: straight, or by two handles (back, right, back, right). */
export interface HalfStep {
  readonly to: readonly [back: number, right: number];
  readonly by?: readonly [number, number, number, number];
}

/** A closed path from its right half: there on the right, back on the left. */
export function mirrored(scale: CarScale, half: readonly HalfStep[]): readonly PathPiece[] {
  const there = half.map((step, index) => stepPiece(step, scale, 1, index === 0));
  const back = half.slice(1).map(({ by }, index): PathPiece => {
    const to = half[index]?.to ?? [0, 0];
    const reversed = by && ([by[2], by[3], by[0], by[1]] as const);
    return stepPiece(reversed ? { to, by: reversed } : { to }, scale, -1, false);
  });
  return [...there, ...back.reverse(), { op: 'close' }];
}

function stepPiece({ to, by }: HalfStep, scale: CarScale, side: 1 | -1, first: boolean): PathPiece {
  const end = scale.at(to[0], side * to[1]);
  if (!by) return { op: first ? 'move' : 'line', ...end };
  const [one, two] = [scale.at(by[0], side * by[1]), scale.at(by[2], side * by[3])];
  return { op: 'curve', x1: one.x, y1: one.y, x2: two.x, y2: two.y, ...end };
}
