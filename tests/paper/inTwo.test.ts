/** A book made by two is the one that is made by one, to the byte. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Outcome } from '../../src/diagnostic/diagnostic';
import { layoutPages } from '../../src/layout/flow/layout-pages';
import type { FlowOptions } from '../../src/layout/types';
import type { Block } from '../../src/markup/block';
import { type Partner, type WrittenBook, writeFirstPart } from '../../src/paper/inTwo';
import { bindPdf, writePdf } from '../../src/pdf/write';
import { anyBlocks } from '../helpers/anyBlocks';
import { contents, heading, inlines, linked, pageBreak, pageOf, paragraph, words } from '../helpers/blocks';
import { fontFiles } from '../helpers/fonts';
import { options as pdfOptions } from '../helpers/laidOut';
import { letterPage } from '../helpers/letterPage';
import { idlePartner, partnerFor } from '../helpers/partner';

const book: FlowOptions = {
  ...letterPage,
  chaptersOnNewPage: true,
  chapterTabs: true,
  bothSides: true,
  head: { left: [{ kind: 'chapter' }], centre: [], right: [] },
  foot: {
    left: [],
    centre: [],
    right: [{ kind: 'page' }, { kind: 'words', text: ' of ', strong: false }, { kind: 'pages' }],
  },
};

/** Chapters that name pages of each other, forwards and back. */
const chapters: readonly Block[] = [
  heading(1, 'Book'),
  contents(2),
  ...['one', 'two', 'three', 'four'].flatMap((name, index, all) => [
    heading(1, `Chapter ${name}`, name),
    paragraph(words(500 * (index + 1))),
    heading(2, `More of ${name}`),
    paragraph([
      ...inlines('as on page '),
      pageOf(all.at(index - 1) ?? name),
      linked(' and there', all.at(index - 2) ?? name),
    ]),
    paragraph(words(700)),
  ]),
];

const inTwo = (
  blocks: readonly Block[],
  partner: Partner = partnerFor(structuredClone(blocks), book, fontFiles),
) => writeFirstPart(blocks, book, fontFiles, partner);

function bytesOf(made: Outcome<WrittenBook>): Uint8Array {
  if (!made.ok) throw new Error(JSON.stringify(made.problems));
  return bindPdf(made.value.written, made.value.binding, pdfOptions);
}

async function aloneOf(blocks: readonly Block[]): Promise<Uint8Array> {
  const laidOut = layoutPages(blocks, book);
  if (!laidOut.ok) throw new Error(JSON.stringify(laidOut.problems));
  return writePdf(laidOut.value, pdfOptions);
}

const same = (one: Uint8Array, other: Uint8Array) =>
  Buffer.compare(Buffer.from(one), Buffer.from(other)) === 0;

describe('a book made by two', () => {
  test('is that of one, with the numbers of its pages wherever they are named', async () => {
    const partner = partnerFor(structuredClone(chapters), book, fontFiles);
    const made = inTwo(chapters, partner);
    expect(made.ok && made.value.laidOut).toBeUndefined();
    // the numbers were told, and told again once they stood
    expect(partner.told()).toBeGreaterThan(1);
    expect(same(bytesOf(made), await aloneOf(chapters))).toBe(true);
  });

  test('is made by one if the other has not begun', async () => {
    const made = inTwo(chapters, idlePartner);
    expect(made.ok && made.value.laidOut?.pages.length).toBeGreaterThan(5);
    expect(same(bytesOf(made), await aloneOf(chapters))).toBe(true);
  });

  test('with something wrong in either part is told of as by one', () => {
    for (const at of [2, chapters.length]) {
      const wrong = [...chapters.slice(0, at), paragraph([pageOf('nowhere')]), ...chapters.slice(at)];
      const alone = layoutPages(wrong, book);
      const made = inTwo(wrong);
      expect(alone.ok).toBe(false);
      expect(made.ok ? [] : made.problems).toEqual(alone.ok ? [] : alone.problems);
    }
  });

  test('with a remark likewise', async () => {
    const long = [...chapters, paragraph('x'.repeat(200))];
    const alone = layoutPages(long, book);
    const made = inTwo(long);
    expect(alone.ok && alone.remarks.map(({ code }) => code)).toEqual(['layout-word-broken']);
    expect(made.ok && made.remarks).toEqual(alone.ok && alone.remarks);
    expect(same(bytesOf(made), await aloneOf(long))).toBe(true);
  });

  test('that has one chapter is made by one', async () => {
    const one = [heading(1, 'Alone'), paragraph(words(2000))];
    const made = inTwo(one);
    expect(made.ok && made.value.laidOut?.pages.length).toBeGreaterThan(1);
    expect(same(bytesOf(made), await aloneOf(one))).toBe(true);
  });

  test('is that of one, whatever it says', async () => {
    let shared = 0;
    await fc.assert(
      fc.asyncProperty(fc.array(anyBlocks, { minLength: 2, maxLength: 5 }), async (parts) => {
        const blocks = parts.flatMap((part, index) => [
          heading(1, `Chapter ${index + 1}`),
          ...part,
          pageBreak(),
          paragraph('the end of it'),
        ]);
        const alone = layoutPages(blocks, book);
        const made = inTwo(blocks);
        expect(made.ok).toBe(alone.ok);
        if (!made.ok || !alone.ok) {
          expect(made.ok || alone.ok ? [] : made.problems).toEqual(alone.ok ? [] : alone.problems);
          return;
        }
        if (made.value.laidOut === undefined) shared += 1;
        expect(same(bytesOf(made), await writePdf(alone.value, pdfOptions))).toBe(true);
      }),
      { numRuns: 60 },
    );
    expect(shared).toBeGreaterThan(10);
  });
});
