/**
 * The proof of a car, slips included: the demo cars as they are, a car of 30 valves and 150 steps, and how it grows in
 * steps and in valves.
 */
import { readdirSync } from 'node:fs';
import { bench, describe } from 'vitest';
import { connect } from '../src/car/build';
import type { Car, Part } from '../src/car/car';
import type { Procedures, Step } from '../src/procedure/procedure';
import { prove } from '../src/proof/prove';
import { demo, theDay } from '../tests/proof/library';

const day = theDay();
const { car, procedures } = demo('marigold');

/** The same day with so many steps: looks that prove nothing are left out, or looked at again. */
function withSteps(all: Procedures, count: number): Procedures {
  const daily = (each: Procedures[number]) => each.phase !== 'emergency';
  const idle = (step: Step) =>
    step.proves.length === 0 &&
    Object.keys(step.sets).length === 0 &&
    ['look', 'read', 'check', 'listen', 'write', 'call', 'oil', 'dip'].includes(step.action);
  const total = all.filter(daily).reduce((sum, each) => sum + each.steps.length, 0);
  const emptied = all.map((each) =>
    daily(each) ? { ...each, steps: each.steps.filter((step) => !idle(step)) } : each,
  );
  const kept = emptied.filter(daily).reduce((sum, each) => sum + each.steps.length, 0);
  if (count <= kept) return firstProcedures(emptied, count);
  const looks = Math.max(0, count - total);
  const [first, ...rest] = count < total ? emptied : all;
  if (first === undefined) return all;
  const look = first.steps[0];
  const more = Array.from({ length: count < total ? count - kept : looks }, (_, index): Step[] =>
    look === undefined ? [] : [{ ...look, id: `look-${index}`, proves: [] }],
  ).flat();
  return [{ ...first, steps: [...first.steps, ...more] }, ...rest];
}

/** As much of a day as fits in so many steps, from the morning on. */
function firstProcedures(all: Procedures, count: number): Procedures {
  let left = count;
  return all.filter((each) => {
    if (each.phase === 'emergency') return true;
    left -= each.steps.length;
    return left >= 0;
  });
}

/** The car with more valves, each a drain of its own on the water tank. */
function withValves(count: number): Car {
  const like = car.spec.valves['water-tank-drain-tap'];
  const pipe = car.plant.pipes.find((each) => each.to === 'water-tank-drain-tap');
  if (like === undefined || pipe === undefined) throw new Error('Marigold has changed');
  const ids = Array.from(
    { length: count - Object.keys(car.spec.valves).length },
    (_, index) => `extra-tap-${index}`,
  );
  const valves = {
    ...car.spec.valves,
    ...Object.fromEntries(ids.map((id) => [id, { ...like, name: `${id} tap`, tag: id }])),
  };
  const pipes = [
    ...car.plant.pipes,
    ...ids.flatMap((id) => [
      { ...pipe, to: id },
      { ...pipe, from: id, to: 'ground' },
    ]),
  ].map((each, index) => ({ ...each, index }));
  const taps = ids.map((id): Part => ({ id, kind: 'valve', name: `${id} tap`, place: like.place }));
  const parts = new Map([...car.parts.values(), ...taps].map((part) => [part.id, part]));
  return { ...car, spec: { ...car.spec, valves }, parts, plant: connect(pipes) };
}

describe('a car as it is', () => {
  for (const name of readdirSync(new URL('../cars', import.meta.url))
    .filter((each) => each.endsWith('.yaml'))
    .map((each) => each.replace('.yaml', ''))) {
    const one = demo(name);
    const steps = one.procedures.reduce((sum, each) => sum + each.steps.length, 0);
    bench(`${name}: ${Object.keys(one.car.spec.valves).length} valves, ${steps} steps`, () => {
      prove(one.car, one.procedures, { day });
    });
  }
});

describe('growth in steps of the day, 30 valves', () => {
  const wide = withValves(30);
  for (const count of [150, 300, 600, 1200]) {
    const some = withSteps(procedures, count);
    bench(`${count} steps`, () => {
      prove(wide, some, { day });
    });
  }
});

describe('growth in valves, 300 steps of the day', () => {
  const some = withSteps(procedures, 300);
  for (const count of [30, 60, 120]) {
    const wide = withValves(count);
    bench(`${count} valves`, () => {
      prove(wide, some, { day });
    });
  }
});
