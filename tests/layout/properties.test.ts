/** Any paper on any sheet: layout ends, and yields either a paper with nothing wrong or the reason why not. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Outcome } from '../../src/diagnostic/diagnostic';
import { layoutCard } from '../../src/layout/card/layout-card';
import { checkLaidOut } from '../../src/layout/check';
import { layoutPages } from '../../src/layout/flow/layout-pages';
import type { LaidOut } from '../../src/layout/frame';
import { makeSheet } from '../../src/layout/sheet';
import type { RunningLine } from '../../src/layout/types';
import type { Block } from '../../src/markup/block';
import { anyBlocks, anyCard } from '../helpers/anyBlocks';
import { everyFace, plainTheme, plexFonts } from '../helpers/fonts';

const foot: RunningLine = { left: [{ kind: 'chapter' }], centre: [], right: [{ kind: 'page' }] };

function sheetOf(widthPt: number, heightPt: number) {
  const made = makeSheet({ name: 'any', widthPt, heightPt }, 4, true);
  if (!made.ok) throw new Error('no sheet');
  return made.value;
}

/** What may rightly stop a paper: something that fits no page of its size. */
const fair = [
  'layout-too-tall',
  'layout-kept-too-tall',
  'layout-head-too-tall',
  'layout-table-too-wide',
  'layout-figure-small',
  'layout-unsettled',
  'layout-too-many-faces',
  'layout-too-narrow',
];

function expectSound(blocks: readonly Block[], result: Outcome<LaidOut>, leastPt: number): boolean {
  if (!result.ok) {
    for (const { code } of result.problems) expect(fair.concat('layout-word-broken')).toContain(code);
    return false;
  }
  const options = { fonts: plexFonts, theme: plainTheme, leastPt: everyFace(leastPt) };
  expect(checkLaidOut(blocks, result.value, options)).toEqual([]);
  return true;
}

describe('any paper', () => {
  it('on a sheet of ordinary size is laid out with nothing wrong', () => {
    let sound = 0;
    fc.assert(
      fc.property(
        anyBlocks,
        fc.integer({ min: 300, max: 700 }),
        fc.integer({ min: 380, max: 900 }),
        (blocks, width, height) => {
          const result = layoutPages(blocks, {
            fonts: plexFonts,
            theme: plainTheme,
            sheet: sheetOf(width, height),
            head: foot,
            foot,
            firstPage: { head: true, foot: true },
            chaptersOnNewPage: width % 2 === 0,
            chapterTabs: false,
            bothSides: width % 3 === 0,
          });
          if (expectSound(blocks, result, 8.75)) sound += 1;
        },
      ),
      { numRuns: 200 },
    );
    expect(sound).toBeGreaterThan(190);
  });

  it('on a sheet of any size is laid out with nothing wrong, or refused with the reason', () => {
    let sound = 0;
    fc.assert(
      fc.property(
        anyBlocks,
        fc.integer({ min: 60, max: 300 }),
        fc.integer({ min: 90, max: 400 }),
        (blocks, width, height) => {
          const result = layoutPages(blocks, {
            fonts: plexFonts,
            theme: plainTheme,
            sheet: sheetOf(width, height),
            head: foot,
            foot,
            firstPage: { head: false, foot: true },
            chaptersOnNewPage: false,
            chapterTabs: false,
            bothSides: false,
          });
          if (expectSound(blocks, result, 8.75)) sound += 1;
        },
      ),
      { numRuns: 200 },
    );
    expect(sound).toBeGreaterThan(40);
  });
});

describe('any card', () => {
  it('is laid out with nothing wrong and no type too small, or refused with the reason', () => {
    let sound = 0;
    fc.assert(
      fc.property(
        anyCard,
        fc.integer({ min: 190, max: 500 }),
        fc.integer({ min: 250, max: 600 }),
        (blocks, width, height) => {
          const result = layoutCard(blocks, {
            fonts: plexFonts,
            theme: plainTheme,
            sheet: sheetOf(width, height),
            title: 'any card',
            foot: ['an invented car', 'issue A', 'K7M2-4QXD'],
            leastPt: everyFace(9),
            signPt: 30,
            mostPt: 20,
            mostFaces: 40,
          });
          if (expectSound(blocks, result, 9)) sound += 1;
        },
      ),
      { numRuns: 50 },
    );
    expect(sound).toBeGreaterThan(40);
  });
});
