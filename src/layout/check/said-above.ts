/**
 * Brief cautions that are not shown at their step because the same words stand above it: which they are, and on which page
 * those words stand, so that it can be checked that it is the step's own.
 */
import type { StepItem, StepsBlock } from '../../markup/block';
import type { ExpectedWord } from './expected';
import type { FoundWord } from './found';

/** A step and the page on which one of its cautions is said. */
export interface SaidAbove {
  readonly step: StepItem;
  readonly page: number | undefined;
}

/**
 * The expected words without those of brief cautions that are not found where they are expected but above, before a step
 * of the same list. Every other word stays expected.
 */
export function withoutSaidAbove(
  expected: readonly ExpectedWord[],
  found: readonly FoundWord[],
): { expected: ExpectedWord[]; saidAbove: SaidAbove[] } {
  const kept: ExpectedWord[] = [];
  const saidAbove: SaidAbove[] = [];
  const said = new Map<StepsBlock, Map<string, number | undefined>>();
  for (let index = 0; index < expected.length; ) {
    const end = endOfCaution(expected, index);
    const words = expected.slice(index, end);
    const role = words[0]?.role;
    const shown = words.every(({ word }, offset) => found[kept.length + offset]?.word === word);
    if (role?.kind === 'caution') {
      const key = role.caution.says ?? words.map(({ word }) => word).join(' ');
      const pageOf = said.get(role.steps) ?? new Map<string, number | undefined>();
      said.set(role.steps, pageOf);
      if (!shown && role.caution.brief === true && pageOf.has(key)) {
        saidAbove.push({ step: role.step, page: pageOf.get(key) });
        index = end;
        continue;
      }
      if (shown) pageOf.set(key, found[kept.length]?.page);
    }
    kept.push(...words);
    index = end;
  }
  return { expected: kept, saidAbove };
}

/** Where the words of the caution that begins at `index` end; for other words, the next. */
function endOfCaution(expected: readonly ExpectedWord[], index: number): number {
  const role = expected[index]?.role;
  if (role?.kind !== 'caution') return index + 1;
  let end = index + 1;
  for (; end < expected.length; end += 1) {
    const other = expected[end]?.role;
    if (other?.kind !== 'caution' || other.caution !== role.caution) break;
  }
  return end;
}
