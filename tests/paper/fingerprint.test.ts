import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fingerprint } from '../../src/paper/fingerprint';

test('the same parts give the same mark, in two groups of letters that cannot be mixed up', () => {
  expect(fingerprint(['a', 'b'])).toBe(fingerprint(['a', 'b']));
  expect(fingerprint(['a', 'b'])).toMatch(/^[34679ACDEFGHJKMNPQRTUVWXY]{4}·[34679ACDEFGHJKMNPQRTUVWXY]{4}$/);
});

test('moving a letter from one part to the next changes the mark', () => {
  fc.assert(
    fc.property(fc.string({ minLength: 1 }), fc.string(), (one, two) => {
      expect(fingerprint([one, two])).not.toBe(fingerprint([one.slice(0, -1), `${one.slice(-1)}${two}`]));
    }),
  );
});

test('the digest underneath is SHA-256 as the Node library has it (FIPS 180-4)', () => {
  const alphabet = '34679ACDEFGHJKMNPQRTUVWXY';
  let number = BigInt(`0x${createHash('sha256').update('3:car').digest('hex').slice(0, 24)}`);
  let expected = '';
  for (let place = 0; place < 8; place += 1) {
    expected += alphabet[Number(number % 25n)];
    number /= 25n;
  }
  expect(fingerprint(['car']).replace('·', '')).toBe(expected);
});
