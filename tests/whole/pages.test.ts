import { describe, expect, test } from 'vitest';
import { setOnePaper, worldOf } from '../../src/kettlebook';
import { checkLaidOut } from '../../src/layout/check';
import { inEnglish } from '../helpers/english';
import { demo, demoNames, goodOf, inWords, type UnitOrder, workshop } from './made';

/** Paper sizes and orders of units. */
const ways: readonly (readonly ['letter' | 'a4', UnitOrder])[] = [
  ['letter', 'own'],
  ['letter', 'turned'],
  ['a4', 'own'],
  ['a4', 'turned'],
];

const { papers, fonts, theme } = await workshop();

describe.each(demoNames)('%s', (name) => {
  describe.each(ways)('on %s, units %s', (sheet, order) => {
    test.each(papers.map((paper) => [paper.name, paper] as const))(
      '%s: every word once and in order, nothing outside, nothing overlapping, nothing too small',
      async (_, paper) => {
        const shop = await workshop();
        const ready = await demo(name, sheet, order);
        const set = goodOf(setOnePaper(ready, paper, shop));
        const options = { fonts, theme: inEnglish(theme), leastPt: paper.leastPt(worldOf(ready, shop)) };
        expect(checkLaidOut(set.blocks, set.laidOut, options).map(inWords)).toEqual([]);
        expect(set.laidOut.pages.length).toBeGreaterThan(0);
      },
    );
  });
});
