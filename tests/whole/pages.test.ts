import { describe, expect, test } from 'vitest';
import { setOnePaper } from '../../src/kettlebook';
import { checkLaidOut } from '../../src/layout/check';
import type { LaidOut } from '../../src/layout/frame';
import { pointsPerMm } from '../../src/layout/sheet';
import { nearFoot, partsBegunLate } from '../helpers/cardFaces';
import { emptyCells } from '../helpers/emptyCells';
import { nearlyEmpty, straggledEnds } from '../helpers/emptyPages';
import { inEnglish } from '../helpers/english';
import { partedClosings, partedIntroductions, straggledRows } from '../helpers/partedPages';
import { demo, demoNames, goodOf, inWords, leastOf, type UnitOrder, workshop } from './made';

/** Paper sizes and orders of units. */
const ways: readonly (readonly ['letter' | 'a4', UnitOrder])[] = [
  ['letter', 'own'],
  ['letter', 'turned'],
  ['a4', 'own'],
  ['a4', 'turned'],
];

/** Of a hundred pages of a paper, so many may be nearly empty though their chapter goes on; of a short paper one. */
const mostEmptyPercent = 2;

const { papers, fonts, theme } = await workshop();

/** Faces of cards, and no other pages, are numbered with their count. */
const isCard = ({ pages }: LaidOut) => pages.every(({ label }) => label.includes(' of '));

describe.each(demoNames)('%s', (name) => {
  describe.each(ways)('on %s, units %s', (sheet, order) => {
    test.each(papers.map((paper) => [paper.name, paper] as const))(
      '%s: every word once and in order, nothing outside, nothing overlapping, too small or parted, few pages nearly empty',
      async (_, paper) => {
        const shop = await workshop();
        const ready = await demo(name, sheet, order);
        const set = goodOf(setOnePaper(ready, paper, shop));
        const options = { fonts, theme: inEnglish(theme), ...leastOf(paper, ready, shop) };
        expect(checkLaidOut(set.blocks, set.laidOut, options).map(inWords)).toEqual([]);
        const { length } = set.laidOut.pages;
        expect(length).toBeGreaterThan(0);
        const empty = nearlyEmpty(set.laidOut);
        const most = Math.max(1, Math.floor((mostEmptyPercent / 100) * length));
        expect(empty.length, `nearly empty: ${empty.join(', ')}`).toBeLessThanOrEqual(most);
        expect(straggledEnds(set.laidOut)).toEqual([]);
        if (isCard(set.laidOut)) {
          expect(nearFoot(set.laidOut, theme.card.footClearMm * pointsPerMm, fonts)).toEqual([]);
          if (paper.name === 'card-something-is-wrong') expect(partsBegunLate(set.laidOut)).toEqual([]);
        }
        expect(partedIntroductions(set.laidOut)).toEqual([]);
        expect(partedClosings(set.laidOut)).toEqual([]);
        expect(straggledRows(set.laidOut)).toEqual([]);
        expect(emptyCells(set.blocks)).toEqual([]);
      },
    );
  });
});
