/** The demo keepers’ changes name procedures and steps that the library has for their cars. */
import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { expandProcedures } from '../../src/procedure/expand';
import { readLibrary } from '../../src/procedure/library';
import { english } from '../helpers/english';
import { demoCar, demoCars, textOf } from './demo';

function library() {
  const procedures = readdirSync(new URL('../../shared/procedures', import.meta.url));
  const names = ['cautions.yaml', ...procedures.map((name) => `procedures/${name}`)];
  const outcome = readLibrary(new Map(names.map((name) => [name, textOf(`shared/${name}`)])), english);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems, undefined, 1));
  return outcome.value;
}

describe.each(demoCars)('%s', (name) => {
  const car = demoCar(name);
  const outcome = expandProcedures(car, library(), { system: car.spec.print.units.first });

  test('has a step in the library for everything it is made of', () => {
    expect(outcome.ok ? outcome.remarks : outcome.problems).toEqual([]);
  });

  test('finds every change of its keeper in the procedures, with its reason', () => {
    const made = outcome.ok ? outcome.value.flatMap((procedure) => procedure.changes) : [];
    const wanted = car.spec.changes ?? [];
    expect(wanted.length).toBeGreaterThanOrEqual(2);
    expect(made.map((change) => change.because).sort()).toEqual(
      wanted.map((change) => change.because).sort(),
    );
  });
});
