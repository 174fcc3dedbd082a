/** The procedures of every small shape of car pass the proof of a whole day: each is run from every state that can come before it. */
import { describe, expect, test } from 'vitest';
import { chain } from '../../src/proof/chain';
import { Experience } from '../../src/proof/experience';
import { dayFindings } from '../../src/proof/findings';
import { modelOf } from '../../src/proof/model';
import { smallCar, smallCars } from '../helpers/smallCars';
import { theDay } from '../proof/library';
import { proceduresOf, theLibrary } from './shared';

describe('a day with', () => {
  const library = theLibrary();
  test.each(Object.entries(smallCars))('%s', (_, patches) => {
    const car = smallCar(...patches);
    const model = modelOf(car);
    const day = chain(new Experience(model), proceduresOf(car, library), theDay());
    expect(day.runs.length).toBeGreaterThan(20);
    expect(day.unreached.map((each) => each.id)).toEqual([]);
    expect([
      ...new Set(dayFindings(model, day).map((finding) => `${finding.code}: ${finding.message}`)),
    ]).toEqual([]);
  });
});
