import type { Dimension } from './dimension';

/** A measured or computed amount: a number in the SI unit of its dimension, and how it was written. */
export interface Quantity<D extends Dimension = Dimension> {
  readonly dimension: D;
  /** The amount in the SI unit of `dimension` (`siUnits` in `dimension.ts`). */
  readonly si: number;
  /** What the keeper wrote, for showing back; for a computed quantity, empty. */
  readonly written: string;
  /** True if the keeper wrote `about …`: an estimate, not a measurement. */
  readonly estimated: boolean;
}

/** Make a computed quantity from a number in the SI unit of `dimension`. */
export function quantity<D extends Dimension>(dimension: D, si: number, estimated = false): Quantity<D> {
  return { dimension, si, written: '', estimated };
}
