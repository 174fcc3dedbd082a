/** A short mark of what a paper was made from: the same mark, the same paper. */
import { createHash } from 'node:crypto';

/** Letters and digits that cannot be taken for each other, also by lamplight: no 0 O, 1 I L, 2 Z, 5 S, 8 B. */
const alphabet = '34679ACDEFGHJKMNPQRTUVWXY';

const length = 8;

/** A fingerprint as wide as any, for whether names fit beside whatever it will be. */
export const anyMark = 'MMMM·MMMM';

/**
 * Eight letters in two groups, such as `7GKX·4MRT`, from SHA-256 over the parts. Parts are told apart, so that moving
 * a letter from one to the next changes the mark. About 1.5 × 10^11 marks: two papers of a fleet will not meet by chance.
 */
export function fingerprint(parts: readonly string[]): string {
  const hash = createHash('sha256');
  for (const part of parts) hash.update(`${part.length}:`).update(part);
  const digest = hash.digest();
  let number = digest.subarray(0, 12).reduce((sum, byte) => sum * 256n + BigInt(byte), 0n);
  let mark = '';
  for (let place = 0; place < length; place += 1) {
    mark += alphabet[Number(number % BigInt(alphabet.length))];
    number /= BigInt(alphabet.length);
  }
  return `${mark.slice(0, 4)}·${mark.slice(4)}`;
}
