/** What the first thread does for the mate, heard message by message. */
import { describe, expect, test } from 'vitest';
import { begin, openClaim, takeBack } from '../../../src/cli/threads/claim';
import { HelpForMate, type Skills } from '../../../src/cli/threads/helpMate';
import type { Handed } from '../../../src/cli/threads/mailbox';
import type { PartFound } from '../../../src/layout/flow/together';
import type { WrittenPart } from '../../../src/paper/inTwo';
import type { ScreenDraft } from '../../../src/paper/paper';

const draft: ScreenDraft = {
  name: 'book',
  title: 'Book',
  lightOnDark: false,
  fingerprint: 'AAAA',
  blocks: [],
};
const found = (pageCount: number): PartFound => ({ pageCount, destinations: [], troubled: false });
const written: WrittenPart = { pages: [], letters: new Map(), structure: [{ type: 'Document' }] };

/** Help whose doings are noted in the order in which they are done. */
function helping(part: Skills['part']) {
  const done: (Handed | 'screen')[] = [];
  const help = new HelpForMate(
    { hand: (handed) => void done.push(handed) },
    { part, screen: () => void done.push('screen') },
  );
  return { done, help };
}

function* twoRounds(): ReturnType<Skills['part']> {
  const first = yield found(7);
  const second = yield found(first.pageCount + 100);
  return second.pageCount === 9 ? written : undefined;
}

describe('help for the mate', () => {
  test('makes its part of the book round by round, and then the page for a screen', () => {
    const { done, help } = helping(twoRounds);
    help.hear({ what: 'draft', place: 3, draft, claim: openClaim() });
    expect(done).toEqual([{ what: 'part found', of: 3, found: found(7) }]);
    help.hear({ what: 'part found', place: 3, found: found(8) });
    expect(done.slice(1)).toEqual([{ what: 'part found', of: 3, found: found(108) }]);
    help.hear({ what: 'part found', place: 3, found: found(9) });
    expect(done.slice(2)).toEqual([{ what: 'part written', of: 3, part: written }, 'screen']);
  });

  test('writes the page for a screen too where no book comes of two parts', () => {
    const { done, help } = helping(twoRounds);
    help.hear({ what: 'draft', place: 0, draft, claim: openClaim() });
    help.hear({ what: 'part found', place: 0, found: found(8) });
    help.hear({ what: 'part found', place: 0, found: found(10) });
    expect(done.slice(2)).toEqual(['screen']);
  });

  test('leaves the book to the mate if it has gone on alone', () => {
    const { done, help } = helping(twoRounds);
    const claim = openClaim();
    takeBack(claim);
    help.hear({ what: 'draft', place: 0, draft, claim });
    expect(done).toEqual(['screen']);
  });

  test('leaves a paper that is no book to the mate', () => {
    const { done, help } = helping(twoRounds);
    help.hear({ what: 'draft', place: 0, draft, claim: undefined });
    expect(done).toEqual(['screen']);
  });

  test('begins what it begins before the mate can take it back', () => {
    const claim = openClaim();
    const { help } = helping(function* () {
      expect(begin(claim)).toBe(false);
      expect(takeBack(claim)).toBe(false);
      yield found(1);
      return undefined;
    });
    help.hear({ what: 'draft', place: 0, draft, claim });
    expect.assertions(2);
  });

  test('knows nothing of a book that it has not begun', () => {
    const { help } = helping(twoRounds);
    expect(() => help.hear({ what: 'part found', place: 0, found: found(1) })).toThrow('nobody has begun');
  });
});
