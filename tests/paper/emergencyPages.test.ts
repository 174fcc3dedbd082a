/** Trouble in the manual: whoever opens it at an emergency finds that one alone, from the top of its page. */
import { expect, test } from 'vitest';
import { setOnePaper } from '../../src/kettlebook';
import { demo, demoNames, goodOf, workshop } from '../whole/made';

const shop = await workshop();
const [manual] = shop.papers.filter(({ name }) => name === 'owners-manual');
if (manual === undefined) throw new Error('no manual');

test.each(demoNames)('every emergency of %s begins its page', async (name) => {
  const ready = await demo(name);
  const { destinations } = goodOf(setOnePaper(ready, manual, shop)).laidOut;
  const ids = ready.proof.procedures
    .filter(({ phase }) => phase === 'emergency')
    .map(({ id }) => `procedure-${id}`);
  expect(ids.length).toBeGreaterThan(8);
  const found = destinations.filter((each) => ids.includes(each.name));
  expect(found.map((each) => each.name)).toEqual(ids);
  const pages = found.map(({ page }) => page);
  expect(new Set(pages).size).toBe(ids.length);
  for (const { name: own, page, y } of found) {
    const above = destinations.filter((each) => each.page === page && each.y < y);
    expect(
      above.map((each) => each.name),
      own,
    ).toEqual([]);
  }
  // most stand whole on one page
  const whole = pages.slice(1).filter((page, at) => page - (pages[at] ?? 0) === 1);
  expect(whole.length).toBeGreaterThan(ids.length / 2);
});
