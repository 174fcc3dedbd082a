import { describe, expect, test } from 'vitest';
import { setOnePaper, worldOf } from '../../src/kettlebook';
import { checkLaidOut } from '../../src/layout/check';
import { inEnglish } from '../helpers/english';
import { demo, demoNames, goodOf, inWords, workshop } from './made';

const { papers, fonts, theme } = await workshop();

describe.each(demoNames)('%s', (name) => {
  describe.each(['letter', 'a4'] as const)('on %s', (sheet) => {
    test.each(papers.map((paper) => [paper.name, paper] as const))(
      '%s: every word once and in order, nothing outside, nothing overlapping, nothing too small',
      async (_, paper) => {
        const shop = await workshop();
        const ready = await demo(name, sheet);
        const set = goodOf(setOnePaper(ready, paper, shop));
        const options = { fonts, theme: inEnglish(theme), leastPt: paper.leastPt(worldOf(ready, shop)) };
        expect(checkLaidOut(set.blocks, set.laidOut, options).map(inWords)).toEqual([]);
        expect(set.laidOut.pages.length).toBeGreaterThan(0);
      },
    );
  });
});
