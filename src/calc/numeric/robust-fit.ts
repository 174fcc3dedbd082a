/**
 * A fit that a few wild observations cannot pull, and that names them.
 *
 * Method: P. J. Huber, "Robust Estimation of a Location Parameter", Ann. Math. Statist. 35 (1964), by reweighting until
 * it settles, with the spread taken from the median of the residuals; observations beyond `wild` spreads are then named
 * and left out of a last plain fit.
 */
import { type LinearFit, leastSquares } from './least-squares';

/** Huber's constant: 95 % as sharp as plain least squares when nothing is wild. */
const huber = 1.345;
/** Median of the size of a normal residual, in standard deviations, turned over. */
const spreadOfMedian = 1.4826;
/** How many spreads off an observation is called wild. */
export const wild = 3.5;
/** Fewer observations than this cannot tell which of them is wild. */
const leastToJudge = 5;

/** A fit without the wild observations. */
export interface RobustFit {
  readonly fit: LinearFit;
  /** Indexes of the observations kept, in order. */
  readonly kept: readonly number[];
  readonly wild: readonly WildObservation[];
}

/** An observation left out. */
export interface WildObservation {
  readonly index: number;
  /** How many spreads it lies off the fit; positive if it is more than the fit says. */
  readonly spreads: number;
}

/** Fit robustly; the arguments are those of `leastSquares`. */
export function robustFit(design: readonly (readonly number[])[], observed: readonly number[]): RobustFit {
  const all = design.map((_, index) => index);
  if (design.length < leastToJudge) return { fit: leastSquares(design, observed), kept: all, wild: [] };
  const { residuals, spread } = settle(design, observed);
  const columns = design[0]?.length ?? 0;
  const off = all
    .map((index) => ({ index, spreads: (residuals[index] ?? 0) / spread }))
    .filter(({ spreads }) => Math.abs(spreads) > wild);
  const left = new Set(off.map(({ index }) => index));
  const kept = all.filter((index) => !left.has(index));
  if (kept.length <= columns) return { fit: leastSquares(design, observed), kept: all, wild: [] };
  const fit = leastSquares(
    kept.map((index) => design[index] ?? []),
    kept.map((index) => observed[index] ?? 0),
  );
  return { fit, kept, wild: off };
}

/** The reweighted fit on which the wild are judged: where it settled, and the spread about it. */
export interface SettledFit {
  readonly coefficients: readonly number[];
  readonly residuals: readonly number[];
  readonly spread: number;
}

/** Huber's fit by reweighting, the spread taken from the median of the residuals anew in each round. */
export function settle(design: readonly (readonly number[])[], observed: readonly number[]): SettledFit {
  const plain = leastSquares(design, observed);
  let [residuals, coefficients] = [plain.residuals, plain.coefficients];
  let spread = spreadOf(residuals, observed);
  for (let round = 0; round < 100; round++) {
    const roots = residuals.map((residual) =>
      Math.sqrt(Math.min(1, (huber * spread) / Math.abs(residual || 1e-300))),
    );
    const weighted = leastSquares(
      design.map((row, i) => row.map((cell) => cell * (roots[i] ?? 1))),
      observed.map((value, i) => value * (roots[i] ?? 1)),
    );
    const next = observed.map(
      (value, i) =>
        value - (design[i] ?? []).reduce((sum, cell, j) => sum + cell * (weighted.coefficients[j] ?? 0), 0),
    );
    const moved = next.reduce((most, value, i) => Math.max(most, Math.abs(value - (residuals[i] ?? 0))), 0);
    residuals = next;
    coefficients = weighted.coefficients;
    spread = spreadOf(residuals, observed);
    if (moved < 1e-10 * spread) break;
  }
  return { coefficients, residuals, spread };
}

/** Spread of residuals from their median size; never so small that rounding in a log would look wild. */
function spreadOf(residuals: readonly number[], observed: readonly number[]): number {
  const least = 1e-6 * median(observed.map(Math.abs));
  return Math.max(spreadOfMedian * median(residuals.map(Math.abs)), least, 1e-300);
}

/** The middle value. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  const upper = sorted[middle] ?? Number.NaN;
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? Number.NaN) + upper) / 2;
}
