/** Cars the program was not written for: each shape of plant goes through every check, and its papers speak of what it has. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { setOnePaper } from '../../src/kettlebook';
import { checkLaidOut } from '../../src/layout/check';
import { inEnglish } from '../helpers/english';
import { answeredSkeletons } from '../newcar/skeletons';
import { carFrom, goodOf, inWords, leastOf, root, workshop } from '../whole/made';
import { missingParts, strangeTerms, wordsOfPaper } from '../whole/partWords';

const folder = join(root, 'tests', 'fixtures', 'cars');
const fixtures = readdirSync(folder).map(
  (file) => [file.replace('.yaml', ''), readFileSync(join(folder, file), 'utf8')] as const,
);
const shop = await workshop();

describe.each([...fixtures, ...answeredSkeletons()])('%s', (_, text) => {
  const opened = carFrom(text);

  test('passes every check, the proof with it', async () => {
    const outcome = await opened;
    expect(
      outcome.ok ? [] : outcome.problems.filter(({ severity }) => severity === 'error').map(inWords),
    ).toEqual([]);
  });

  test.each(shop.papers.map((paper) => [paper.name, paper] as const))(
    '%s is laid out whole, names the parts that belong there, and speaks of none that the car has not got',
    async (name, paper) => {
      const ready = goodOf(await opened);
      const set = goodOf(setOnePaper(ready, paper, shop));
      const options = {
        fonts: shop.fonts,
        theme: inEnglish(shop.theme),
        ...leastOf(paper, ready, shop),
      };
      expect(checkLaidOut(set.blocks, set.laidOut, options).map(inWords)).toEqual([]);
      const words = wordsOfPaper(set);
      expect(words).not.toMatch(/NaN|undefined|Infinity|\[object/);
      expect(missingParts(words, ready, name)).toEqual([]);
      expect(strangeTerms(words, ready, text)).toEqual([]);
    },
  );
});

test('a range table says what further tanks it counts, and what must be opened for them', async () => {
  const text = fixtures.find(([name]) => name === 'quartet')?.[1] ?? '';
  const table = shop.papers.filter(({ name }) => name === 'range-table');
  const ready = goodOf(await carFrom(text));
  const words = table.map((paper) => wordsOfPaper(goodOf(setOnePaper(ready, paper, shop)))).join();
  expect(words).toContain('stick in the left water tank');
  expect(words).toContain('right water tank only with the right water valve (W2) open');
  expect(words).toContain('reserve oil tank only with the reserve oil valve (O2) open');
});
