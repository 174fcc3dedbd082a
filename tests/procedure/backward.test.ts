/** Going backward, and what is done when a car rolls back: of what the car has, and from a stand. */
import { describe, expect, test } from 'vitest';
import { duties } from '../../src/procedure/duties';
import { demoCar, demoCars } from '../cars/demo';
import { smallCar, smallCars } from '../helpers/smallCars';
import { procedure, proceduresOf, theLibrary } from './shared';

const library = theLibrary();
const cars = [
  ...demoCars.map((name) => [name, demoCar(name)] as const),
  ...Object.entries(smallCars).map(([name, patches]) => [name, smallCar(...patches)] as const),
];

describe.each(cars)('%s', (_, car) => {
  const procedures = proceduresOf(car, library);
  const partOf = (duty: string) => duties[duty]?.parts(car) ?? [];

  test('is told how to go backward if it has a reverse, and else not a word of it', () => {
    const found = procedures.find(({ id }) => id === 'backward');
    expect(found !== undefined).toBe(partOf('reverse').length > 0);
    if (found !== undefined) return;
    const said = procedures.flatMap(({ steps }) => steps.map(({ say, result }) => `${say} ${result}`));
    expect(said.filter((text) => /\bgo(?:ing)? backward\b|\bset back\b|creep backward/i.test(text))).toEqual(
      [],
    );
  });

  test('goes backward from a stand, is set forward at a stand, and looks behind before steam', () => {
    const found = procedures.find(({ id }) => id === 'backward');
    if (found === undefined) return;
    const at = (id: string) => found.steps.findIndex((step) => step.id.split('/')[0] === id);
    const order = ['back-stand', 'back-set', 'back-look', 'back-go', 'back-stop', 'back-forward'].map(at);
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(Math.min(...order)).toBeGreaterThanOrEqual(0);
    expect(found.steps[at('back-set')]?.part).toBe(partOf('reverse')[0]);
    // drips are open before steam, whatever drips it has
    const drips = found.steps.filter(({ action }) => action === 'open').map(({ part }) => part);
    expect([...drips].sort()).toEqual([...partOf('drips')].sort());
    expect(found.steps.findLastIndex(({ action }) => action === 'open')).toBeLessThan(at('back-go'));
    expect(found.steps.every(({ onCard }) => onCard)).toBe(true);
  });

  test('is told on the road what to do at once when it rolls back, with the brake it has', () => {
    const step = procedure(procedures, 'running').steps.find(({ id }) => id === 'road-rolls-back');
    const brakes = [...partOf('brake'), ...partOf('parking-brake')];
    if (brakes.length === 0) return;
    const names = brakes.map((id) => car.parts.get(id)?.name ?? id);
    expect(names.some((name) => step?.say.includes(name))).toBe(true);
    // steam only once the reverse is seen to stand forward, which the trouble says
    const throttle = car.parts.get(car.spec.engine.throttle)?.name ?? '';
    expect(step?.say).not.toContain(throttle);
    expect(step?.onCard).toBe(true);
    expect(step?.result).toContain(procedure(procedures, 'rolls-back').title);
  });

  test('is chocked with the driver in the seat before its steam is shut off', () => {
    const { steps } = procedure(procedures, 'rolls-back');
    const chocked = steps.findIndex(({ sets }) => sets.chocked === true);
    const shut = steps.findIndex(({ id }) => id === 'rolls-shut');
    expect(shut).toBeGreaterThan(chocked);
    expect(steps.slice(0, shut).some(({ sets }) => sets.seat === 'empty')).toBe(false);
    const reverse = partOf('reverse');
    expect(steps.filter(({ id }) => id === 'rolls-forward').map(({ part }) => part)).toEqual(reverse);
  });
});
