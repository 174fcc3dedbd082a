/** The list of what nobody touches is read as complete, so it is. */
import { describe, expect, test } from 'vitest';
import { setOnePaper, worldOf } from '../../src/kettlebook';
import { neverTouchRows } from '../../src/paper/context/docent';
import { carFrom, demo, demoNames, goodOf, specText, workshop } from '../whole/made';

const shop = await workshop();

describe.each(demoNames)('%s', (name) => {
  test('every valve stands in one row with its reason, and a last row covers what has no name here', async () => {
    const ready = await demo(name);
    const world = worldOf(ready, shop);
    const named = neverTouchRows(world).flatMap(({ parts }) => parts.map(({ id }) => id));
    expect(new Set(named).size).toBe(named.length);
    for (const id of Object.keys(world.car.spec.valves)) expect(named).toContain(id);
    const paper = shop.papers.find((each) => each.name === 'docent-guide');
    if (paper === undefined) throw new Error('there is no docent guide');
    const { blocks } = goodOf(setOnePaper(ready, paper, shop));
    const table = blocks.find(
      (block) => block.kind === 'table' && JSON.stringify(block.body).includes('It guards the boiler.'),
    );
    if (table?.kind !== 'table') throw new Error('it has no such table');
    const last = JSON.stringify(table.body.at(-1));
    for (const kind of ['valve', 'cock', 'tap', 'drain', 'pump', 'switch'])
      expect(last).toMatch(new RegExp(`Every other .*${kind}`));
  });
});

test('a row whose parts all stand in rows before it falls away', async () => {
  const world = worldOf(goodOf(await carFrom(specText('thimble'))), shop);
  const rows = neverTouchRows(world);
  for (const { parts } of rows) expect(parts.length).toBeGreaterThan(0);
  const { 'never-touch': first, ...rest } = world.guide.docent;
  const twice = {
    ...world,
    guide: { ...world.guide, docent: { ...rest, 'never-touch': [...first, ...first] } },
  };
  expect(neverTouchRows(twice)).toEqual(rows);
});
