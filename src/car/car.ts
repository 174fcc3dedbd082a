/**
 * The car as later stages see it: the spec's sections, every part by its key, and the plant as a graph.
 */

import type { Spot } from '../diagnostic/diagnostic';
import type { CarSpec } from '../spec/schema/carSpec';
import type { PartKind } from '../spec/schema/field';
import type { Plant } from './plant';

/** The key of a part as it stands in the spec; sections that occur once (`boiler`, `engine`…) have their section's name. */
export type PartId = string;

/** A part of the car, whatever its kind. */
export interface Part {
  readonly id: PartId;
  readonly kind: PartKind;
  readonly name: string;
  readonly tag?: string;
  /** Key of the place it is at; absent for fuels, liquids and the outside. */
  readonly place?: string;
}

/** A place on the car, in metres from the foremost point, the centre line and the ground. */
export interface Place {
  readonly id: string;
  readonly name: string;
  readonly backM: number;
  readonly rightM: number;
  readonly upM?: number;
  readonly reach: 'seated' | 'standing' | 'opened' | 'kneeling' | 'under';
  /** What has to be opened or lifted first. */
  readonly how?: string;
  /** Keys of the parts that are here, in the order of the spec. */
  readonly parts: readonly PartId[];
}

/** One car, ready for figures, procedures and papers. */
export interface Car {
  readonly spec: CarSpec;
  /** Every part by key, in the order of the spec. */
  readonly parts: ReadonlyMap<PartId, Part>;
  readonly places: ReadonlyMap<string, Place>;
  readonly plant: Plant;
  /**
   * Where a spec path (`valves.pilot-valve`, `lines.2.through.3` with lists counted from 1) stands in the file: a single
   * value itself, anything larger at its key; the nearest parent if the path is absent.
   */
  spotOf(path: string): Spot;
}
