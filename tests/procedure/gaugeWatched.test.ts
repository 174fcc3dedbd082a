/** While steam is raised the checks take the driver from the gauge: somebody is named to watch it, or the burner is shut. */
import { expect, test } from 'vitest';
import { duties } from '../../src/procedure/duties';
import { demoCar, demoCars, fixtureCar } from '../cars/demo';
import { smallCar, smallCars } from '../helpers/smallCars';
import { procedure, proceduresOf, theLibrary } from './shared';

const library = theLibrary();
const cars = [
  ...demoCars.map((name) => [name, demoCar(name)] as const),
  ...['bramble', 'dragonfly', 'lapwing'].map((name) => [name, fixtureCar(name)] as const),
  ...Object.entries(smallCars).map(([name, patches]) => [name, smallCar(...patches)] as const),
];

test.each(cars)('the gauge of %s is watched by name before the first check away from it', (_, car) => {
  const { steps } = procedure(proceduresOf(car, library), 'raising-steam');
  const at = (id: string) => steps.findIndex((step) => step.id.split('/')[0] === id);
  const watch = steps[at('raise-watch')];
  expect(watch?.who).toBe('helper');
  expect(watch?.part).toBe(duties['steam-gauge']?.parts(car)[0]);
  expect(watch?.result).toContain('burner shut');
  expect(at('raise-watch')).toBeLessThan(at('leaks-low'));
  const hold = steps[at('raise-hold')];
  expect(hold?.say).toMatch(/^If alone, or if the pressure outruns the checks, shut /);
  expect(at('raise-hold')).toBeLessThan(at('leaks-low'));
});
