/** The demo cars, loaded with the liquids that come with the program. */
import { readFileSync } from 'node:fs';
import { type Liquid, liquidOf, readLiquids } from '../../src/calc/fuel/liquids';
import { buildCar } from '../../src/car/build';
import type { Car } from '../../src/car/car';
import { loadSpec } from '../../src/spec/load';

export const demoCars = ['marigold', 'thimble', 'heron'] as const;

export function textOf(path: string): string {
  return readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');
}

/** The liquids that come with the program. */
export function liquids(): ReadonlyMap<string, Liquid> {
  const outcome = readLiquids(textOf('shared/liquids.yaml'), 'shared/liquids.yaml');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

function load(file: string) {
  return loadSpec(textOf(file), file, [...liquids().keys()]);
}

export function loadDemo(name: string) {
  return load(`cars/${name}.yaml`);
}

export function demoCar(name: string): Car {
  return carIn(`cars/${name}.yaml`);
}

/** A car the program was not written for, by the name of its file among the fixtures. */
export function fixtureCar(name: string): Car {
  return carIn(`tests/fixtures/cars/${name}.yaml`);
}

function carIn(file: string): Car {
  const outcome = load(file);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return buildCar(outcome.value);
}

/** Heat in a volume of a fuel of the car, water of burning gone as vapour, J/m³. */
export function heatPerM3(car: Car, fuel: string): number {
  const own = Object.entries(car.spec.liquids ?? {}).map(
    ([key, each]) => [key, liquidOf(key, each)] as const,
  );
  const all = new Map([...liquids(), ...own]);
  const parts = car.spec.fuels[fuel]?.parts ?? [];
  return parts.reduce((sum, { liquid, share }) => {
    const known = all.get(liquid);
    return (
      sum + share.si * (known === undefined ? Number.NaN : known.densityKgPerM3 * known.lowerHeatingValue)
    );
  }, 0);
}
