import { describe, expect, it } from 'vitest';
import { leastSquares } from '../../../src/calc/numeric/least-squares';
import { median, robustFit, settle } from '../../../src/calc/numeric/robust-fit';
import { studentChance, studentQuantile } from '../../../src/calc/numeric/student';

const digits = (found: number, certified: number): number =>
  -Math.log10(Math.max(Math.abs(found / certified - 1), 1e-16));

const norrisX = [
  0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5, 666.9, 338.0,
  447.5, 11.6, 556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1, 118.3,
  229.2, 669.1, 448.9, 0.5,
];
const norrisY = [
  0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8, 339.3,
  448.9, 10.8, 557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2, 117.6,
  228.9, 668.4, 449.2, 0.2,
];
const pontiusY = [
  0.11019, 0.21956, 0.32949, 0.43899, 0.54803, 0.65694, 0.76562, 0.87487, 0.98292, 1.09146, 1.20001, 1.30822,
  1.41599, 1.52399, 1.63194, 1.73947, 1.84646, 1.95392, 2.06128, 2.16844, 0.11052, 0.22018, 0.32939, 0.43886,
  0.54798, 0.65739, 0.76596, 0.87474, 0.983, 1.0915, 1.20004, 1.30818, 1.41613, 1.52408, 1.63159, 1.73965,
  1.84696, 1.95445, 2.06177, 2.16829,
];

describe('NIST Statistical Reference Datasets', () => {
  it('Norris: a straight line', () => {
    const fit = leastSquares(
      norrisX.map((x) => [1, x]),
      norrisY,
    );
    expect(digits(fit.coefficients[0] ?? 0, -0.262323073774029)).toBeGreaterThan(9);
    expect(digits(fit.coefficients[1] ?? 0, 1.00211681802045)).toBeGreaterThan(9);
    expect(digits(fit.standardErrors[0] ?? 0, 0.232818234301152)).toBeGreaterThan(9);
    expect(digits(fit.standardErrors[1] ?? 0, 0.429796848199937e-3)).toBeGreaterThan(9);
    expect(digits(fit.residualSumOfSquares, 26.6173985294224)).toBeGreaterThan(9);
    expect(digits(fit.residualDeviation, 0.884796396144373)).toBeGreaterThan(9);
    expect(digits(fit.rSquared, 0.999993745883712)).toBeGreaterThan(9);
    expect(fit.degreesOfFreedom).toBe(34);
  });

  it('NoInt1: a line through nought, as for use per distance', () => {
    const fit = leastSquares(
      Array.from({ length: 11 }, (_, i) => [60 + i]),
      Array.from({ length: 11 }, (_, i) => 130 + i),
    );
    expect(digits(fit.coefficients[0] ?? 0, 2.07438016528926)).toBeGreaterThan(9);
    expect(digits(fit.standardErrors[0] ?? 0, 0.165289256198347e-1)).toBeGreaterThan(9);
    expect(digits(fit.residualSumOfSquares, 127.272727272727)).toBeGreaterThan(9);
    expect(digits(fit.residualDeviation, 3.56753034006338)).toBeGreaterThan(9);
    expect(digits(fit.rSquared, 0.999365492298663)).toBeGreaterThan(9);
  });

  it('NoInt2: three points through nought', () => {
    const fit = leastSquares([[4], [5], [6]], [3, 4, 4]);
    expect(digits(fit.coefficients[0] ?? 0, 0.727272727272727)).toBeGreaterThan(9);
    expect(digits(fit.standardErrors[0] ?? 0, 0.420827318078432e-1)).toBeGreaterThan(9);
    expect(digits(fit.residualSumOfSquares, 0.272727272727273)).toBeGreaterThan(9);
  });

  it('Pontius: a parabola in numbers of very different size', () => {
    const x = Array.from({ length: 40 }, (_, i) => 150000 * ((i % 20) + 1));
    const fit = leastSquares(
      x.map((value) => [1, value, value * value]),
      pontiusY,
    );
    const certified = [0.673565789473684e-3, 0.732059160401003e-6, -0.316081871345029e-14];
    const errors = [0.107938612033077e-3, 0.157817399981659e-9, 0.486652849992036e-16];
    for (const [i, value] of certified.entries())
      expect(digits(fit.coefficients[i] ?? 0, value)).toBeGreaterThan(7);
    for (const [i, value] of errors.entries())
      expect(digits(fit.standardErrors[i] ?? 0, value)).toBeGreaterThan(7);
    expect(digits(fit.residualSumOfSquares, 0.155761768796992e-5)).toBeGreaterThan(7);
    expect(digits(fit.residualDeviation, 0.205177424076185e-3)).toBeGreaterThan(7);
  });

  it('refuses fits that cannot be made', () => {
    expect(() => leastSquares([], [])).toThrow(RangeError);
    expect(() => leastSquares([[1, 2]], [3])).toThrow(RangeError);
    expect(() =>
      leastSquares(
        [
          [1, 2],
          [2, 4],
          [3, 6],
        ],
        [1, 2, 3],
      ),
    ).toThrow(RangeError);
    expect(() => leastSquares([[0], [0]], [1, 2])).toThrow(RangeError);
  });
});

describe('Student’s t (tables of the distribution, from memory)', () => {
  it.each([
    [0.975, 1, 12.706],
    [0.975, 2, 4.303],
    [0.95, 5, 2.015],
    [0.975, 10, 2.228],
    [0.995, 10, 3.169],
    [0.975, 30, 2.042],
    [0.975, 1e6, 1.96],
  ])('%d with %d degrees of freedom: %d', (chance, degrees, t) => {
    expect(Math.abs(studentQuantile(chance, degrees) - t)).toBeLessThan(6e-4);
    expect(studentChance(studentQuantile(chance, degrees), degrees)).toBeCloseTo(chance, 10);
  });

  it('is symmetric, and refuses certainty', () => {
    expect(studentQuantile(0.1, 7)).toBeCloseTo(-studentQuantile(0.9, 7), 10);
    expect(() => studentQuantile(1, 7)).toThrow(RangeError);
  });
});

describe('robust fit', () => {
  const x = Array.from({ length: 12 }, (_, i) => [i + 1]);
  const clean = x.map(([value = 0], i) => 2 * value + (i % 2 === 0 ? 0.05 : -0.05));

  it('is the plain fit when nothing is wild', () => {
    const robust = robustFit(x, clean);
    expect(robust.wild).toEqual([]);
    expect(robust.fit.coefficients[0]).toBe(leastSquares(x, clean).coefficients[0]);
  });

  it('names what is wild and is not pulled by it', () => {
    const robust = robustFit(
      x,
      clean.map((y, i) => (i === 8 ? y * 3 : y)),
    );
    expect(robust.wild.map(({ index }) => index)).toEqual([8]);
    expect(robust.wild[0]?.spreads).toBeGreaterThan(10);
    expect(robust.fit.coefficients[0]).toBeCloseTo(2, 2);
  });

  it('judges nobody among four, and takes an exact log as it is', () => {
    expect(robustFit(x.slice(0, 4), [2, 4, 6, 80]).wild).toEqual([]);
    expect(
      robustFit(
        x,
        x.map(([value = 0]) => 2 * value),
      ).wild,
    ).toEqual([]);
  });

  it('median', () => {
    expect(median([3, 1, 2])).toBe(2);
    expect(median([4, 1, 2, 3])).toBe(2.5);
  });
});

describe('stack loss data (K. A. Brownlee, Statistical Theory and Methodology, 1965; as in the manual of SAS ROBUSTREG)', () => {
  const rows: readonly (readonly [number, number, number, number])[] = [
    [80, 27, 89, 42],
    [80, 27, 88, 37],
    [75, 25, 90, 37],
    [62, 24, 87, 28],
    [62, 22, 87, 18],
    [62, 23, 87, 18],
    [62, 24, 93, 19],
    [62, 24, 93, 20],
    [58, 23, 87, 15],
    [58, 18, 80, 14],
    [58, 18, 89, 14],
    [58, 17, 88, 13],
    [58, 18, 82, 11],
    [58, 19, 93, 12],
    [50, 18, 89, 8],
    [50, 18, 86, 7],
    [50, 19, 72, 8],
    [50, 19, 79, 8],
    [50, 20, 80, 9],
    [56, 20, 82, 15],
    [70, 20, 91, 15],
  ];
  const design = rows.map(([air, temperature, acid]) => [1, air, temperature, acid]);
  const loss = rows.map((row) => row[3]);

  it('Huber’s fit with the median spread gives what the documentation of statsmodels prints (RLM, HuberT)', () => {
    const { coefficients } = settle(design, loss);
    for (const [index, printed] of [-41.0265, 0.8294, 0.9261, -0.1278].entries())
      expect(Math.abs((coefficients[index] ?? Number.NaN) - printed), `coefficient ${index}`).toBeLessThan(
        6e-5,
      );
  });

  it('the days it calls wild are among those the literature names: 1, 3, 4 and 21 (P. J. Rousseeuw and A. M. Leroy, 1987, from memory)', () => {
    const days = robustFit(design, loss).wild.map(({ index }) => index + 1);
    expect(days).toContain(21);
    for (const day of days) expect([1, 3, 4, 21]).toContain(day);
  });
});
