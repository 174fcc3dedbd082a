/** Slips on a small day, where what must come of each can be said beforehand; and on the demo cars. */
import { describe, expect, test } from 'vitest';
import type { Procedures } from '../../src/procedure/procedure';
import { chain } from '../../src/proof/chain';
import { Experience } from '../../src/proof/experience';
import { modelOf } from '../../src/proof/model';
import type { SlipKind, TriedSlip } from '../../src/proof/slip';
import { trySlips } from '../../src/proof/slips';
import { demo, theDay } from './library';

const { car, procedures } = demo('marigold');

function tryAll(all: Procedures): readonly TriedSlip[] {
  const experience = new Experience(modelOf(car));
  return trySlips(experience, all, theDay(), chain(experience, all, theDay()));
}

const tried = tryAll(procedures);

function outcome(kind: SlipKind, procedure: string, step: string, valve?: string) {
  const found = tried.find(
    ({ slip }) =>
      slip.kind === kind &&
      slip.procedure.id === procedure &&
      slip.step?.id.startsWith(step) === true &&
      (valve === undefined || slip.valve === valve),
  );
  if (found === undefined) throw new Error(`${kind} ${procedure} ${step} was not tried`);
  return found.outcome;
}

describe('a step left out', () => {
  test('is noticed where a later step cannot be done', () => {
    const came = outcome('left out', 'pilot', 'open-pilot-feed/pilot-tank-valve');
    expect(came.class).toBe('caught later');
    if (came.class === 'caught later') {
      expect(came.by.step.id).toContain('crack-pilot-valve');
      expect(came.hitch.what).toBe('no fuel reaches the pilot burner');
    }
  });

  test('is critical where a rule breaks first, and it is told whether anything is wrong yet or somebody only does not know', () => {
    const front = outcome('left out', 'main-burner', 'clear-front');
    expect(front.class === 'critical' && front.rule.id).toBe('burner-front-clear');
    expect(front.class === 'critical' && front.blind).toBe(true);
    const tap = outcome('left out', 'fill-cold', 'shut-boiler-fill');
    expect(tap.class).toBe('critical');
    expect(tap.class === 'critical' && tap.blind).toBe(false);
  });

  test('is noticed in another procedure, and harm elsewhere counts if the day goes that way', () => {
    const aired = outcome('left out', 'short-stop', 'stop-main-out');
    expect(aired.class === 'critical' && aired.at.procedure.id).toBe('going-on');
  });

  test('is harmless where it only looks for what no rule asks', () => {
    expect(outcome('left out', 'walk-round', 'lamps').class).toBe('harmless');
  });
});

test('a valve opened twice is felt to be open', () => {
  expect(outcome('done twice', 'pilot', 'open-pilot-feed/pilot-tank-valve').class).toBe('caught at once');
});

test('a step done too early is critical if what it needs has not been done', () => {
  const early = outcome('done too early', 'blow-down', 'crack-blow-down/blow-down-left-tap');
  expect(early.class === 'critical' && early.rule.group).toBe('people');
});

test('the neighbouring valve opened is found by what does not happen', () => {
  const came = outcome(
    'done to the neighbour',
    'pilot',
    'open-pilot-feed/pilot-stop-valve',
    'fuel-stop-valve',
  );
  expect(['caught at once', 'caught later', 'critical']).toContain(came.class);
});

test('every valve of the car is tried wrong in the morning, and each is either found or does nothing', () => {
  const morning = tried.filter(
    ({ slip }) => slip.kind === 'found wrong' && slip.procedure.id === 'reading-in',
  );
  expect(new Set(morning.map(({ slip }) => slip.valve))).toEqual(new Set(Object.keys(car.spec.valves)));
  for (const { outcome: came } of morning) expect(came.class).not.toBe('critical');
  const needle = morning.find(({ slip }) => slip.valve === 'pilot-needle-valve')?.outcome;
  expect(needle?.class === 'caught later' && needle.by.step.id).toBe(
    'fuel-valve-as-parked/pilot-needle-valve',
  );
});

test('harm found by going on step by step is harm found by the chain, and the other way round', () => {
  // A step left out for good is a stronger slip than one left out once: whatever does harm once does so as a changed procedure too.
  const critical = tried.filter(
    ({ slip, outcome: came }) => slip.kind === 'left out' && came.class === 'critical',
  );
  const experience = new Experience(modelOf(car));
  const sample = critical.filter((_, index) => index % 6 === 0);
  expect(sample.length).toBeGreaterThan(6);
  for (const { slip } of sample) {
    const without = procedures.map((procedure) =>
      procedure.id === slip.procedure.id
        ? { ...procedure, steps: procedure.steps.filter((step) => step !== slip.step) }
        : procedure,
    );
    const day = chain(experience, without, theDay());
    expect(
      day.runs.some((run) => run.breaches.length > 0 || run.snags.length > 0),
      slip.step?.id,
    ).toBe(true);
  }
});
