import { createRequire } from 'node:module';
import { IAPWS97_EoS } from '@neutrium/thermo.eos.iapws97';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { liquidWater } from '../../../src/calc/steam/liquid';
import {
  saturationAtPressure,
  saturationAtTemperature,
  saturationPressurePa,
  saturationTemperatureK,
} from '../../../src/calc/steam/saturation';
import type { WaterState } from '../../../src/calc/steam/state';
import { steam } from '../../../src/calc/steam/vapour';
import { waterAt, waterDensity } from '../../../src/calc/steam/water-at';

const psi = 6894.757293168361;
const btuPerLb = 2326;
const cubicFootPerLb = 0.3048 ** 3 / 0.45359237;
const fahrenheit = (kelvin: number): number => kelvin * 1.8 - 459.67;
const kelvin = (degF: number): number => (degF + 459.67) / 1.8;
const relative = (found: number, expected: number): number => Math.abs(found / expected - 1);

/** Rows of IAPWS R7-97(2012): p MPa, T K, then v m³/kg, h, u kJ/kg, s, cp kJ/(kg K), w m/s. */
type Row = readonly [number, number, number, number, number, number, number, number];

function expectRow(state: WaterState, [, , v, h, u, s, cp, w]: Row): void {
  const found = [
    state.specificVolume,
    state.enthalpy / 1e3,
    state.internalEnergy / 1e3,
    state.entropy / 1e3,
    state.specificHeat / 1e3,
    state.speedOfSound,
  ];
  for (const [index, expected] of [v, h, u, s, cp, w].entries()) {
    expect(relative(found[index] ?? Number.NaN, expected), `property ${index}`).toBeLessThan(1e-8);
  }
}

describe('IAPWS R7-97(2012) verification tables', () => {
  it.each<Row>([
    [3, 300, 0.100215168e-2, 0.115331273e3, 0.112324818e3, 0.392294792, 0.417301218e1, 0.150773921e4],
    [80, 300, 0.971180894e-3, 0.184142828e3, 0.106448356e3, 0.368563852, 0.401008987e1, 0.163469054e4],
    [3, 500, 0.1202418e-2, 0.975542239e3, 0.971934985e3, 0.258041912e1, 0.465580682e1, 0.124071337e4],
  ])('Table 5, region 1: %d MPa, %d K', (...row) => expectRow(liquidWater(row[0] * 1e6, row[1]), row));

  it.each<Row>([
    [0.0035, 300, 0.394913866e2, 0.254991145e4, 0.24116916e4, 0.852238967e1, 0.191300162e1, 0.427920172e3],
    [0.0035, 700, 0.923015898e2, 0.333568375e4, 0.301262819e4, 0.101749996e2, 0.208141274e1, 0.644289068e3],
    [30, 700, 0.542946619e-2, 0.263149474e4, 0.246861076e4, 0.517540298e1, 0.103505092e2, 0.480386523e3],
  ])('Table 15, region 2: %d MPa, %d K', (...row) => expectRow(steam(row[0] * 1e6, row[1]), row));

  it.each([
    [300, 0.353658941e-2],
    [500, 0.263889776e1],
    [600, 0.123443146e2],
  ])('Table 35, region 4: %d K boils at %d MPa', (temperature, megapascal) => {
    expect(relative(saturationPressurePa(temperature) / 1e6, megapascal)).toBeLessThan(1e-8);
  });

  it.each([
    [0.1, 0.372755919e3],
    [1, 0.453035632e3],
    [10, 0.584149488e3],
  ])('Table 36, region 4: %d MPa boils at %d K', (megapascal, temperature) => {
    expect(relative(saturationTemperatureK(megapascal * 1e6), temperature)).toBeLessThan(1e-8);
  });
});

describe('steam tables', () => {
  it.each([
    [14.696, 212.0, 180.07, 970.3, 1150.4, 26.8],
    [20, 227.96, 196.16, 960.1, 1156.3, 20.09],
    [30, 250.33, 218.82, 945.3, 1164.1, 13.75],
  ])('Keenan & Keyes, Thermodynamic Properties of Steam: %d psia', (psia, degF, hf, hfg, hg, vg) => {
    const at = saturationAtPressure(psia * psi);
    expect(Math.abs(fahrenheit(at.temperatureK) - degF)).toBeLessThan(0.1);
    expect(relative(at.liquid.enthalpy / btuPerLb, hf)).toBeLessThan(1e-3);
    expect(relative(at.latentHeat / btuPerLb, hfg)).toBeLessThan(1e-3);
    expect(relative(at.steam.enthalpy / btuPerLb, hg)).toBeLessThan(1e-3);
    expect(relative(at.steam.specificVolume / cubicFootPerLb, vg)).toBeLessThan(1e-3);
  });

  it.each([
    [100, 327.81, 888.8, 1187.2, 4.432],
    [200, 381.79, 843.0, 1198.4, 2.288],
    [300, 417.33, 809.0, 1202.8, 1.5433],
    [400, 444.59, 780.5, 1204.5, 1.1613],
    [500, 467.01, 755.0, 1204.4, 0.9278],
    [600, 486.21, 731.6, 1203.2, 0.7698],
  ])('Keenan & Keyes (rows from memory): %d psia', (psia, degF, hfg, hg, vg) => {
    const at = saturationAtPressure(psia * psi);
    expect(Math.abs(fahrenheit(at.temperatureK) - degF)).toBeLessThan(0.1);
    expect(relative(at.latentHeat / btuPerLb, hfg)).toBeLessThan(1e-3);
    expect(relative(at.steam.enthalpy / btuPerLb, hg)).toBeLessThan(1e-3);
    expect(relative(at.steam.specificVolume / cubicFootPerLb, vg)).toBeLessThan(1e-3);
  });

  it.each([
    [10, 1143.1, 38.42],
    [100, 1187.5, 4.433],
    [1000, 1192.6, 0.44606],
  ])('steam function samples, AVEVA PI documentation: %d psia', (psia, hg, vg) => {
    const at = saturationAtPressure(psia * psi);
    expect(Math.abs(at.steam.enthalpy / btuPerLb - hg)).toBeLessThan(0.1);
    expect(relative(at.steam.specificVolume / cubicFootPerLb, vg)).toBeLessThan(2e-4);
  });

  it.each([
    [100, 0.9504],
    [400, 247.22],
    [700, 3092.89],
  ])('steam function samples, AVEVA PI documentation: %d °F boils at %d psia', (degF, psia) => {
    expect(relative(saturationPressurePa(kelvin(degF)) / psi, psia)).toBeLessThan(1e-4);
  });

  it('AVEVA PI documentation: dry steam at 1000 kPa holds 2777.1 kJ/kg', () => {
    expect(Math.abs(saturationAtPressure(1e6).steam.enthalpy / 1e3 - 2777.1)).toBeLessThan(0.1);
  });

  it.each([
    [212, 14.709, 26.779, 1151.1, 180.33],
    [300, 67.029, 6.4658, 1180.8, 269.91],
    [400, 247.26, 1.8638, 1202.2, 375.3],
    [450, 422.46, 1.0999, 1205.9, 430.49],
    [480, 565.95, 0.81791, 1205.1, 464.78],
    [490, 621.23, 0.74293, 1204.3, 476.46],
  ])(
    'NIST Chemistry WebBook SRD 69, in the Hydraulic Institute Data Book: %d °F (its Btu is thermochemical)',
    (degF, psia, vg, hg, hf) => {
      const at = saturationAtTemperature(kelvin(degF));
      const thermochemicalBtuPerLb = 1054.35 / 0.45359237;
      expect(relative(at.pressurePa / psi, psia)).toBeLessThan(2e-4);
      expect(relative(at.steam.specificVolume / cubicFootPerLb, vg)).toBeLessThan(5e-4);
      expect(relative(at.steam.enthalpy / thermochemicalBtuPerLb, hg)).toBeLessThan(2e-4);
      expect(relative(at.liquid.enthalpy / thermochemicalBtuPerLb, hf)).toBeLessThan(2e-4);
    },
  );

  it.each([
    [0, 212, 0.5, 970, 1150, 26.8],
    [50, 298, 0.5, 912, 1179, 6.68],
    [100, 338, 1, 880, 1189, 3.89],
  ])('engineering site table in gauge pressure: %d psi gauge', (gauge, degF, unit, hfg, hg, vg) => {
    const at = saturationAtPressure((gauge + 14.696) * psi);
    expect(Math.abs(fahrenheit(at.temperatureK) - degF)).toBeLessThan(unit);
    expect(Math.abs(at.latentHeat / btuPerLb - hfg)).toBeLessThan(1);
    expect(Math.abs(at.steam.enthalpy / btuPerLb - hg)).toBeLessThan(1.05);
    expect(relative(at.steam.specificVolume / cubicFootPerLb, vg)).toBeLessThan(2e-3);
  });

  it('Keenan & Keyes: 250 psi gauge boils at 406 °F', () => {
    expect(Math.abs(fahrenheit(saturationTemperatureK((250 + 14.696) * psi)) - 406)).toBeLessThan(0.5);
  });

  it.each([
    [100, 298.4],
    [200, 355.36],
    [300, 393.84],
    [400, 424.0],
    [500, 449.4],
    [600, 471.6],
  ])('Keenan & Keyes (rows from memory): boiling water at %d psia holds %d Btu/lb', (psia, hf) => {
    expect(relative(saturationAtPressure(psia * psi).liquid.enthalpy / btuPerLb, hf)).toBeLessThan(1e-3);
  });

  it.each([
    [50, 18.11],
    [60, 28.12],
    [70, 38.12],
    [212, 180.2],
  ])('water under one atmosphere at %d °F holds %d Btu/lb (IAPWS-IF97 by another program)', (degF, btu) => {
    const below = degF === 212 ? 211.9 : degF;
    expect(Math.abs(waterAt(101325, kelvin(below)).enthalpy / btuPerLb - btu)).toBeLessThan(0.15);
  });

  it('taking gauge for absolute would show: 10 °F at 100 psi, 2.6 °F at 600 psi', () => {
    const slip = (pressure: number): number =>
      fahrenheit(saturationTemperatureK((pressure + 14.696) * psi)) -
      fahrenheit(saturationTemperatureK(pressure * psi));
    expect(slip(100)).toBeCloseTo(10.06, 1);
    expect(slip(600)).toBeCloseTo(2.61, 1);
  });

  it.each([
    [50, 62.406],
    [60, 62.364],
    [70, 62.299],
    [212, 59.828],
  ])('NIST Chemistry WebBook SRD 69: water at %d °F weighs %d lb/ft³', (degF, density) => {
    const poundPerCubicFoot = 0.45359237 / 0.3048 ** 3;
    expect(relative(waterDensity(kelvin(degF)) / poundPerCubicFoot, density)).toBeLessThan(2e-4);
  });
});

/** The parts of the other program used below; pressures there are in MPa. */
interface OtherProgram {
  r1(p: number, t: number): { v: number; h: number; s: number; cp: number };
  r2(p: number, t: number): { v: number; h: number; s: number; cp: number };
}

describe('against an independent implementation of IAPWS-IF97', () => {
  const other = createRequire(import.meta.url)('@neutrium/thermo.eos.iapws97/dist/PT.js') as OtherProgram;
  const tables = new IAPWS97_EoS();

  it('saturated water and steam from 10 °C to 320 °C', () => {
    for (let celsius = 10; celsius <= 320; celsius += 5) {
      const at = saturationAtTemperature(celsius + 273.15);
      const megapascal = at.pressurePa / 1e6;
      const [f, g] = [other.r1(megapascal, at.temperatureK), other.r2(megapascal, at.temperatureK)];
      expect(relative(at.liquid.specificVolume, f.v)).toBeLessThan(1e-9);
      expect(relative(at.liquid.enthalpy / 1e3, f.h)).toBeLessThan(1e-9);
      expect(relative(at.steam.specificVolume, g.v)).toBeLessThan(1e-9);
      expect(relative(at.steam.enthalpy / 1e3, g.h)).toBeLessThan(1e-9);
    }
  });

  it('water and steam up to 10 MPa and 450 °C', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 10, noNaN: true }),
        fc.double({ min: 283.15, max: 723.15, noNaN: true }),
        (megapascal, t) => {
          fc.pre(
            t > 623.16 || Math.abs(saturationPressurePa(Math.min(t, 640)) / 1e6 / megapascal - 1) > 1e-3,
          );
          const [ours, theirs] = [waterAt(megapascal * 1e6, t), tables.solve({ p: megapascal * 1e6, t })];
          const pairs: [number, number][] = [
            [ours.specificVolume, Number(theirs.v)],
            [ours.enthalpy / 1e3, Number(theirs.h)],
            [ours.entropy / 1e3, Number(theirs.s)],
            [ours.specificHeat / 1e3, Number(theirs.cp)],
          ];
          for (const [a, b] of pairs) expect(relative(a, b)).toBeLessThan(1e-8);
        },
      ),
      { numRuns: 300 },
    );
  });
});

describe('against the same, over the whole span that cars use, its edges included', () => {
  const tables = new IAPWS97_EoS();
  const alike = (pressurePa: number, t: number): void => {
    const [ours, theirs] = [waterAt(pressurePa, t), tables.solve({ p: pressurePa, t })];
    const at = `${pressurePa} Pa, ${t} K`;
    expect(relative(ours.specificVolume, Number(theirs.v)), at).toBeLessThan(1e-8);
    expect(relative(ours.enthalpy / 1e3, Number(theirs.h)), at).toBeLessThan(1e-8);
    expect(relative(ours.entropy / 1e3, Number(theirs.s)), at).toBeLessThan(1e-8);
  };

  it('a grid: the air of a mountain pass to 10 MPa, water from 1 °C, steam to 600 °C', () => {
    for (const kilopascal of [70, 101.325, 200, 500, 1000, 2000, 3500, 5000, 7000, 10_000])
      for (let celsius = 1; celsius <= 600; celsius += 23) {
        const [p, t] = [kilopascal * 1e3, celsius + 273.15];
        const boils = saturationTemperatureK(p);
        if (Math.abs(t - boils) > 0.01) alike(p, t);
      }
  });

  it('a hundredth of a kelvin each side of boiling, from 0.7 to 100 bar', () => {
    for (let bar = 0.7; bar <= 100; bar *= 1.3) {
      const boils = saturationTemperatureK(bar * 1e5);
      for (const t of [boils - 0.01, boils + 0.01]) alike(bar * 1e5, t);
    }
  });

  it('each side of 350 °C (623.15 K), where the regions of the standard meet', () => {
    for (const megapascal of [0.1, 1, 4, 10, 15])
      for (const t of [623.14, 623.16]) alike(megapascal * 1e6, t);
  });

  it('from one side of the boiling line to the other everything jumps the right way', () => {
    for (let bar = 0.7; bar <= 100; bar *= 1.5) {
      const at = saturationAtPressure(bar * 1e5);
      const [water, vapour] = [
        waterAt(bar * 1e5, at.temperatureK - 1e-3),
        waterAt(bar * 1e5, at.temperatureK + 1e-3),
      ];
      expect(relative(water.enthalpy, at.liquid.enthalpy)).toBeLessThan(1e-4);
      expect(relative(vapour.enthalpy, at.steam.enthalpy)).toBeLessThan(1e-4);
      expect(vapour.specificVolume).toBeGreaterThan(10 * water.specificVolume);
    }
  });
});

describe('invariants', () => {
  it('boiling pressure and boiling temperature turn each other back', () => {
    fc.assert(
      fc.property(fc.double({ min: 274, max: 640, noNaN: true }), (t) => {
        expect(Math.abs(saturationTemperatureK(saturationPressurePa(t)) - t)).toBeLessThan(1e-5);
      }),
    );
  });

  it('refuses what it does not know rather than guess', () => {
    expect(() => waterAt(1e6, 200)).toThrow(RangeError);
    expect(() => waterAt(-1, 300)).toThrow(RangeError);
    expect(() => waterAt(Number.NaN, 300)).toThrow(RangeError);
    expect(() => saturationTemperatureK(23e6)).toThrow(RangeError);
    expect(() => saturationPressurePa(650)).toThrow(RangeError);
    expect(() => saturationAtPressure(20e6)).toThrow(RangeError);
  });
});
