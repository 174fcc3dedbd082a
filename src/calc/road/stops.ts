/**
 * What a stop on the way costs: the work of bringing the car back to speed, all of it braked away before.
 *
 * Formula: half the mass times the speed squared; in level road, that work over the force that level road takes.
 */
import { type RoadCar, roadLoad } from './road-load';

/** Where nothing says how often the car stops: once in 5 miles; common practice, no source. */
export const usualStopsPerM = 1 / 8046.72;

/** Work of one stop from and back to `speedMPerS`, J. */
export function stopWorkJ({ massKg }: RoadCar, speedMPerS: number): number {
  return (massKg * speedMPerS * speedMPerS) / 2;
}

/** Level road that takes as much work as one stop, m. */
export function stopAsLevelRoadM(car: RoadCar, speedMPerS: number): number {
  return stopWorkJ(car, speedMPerS) / roadLoad(car, speedMPerS).forceN;
}
