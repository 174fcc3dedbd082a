/** The smallest valid spec loads, and what stands in it comes out in SI units. */
import { expect, test } from 'vitest';
import { loadTiny, tinySpec } from '../helpers/tinySpec';

test('the smallest spec loads without a remark', () => {
  const outcome = loadTiny(tinySpec);
  expect(outcome.ok ? outcome.remarks : outcome.problems).toEqual([]);
});
