/**
 * Shapes of tanks, and what a shape must obey to be a tank at all. Inside measures, SI.
 */
import type { TankEnd } from './ends';

/** One measured point: so much liquid stands so high on the stick. */
export interface StickPoint {
  readonly depthM: number;
  readonly volumeM3: number;
}

/** A tank as it lies or stands in the car. */
export type TankShape =
  | {
      readonly kind: 'horizontal-cylinder';
      readonly diameterM: number;
      /** Of the straight part, without the ends. */
      readonly lengthM: number;
      readonly ends: readonly [TankEnd, TankEnd];
    }
  | {
      readonly kind: 'vertical-cylinder';
      readonly diameterM: number;
      /** Of the straight part, without the ends. */
      readonly heightM: number;
      readonly bottom: TankEnd;
      readonly top: TankEnd;
    }
  /** Lying, with an elliptical section and flat ends. */
  | {
      readonly kind: 'elliptical';
      readonly widthM: number;
      readonly heightM: number;
      readonly lengthM: number;
    }
  | {
      readonly kind: 'rectangular';
      readonly lengthM: number;
      readonly widthM: number;
      readonly heightM: number;
    }
  /** Its length changes evenly from bottom to top; the width stays. A bottom length of nought is a sharp wedge. */
  | {
      readonly kind: 'wedge';
      readonly bottomLengthM: number;
      readonly topLengthM: number;
      readonly widthM: number;
      readonly heightM: number;
    }
  /** Flat below, its top rising evenly along its length: the shape that fits under a sloping board. */
  | {
      readonly kind: 'sloping-top';
      readonly lengthM: number;
      readonly widthM: number;
      readonly lowHeightM: number;
      readonly highHeightM: number;
    }
  /** Known by filling it and reading the stick. Empty at nought unless a point there says otherwise. */
  | { readonly kind: 'measured'; readonly points: readonly StickPoint[] };

/** The same tank with `wallM` taken off every outside measure; measured tanks have no walls to take off. */
export function withinWalls(shape: TankShape, wallM: number): TankShape {
  const less = (measure: number): number => measure - 2 * wallM;
  switch (shape.kind) {
    case 'horizontal-cylinder': {
      const flat = shape.ends.filter((end) => end.kind === 'flat').length;
      return { ...shape, diameterM: less(shape.diameterM), lengthM: shape.lengthM - flat * wallM };
    }
    case 'vertical-cylinder': {
      const flat = [shape.bottom, shape.top].filter((end) => end.kind === 'flat').length;
      return { ...shape, diameterM: less(shape.diameterM), heightM: shape.heightM - flat * wallM };
    }
    case 'elliptical':
    case 'rectangular':
      return {
        ...shape,
        widthM: less(shape.widthM),
        heightM: less(shape.heightM),
        lengthM: less(shape.lengthM),
      };
    case 'wedge':
      return {
        ...shape,
        widthM: less(shape.widthM),
        heightM: less(shape.heightM),
        bottomLengthM: Math.max(0, less(shape.bottomLengthM)),
        topLengthM: less(shape.topLengthM),
      };
    case 'sloping-top':
      return {
        ...shape,
        lengthM: less(shape.lengthM),
        widthM: less(shape.widthM),
        lowHeightM: Math.max(0, less(shape.lowHeightM)),
        highHeightM: less(shape.highHeightM),
      };
    case 'measured':
      return shape;
  }
}

/** What keeps `shape` from being a tank, in plain words; empty if nothing does. */
export function shapeFaults(shape: TankShape): readonly string[] {
  switch (shape.kind) {
    case 'horizontal-cylinder':
      return [...tooSmall(shape, ['diameterM']), ...roundFaults(shape.lengthM, shape.diameterM, shape.ends)];
    case 'vertical-cylinder':
      return [
        ...tooSmall(shape, ['diameterM']),
        ...roundFaults(shape.heightM, shape.diameterM, [shape.bottom, shape.top]),
      ];
    case 'elliptical':
    case 'rectangular':
      return tooSmall(shape, ['widthM', 'heightM', 'lengthM']);
    case 'wedge':
      return [
        ...tooSmall(shape, ['widthM', 'heightM']),
        ...(shape.bottomLengthM >= 0 && shape.topLengthM >= 0 && shape.bottomLengthM + shape.topLengthM > 0
          ? []
          : ['a wedge needs a length at its top or at its bottom']),
      ];
    case 'sloping-top':
      return [
        ...tooSmall(shape, ['lengthM', 'widthM', 'highHeightM']),
        ...(shape.lowHeightM >= 0 && shape.lowHeightM <= shape.highHeightM
          ? []
          : ['the low end must not be higher than the high end']),
      ];
    case 'measured':
      return pointFaults(shape.points);
  }
}

const measureNames: Readonly<Record<string, string>> = {
  diameterM: 'diameter',
  widthM: 'width',
  heightM: 'height',
  lengthM: 'length',
  highHeightM: 'height of the high end',
};

function tooSmall<S extends object>(shape: S, measures: readonly (keyof S & string)[]): readonly string[] {
  return measures
    .filter((measure) => !(Number(shape[measure]) > 0 && Number.isFinite(shape[measure])))
    .map((measure) => `the ${measureNames[measure] ?? measure} must be more than nothing`);
}

function roundFaults(straightM: number, diameterM: number, ends: readonly TankEnd[]): readonly string[] {
  const faults = ends.flatMap((end) => endFaults(end, diameterM));
  const onlyEnds = ends.every((end) => end.kind !== 'flat');
  if (straightM > 0 || (straightM === 0 && onlyEnds)) return faults;
  return ['the straight part must be more than nothing', ...faults];
}

function endFaults(end: TankEnd, diameterM: number): readonly string[] {
  switch (end.kind) {
    case 'flat':
    case 'hemispherical':
      return [];
    case 'torispherical': {
      const { dishRadiusShare: dish, cornerRadiusShare: corner } = end;
      return dish >= 0.5 && corner >= 0 && corner < 0.5 && dish > corner
        ? []
        : [
            'a torispherical end needs a dish radius of half the diameter or more, and a smaller corner radius',
          ];
    }
    default:
      if (!(end.depthM > 0)) return ['a bulging end must be deeper than nothing'];
      return end.kind === 'spherical' && end.depthM > diameterM / 2
        ? ['a dished end cannot be deeper than half the diameter']
        : [];
  }
}

function pointFaults(points: readonly StickPoint[]): readonly string[] {
  const faults: string[] = [];
  if (points.filter((point) => point.depthM > 0).length < 1)
    faults.push('a measured tank needs readings of its stick');
  for (const [index, point] of points.entries()) {
    const before = points[index - 1];
    const number = `reading ${index + 1}`;
    if (!(point.depthM >= 0 && point.volumeM3 >= 0)) faults.push(`${number} is less than nothing`);
    if (before && !(point.depthM > before.depthM))
      faults.push(`${number} does not stand higher than the one before it`);
    if (before && point.volumeM3 < before.volumeM3)
      faults.push(`${number} holds less than the one before it`);
  }
  return faults;
}
