/** Oiling points of a car: each says how often. */
import { expect, test } from 'vitest';
import { tinySpec } from '../helpers/tinySpec';
import { told } from './told';

const spec = (every: string) =>
  `${tinySpec}\noiling:\n  - { point: chain, lubricant: chain oil, amount: a drop, every: ${every}, state: cold }\n`;

test.each(['{ days: 1 }', '{ distance: 50 mi }', '{ seasons: 1, days: 5 }'])('%s is taken', (every) => {
  expect(told(spec(every))).toBe('fine');
});

test('nothing at all is not', () => {
  const said = told(spec('{}'));
  expect(said).toContain('189:59 error spec-oiling at “every: {}');
  expect(said).toContain('nothing says how often this is oiled: chain');
});

test('no half days, and no place that is not there', () => {
  expect(told(spec('{ days: 0.5 }'))).toContain('error');
  const lost = spec('{ days: 1 }').replace('point: chain,', 'point: chain, place: nowhere,');
  expect(told(lost)).toContain('error spec-unknown-name');
});
