/** Published values that the calculators are held to, each with what comes out: for the page on figures, and for a test. */
import { foot, inch, psi, usGallon } from '../quantity/base-units';
import { gaugeWhenLeftPa } from './air/cushion';
import { blendingIndex } from './fuel/flash-point';
import { leastSquares } from './numeric/least-squares';
import { studentQuantile } from './numeric/student';
import { characterHeightM } from './reading/character-height';
import { tyreRolling } from './road/road-load';
import { openBoilingPointK, standardAir } from './steam/atmosphere';
import { boilerHorsepower, equivalentEvaporationKgPerS, steamMaking } from './steam/evaporation';
import { saturationPressurePa, saturationTemperatureK } from './steam/saturation';
import { waterAt } from './steam/water-at';
import { tankOf } from './tank/tank';
import { draughtPa } from './water/draught';

/** One published value and what the program makes of it. */
export interface PublishedCheck {
  readonly what: string;
  readonly source: string;
  readonly expected: number;
  readonly got: number;
  /** The most the two may differ, as a share of the expected. */
  readonly within: number;
}

const kelvinOfF = (degrees: number): number => (degrees + 459.67) / 1.8;
const poundPerHour = 0.45359237 / 3600;
const seaPsi = 14.696;
/** An inch of water, Pa (NIST SP 811). */
const inchOfWaterPa = 248.84;

const evaporation = steamMaking({ pressurePa: (85 + seaPsi) * psi, feedTemperatureK: kelvinOfF(50) });
const equivalent = equivalentEvaporationKgPerS(2100 * poundPerHour, evaporation);
const noInt1 = leastSquares(
  Array.from({ length: 11 }, (_, index) => [60 + index]),
  Array.from({ length: 11 }, (_, index) => 130 + index),
);
const jones = tankOf({
  kind: 'horizontal-cylinder',
  diameterM: 108 * inch,
  lengthM: 156 * inch,
  ends: [{ kind: 'flat' }, { kind: 'flat' }],
});
/** A closed vessel of 1.75 L with 1.325 L of liquid in it: 425 mL of air that grow to the whole as the liquid leaves. */
const boyle = gaugeWhenLeftPa({ capacityM3: 1.75e-3, fuelM3: 1.325e-3, gaugePa: 387e3, ambientPa: 0 }, 0);

/** The table, in the order of the subjects. */
export const publishedChecks: readonly PublishedCheck[] = [
  check(
    'boiling point at 0.1 MPa, K',
    'IAPWS R7-97(2012) Table 36',
    372.755919,
    saturationTemperatureK(1e5),
    1e-8,
  ),
  check(
    'boiling point at 1 MPa, K',
    'IAPWS R7-97(2012) Table 36',
    453.035632,
    saturationTemperatureK(1e6),
    1e-8,
  ),
  check(
    'boiling point at 10 MPa, K',
    'IAPWS R7-97(2012) Table 36',
    584.149488,
    saturationTemperatureK(1e7),
    1e-8,
  ),
  check(
    'boiling pressure at 500 K, MPa',
    'IAPWS R7-97(2012) Table 35',
    2.63889776,
    saturationPressurePa(500) / 1e6,
    1e-8,
  ),
  check(
    'enthalpy of water at 300 K and 3 MPa, kJ/kg',
    'IAPWS R7-97(2012) Table 5',
    115.331273,
    waterAt(3e6, 300).enthalpy / 1e3,
    1e-8,
  ),
  check(
    'enthalpy of steam at 700 K and 0.0035 MPa, kJ/kg',
    'IAPWS R7-97(2012) Table 15',
    3335.68375,
    waterAt(3500, 700).enthalpy / 1e3,
    1e-8,
  ),
  check(
    'factor of evaporation, 85 psi gauge, feed at 50 °F',
    'Cyclopedia of Mechanical Engineering vol. 4',
    1.204,
    evaporation.factorOfEvaporation,
    1.5e-3,
  ),
  check(
    'horsepower of a boiler that makes 2,100 lb/h of it',
    'Cyclopedia of Mechanical Engineering vol. 4',
    73.3,
    boilerHorsepower(equivalent),
    1.5e-3,
  ),
  check(
    'draught of a flue of 100 ft, air at 60 °F, gas at 500 °F, in of water',
    'Steam, Its Generation and Use (Babcock & Wilcox), formula 24',
    0.67,
    draughtPa(100 * foot, {
      ambientPa: 14.7 * psi,
      airTemperatureK: kelvinOfF(60),
      gasTemperatureK: kelvinOfF(500),
    }) / inchOfWaterPa,
    9.9e-3,
  ),
  check(
    'air pressure at 1000 m, Pa',
    'US Standard Atmosphere 1976',
    89_874.6,
    standardAir(1000).pressurePa,
    1e-5,
  ),
  check(
    'air pressure at 5000 ft, psi',
    'ASHRAE Fundamentals',
    12.23,
    standardAir(5000 * 0.3048).pressurePa / psi,
    3e-4,
  ),
  check(
    'water boils in the open at 5000 ft, °F',
    'general reference',
    203,
    openBoilingPointK(5000 * 0.3048) * 1.8 - 459.67,
    3e-3,
  ),
  check('387 kPa in 425 mL, let out into 1.75 L, kPa', 'CK-12 Chemistry, Boyle’s law', 94, boyle / 1e3, 1e-3),
  check(
    'lying tank, 108 by 156 in, flat ends, 36 in deep, US gal',
    'D. Jones, Calculating Tank Volume (2003)',
    1805.188288,
    jones.volumeAtDepthM3(36 * inch) / usGallon,
    1e-8,
  ),
  check(
    'blending index of a flash point of 40 °C',
    'published table of blending indices',
    636,
    blendingIndex(313.15),
    2e-3,
  ),
  check(
    'slope of a line through nought',
    'NIST StRD NoInt1',
    2.07438016528926,
    noInt1.coefficients[0] ?? Number.NaN,
    1e-9,
  ),
  check(
    'its standard error',
    'NIST StRD NoInt1',
    0.0165289256198347,
    noInt1.standardErrors[0] ?? Number.NaN,
    1e-9,
  ),
  check(
    'Student’s t, 0.95, 5 degrees of freedom',
    'table of the distribution (from memory)',
    2.015,
    studentQuantile(0.95, 5),
    3e-4,
  ),
  check(
    'rolling coefficient, 4 bar, 40 km/h',
    'engineering reference site',
    0.00788,
    tyreRolling(4e5, 40 / 3.6),
    1e-3,
  ),
  check(
    'height of 20 minutes of arc at 700 mm, mm',
    'ISO 9241-3',
    4.072,
    characterHeightM(0.7, 20) * 1e3,
    3e-4,
  ),
];

function check(what: string, source: string, expected: number, got: number, within: number): PublishedCheck {
  return { what, source, expected, got, within };
}
