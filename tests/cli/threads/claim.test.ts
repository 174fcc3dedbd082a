import { expect, test } from 'vitest';
import { begin, openClaim, takeBack } from '../../../src/cli/threads/claim';

test('what has been begun cannot be taken back, nor begun again', () => {
  const claim = openClaim();
  expect(begin(claim)).toBe(true);
  expect(takeBack(claim)).toBe(false);
  expect(begin(claim)).toBe(false);
});

test('what has been taken back cannot be begun', () => {
  const claim = openClaim();
  expect(takeBack(claim)).toBe(true);
  expect(begin(claim)).toBe(false);
});
