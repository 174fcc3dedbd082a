/** The tanks of a car, from the shapes and stick readings of its spec. */
import type { Car, PartId } from '../../car/car';
import { type TankEnd, twoToOneEnd } from '../tank/ends';
import type { TankShape } from '../tank/shape';
import { type Tank, tankOf } from '../tank/tank';

type SpecTank = Car['spec']['tanks'][string];
type SpecShape = NonNullable<SpecTank['shape']>;

/** A tank of the car that can be read by depth. */
export interface TankModel {
  readonly id: PartId;
  readonly name: string;
  readonly tank: Tank;
  /** `measured` from stick readings, `computed` from the shape. */
  readonly basis: 'measured' | 'computed';
  /** Brim full as the spec says, m³. */
  readonly statedCapacityM3: number;
  /** What may be put in, m³. */
  readonly fillToM3: number;
  readonly unusableM3: number;
  readonly reserveM3: number;
  /** Whether it is read by a stick; the depth of any other is looked up by nobody. */
  readonly byStick: boolean;
  /** Whether any of the measures is an estimate. */
  readonly estimated: boolean;
}

/** Every tank that has a shape or stick readings, in the order of the spec. */
export function tankModels(car: Car): readonly TankModel[] {
  return Object.entries(car.spec.tanks).flatMap(([id, tank]) => {
    const shape = shapeOf(tank);
    if (shape === undefined) return [];
    return [
      {
        id,
        name: tank.name,
        tank: tankOf(shape),
        basis: shape.kind === 'measured' ? ('measured' as const) : ('computed' as const),
        statedCapacityM3: tank.capacity.si,
        fillToM3: (tank['fill-to'] ?? tank.capacity).si,
        unusableM3: tank.unusable?.si ?? 0,
        reserveM3: tank.reserve?.si ?? 0,
        byStick: tank.read === 'stick',
        estimated: [tank.capacity, tank.unusable, tank.reserve].some((each) => each?.estimated === true),
      },
    ];
  });
}

/** Stick readings win over the shape. */
function shapeOf(tank: SpecTank): TankShape | undefined {
  if (tank.stick !== undefined) {
    return {
      kind: 'measured',
      points: tank.stick.map((point) => ({ depthM: point.depth.si, volumeM3: point.volume.si })),
    };
  }
  return tank.shape === undefined ? undefined : shapeFromSpec(tank.shape);
}

/** A shape as the spec says it, as the calculator takes it. */
export function shapeFromSpec(shape: SpecShape): TankShape {
  switch (shape.kind) {
    case 'rectangular':
      return {
        kind: 'rectangular',
        lengthM: shape.length.si,
        widthM: shape.width.si,
        heightM: shape.height.si,
      };
    case 'lying-cylinder': {
      const end = endOf(shape);
      return {
        kind: 'horizontal-cylinder',
        diameterM: shape.diameter.si,
        lengthM: shape.length.si,
        ends: [end, end],
      };
    }
    case 'standing-cylinder': {
      const end = endOf(shape);
      return {
        kind: 'vertical-cylinder',
        diameterM: shape.diameter.si,
        heightM: shape.height.si,
        bottom: end,
        top: end,
      };
    }
    case 'lying-oval':
      return {
        kind: 'elliptical',
        widthM: shape.width.si,
        heightM: shape.height.si,
        lengthM: shape.length.si,
      };
    case 'wedge':
      return {
        kind: 'sloping-top',
        lengthM: shape.length.si,
        widthM: shape.width.si,
        lowHeightM: shape['height-low'].si,
        highHeightM: shape['height-high'].si,
      };
  }
}

type RoundShape = Extract<SpecShape, { kind: 'lying-cylinder' | 'standing-cylinder' }>;

/** The ends of a cylinder; `checkTankEnds` has seen to it that the measures they need are there. */
function endOf(shape: RoundShape): TankEnd {
  const diameterM = shape.diameter.si;
  const measured = (measure: { readonly si: number } | undefined, name: string): number => {
    if (measure === undefined) throw new RangeError(`a ${shape.ends} end needs \`${name}\``);
    return measure.si;
  };
  switch (shape.ends) {
    case undefined:
    case 'flat':
      return { kind: 'flat' };
    case 'elliptical-2-to-1':
      return twoToOneEnd(diameterM);
    case 'hemispherical':
      return { kind: 'hemispherical' };
    case 'dished':
      return { kind: 'spherical', depthM: measured(shape['end-depth'], 'end-depth') };
    case 'conical':
      return { kind: 'conical', depthM: measured(shape['end-depth'], 'end-depth') };
    case 'torispherical':
      return {
        kind: 'torispherical',
        dishRadiusShare: measured(shape['crown-radius'], 'crown-radius') / diameterM,
        cornerRadiusShare: measured(shape['corner-radius'], 'corner-radius') / diameterM,
      };
  }
}
