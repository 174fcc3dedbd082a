import { expect, test } from 'vitest';
import { printDay } from '../../src/quantity/day';

// the order of day, month and year of each language: Unicode CLDR, the pattern "long" of the Gregorian calendar
test.each([
  ['en-US', 'March 4, 2026'],
  ['en-GB', '4 March 2026'],
  ['de', '4. März 2026'],
])('a day in %s', (language, said) => {
  expect(printDay('2026-03-04', language)).toBe(said);
});
