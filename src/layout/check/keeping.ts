/** Checks of what stands together: words all there, headings with what follows, cautions with steps, heads with rows. */
import type { Diagnostic } from '../../diagnostic/diagnostic';
import type { Block, BlockOrigin, StepItem, TableBlock } from '../../markup/block';
import type { LaidOut } from '../frame';
import { spotOf } from '../problems';
import { eachBlock } from '../survey';
import { type ExpectedWord, expectedWords, type WordFacts, wordsOf } from './expected';
import { artifactText, type FoundWord, withoutSpaces } from './found';
import type { SaidAbove } from './said-above';

const fault = 'this is a fault of the program; please report it with the spec';

/** The first place where the words of the pages are not the words of the blocks, if there is one. */
export function wordsLost(expected: readonly ExpectedWord[], found: readonly FoundWord[]): Diagnostic[] {
  const length = Math.max(expected.length, found.length);
  for (let index = 0; index < length; index += 1) {
    if (expected[index]?.word === found[index]?.word) continue;
    const at = expected[index] ?? expected[expected.length - 1];
    return [
      {
        code: 'check-words-lost',
        severity: 'error',
        message: 'the words on the pages are not the words of the content',
        ...(at === undefined ? {} : { at: spotOf(at.origin) }),
        found: around(found, index),
        expected: around(expected, index),
        mend: fault,
      },
    ];
  }
  return [];
}

function around(words: readonly { readonly word: string }[], index: number): string {
  const near = words.slice(Math.max(0, index - 3), index + 4).map(({ word }) => word);
  return near.length === 0 ? 'nothing' : `\`${near.join(' ')}\``;
}

/** Headings that stand last on their page. Where what follows shows no words, such as lines to write on, it cannot be told. */
export function headingsLast(
  blocks: readonly Block[],
  expected: readonly ExpectedWord[],
  found: readonly FoundWord[],
  facts: WordFacts,
): Diagnostic[] {
  const flat = eachBlock(blocks);
  const following = new Map(flat.map((block, index) => [block, flat[index + 1]]));
  return expected.flatMap(({ role, origin, word }, index): Diagnostic[] => {
    const next = expected[index + 1];
    if (role.kind !== 'heading' || next === undefined) return [];
    if (next.role.kind === 'heading' && next.role.block === role.block) return [];
    const below = following.get(role.block);
    if (below === undefined || expectedWords([below], facts).length === 0) return [];
    const page = found[index]?.page;
    if (page === found[index + 1]?.page) return [];
    return [
      {
        code: 'check-heading-last',
        severity: 'error',
        message: `the heading that ends in \`${word}\` stands last on its page`,
        at: spotOf(origin),
        found: `page ${(page ?? 0) + 1}`,
        expected: 'what it heads below it, on the same page',
        mend: 'move what follows, or take out a page break right after the heading',
      },
    ];
  });
}

/** Cautions that do not stand, or are not said, on the page on which their step begins. */
export function cautionsParted(
  expected: readonly ExpectedWord[],
  found: readonly FoundWord[],
  saidAbove: readonly SaidAbove[],
): Diagnostic[] {
  const pageOfStep = new Map<StepItem, number | undefined>();
  expected.forEach(({ role }, index) => {
    if (role.kind === 'step') pageOfStep.set(role.step, found[index]?.page);
  });
  const shown = expected.flatMap(({ role, origin }, index): (SaidAbove & { origin: BlockOrigin })[] =>
    role.kind === 'caution' ? [{ step: role.step, page: found[index]?.page, origin }] : [],
  );
  const unsaid = saidAbove.map((said) => ({ ...said, origin: said.step.origin }));
  const told = new Set<StepItem>();
  return [...shown, ...unsaid].flatMap(({ step, page, origin }): Diagnostic[] => {
    if (told.has(step) || page === pageOfStep.get(step)) return [];
    told.add(step);
    return [
      {
        code: 'check-caution-parted',
        severity: 'error',
        message: 'a caution stands on another page than its step',
        at: spotOf(origin),
        found: `page ${(page ?? 0) + 1}`,
        expected: `page ${(pageOfStep.get(step) ?? 0) + 1}`,
        mend: fault,
      },
    ];
  });
}

/** Tables that go on on a page without their head. */
export function headsNotRepeated(
  expected: readonly ExpectedWord[],
  found: readonly FoundWord[],
  laidOut: LaidOut,
  facts: WordFacts,
): Diagnostic[] {
  const pagesOf = new Map<TableBlock, Set<number>>();
  expected.forEach(({ role }, index) => {
    const page = found[index]?.page;
    if (role.kind !== 'table-row' || page === undefined) return;
    pagesOf.set(role.block, (pagesOf.get(role.block) ?? new Set()).add(page));
  });
  return [...pagesOf].flatMap(([block, pages]) =>
    [...pages]
      .sort((a, b) => a - b)
      .slice(1)
      .filter((page) => !showsHead(block, page, laidOut, facts))
      .map((page) => headMissing(block, page)),
  );
}

function showsHead(block: TableBlock, page: number, laidOut: LaidOut, facts: WordFacts): boolean {
  const shown = artifactText(laidOut, page);
  const cells = block.head.flatMap((row) => row.cells.map(({ content }) => wordsOf(content, facts).join('')));
  return cells.every((cell) => shown.includes(withoutSpaces(cell)));
}

function headMissing(block: TableBlock, page: number): Diagnostic {
  return {
    code: 'check-head-not-repeated',
    severity: 'error',
    message: `a table goes on on page ${page + 1} without its head`,
    at: spotOf(block.origin),
    mend: fault,
  };
}
