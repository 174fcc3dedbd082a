/**
 * A tank as a stick sees it: depth of liquid against volume of liquid, both ways.
 *
 * Sources: plane sections by elementary geometry; ends by D. Jones, "Calculating Tank Volume" (2003); an elliptical
 * section is a circle of its height, stretched to its width.
 */
import { solveRising } from '../numeric/bisection';
import { monotoneCurve } from '../numeric/monotone-curve';
import { areaBelow } from './circle';
import { endDepthM, endVolumeFromMouthM3, endVolumeOnSideM3 } from './ends';
import { type StickPoint, shapeFaults, type TankShape } from './shape';

/** A tank ready to be read. Depths beyond its bottom or top count as empty or full. */
export interface Tank {
  readonly shape: TankShape;
  /** Depth of liquid when full, measured up from the lowest point, m. */
  readonly fullDepthM: number;
  readonly capacityM3: number;
  volumeAtDepthM3(depthM: number): number;
  depthAtVolumeM(volumeM3: number): number;
}

/** Make a tank ready. Throws a RangeError naming the faults of a shape that is no tank (see `shapeFaults`). */
export function tankOf(shape: TankShape): Tank {
  const faults = shapeFaults(shape);
  if (faults.length > 0) throw new RangeError(`not a tank: ${faults.join('; ')}`);
  const fullDepthM = fullDepth(shape);
  const volume = volumeFunction(shape);
  const volumeAtDepthM3 = (depthM: number): number => {
    if (Number.isNaN(depthM)) throw new RangeError('a depth that is not a number was asked for');
    return volume(Math.min(Math.max(depthM, 0), fullDepthM));
  };
  return {
    shape,
    fullDepthM,
    capacityM3: volume(fullDepthM),
    volumeAtDepthM3,
    depthAtVolumeM: (volumeM3) => solveRising(volumeAtDepthM3, volumeM3, 0, fullDepthM),
  };
}

function fullDepth(shape: TankShape): number {
  switch (shape.kind) {
    case 'horizontal-cylinder':
      return shape.diameterM;
    case 'vertical-cylinder': {
      const radius = shape.diameterM / 2;
      return endDepthM(shape.bottom, radius) + shape.heightM + endDepthM(shape.top, radius);
    }
    case 'sloping-top':
      return shape.highHeightM;
    case 'measured':
      return shape.points.at(-1)?.depthM ?? 0;
    default:
      return shape.heightM;
  }
}

function volumeFunction(shape: TankShape): (depthM: number) => number {
  switch (shape.kind) {
    case 'horizontal-cylinder': {
      const radius = shape.diameterM / 2;
      return (depth) =>
        shape.ends.reduce(
          (sum, end) => sum + endVolumeOnSideM3(end, radius, depth),
          shape.lengthM * areaBelow(radius, depth - radius),
        );
    }
    case 'vertical-cylinder':
      return (depth) => standingVolume(shape, depth);
    case 'elliptical': {
      const radius = shape.heightM / 2;
      return (depth) => shape.lengthM * (shape.widthM / shape.heightM) * areaBelow(radius, depth - radius);
    }
    case 'rectangular':
      return (depth) => shape.lengthM * shape.widthM * depth;
    case 'wedge': {
      const growth = (shape.topLengthM - shape.bottomLengthM) / shape.heightM;
      return (depth) => shape.widthM * depth * (shape.bottomLengthM + (growth * depth) / 2);
    }
    case 'sloping-top':
      return (depth) => shape.lengthM * shape.widthM * (depth - slopeCut(shape, depth));
    case 'measured':
      return monotoneCurve(
        fromEmpty(shape.points).map(({ depthM, volumeM3 }) => ({ x: depthM, y: volumeM3 })),
      );
  }
}

/** What the slope takes away, as a depth over the whole floor. */
function slopeCut({ lowHeightM, highHeightM }: TankShape & { kind: 'sloping-top' }, depth: number): number {
  const above = depth - lowHeightM;
  return above > 0 ? (above * above) / (2 * (highHeightM - lowHeightM)) : 0;
}

function standingVolume(shape: TankShape & { kind: 'vertical-cylinder' }, depth: number): number {
  const radius = shape.diameterM / 2;
  const bottom = endDepthM(shape.bottom, radius);
  const whole = endVolumeFromMouthM3(shape.bottom, radius, bottom);
  if (depth <= bottom) return whole - endVolumeFromMouthM3(shape.bottom, radius, bottom - depth);
  const straight = Math.min(depth - bottom, shape.heightM);
  const above = Math.max(depth - bottom - shape.heightM, 0);
  return whole + Math.PI * radius * radius * straight + endVolumeFromMouthM3(shape.top, radius, above);
}

/** A dry stick is an empty tank, unless a reading at nought says what the stick cannot reach. */
function fromEmpty(points: readonly StickPoint[]): readonly StickPoint[] {
  return points[0]?.depthM === 0 ? points : [{ depthM: 0, volumeM3: 0 }, ...points];
}
