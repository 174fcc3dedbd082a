/** The marks that go on the stick of a tank: round volumes, as close together as a stick can carry and an eye can part. */
import type { UnitSystem } from '../../quantity/dimension';
import { houseUnits } from '../../quantity/house-units';
import { findUnit } from '../../quantity/spelling';
import { toSi } from '../../quantity/unit';
import type { TankModel } from './tankModel';

/** One mark. */
export interface StickMark {
  readonly volumeM3: number;
  /** Above the lowest point of the tank, where the foot of the stick stands. */
  readonly depthM: number;
  /** Whether its figure stands beside it, or only a fine line. */
  readonly named: boolean;
}

/** Depths of a tank that a driver must know: under the first nothing can be drawn, the second begins the reserve, the third is full. */
export interface StickLevels {
  readonly cannotBeDrawnM: number;
  readonly reserveM: number;
  readonly fullM: number;
}

/** Round volumes in the unit of a system, from fine to coarse; each coarse one that follows holds some of them a whole number of times. */
const steps: Readonly<Record<UnitSystem, readonly number[]>> = {
  us: [1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 2, 5, 10, 20],
  imperial: [1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 2, 5, 10, 20],
  metric: [0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100],
};

/** Figures of 9 points stand this far apart at the least; fine lines can be scribed and told apart at this. */
const leastNamedM = 0.0042;
const leastFineM = 0.0015;

/**
 * The marks in the units of one system, from the lowest up to where the tank is full. Nought has none, nor has what lies
 * below the foot of the stick. Worked out once for a tank: its paper asks for them whenever it speaks of its strip.
 */
export function stickMarks(model: TankModel, system: UnitSystem): readonly StickMark[] {
  const bySystem = known.get(model) ?? new Map<UnitSystem, readonly StickMark[]>();
  known.set(model, bySystem);
  const marks = bySystem.get(system) ?? marksOf(model, system);
  bySystem.set(system, marks);
  return marks;
}

const known = new WeakMap<TankModel, Map<UnitSystem, readonly StickMark[]>>();

function marksOf(model: TankModel, system: UnitSystem): readonly StickMark[] {
  const full = Math.min(model.fillToM3, model.tank.capacityM3);
  const inM3 = steps[system].map((step) => ({ step, m3: toSi(step, unitOf(system)) }));
  const named = inM3.find(({ m3 }) => areApart(model, m3, full, leastNamedM)) ?? inM3.at(-1);
  if (named === undefined) return [];
  const fine =
    inM3.find(({ step, m3 }) => isWhole(named.step / step) && areApart(model, m3, full, leastFineM)) ?? named;
  return volumesTo(fine.m3, full)
    .map((volumeM3, index) => ({
      volumeM3,
      depthM: model.tank.depthAtVolumeM(volumeM3),
      named: isWhole(((index + 1) * fine.step) / named.step),
    }))
    .filter(({ depthM }) => depthM > 0);
}

/** The depths of a tank's levels. */
export function stickLevels({ tank, unusableM3, reserveM3, fillToM3 }: TankModel): StickLevels {
  return {
    cannotBeDrawnM: tank.depthAtVolumeM(unusableM3),
    reserveM: tank.depthAtVolumeM(unusableM3 + reserveM3),
    fullM: tank.depthAtVolumeM(Math.min(fillToM3, tank.capacityM3)),
  };
}

/** The name of the unit that the marks of a system count. */
export function stickUnit(system: UnitSystem): string {
  return houseUnits.volume[system];
}

function unitOf(system: UnitSystem) {
  const unit = findUnit('volume', stickUnit(system));
  if (unit === undefined) throw new RangeError(`\`${stickUnit(system)}\` is not a unit of volume`);
  return unit;
}

/** Whether marks at every `stepM3` stand as far apart as `leastM`. The first pair that does not is enough to say no. */
function areApart({ tank }: TankModel, stepM3: number, full: number, leastM: number): boolean {
  let below = 0;
  for (const volume of volumesTo(stepM3, full)) {
    const depth = tank.depthAtVolumeM(volume);
    if (!(depth > 0)) continue;
    if (!(depth - below >= leastM)) return false;
    below = depth;
  }
  return true;
}

function volumesTo(stepM3: number, full: number): readonly number[] {
  return Array.from({ length: Math.floor(full / stepM3 + 1e-9) }, (_, index) => (index + 1) * stepM3);
}

const isWhole = (value: number): boolean => Math.abs(value - Math.round(value)) < 1e-9;
