/** Papers of a car of which little was measured: they are made, and say what is not known rather than nonsense. */
import { describe, expect, test } from 'vitest';
import { setOnePaper } from '../../src/kettlebook';
import { carFrom, goodOf, specText, workshop } from './made';

const shop = await workshop();

/** Thimble with nothing measured that figures are worked out from and the proof can do without. */
const unmeasured =
  /^ +(?:steel-mass|heating-surface|efficiency|full-rate|low-rate|stroke-volume|strokes-per-engine-turn|delivers|log|least-to-move|pressure: about|use: about .* mi).*\n/gm;
const bare = specText('thimble')
  .replace(unmeasured, '')
  .replace(/^ {2}(?:water|fuel)-use:\n(?: {4}- .*\n)+/gm, '')
  .replace(/^ {4}(?:shape|stick):.*\n(?: {6}.*\n)*/gm, '');
const ready = goodOf(await carFrom(bare));

describe('thimble with next to nothing measured', () => {
  test('leaves most that could be measured unmeasured', () => {
    const unknown = ready.figures.all.filter(({ value }) => value.kind === 'unknown').map(({ id }) => id);
    for (const id of [
      'steam-cold-working',
      'fire-standing',
      'water-range',
      'start-up-good',
      'stick-water-tank',
    ])
      expect(unknown).toContain(id);
    expect(unknown.length).toBeGreaterThan(6);
  });

  test.each(shop.papers.map((paper) => [paper.name, paper] as const))('%s', (_, paper) => {
    const { laidOut } = goodOf(setOnePaper(ready, paper, shop));
    const words = laidOut.pages
      .flatMap(({ items }) => items.flatMap((item) => (item.kind === 'text' ? [item.text] : [])))
      .join(' ');
    expect(words.length).toBeGreaterThan(100);
    expect(words).not.toMatch(/NaN|undefined|Infinity|\[object/);
  });
});
