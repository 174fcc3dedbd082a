/**
 * Linear least squares by Householder reflections, with the usual statistics.
 *
 * Method: G. H. Golub, "Numerical Methods for Solving Linear Least Squares Problems", Numer. Math. 7 (1965); columns
 * are scaled to unit length first. Checked against the NIST Statistical Reference Datasets.
 */

/** A straight-line (in its coefficients) fit. */
export interface LinearFit {
  /** One per column of the design, in its order. */
  readonly coefficients: readonly number[];
  /** Standard errors of the coefficients; not-a-number if there are no degrees of freedom. */
  readonly standardErrors: readonly number[];
  readonly residuals: readonly number[];
  readonly residualSumOfSquares: number;
  /** Standard deviation of a residual. */
  readonly residualDeviation: number;
  readonly degreesOfFreedom: number;
  /** About the mean if the design has a column of ones, else about nought. */
  readonly rSquared: number;
}

/**
 * Fit `observed[i] = sum of coefficient[j] × design[i][j]`. Throws a RangeError if there are fewer rows than
 * columns, or if the columns do not differ.
 */
export function leastSquares(design: readonly (readonly number[])[], observed: readonly number[]): LinearFit {
  const columns = design[0]?.length ?? 0;
  if (columns === 0 || design.length < columns || observed.length !== design.length) {
    throw new RangeError('a fit needs at least as many observations as coefficients');
  }
  const scales = Array.from({ length: columns }, (_, j) => lengthOf(design.map((row) => row[j] ?? 0)));
  if (scales.some((scale) => !(scale > 0))) throw new RangeError('a column of the fit is empty');
  const matrix = design.map((row) => row.map((cell, j) => cell / (scales[j] ?? 1)));
  const rotated = [...observed];
  reflect(matrix, rotated, columns);
  const scaled = backSubstitute(matrix, rotated, columns);
  const coefficients = scaled.map((value, j) => value / (scales[j] ?? 1));
  const residuals = design.map(
    (row, i) => (observed[i] ?? 0) - row.reduce((sum, cell, j) => sum + cell * (coefficients[j] ?? 0), 0),
  );
  return statistics(design, observed, coefficients, residuals, unscaledErrors(matrix, columns, scales));
}

/** Turn `matrix` into an upper triangle, and `side` with it, column by column. */
function reflect(matrix: number[][], side: number[], columns: number): void {
  for (let k = 0; k < columns; k++) {
    const column = matrix.slice(k).map((row) => row[k] ?? 0);
    const first = column[0] ?? 0;
    const norm = lengthOf(column);
    if (!(norm > 1e-13)) throw new RangeError('two columns of the fit say the same');
    const alpha = first > 0 ? -norm : norm;
    const v = column.map((value, i) => (i === 0 ? value - alpha : value));
    const square = v.reduce((sum, value) => sum + value * value, 0);
    const mirror = (read: (i: number) => number, write: (i: number, value: number) => void): void => {
      const dot = v.reduce((sum, value, i) => sum + value * read(i + k), 0);
      for (const [i, value] of v.entries()) write(i + k, read(i + k) - (2 * dot * value) / square);
    };
    for (let j = k; j < columns; j++) {
      mirror(
        (i) => matrix[i]?.[j] ?? 0,
        (i, value) => setCell(matrix, i, j, value),
      );
    }
    mirror(
      (i) => side[i] ?? 0,
      (i, value) => {
        side[i] = value;
      },
    );
  }
}

function setCell(matrix: number[][], i: number, j: number, value: number): void {
  const row = matrix[i];
  if (row) row[j] = value;
}

function backSubstitute(
  triangle: readonly (readonly number[])[],
  side: readonly number[],
  columns: number,
): number[] {
  const solution = new Array<number>(columns).fill(0);
  for (let i = columns - 1; i >= 0; i--) {
    let rest = side[i] ?? 0;
    for (let j = i + 1; j < columns; j++) rest -= (triangle[i]?.[j] ?? 0) * (solution[j] ?? 0);
    solution[i] = rest / (triangle[i]?.[i] ?? Number.NaN);
  }
  return solution;
}

/** Square roots of the diagonal of (XᵀX)⁻¹, from the rows of the inverse triangle. */
function unscaledErrors(
  triangle: readonly (readonly number[])[],
  columns: number,
  scales: readonly number[],
): number[] {
  const inverse = Array.from({ length: columns }, (_, j) =>
    backSubstitute(
      triangle,
      Array.from({ length: columns }, (_, i) => (i === j ? 1 : 0)),
      columns,
    ),
  );
  return scales.map((scale, i) => lengthOf(inverse.map((column) => column[i] ?? 0)) / scale);
}

function statistics(
  design: readonly (readonly number[])[],
  observed: readonly number[],
  coefficients: readonly number[],
  residuals: readonly number[],
  unscaled: readonly number[],
): LinearFit {
  const degreesOfFreedom = design.length - coefficients.length;
  const residualSumOfSquares = sumOfSquares(residuals);
  const residualDeviation =
    degreesOfFreedom > 0 ? Math.sqrt(residualSumOfSquares / degreesOfFreedom) : Number.NaN;
  const hasOnes = coefficients.some((_, j) => design.every((row) => row[j] === 1));
  const mean = hasOnes ? observed.reduce((sum, value) => sum + value, 0) / observed.length : 0;
  return {
    coefficients,
    standardErrors: unscaled.map((value) => value * residualDeviation),
    residuals,
    residualSumOfSquares,
    residualDeviation,
    degreesOfFreedom,
    rSquared: 1 - residualSumOfSquares / sumOfSquares(observed.map((value) => value - mean)),
  };
}

function sumOfSquares(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value * value, 0);
}

function lengthOf(vector: readonly number[]): number {
  return Math.sqrt(sumOfSquares(vector));
}
