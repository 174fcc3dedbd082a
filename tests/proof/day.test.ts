/** The order of the day: its file, the usual day, what follows what, what is reached. */
import { describe, expect, test } from 'vitest';
import { chain, countStates } from '../../src/proof/chain';
import { readDay } from '../../src/proof/day';
import { Experience } from '../../src/proof/experience';
import { modelOf } from '../../src/proof/model';
import { sequels, usualDay } from '../../src/proof/usual';
import { putIn, step, without } from './edits';
import { demo, theDay } from './library';

const head = 'night-after: [overnight]\nparked-after: [overnight]\nway-out: shut-everything\n';
const known = new Map([
  ['overnight', []],
  ['shut-everything', []],
  ['fill-cold', ['hose-on']],
]);

function problems(text: string): readonly string[] {
  const read = readDay(text, 'day.yaml', known, ['torch']);
  return read.ok
    ? []
    : read.problems.map((each) => `${each.at?.line}: ${each.code}: ${each.message}; ${each.mend}`);
}

describe('the file', () => {
  test('is read', () => {
    expect(problems(head)).toEqual([]);
    expect(theDay().wayOut).toBe('shut-everything');
  });

  test('names procedures and cautions that exist', () => {
    expect(problems(`${head}level-too-low: fil-cold\n`)).toEqual([
      '4: proof-order: there is no procedure `fil-cold`; write `fill-cold`',
    ]);
    expect(problems(`${head}cautions:\n  torch-lit: [torhc]\n`)).toEqual([
      '5: proof-order: there is no caution `torhc`; write `torch`',
    ]);
  });

  test('says how the fire is lit again in procedures and steps that exist', () => {
    const way = (text: string) => problems(`${head}lit-again:\n  shut-everything:\n    - ${text}\n`);
    expect(way('{ by: [fill-cold], rest-of: fill-cold, at-latest-from: hose-on }')).toEqual([]);
    expect(way('{ by: [fil-cold] }').join()).toMatch(/6: .*no procedure `fil-cold`; write `fill-cold`/);
    expect(way('{ by: [fill-cold], rest-of: fill-cold, at-latest-from: hos-on }').join()).toMatch(
      /6: .*no step `hos-on`; write `hose-on`/,
    );
    expect(way('{ while: [raining], by: [fill-cold] }').join()).toContain('6: spec-not-a-choice');
  });

  test('knows no dangers but those of the model', () => {
    expect(problems(`${head}cautions:\n  dragons: [torch]\n`).join()).toContain('dragons');
  });
});

describe('a day of Marigold', () => {
  const { car, procedures } = demo('marigold');
  const model = modelOf(car);
  const daily = procedures.filter((procedure) => procedure.phase !== 'emergency');
  const experience = new Experience(model);
  const day = chain(experience, procedures, theDay());

  test('goes its usual way', () => {
    expect(usualDay(procedures, theDay()).map((procedure) => procedure.id)).toEqual([
      'reading-in',
      'walk-round',
      'water',
      'level',
      'fuel',
      'air',
      'pilot',
      'soak',
      'main-burner',
      'raising-steam',
      'moving-off',
      'running',
      'coming-in',
      'shut-down',
      'blow-down',
      'overnight',
    ]);
  });

  test('reaches every procedure by every way that leads to it', () => {
    expect(day.unreached).toEqual([]);
    for (const procedure of daily) {
      const came = new Set((day.of.get(procedure.id) ?? []).map((run) => run.follows?.procedure.id));
      const left = procedure.after.filter((id) => !came.has(id) && !theDay().leftOutWithSteamUp.has(id));
      // Two ways that lead here in one and the same state are stepped through once.
      expect(left.length).toBeLessThan(Math.max(1, procedure.after.length));
    }
  });

  test('meets hundreds of states, and always the same number', () => {
    const again = chain(new Experience(model), procedures, theDay());
    expect(countStates(again)).toBe(countStates(day));
    expect(countStates(day)).toBeGreaterThan(500);
  });

  test('a boiler that came out of lay-up empty leads to a cold fill', () => {
    const broken = (day.of.get('level') ?? []).filter((run) => run.brokenOffAt !== undefined);
    expect(broken.length).toBeGreaterThan(0);
    const fills = (day.of.get('fill-cold') ?? []).filter((run) => run.follows?.brokenOffAt !== undefined);
    expect(fills.length).toBeGreaterThan(0);
    expect(fills.flatMap((run) => [...run.breaches, ...run.snags])).toEqual([]);
  });

  test('what is left wrong in the evening is found by what begins in the morning', () => {
    const edits = putIn(
      'overnight',
      undefined,
      step({ id: 'forget', action: 'open', part: 'pilot-needle-valve' }),
    );
    const wrong = chain(experience, edits(procedures), theDay());
    expect(
      wrong.runs.some(
        (run) =>
          run.procedure.id === 'walk-round' &&
          run.snags.some((snag) => snag.step.id === 'fuel-valve-as-parked/pilot-needle-valve'),
      ),
    ).toBe(true);
  });

  test('a procedure that nothing leads to is told', () => {
    const lost = procedures.map((procedure) =>
      procedure.id === 'soak' ? { ...procedure, after: ['nowhere'] } : procedure,
    );
    expect(chain(experience, lost, theDay()).unreached.map((procedure) => procedure.id)).toContain('soak');
    expect(() => without('soak', 'no-such-step')(procedures)).toThrow();
  });

  test('goes on from a stop in each of the ways that are open', () => {
    const stop = procedures.find((procedure) => procedure.id === 'short-stop');
    if (stop === undefined) throw new Error('no short stop');
    expect(
      sequels(procedures, theDay(), stop)
        .map((way) => way[0]?.procedure.id)
        .sort(),
    ).toEqual(['going-on', 'shut-down', 'taking-fuel', 'taking-water']);
  });
});
