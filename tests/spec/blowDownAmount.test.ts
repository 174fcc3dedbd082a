/** What is let go at one blow-down is no more than the boiler holds. */
import { expect, test } from 'vitest';
import { spoiled } from '../helpers/tinySpec';
import { told } from './told';

const amount = (volume: string) =>
  spoiled(['draws-full: not-known', `blow-down-amount: ${volume}\n  draws-full: not-known`]);

test.each(['1 US gal', '5 US gal'])('%s of 5 gallons is taken', (volume) => {
  expect(told(amount(volume))).toBe('fine');
});

test('6 gallons of 5 are not', () => {
  expect(told(amount('6 US gal'))).toContain('error spec-order');
});
