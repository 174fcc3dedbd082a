/** A car with two main burners, each lit by a pilot of its own: the library serves it, and each burner waits for its own pilot. */

import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { prove } from '../../src/proof/prove';
import { type Patch, smallCar, smallSpec, twoBurnersByGravity } from '../helpers/smallCars';
import { altered, forgetting, putIn, step } from './edits';
import { proceduresFor, theDay } from './library';

const { lines } = parse(smallSpec(...twoBurnersByGravity)) as { readonly lines: readonly unknown[] };

const twoPilots: readonly Patch[] = [
  ...twoBurnersByGravity,
  {
    burners: {
      'second-pilot': {
        name: 'rear pilot',
        job: 'pilot',
        place: 'underneath',
        fuel: 'spirit',
        'full-rate': '0.05 US gal/h',
        'lit-by': 'torch',
        soak: { least: '5 min', good: '10 min' },
      },
      'second-burner': { 'lit-by': 'second-pilot' },
    },
    valves: {
      'rear-pilot-valve': {
        name: 'rear pilot valve',
        tag: 'F9',
        place: 'dash',
        kind: 'needle',
        opens: 'anticlockwise',
        parked: 'shut',
        does: 'Feeds the rear pilot.',
      },
    },
    lines: [...lines, { carries: 'pilot fuel', through: ['pilot-tank', 'rear-pilot-valve', 'second-pilot'] }],
  },
];

describe('two pilots', () => {
  const car = smallCar(...twoPilots);
  const procedures = proceduresFor(car);
  const errors = (all: typeof procedures) =>
    prove(car, all, { day: theDay() }).diagnostics.filter((each) => each.severity === 'error');

  test('are proven', () => {
    expect(errors(procedures).map((each) => each.message)).toEqual([]);
  });

  test('are both looked at before main fuel', () => {
    expect(errors(forgetting('igniter-proven')(procedures)).map((each) => each.code)).toContain(
      'rule-igniter-proven',
    );
  });

  test('seeing one does not stand for the other', () => {
    const half = altered('main-burner', 'see-pilot/second-pilot', (each) => ({ ...each, proves: [] }));
    const soaked = altered('soak', 'pilot-still-good/second-pilot', (each) => ({ ...each, proves: [] }));
    const lit = (all: typeof procedures) =>
      all.map((each) =>
        each.id === 'pilot'
          ? {
              ...each,
              steps: each.steps.map((one) => (one.part === 'second-pilot' ? { ...one, proves: [] } : one)),
            }
          : each,
      );
    const broken = errors(lit(soaked(half(procedures)))).filter(
      (each) => each.code === 'rule-igniter-proven',
    );
    expect(broken.map((each) => each.message).join()).toContain(
      'the rear pilot since it could have gone out',
    );
  });

  test('without a valve that is reached from the seat there is no way out, and the proof says so', () => {
    const far = smallCar(...twoPilots, { valves: { 'rear-pilot-valve': { place: 'underneath' } } });
    const told = prove(far, proceduresFor(far), { day: theDay() }).diagnostics.filter(
      (each) => each.code === 'proof-no-way-out',
    );
    expect(told[0]?.message).toContain('the rear pilot');
  });

  test('one that goes out is noticed before its own burner gets fuel', () => {
    const out = putIn(
      'main-burner',
      'clear-front',
      step({ id: 'draught', action: 'shut', part: 'rear-pilot-valve' }),
    )(procedures);
    const codes = errors(out).map((each) => each.code);
    expect(
      codes.some(
        (code) => code === 'rule-igniter-proven' || code === 'proof-cannot-see' || code === 'proof-cannot-do',
      ),
    ).toBe(true);
  });
});
