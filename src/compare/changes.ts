/** Every change from one issue of a car to the next. */
import type { World } from '../paper/paper';
import type { Change, IssueNamed } from './comparison';
import { changedFigures } from './figures';
import { carWithKeys, newKeys } from './keys';
import { changedLines } from './lines';
import type { Speech } from './said';
import { changedSteps } from './steps';
import { changedValues } from './values';
import { unissued } from './withoutIssue';

/** Every change, grouped: parts, valves, lines, values, steps, figures. */
export function changesOf(before: World, after: World): readonly Change[] {
  const keys = newKeys(before.car.spec, after.car.spec);
  const { phrases, words, language } = after;
  const speech: Speech = {
    before: carWithKeys(before.car, keys),
    after: after.car,
    phrases,
    words,
    language,
  };
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

/** An issue as it is named in the papers of `after`. */
export function issueOf({ car }: World, { phrases }: World): IssueNamed {
  return { letter: car.spec.issue.letter, date: phrases.date(car.spec.issue.date) };
}
