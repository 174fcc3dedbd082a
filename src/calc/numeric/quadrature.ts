/**
 * Integrals by Gauss–Legendre quadrature, safe against square-root behaviour at both ends.
 */

/** Nodes and weights on [-1, 1] of order `n`, by Newton's method on the Legendre polynomial. */
function gaussLegendre(n: number): readonly (readonly [number, number])[] {
  return Array.from({ length: n }, (_, i) => {
    let x = Math.cos((Math.PI * (i + 0.75)) / (n + 0.5));
    let slope = 1;
    for (let round = 0; round < 100; round++) {
      let [p, before] = [x, 1];
      for (let k = 2; k <= n; k++) [p, before] = [((2 * k - 1) * x * p - (k - 1) * before) / k, p];
      slope = (n * (x * p - before)) / (x * x - 1);
      const step = p / slope;
      x -= step;
      if (Math.abs(step) < 1e-15) break;
    }
    return [x, 2 / ((1 - x * x) * slope * slope)] as const;
  });
}

const rule = gaussLegendre(48);

/**
 * The integral of `f` from `from` to `to`. The variable is bent (3u² − 2u³) so that a half-power of the distance
 * from either end, as circles give, is integrated as exactly as a polynomial.
 */
export function integrate(f: (x: number) => number, from: number, to: number): number {
  const width = to - from;
  if (width === 0) return 0;
  let sum = 0;
  for (const [node, weight] of rule) {
    const u = (node + 1) / 2;
    sum += weight * f(from + width * u * u * (3 - 2 * u)) * u * (1 - u);
  }
  return 3 * width * sum;
}
