/**
 * What holds a car back on the road.
 *
 * Formula: rolling, m g Crr; gradient, m g sin(angle); air, half ρ Cd A v² (Bosch Automotive Handbook, "Running
 * resistance", from memory).
 */
import { standardGravity } from '../../quantity/base-units';

/** A car as the road and the air feel it. */
export interface RoadCar {
  readonly massKg: number;
  /** Coefficient of rolling resistance. */
  readonly rolling: number;
  readonly dragCoefficient: number;
  readonly frontalAreaM2: number;
}

/** Forces and power at one speed. */
export interface RoadLoad {
  readonly rollingN: number;
  readonly gradientN: number;
  readonly airN: number;
  /** Their sum; below nought the car runs by itself. */
  readonly forceN: number;
  readonly powerW: number;
}

/** Road load at `speedMPerS` on a gradient (rise over run; downhill is negative). */
export function roadLoad(car: RoadCar, speedMPerS: number, gradient = 0, airDensity = 1.225): RoadLoad {
  const weightN = car.massKg * standardGravity;
  const rollingN = weightN * car.rolling;
  const gradientN = weightN * Math.sin(Math.atan(gradient));
  const airN = (airDensity / 2) * car.dragCoefficient * car.frontalAreaM2 * speedMPerS * speedMPerS;
  const forceN = rollingN + gradientN + airN;
  return { rollingN, gradientN, airN, forceN, powerW: forceN * speedMPerS };
}

/**
 * Coefficient of rolling resistance of a pneumatic tyre on a hard road, by its pressure and the speed:
 * 0.005 + (0.01 + 0.0095 (v/100)²) / p with v in km/h and p in bar gauge (engineering reference site).
 */
export function tyreRolling(gaugePa: number, speedMPerS: number): number {
  const hundredKmPerH = (speedMPerS * 3.6) / 100;
  return 0.005 + (0.01 + 0.0095 * hundredKmPerH * hundredKmPerH) / (gaugePa / 1e5);
}

/** Coefficients of rolling resistance of pneumatic tyres by surface. */
export const surfaceRolling = {
  /** Marks' Standard Handbook (Moyer). */
  'hard road': 0.008,
  /** Marks' Standard Handbook (Moyer). */
  'dry packed gravel': 0.012,
  /** Marks' Standard Handbook (Moyer). */
  'wet loose gravel': 0.06,
  /** Carvill, Mechanical Engineer's Data Handbook. */
  'worn asphalt': 0.02,
  /** Carvill, Mechanical Engineer's Data Handbook. */
  'loose worn gravel': 0.04,
} as const;
