/** What the triangle beside a step means is told on the cards that have one, and on no other. */
import { expect, test } from 'vitest';
import { setOnePaper } from '../../src/kettlebook';
import type { LaidOut } from '../../src/layout/frame';
import { demo, demoNames, goodOf, workshop } from './made';

const shop = await workshop();
const cards = shop.papers.filter(
  ({ name, template }) => template === 'card' && name !== 'card-something-is-wrong',
);

const wordsOf = ({ pages }: LaidOut) =>
  pages
    .flatMap(({ items }) => items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])))
    .join(' ')
    .replace(/\s+/g, ' ');

/** Letters that tie a caution to a mark: they are read out as figures that say which caution holds. */
const marksOf = ({ structure }: LaidOut) =>
  structure.filter(({ type, alt }) => type === 'Figure' && /said above/.test(alt ?? '')).length;

test('both kinds of cards are among those of the demo cars', async () => {
  const told: boolean[] = [];
  for (const name of demoNames) {
    const ready = await demo(name);
    for (const paper of cards) {
      const { laidOut } = goodOf(setOnePaper(ready, paper, shop));
      const words = wordsOf(laidOut);
      if (!words.includes('Bar and arrow at a step')) continue;
      const tells = words.includes('Triangle with a letter');
      expect(tells, `${name} ${paper.name}`).toBe(marksOf(laidOut) > 0);
      told.push(tells);
    }
  }
  expect(told).toContain(true);
  expect(told).toContain(false);
});
