/** Two issues of one car's spec, laid side by side. */
import { bad, good, type Outcome } from '../diagnostic/diagnostic';
import type { World } from '../paper/paper';
import type { Change, Comparison } from './comparison';
import { changedFigures } from './figures';
import { carWithKeys, newKeys } from './keys';
import { changedLines } from './lines';
import { changedPapers, type PapersOf } from './papers';
import { issueProblems, otherCar, sameCar } from './problems';
import type { Speech } from './said';
import { changedSteps } from './steps';
import { changedValues } from './values';
import { unissued } from './withoutIssue';

/**
 * Everything that changed from one issue to the next, and what that does to the papers. Refused for two different
 * cars. A letter that was kept although something changed comes as an error among the remarks: what changed is still
 * told, but no slip may be printed of it.
 */
export function compareIssues(before: World, after: World, papers: PapersOf): Outcome<Comparison> {
  if (!sameCar(before.car, after.car)) return bad([otherCar(before.car, after.car)]);
  const changedOnes = changedPapers(before, after, papers);
  if (!changedOnes.ok) return changedOnes;
  const changes = changesOf(before, after);
  return good(
    {
      before: issueOf(before, after),
      after: issueOf(after, after),
      changes,
      papers: changedOnes.value,
    },
    issueProblems(before.car, after.car, changes),
  );
}

/** Every change, grouped: parts, valves, lines, values, steps, figures. */
export function changesOf(before: World, after: World): readonly Change[] {
  const keys = newKeys(before.car.spec, after.car.spec);
  const { phrases, words } = after;
  const speech: Speech = { before: carWithKeys(before.car, keys), after: after.car, phrases, words };
  const values = changedValues(speech);
  return [
    ...values.filter(({ group }) => group === 'part'),
    ...values.filter(({ group }) => group === 'valve'),
    ...changedLines(speech),
    ...values.filter(({ group }) => group === 'value'),
    ...changedSteps(unissued(before), unissued(after), keys, speech),
    ...changedFigures(before.figures, after.figures, keys, phrases),
  ];
}

function issueOf({ car }: World, { phrases }: World): Comparison['before'] {
  return { letter: car.spec.issue.letter, date: phrases.date(car.spec.issue.date) };
}
