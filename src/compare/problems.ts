/** What keeps two issues from being compared, and what a keeper is told of their letters. */
import type { Car } from '../car/car';
import type { Diagnostic } from '../diagnostic/diagnostic';
import type { Change } from './comparison';

/**
 * Whether two specs are of one car: its number, where both give one; otherwise its name with its maker or its year, so
 * that a slip of the pen in one of them can be mended without the car becoming another.
 */
export function sameCar(before: Car, after: Car): boolean {
  const [old, now] = [before.spec.car, after.spec.car];
  const [oldNumber, newNumber] = [old['number-on-car'], now['number-on-car']];
  if (oldNumber !== undefined && oldNumber === newNumber) return true;
  return old.name === now.name && (old.make === now.make || old.year === now.year);
}

/** Two cars. */
export function otherCar(before: Car, after: Car): Diagnostic {
  const say = ({ spec: { car } }: Car) =>
    [car.name, `${car.make} ${car.model}`, car.year, car['number-on-car'] ?? 'no number'].join(', ');
  return {
    code: 'compare-other-car',
    severity: 'error',
    at: after.spotOf('car'),
    message: 'the two specs are of two different cars, so what differs is not what changed',
    found: say(after),
    expected: `the car of the first spec: ${say(before)}`,
    mend: 'name two issues of one car; if it is one car, give both specs the same `number-on-car`',
  };
}

/** What is wrong with the letters and dates of two issues. */
export function issueProblems(before: Car, after: Car, changes: readonly Change[]): readonly Diagnostic[] {
  const [old, now] = [before.spec.issue, after.spec.issue];
  const sameLetter = old.letter === now.letter && changes.length > 0;
  return [
    ...(sameLetter ? [letterKept(after, changes.length)] : []),
    ...(now.date < old.date ? [wrongWayRound(before, after)] : []),
  ];
}

function letterKept(after: Car, count: number): Diagnostic {
  const { letter } = after.spec.issue;
  return {
    code: 'compare-letter-kept',
    severity: 'error',
    at: after.spotOf('issue.letter'),
    message: `${count === 1 ? 'something' : `${count} things`} changed, and both are issue ${letter}: nobody could tell the old cards from the new`,
    found: `\`${letter}\``,
    expected: 'a letter that no earlier issue has',
    mend: 'give the new spec the next letter and its date, and move the old letter, date and changes to `earlier`',
  };
}

function wrongWayRound(before: Car, after: Car): Diagnostic {
  return {
    code: 'compare-order',
    severity: 'remark',
    at: after.spotOf('issue.date'),
    message: 'the second spec is the older of the two',
    found: `\`${after.spec.issue.date}\``,
    expected: `a date not before ${before.spec.issue.date}`,
    mend: 'name the old spec first and the new one second',
  };
}
