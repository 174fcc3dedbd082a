/** The page on figures says what the calculators give: every published value is met within what is stated for it. */
import { expect, test } from 'vitest';
import { publishedChecks } from '../../src/calc/checks';

test.each(publishedChecks.map((check) => [check.what, check] as const))(
  '%s',
  (_, { expected, got, within }) => {
    expect(Math.abs(got / expected - 1)).toBeLessThanOrEqual(within);
  },
);

test('no check is so wide that it could not fail', () => {
  for (const { within, what } of publishedChecks) expect(within, what).toBeLessThan(0.01);
});
