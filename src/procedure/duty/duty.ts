/** What a duty is. */
import type { Car, PartId } from '../../car/car';

/** One duty of the whole car. */
export interface Duty {
  /** Which parts have it, in plain words, for `docs/procedures.md`. */
  readonly meaning: string;
  /** The parts that have it, in their own order: of flow for valves on a line, of the spec otherwise. */
  readonly parts: (car: Car) => readonly PartId[];
}

/** Duties by name. */
export type Duties = Readonly<Record<string, Duty>>;
