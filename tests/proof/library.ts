/** The demo cars with their procedures expanded, for the tests of the proof. */
import { readdirSync } from 'node:fs';
import type { Car } from '../../src/car/car';
import { expandProcedures } from '../../src/procedure/expand';
import { readLibrary } from '../../src/procedure/library';
import { stepKeys } from '../../src/procedure/libraryForm';
import type { Procedures } from '../../src/procedure/procedure';
import { type Day, readDay } from '../../src/proof/day';
import { demoCar, fixtureCar, textOf } from '../cars/demo';
import { english } from '../helpers/english';

/** The step library and the order of the day, as they come with the program. */
function shared() {
  const names = [
    'cautions.yaml',
    ...readdirSync(new URL('../../shared/procedures', import.meta.url)).map((name) => `procedures/${name}`),
  ];
  const read = readLibrary(new Map(names.map((name) => [name, textOf(`shared/${name}`)])), english);
  if (!read.ok) throw new Error(JSON.stringify(read.problems, undefined, 2));
  return read.value;
}

export const library = shared();

/** The order of the day that comes with the program. */
export function theDay(): Day {
  const read = readDay(
    textOf('shared/day.yaml'),
    'shared/day.yaml',
    new Map(library.procedures.map(({ form }) => [form.id, stepKeys(form.steps)])),
    [...library.cautions.keys()],
  );
  if (!read.ok) throw new Error(JSON.stringify(read.problems, undefined, 2));
  return read.value;
}

/** The library’s procedures for a car. */
export function proceduresFor(car: Car): Procedures {
  const expanded = expandProcedures(car, library, { system: car.spec.print.units.first });
  if (!expanded.ok) throw new Error(JSON.stringify(expanded.problems, undefined, 2));
  return expanded.value;
}

/** A car among the fixtures and its procedures. */
export function fixture(name: string): { readonly car: Car; readonly procedures: Procedures } {
  const car = fixtureCar(name);
  return { car, procedures: proceduresFor(car) };
}

/** A demo car and its procedures. */
export function demo(name: string): { readonly car: Car; readonly procedures: Procedures } {
  const car = demoCar(name);
  return { car, procedures: proceduresFor(car) };
}
