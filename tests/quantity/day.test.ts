import { expect, test } from 'vitest';
import { byEngine, printDay } from '../../src/quantity/day';

// the order of day, month and year of each language: Unicode CLDR, the pattern "long" of the Gregorian calendar
test.each([
  ['en-US', 'March 4, 2026'],
  ['en-GB', '4 March 2026'],
  ['de', '4. März 2026'],
  ['de-AT', '14. Jänner 2026', '2026-01-14'],
])('a day in %s', (language, said, day = '2026-03-04') => {
  expect(printDay(day, language)).toBe(said);
});

/** Every day of a leap year, and the ends of others. */
const days = [
  ...Array.from({ length: 366 }, (_, day) => new Date(Date.UTC(2024, 0, 1 + day)).toISOString().slice(0, 10)),
  '1899-12-31',
  '1900-01-01',
  '9999-12-31',
];

test.each(['en-US', 'en-GB', 'de'])('days in %s are written as the engine writes them', (language) => {
  expect(days.map((day) => printDay(day, language))).toEqual(days.map((day) => byEngine(day, language)));
});
