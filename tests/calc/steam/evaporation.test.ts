import { describe, expect, it } from 'vitest';
import {
  absolutePressurePa,
  geopotentialAltitudeM,
  openBoilingPointK,
  standardAir,
} from '../../../src/calc/steam/atmosphere';
import {
  boilerHorsepower,
  equivalentEvaporationKgPerS,
  latentHeatAt212Fahrenheit,
  steamMaking,
} from '../../../src/calc/steam/evaporation';

const psi = 6894.757293168361;
const atmosphere = 14.696 * psi;
const poundPerHour = 0.45359237 / 3600;
const kelvin = (degF: number): number => (degF + 459.67) / 1.8;
const relative = (found: number, expected: number): number => Math.abs(found / expected - 1);

describe('Cyclopedia of Mechanical Engineering vol. 4, "Horse-power of boilers"', () => {
  it('2,100 lb/h at 85 psi gauge from feed at 50 °F: factor 1.204, 2,528.4 lb/h from and at 212 °F, 73.3 horsepower', () => {
    const making = steamMaking({ pressurePa: 85 * psi + atmosphere, feedTemperatureK: kelvin(50) });
    const equivalent = equivalentEvaporationKgPerS(2100 * poundPerHour, making);
    expect(relative(making.factorOfEvaporation, 1.204)).toBeLessThan(1.5e-3);
    expect(relative(equivalent / poundPerHour, 2528.4)).toBeLessThan(1.5e-3);
    expect(relative(boilerHorsepower(equivalent), 73.3)).toBeLessThan(1.5e-3);
  });

  it('30 lb/h at 70 psi gauge from feed at 100 °F are 34.5 lb/h from and at 212 °F', () => {
    const making = steamMaking({ pressurePa: 70 * psi + atmosphere, feedTemperatureK: kelvin(100) });
    expect(relative(equivalentEvaporationKgPerS(30, making), 34.5)).toBeLessThan(1e-3);
  });

  it('one boiler horsepower is 33,475 Btu/h or 9.8095 kW', () => {
    const watts = 34.5 * poundPerHour * latentHeatAt212Fahrenheit();
    expect(relative(watts, 9809.5)).toBeLessThan(5e-4);
    expect(relative((watts * 3600) / 1055.05585262, 33475)).toBeLessThan(5e-4);
    expect(boilerHorsepower(34.5 * poundPerHour)).toBeCloseTo(1, 12);
  });
});

describe('heat from feed to steam', () => {
  it.each([
    [600, 1173.8],
    [300, 1174.8],
  ])('from 60 °F to dry steam at %d psi gauge takes %d Btu/lb (steam tables by IAPWS-IF97)', (gauge, btu) => {
    const made = steamMaking({ pressurePa: gauge * psi + atmosphere, feedTemperatureK: kelvin(60) });
    expect(relative(made.heatPerKg / 2326, btu)).toBeLessThan(1e-3);
  });

  it('wet steam takes less, superheated steam more', () => {
    const at = { pressurePa: 4e6, feedTemperatureK: 288.15 };
    const dry = steamMaking(at).heatPerKg;
    expect(steamMaking({ ...at, dryness: 0.9 }).heatPerKg).toBeLessThan(dry);
    expect(steamMaking({ ...at, superheatK: 50 }).heatPerKg).toBeGreaterThan(dry);
  });
});

describe('US Standard Atmosphere 1976 / ISO 2533', () => {
  it.each([
    [0, 101325],
    [500, 95460.8],
    [1000, 89874.6],
    [2000, 79495.2],
  ])('%d m (geopotential): %d Pa', (altitude, pressure) => {
    expect(relative(standardAir(altitude).pressurePa, pressure)).toBeLessThan(1e-5);
  });

  it.each([
    [500, 95461.3],
    [1000, 89876.3],
    [2000, 79501.4],
  ])('%d m (geometric): %d Pa', (height, pressure) => {
    expect(relative(standardAir(geopotentialAltitudeM(height)).pressurePa, pressure)).toBeLessThan(1e-5);
  });

  it('sea level: 15 °C and 1.225 kg/m³', () => {
    expect(standardAir(0).temperatureK).toBe(288.15);
    expect(standardAir(0).densityKgPerM3).toBeCloseTo(1.225, 4);
  });

  it.each([
    [1000, 14.175],
    [3000, 13.173],
    [5000, 12.23],
    [7000, 11.341],
    [10000, 10.108],
  ])('ASHRAE Fundamentals, p = 14.696 (1 − 6.8754e-6 Z)^5.2559: %d ft, %d psi absolute', (feet, psia) => {
    expect(relative(standardAir(feet * 0.3048).pressurePa / psi, psia)).toBeLessThan(3e-4);
  });

  it.each([
    [5000, 203],
    [10000, 194],
  ])('general reference: at %d ft water boils at about %d °F', (feet, degF) => {
    expect(Math.abs(openBoilingPointK(feet * 0.3048) * 1.8 - 459.67 - degF)).toBeLessThan(0.5);
  });

  it.each([
    [0, 99.97],
    [500, 98.31],
    [1000, 96.65],
    [2000, 93.32],
    [3000, 89.97],
  ])('standard atmosphere with IAPWS-IF97: at %d m water boils at %d °C', (altitude, celsius) => {
    expect(Math.abs(openBoilingPointK(altitude) - 273.15 - celsius)).toBeLessThan(0.05);
  });

  it('refuses heights the formula does not hold for, and adds the air to a gauge pressure', () => {
    expect(() => standardAir(12000)).toThrow(RangeError);
    expect(absolutePressurePa(100 * psi, 14.7 * psi) / psi).toBeCloseTo(114.7, 10);
  });
});
