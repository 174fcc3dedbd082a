/**
 * Student's t distribution: how wide an interval a few observations allow.
 *
 * Method: the incomplete beta function by its continued fraction (Abramowitz and Stegun 26.5.8 and 26.7.1); the
 * gamma function by the Lanczos approximation.
 */
import { solveRising } from './bisection';

const lanczos = [
  676.5203681218851, -1259.1392167224028, 771.3234287776531, -176.6150291621406, 12.507343278686905,
  -0.13857109526572012, 9.984369578019572e-6, 1.5056327351493116e-7,
] as const;

function logGamma(x: number): number {
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  const z = x - 1;
  const sum = lanczos.reduce((total, value, i) => total + value / (z + i + 1), 0.9999999999998099);
  const t = z + 7.5;
  return 0.5 * Math.log(2 * Math.PI) + (z + 0.5) * Math.log(t) - t + Math.log(sum);
}

/** The regularised incomplete beta function I_x(a, b). */
function incompleteBeta(x: number, a: number, b: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  if (x > (a + 1) / (a + b + 2)) return 1 - incompleteBeta(1 - x, b, a);
  const front =
    Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x)) / a;
  return front * betaFraction(x, a, b);
}

/** The continued fraction by Lentz's method. */
function betaFraction(x: number, a: number, b: number): number {
  const tiny = 1e-300;
  const safe = (value: number): number => (Math.abs(value) < tiny ? tiny : value);
  let [c, d] = [1, 1 / safe(1 - ((a + b) * x) / (a + 1))];
  let result = d;
  const goOn = (term: number): void => {
    d = 1 / safe(1 + term * d);
    c = safe(1 + term / c);
    result *= c * d;
  };
  for (let m = 1; m < 500; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    goOn(even);
    goOn(odd);
    if (Math.abs(c * d - 1) < 1e-15) break;
  }
  return result;
}

/** The chance that Student's t with `degreesOfFreedom` is at most `t`. */
export function studentChance(t: number, degreesOfFreedom: number): number {
  const tail = incompleteBeta(degreesOfFreedom / (degreesOfFreedom + t * t), degreesOfFreedom / 2, 0.5) / 2;
  return t > 0 ? 1 - tail : tail;
}

/** The t that is not passed with the chance `chance` (0.975 for both sides of 95 %). */
export function studentQuantile(chance: number, degreesOfFreedom: number): number {
  if (!(chance > 0 && chance < 1 && degreesOfFreedom > 0)) {
    throw new RangeError('a chance between nought and one and at least one degree of freedom are needed');
  }
  if (chance < 0.5) return -studentQuantile(1 - chance, degreesOfFreedom);
  return solveRising((t) => studentChance(t, degreesOfFreedom), chance, 0, 1e6);
}
