/**
 * Steam: IAPWS-IF97 region 2, 273.15 K to 1073.15 K.
 *
 * Source: IAPWS R7-97(2012), section 6.1, Eq. 15 to 17 and Tables 10 and 11.
 */
import { region2IdealTerms, region2ResidualTerms } from './region2-coefficients';
import { type Gibbs, stateFromGibbs, type WaterState } from './state';

/** Properties of steam. The caller sees to it that it is steam; `waterAt` chooses by itself. */
export function steam(pressurePa: number, temperatureK: number): WaterState {
  const pi = pressurePa / 1e6;
  const tau = 540 / temperatureK;
  return stateFromGibbs(pressurePa, temperatureK, pi, tau, gibbs(pi, tau));
}

function gibbs(pi: number, tau: number): Gibbs {
  let [g, p, pp, t, tt, pt] = [Math.log(pi), 1 / pi, -1 / (pi * pi), 0, 0, 0];
  for (const { j, n } of region2IdealTerms) {
    g += n * tau ** j;
    t += n * j * tau ** (j - 1);
    tt += n * j * (j - 1) * tau ** (j - 2);
  }
  const b = tau - 0.5;
  for (const { i, j, n } of region2ResidualTerms) {
    const power = pi ** i;
    g += n * power * b ** j;
    p += n * i * pi ** (i - 1) * b ** j;
    pp += n * i * (i - 1) * pi ** (i - 2) * b ** j;
    t += n * power * j * b ** (j - 1);
    tt += n * power * j * (j - 1) * b ** (j - 2);
    pt += n * i * pi ** (i - 1) * j * b ** (j - 1);
  }
  return { g, p, pp, t, tt, pt };
}
