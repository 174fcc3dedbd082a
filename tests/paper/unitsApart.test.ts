/** A unit that a whole column has stands in its head. */
import { expect, test } from 'vitest';
import { unitsApart } from '../../src/paper/context/raising';

test.each([
  ['one unit', ['5 mph', '10 mph'], ['mph'], ['5', '10']],
  ['two units', ['5 mph (8 km/h)', '10 mph (16 km/h)'], ['mph (km/h)'], ['5 (8)', '10 (16)']],
  ['a decimal comma beside a point', ['1.2 ft/min', '0,9 ft/min'], ['ft/min'], ['1.2', '0,9']],
])('%s', (_, amounts, units, numbers) => {
  expect(unitsApart(amounts)).toEqual({ units, numbers });
});

test.each([
  ['units that differ', ['5 mph', '8 km/h']],
  ['a second unit that one lacks', ['5 mph (8 km/h)', '10 mph']],
  ['words', ['not known', '5 mph']],
  ['an amount that is about right', ['about 5 mph', 'about 10 mph']],
])('%s leave the amounts as they are', (_, amounts) => {
  expect(unitsApart(amounts)).toEqual({ units: [], numbers: amounts });
});
