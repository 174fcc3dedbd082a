/** Where the jet of a tap goes stands in the steps that open it under steam, so that nobody stands there. */
import { expect, test } from 'vitest';
import { demoCar, demoCars } from '../cars/demo';
import { proceduresOf, theLibrary } from './shared';

const library = theLibrary();

test.each(demoCars)('%s', (name) => {
  const car = demoCar(name);
  const steps = proceduresOf(car, library).flatMap((procedure) => procedure.steps);
  const opened = (id: string) =>
    steps.filter(
      ({ part, id: step }) =>
        part === id &&
        /^(crack-blow-down|stop-drips|back-drips|full-drips|open-air-way|steaming-level-open)/.test(step),
    );
  const jets = Object.entries(car.spec.valves).flatMap(([id, { jet }]) =>
    jet === undefined ? [] : opened(id).map(({ result }) => ({ result, jet })),
  );
  expect(jets.length).toBeGreaterThan(3);
  for (const { result, jet } of jets) expect(result).toContain(jet);
});
