import { expect, test } from 'vitest';
import { withUnitOnce } from '../../src/markup/spans';

test.each([
  ['46\u00a0bar to 52\u00a0bar', '46 to 52\u00a0bar'],
  ['35 psi to 50 psi; below, stop', '35 to 50 psi; below, stop'],
  ['10,5\u00a0bar bis 13\u00a0bar, nie über 15\u00a0bar', '10,5 bis 13\u00a0bar, nie über 15\u00a0bar'],
  ['75\u00a0mm by 90\u00a0mm', '75 by 90\u00a0mm'],
  ['between 100\u00a0psi and 125\u00a0psi.', 'between 100 and 125\u00a0psi.'],
  ['1\u00a01/2\u00a0in to 2\u00a0in', '1\u00a01/2 to 2\u00a0in'],
  ['4\u00a0US gal to 8\u00a0US gal', '4 to 8\u00a0US gal'],
  ['6\u00a0bar to 7\u00a0bar (card “Cold start”)', '6 to 7\u00a0bar (card “Cold start”)'],
])('%s is printed with its unit once', (text, printed) => {
  expect(withUnitOnce(text)).toBe(printed);
});

test.each([
  '380 to 420\u00a0°C',
  '6\u00a0bar (87\u00a0psi) to 7\u00a0bar (102\u00a0psi)',
  '6\u00a0bar to 7\u00a0bar (102\u00a0psi)',
  '12\u00a0mm to 1\u00a0m',
  '5\u00a0m to 8\u00a0min',
  '480\u00a0psi, never above 600\u00a0psi',
  '3\u00a0in for 10\u00a0in',
  '2\u00a0ft per 40\u00a0ft',
])('%s stays', (text) => {
  expect(withUnitOnce(text)).toBe(text);
});
