/** What a keeper may well write, and what is hard to set: each gives a good paper or the reason why there is none. */
import { describe, expect, it } from 'vitest';
import type { Outcome } from '../../src/diagnostic/diagnostic';
import { layoutCard } from '../../src/layout/card/layout-card';
import { checkLaidOut } from '../../src/layout/check';
import { layoutPages } from '../../src/layout/flow/layout-pages';
import type { LaidOut } from '../../src/layout/frame';
import type { Block } from '../../src/markup/block';
import { briefCaution, figure, heading, step, steps, table, words } from '../helpers/blocks';
import { plainTheme, plexFonts } from '../helpers/fonts';
import { letterPage, sheetOf } from '../helpers/letterPage';

const leastPt = { text: 8.75, 'text-italic': 8.75, 'text-bold': 8.75, narrow: 8.75, 'narrow-bold': 8.75 };

type Lay = (blocks: readonly Block[]) => Outcome<LaidOut>;

const onPaper: Lay = (blocks) => layoutPages(blocks, letterPage);

const onCard: Lay = (blocks) =>
  layoutCard(blocks, {
    fonts: plexFonts,
    theme: plainTheme,
    sheet: sheetOf('A7', 4, true),
    title: 'Raising steam',
    foot: ['Invented tourer', 'issue C', 'K7M2-4QXD'],
    leastPt,
    signPt: 30,
    mostPt: 24,
    mostFaces: 60,
  });

/** The paper, which must have nothing wrong with it, and what was remarked. */
function good(lay: Lay, blocks: readonly Block[]) {
  const result = lay(blocks);
  if (!result.ok) throw new Error(JSON.stringify(result.problems, null, 2));
  expect(checkLaidOut(blocks, result.value, { fonts: plexFonts, theme: plainTheme, leastPt })).toEqual([]);
  return { pages: result.value.pages, remarks: result.remarks.map(({ code }) => code) };
}

function refusal(lay: Lay, blocks: readonly Block[]): readonly string[] {
  const result = lay(blocks);
  if (result.ok) throw new Error('it was laid out');
  // somebody who has not written the program can mend it
  for (const { mend = '', found = '' } of result.problems)
    expect([mend !== '', found !== '']).toEqual([true, true]);
  return [...new Set(result.problems.map(({ code }) => code))];
}

const oneWord = 'righthandpilotfuelstopvalvebehindtheleftfrontdoorsillofthecar'.slice(0, 60);

describe.each([
  ['on paper', onPaper],
  ['on a card of size A7', onCard],
] as const)('%s', (_, lay) => {
  const title = heading(1, 'Raising steam');

  it('a step of 400 words, with a result of 100, goes over as many pages as it takes', () => {
    const long = step(words(400), { result: words(100, 400), critical: true });
    const { pages, remarks } = good(lay, [title, steps([step('First'), long, step('Last')])]);
    expect(remarks).toEqual([]);
    expect(pages.length).toBeGreaterThanOrEqual(lay === onCard ? 5 : 1);
  });

  it('a caution of 400 words, which may not be parted, is set whole or refused', () => {
    const blocks = [title, steps([step('Open', { cautions: [briefCaution('danger', words(400))] })])];
    if (lay === onPaper) good(lay, blocks);
    else expect(refusal(lay, blocks)).toEqual(['layout-too-tall']);
  });

  it('a table of 60 columns is refused', () => {
    const row = Array.from({ length: 60 }, (_, index) => `${index} psi`);
    expect(refusal(lay, [title, table({ rows: [row] })])).toEqual(['layout-table-too-wide']);
  });

  it('a table whose words are wider than the page loses no letter, and it is said which were broken', () => {
    const { remarks } = good(lay, [title, table({ rows: [[oneWord, oneWord, oneWord]] })]);
    expect(new Set(remarks)).toEqual(new Set(['layout-word-broken']));
  });

  it('a valve’s name of 60 letters is whole, and broken only if it is one word and too wide', () => {
    const named = (name: string) => [title, steps([step(`Open the *${name}*`, { result: `${name} open` })])];
    expect(good(lay, named('right-hand pilot fuel stop valve behind the left front door')).remarks).toEqual(
      [],
    );
    const { remarks } = good(lay, named(oneWord));
    expect(new Set(remarks)).toEqual(new Set(lay === onCard ? ['layout-word-broken'] : []));
  });

  it('a figure taller than the page is made smaller as long as it can be read, then refused', () => {
    const tall = lay === onCard ? 300 : 900;
    good(lay, [title, figure(100, tall)]);
    expect(refusal(lay, [title, figure(100, 5000)])).toEqual(['layout-figure-small']);
  });

  it('40 steps, each with its caution and a result, are on faces in type that can be read', () => {
    const all = Array.from({ length: 40 }, (_, index) =>
      step(`Open the valve by the left running board, ${index}`, {
        result: 'open, two turns and a half',
        cautions: [briefCaution('warning', `Scalding jet number ${index}: stand aside.`)],
        critical: index % 3 === 0,
      }),
    );
    const { pages, remarks } = good(lay, [title, steps(all)]);
    expect(remarks).toEqual([]);
    expect(pages.length).toBeGreaterThan(lay === onCard ? 5 : 1);
  });
});
