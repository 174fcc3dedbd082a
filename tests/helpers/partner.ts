/** Somebody who makes the second part of a book in turn with whoever makes the first, everything handed over as a copy. */
import type { Partner } from '../../src/paper/inTwo';
import { writeSecondPart } from '../../src/paper/inTwo';

/** A partner who has begun, and how often it was told something. */
export function partnerFor(
  ...given: Parameters<typeof writeSecondPart>
): Partner & { readonly told: () => number } {
  const rounds = writeSecondPart(...given);
  let round = rounds.next();
  let told = 0;
  return {
    told: () => told,
    hasBegun: () => true,
    exchange: (found) => {
      if (round.done === true) throw new Error('the second part has come to its end');
      const own = structuredClone(round.value);
      told += 1;
      round = rounds.next(structuredClone(found));
      return own;
    },
    part: () => {
      if (round.done !== true || round.value === undefined) throw new Error('there is no second part');
      return structuredClone(round.value);
    },
  };
}

/** One who has not begun, and never will. */
export const idlePartner: Partner = {
  hasBegun: () => false,
  exchange: () => {
    throw new Error('who has not begun is told nothing');
  },
  part: () => {
    throw new Error('who has not begun has made nothing');
  },
};
