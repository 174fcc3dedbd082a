/** The library that comes with the program, and its expansion, for tests. */
import { readdirSync, readFileSync } from 'node:fs';
import type { Car } from '../../src/car/car';
import { expandProcedures } from '../../src/procedure/expand';
import { type Library, readLibrary } from '../../src/procedure/library';
import type { Procedure, Procedures, Step } from '../../src/procedure/procedure';
import { english } from '../helpers/english';

const folder = new URL('../../shared/', import.meta.url);

/** The text of a file of the folder `shared`. */
export function sharedText(name: string): string {
  return readFileSync(new URL(name, folder), 'utf8');
}

/** The library's files by name. */
export function libraryFiles(): Map<string, string> {
  const names = [
    'cautions.yaml',
    ...readdirSync(new URL('procedures', folder)).map((name) => `procedures/${name}`),
  ];
  return new Map(names.map((name) => [name, sharedText(name)]));
}

/** The library, or an error that lists what is wrong with it. */
export function theLibrary(): Library {
  const outcome = readLibrary(libraryFiles(), english);
  if (outcome.ok) return outcome.value;
  throw new Error(
    outcome.problems.map((each) => `${each.at?.file}:${each.at?.line} ${each.message}`).join('\n'),
  );
}

/** The procedures of a car, or an error that lists what is wrong. */
export function proceduresOf(car: Car, library: Library = theLibrary()): Procedures {
  const outcome = expandProcedures(car, library, { system: 'us' });
  if (outcome.ok) return outcome.value;
  throw new Error(
    outcome.problems
      .map((each) => `${each.code} ${each.at?.file}:${each.at?.line} ${each.message}`)
      .join('\n'),
  );
}

/** One procedure by its key. */
export function procedure(procedures: Procedures, id: string): Procedure {
  const found = procedures.find((each) => each.id === id);
  if (found === undefined) throw new Error(`there is no procedure ${id}`);
  return found;
}

/** The parts of the steps that a library step was expanded to, in order. */
export function partsOf(steps: readonly Step[], id: string): readonly (string | undefined)[] {
  return steps.filter((step) => step.id === id || step.id.startsWith(`${id}/`)).map((step) => step.part);
}
