/**
 * Liquid water: IAPWS-IF97 region 1, 273.15 K to 623.15 K, up to 100 MPa.
 *
 * Source: IAPWS R7-97(2012), section 5.1, Eq. 7 and Table 2.
 */
import { region1Terms } from './region1-coefficients';
import { type Gibbs, stateFromGibbs, type WaterState } from './state';

/** Properties of liquid water. The caller sees to it that it is liquid; `waterAt` chooses by itself. */
export function liquidWater(pressurePa: number, temperatureK: number): WaterState {
  const pi = pressurePa / 16.53e6;
  const tau = 1386 / temperatureK;
  return stateFromGibbs(pressurePa, temperatureK, pi, tau, gibbs(7.1 - pi, tau - 1.222));
}

function gibbs(a: number, b: number): Gibbs {
  let [g, p, pp, t, tt, pt] = [0, 0, 0, 0, 0, 0];
  for (const { i, j, n } of region1Terms) {
    const term = n * a ** i * b ** j;
    g += term;
    p -= (i * term) / a;
    pp += (i * (i - 1) * term) / (a * a);
    t += (j * term) / b;
    tt += (j * (j - 1) * term) / (b * b);
    pt -= (i * j * term) / (a * b);
  }
  return { g, p, pp, t, tt, pt };
}
