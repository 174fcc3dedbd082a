/** A car’s own changes: what they do, what they are recorded as, and what is said of one that names nothing. */
import { describe, expect, test } from 'vitest';
import { expandProcedures } from '../../src/procedure/expand';
import { smallCar, smallCars } from '../helpers/smallCars';
import { partsOf, procedure, proceduresOf, theLibrary } from './shared';

const library = theLibrary();
const shape = smallCars['three pilot valves and a starting branch'] ?? [];

function changed(...changes: readonly object[]) {
  return expandProcedures(smallCar(...shape, { changes }), library, { system: 'us' });
}

/** The pilot’s steps after some changes; an error if they could not be made. */
function pilot(...changes: readonly object[]) {
  return procedure(proceduresOf(smallCar(...shape, { changes }), library), 'pilot');
}

const tray = {
  id: 'wipe-tray',
  act: 'look',
  on: 'pilot-burner',
  say: 'Wipe the tray dry.',
  result: 'dry',
  cautions: ['burner-flood'],
};
const because = 'The tray fills unseen.';

describe('a change', () => {
  test('adds a step before all that a library step was expanded to', () => {
    const { steps, changes } = pilot({ in: 'pilot', add: tray, before: 'open-pilot-feed', because });
    const at = steps.findIndex((step) => step.id === 'wipe-tray');
    expect(steps[at + 1]?.id).toBe('open-pilot-feed/pilot-tank-valve');
    expect(steps[at]).toMatchObject({
      action: 'look',
      part: 'pilot-burner',
      place: 'underneath',
      who: 'driver',
      say: 'Wipe the tray dry.',
      result: 'dry',
      onCard: true,
      cautions: [{ id: 'burner-flood', signal: 'danger' }],
      origin: { kind: 'car', because, at: { file: 'small.yaml', path: 'changes.1.add' } },
    });
    expect(changes).toEqual([{ words: 'Added: Wipe the tray dry.', because }]);
  });

  test('adds a step after all of them', () => {
    const { steps } = pilot({ in: 'pilot', add: tray, after: 'open-pilot-feed', because });
    expect(steps[steps.findIndex((step) => step.id === 'wipe-tray') - 1]?.id).toBe(
      'open-pilot-feed/pilot-valve',
    );
  });

  test('names one of several by its own key', () => {
    const { steps } = pilot({
      in: 'pilot',
      add: tray,
      after: 'open-pilot-feed/pilot-tank-valve',
      because,
    } as object);
    expect(steps[steps.findIndex((step) => step.id === 'wipe-tray') + 1]?.id).toBe(
      'open-pilot-feed/pilot-valve',
    );
  });

  test('replaces a step, in its place', () => {
    const before = pilot();
    const { steps, changes } = pilot({ in: 'pilot', replace: 'pilot-joints', with: tray, because });
    expect(steps.map((step) => step.id)).toEqual(
      before.steps.map((step) => (step.id === 'pilot-joints' ? 'wipe-tray' : step.id)),
    );
    expect(changes[0]?.words).toBe(
      'Instead of “Look along the pilot pipe for a wet joint.”: Wipe the tray dry.',
    );
  });

  test('replaces all that a step was expanded to with one', () => {
    const { steps } = pilot({ in: 'pilot', replace: 'open-pilot-feed', with: tray, because });
    expect(partsOf(steps, 'open-pilot-feed')).toEqual([]);
    expect(steps.filter((step) => step.id === 'wipe-tray')).toHaveLength(1);
  });

  test('moves a step and keeps everything else in order', () => {
    const before = pilot();
    const { steps } = pilot({
      in: 'pilot',
      move: 'pilot-extinguisher',
      before: 'level-before-fire',
      because,
    });
    expect(steps[0]?.id).toBe('pilot-extinguisher');
    const others = (list: typeof steps) =>
      list.map((step) => step.id).filter((id) => id !== 'pilot-extinguisher');
    expect(others(steps)).toEqual(others(before.steps));
  });

  test('leaves a step out, with the reason on record', () => {
    const { steps, changes } = pilot({ in: 'pilot', 'leave-out': 'pilot-joints', because });
    expect(steps.map((step) => step.id)).not.toContain('pilot-joints');
    expect(changes).toEqual([{ words: 'Left out: Look along the pilot pipe for a wet joint.', because }]);
  });

  test('sees what the changes before it did', () => {
    const { steps } = pilot(
      { in: 'pilot', add: tray, before: 'pilot-joints', because },
      { in: 'pilot', move: 'wipe-tray', before: 'level-before-fire', because },
    );
    expect(steps[0]?.id).toBe('wipe-tray');
  });

  test('touches no other procedure', () => {
    const plain = proceduresOf(smallCar(...shape), library);
    const made = proceduresOf(
      smallCar(...shape, { changes: [{ in: 'pilot', 'leave-out': 'pilot-joints', because }] }),
      library,
    );
    const others = (list: typeof made) =>
      list.filter((each) => each.id !== 'pilot').map((each) => each.steps.map((step) => step.id));
    expect(others(made)).toEqual(others(plain));
  });
});

describe('a change that cannot be made', () => {
  test.each([
    [
      'an unknown procedure',
      { in: 'pilots', 'leave-out': 'pilot-joints', because },
      'there is no procedure `pilots`',
      '`pilot`',
      'changes.1.in',
    ],
    [
      'an unknown step',
      { in: 'pilot', 'leave-out': 'pilot-joint', because },
      '`pilot` has no step `pilot-joint`',
      '`pilot-joints`',
      'changes.1.leave-out',
    ],
    [
      'an unknown neighbour',
      { in: 'pilot', add: tray, before: 'pilot-jonts', because },
      '`pilot` has no step `pilot-jonts`',
      '`pilot-joints`',
      'changes.1.before',
    ],
    [
      'a step this car has not got',
      { in: 'pilot', 'leave-out': 'pilot-spark-on', because },
      'the step `pilot-spark-on` of `pilot` is not made for this car, which has no part for it',
      'a step that the car has',
      'changes.1.leave-out',
    ],
    [
      'a procedure this car has not got',
      { in: 'spark-fails', 'leave-out': 'spark-look', because },
      'the procedure `spark-fails` is not made for this car',
      'a procedure that the car has',
      'changes.1.in',
    ],
    [
      'a key that is taken',
      { in: 'pilot', add: { ...tray, id: 'pilot-joints' }, before: 'level-before-fire', because },
      '`pilot` already has a step `pilot-joints`',
      'a key that no other step there has',
      'changes.1.add.id',
    ],
    [
      'an unknown caution',
      { in: 'pilot', add: { ...tray, cautions: ['burner-floods'] }, before: 'pilot-joints', because },
      'the library has no caution `burner-floods`',
      '`burner-flood`',
      'changes.1.add.cautions.1',
    ],
  ])('%s', (_, change, message, expected, path) => {
    const outcome = changed(change);
    const errors = outcome.ok ? [] : outcome.problems.filter((problem) => problem.severity === 'error');
    expect(
      errors.map((problem) => [problem.code, problem.message, problem.expected, problem.at?.path]),
    ).toEqual([['procedure-change', message, expected, path]]);
    expect(errors[0]?.at?.line).toBeGreaterThan(1);
  });

  test('does not hide the others: all are told at once', () => {
    const outcome = changed(
      { in: 'pilot', 'leave-out': 'nothing-like-it', because },
      { in: 'nowhere-near', 'leave-out': 'x', because },
    );
    expect(
      outcome.ok
        ? []
        : outcome.problems
            .filter((problem) => problem.code === 'procedure-change')
            .map((problem) => problem.at?.path),
    ).toEqual(['changes.1.leave-out', 'changes.2.in']);
  });
});
