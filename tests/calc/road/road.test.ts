import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { engineEfficiency, estimatedUse } from '../../../src/calc/road/consumption';
import { roadLoad, surfaceRolling, tyreRolling } from '../../../src/calc/road/road-load';
import {
  engineTurnsPerM,
  estimatedRollingCircumferenceM,
  roadSpeedMPerS,
  speedsAt,
} from '../../../src/calc/road/speeds';
import { stopAsLevelRoadM, stopWorkJ } from '../../../src/calc/road/stops';
import {
  steepestLaidOut,
  terrainOf,
  terrainProfiles,
  terrainRatios,
  workPerM,
} from '../../../src/calc/road/terrain';
import { steamMaking } from '../../../src/calc/steam/evaporation';

const mph = 1609.344 / 3600;
const horsepower = 745.6998715822702;
const psi = 6894.757293168361;
const car = { massKg: 1000, rolling: 0.015, dragCoefficient: 0.8, frontalAreaM2: 2.2 };
const relative = (found: number, expected: number): number => Math.abs(found / expected - 1);

describe('road load, 1000 kg, Crr 0.015, Cd 0.8, 2.2 m², 1.225 kg/m³ (worked by hand from the formula)', () => {
  it.each([
    [15, 48.47, 1.759],
    [25, 134.65, 4.223],
    [35, 263.9, 8.624],
  ])('%d mph: 147.10 N rolling, %d N of air, %d hp', (speed, air, power) => {
    const load = roadLoad(car, speed * mph);
    expect(relative(load.rollingN, 147.1)).toBeLessThan(1e-3);
    expect(relative(load.airN, air)).toBeLessThan(1e-3);
    expect(relative(load.powerW / horsepower, power)).toBeLessThan(1e-3);
  });

  it('a gradient of 5 in 100 adds 489.72 N, and takes as much away downhill', () => {
    expect(relative(roadLoad(car, 10, 0.05).gradientN, 489.72)).toBeLessThan(1e-5);
    expect(roadLoad(car, 10, -0.05).forceN).toBeLessThan(0);
  });
});

describe('rolling resistance', () => {
  it.each([
    [2.5, 90, 0.01208],
    [4, 40, 0.00788],
  ])('engineering reference site formula: %d bar at %d km/h gives %d', (bar, kmh, expected) => {
    expect(tyreRolling(bar * 1e5, kmh / 3.6)).toBeCloseTo(expected, 5);
  });

  it('Marks’ Standard Handbook: hard road 0.008, dry packed gravel 0.012, wet loose gravel 0.06', () => {
    expect(surfaceRolling).toMatchObject({
      'hard road': 0.008,
      'dry packed gravel': 0.012,
      'wet loose gravel': 0.06,
    });
  });
});

describe('stops', () => {
  it('1000 kg to 10 m/s takes 50 kJ; over 147.10 + 134.78 N of level road that is 177 m (by hand)', () => {
    expect(stopWorkJ(car, 10)).toBe(50_000);
    const forceN = 147.1 + 0.5 * 1.225 * 0.8 * 2.2 * 100;
    expect(stopAsLevelRoadM(car, 10)).toBeCloseTo(50_000 / forceN, 1);
  });

  it('a faster car pays more for a stop, a heavier one no less', () => {
    expect(stopWorkJ(car, 12)).toBeGreaterThan(stopWorkJ(car, 10));
    expect(stopAsLevelRoadM({ ...car, massKg: 1500 }, 10)).toBeGreaterThan(stopAsLevelRoadM(car, 10));
  });
});

describe('speeds', () => {
  const gearing = { rollingCircumferenceM: 2.8, engineTurnsPerWheelTurn: 1.5 };

  it('at 28 m/s a wheel of 2.8 m turns 10 times a second, the engine 15, a 0.1 m stroke runs 3 m/s', () => {
    expect(speedsAt(gearing, 0.1, 28)).toEqual({
      wheelTurnsPerS: expect.closeTo(10, 12),
      engineTurnsPerS: expect.closeTo(15, 12),
      pistonMPerS: expect.closeTo(3, 12),
    });
    expect(engineTurnsPerM(gearing)).toBeCloseTo(0.535714, 6);
    expect(roadSpeedMPerS(gearing, 15)).toBeCloseTo(28, 12);
  });

  it('a loaded tyre rolls 3.05 diameters (ETRTO, from memory), less than a free one', () => {
    expect(estimatedRollingCircumferenceM(1)).toBe(3.05);
  });
});

describe('terrain', () => {
  it('never asks less where it is harder, whatever the car', () => {
    const cars = fc.record({
      massKg: fc.double({ min: 300, max: 4000, noNaN: true }),
      rolling: fc.double({ min: 0.005, max: 0.1, noNaN: true }),
      dragCoefficient: fc.double({ min: 0.4, max: 1.2, noNaN: true }),
      frontalAreaM2: fc.double({ min: 1, max: 4, noNaN: true }),
    });
    fc.assert(
      fc.property(cars, fc.double({ min: 1, max: 25, noNaN: true }), (one, speed) => {
        const ratios = terrainRatios(one, speed);
        expect(ratios.level).toBe(1);
        expect(ratios.rolling).toBeGreaterThanOrEqual(1);
        expect(ratios.hilly).toBeGreaterThanOrEqual(ratios.rolling);
      }),
    );
  });

  it('braking wastes what weight gives beyond the resistance: half up, half down at 5 in 100 (by hand)', () => {
    const light = { massKg: 1000, rolling: 0.02, dragCoefficient: 0, frontalAreaM2: 1 };
    const up = 1000 * 9.80665 * (0.02 + Math.sin(Math.atan(0.05)));
    expect(workPerM(light, 10, { gradient: 0.05, climbing: 0.5 })).toBeCloseTo(up / 2, 9);
  });

  it('TxDOT Roadway Design Manual, Table 4-11 (rural local roads, 30 mph): the hills are no steeper than roads are laid out', () => {
    expect(terrainProfiles.level.gradient).toBeLessThanOrEqual(steepestLaidOut.level);
    expect(terrainProfiles.rolling.gradient).toBeLessThanOrEqual(steepestLaidOut.rolling);
    expect(terrainProfiles.hilly.gradient).toBeLessThanOrEqual(steepestLaidOut.rolling);
    expect(terrainProfiles.hilly.gradient).toBeGreaterThan(terrainProfiles.rolling.gradient);
  });

  it('is told from the climbing', () => {
    expect([0, 0.007, 0.008, 0.021, 0.022, 0.1].map(terrainOf)).toEqual([
      'level',
      'level',
      'rolling',
      'rolling',
      'hilly',
      'hilly',
    ]);
  });
});

describe('water and fuel from work', () => {
  const poundPerHorsepowerHour = 0.45359237 / (horsepower * 3600);

  it('30 lb for each hp h at 600 psi gauge from 60 °F is an engine of 7.23 % (2544.43 / (30 × 1173.79), steam tables)', () => {
    const { heatPerKg } = steamMaking({ pressurePa: 614.696 * psi, feedTemperatureK: (60 + 459.67) / 1.8 });
    expect(engineEfficiency({ steamRateKgPerJ: 30 * poundPerHorsepowerHour, heatPerKg })).toBeCloseTo(
      0.0723,
      4,
    );
  });

  it('works the steam rate through to water and fuel', () => {
    const plant = {
      steamRateKgPerJ: 1e-5,
      heatPerKg: 2.7e6,
      boilerEfficiency: 0.75,
      fuelHeatPerM3: 36e9,
      feedDensityKgPerM3: 1000,
    };
    expect(estimatedUse(plant, 400)).toEqual({
      waterPerM: expect.closeTo(4e-6, 15),
      fuelPerM: expect.closeTo(4e-7, 15),
    });
  });
});
