/** The inspection sheet: how the boiler has to be for each row, and in which order. */
import { describe, expect, test } from 'vitest';
import { setOnePaper } from '../../src/kettlebook';
import type { Inline } from '../../src/markup/block';
import { boilerStates } from '../../src/paper/guide/forms';
import { demo, demoNames, goodOf, workshop } from './made';

const shop = await workshop();

const strongIn = (content: readonly Inline[]) =>
  content.flatMap((each) => (each.kind === 'text' && each.strong ? [each.text] : [])).join('');

describe.each(demoNames)('%s', (name) => {
  test('each row says it, first what wants it empty, last what wants steam; a row keeps its field', async () => {
    const ready = await demo(name);
    const paper = shop.papers.find((each) => each.name === 'inspection-sheet');
    if (paper === undefined) throw new Error('there is no inspection sheet');
    const { blocks } = goodOf(setOnePaper(ready, paper, shop));
    const table = blocks.find(
      (block) => block.kind === 'table' && JSON.stringify(block.body).includes('looked-at-1-found'),
    );
    if (table?.kind !== 'table') throw new Error('it has no table of what is looked at');
    const words = boilerStates.map((state) => ready.language.words['boiler-for'][state]);
    const order = table.body.map(({ cells }) => words.indexOf(strongIn(cells[2]?.content ?? [])));
    expect(order.length).toBeGreaterThan(15);
    expect(order).not.toContain(-1);
    expect(order).toEqual([...order].sort());
    expect(new Set(order)).toEqual(new Set([0, 1, 2]));
    const fields = JSON.stringify(table.body).match(/looked-at-\d+-found/g) ?? [];
    expect(new Set(fields).size).toBe(order.length);
  });

  test('a safety valve is looked at cold and tried in steam, and every tank of fuel has its row', async () => {
    const { car, guide } = await demo(name);
    const rows = guide.upkeep.inspection;
    const nameOf = (id: string) => car.parts.get(id)?.name ?? id;
    const valve = rows.filter(({ part }) => part === nameOf(car.spec.boiler['safety-valve'] ?? ''));
    expect(valve.map(({ boiler }) => boiler)).toEqual(['cold', 'steam']);
    expect(valve[0]?.look).not.toContain('steam');
    expect(valve[1]?.look).toContain('steam');
    const fuelTanks = Object.entries(car.spec.tanks).filter(([, { holds }]) => holds in car.spec.fuels);
    expect(fuelTanks.length).toBeGreaterThan(0);
    for (const [id] of fuelTanks) expect(rows.filter(({ part }) => part === nameOf(id)).length, id).toBe(1);
  });
});
