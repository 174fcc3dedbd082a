/** The valve-position card: what bold means stands over the table, and one order of tags holds for the table and the list of places. */
import { describe, expect, test } from 'vitest';
import { setOnePaper } from '../../src/kettlebook';
import type { Block, Inline, TableBlock } from '../../src/markup/block';
import { demo, demoNames, goodOf, workshop } from '../whole/made';

const shop = await workshop();

const wordsOf = (content: readonly Inline[] = []) =>
  content.map((each) => (each.kind === 'text' ? each.text : ' ')).join('');

const tablesIn = (blocks: readonly Block[]): readonly TableBlock[] =>
  blocks.flatMap((block) =>
    block.kind === 'table' ? [block] : block.kind === 'group' ? tablesIn(block.blocks) : [],
  );

const firstCells = ({ body }: TableBlock) => body.map(({ cells }) => wordsOf(cells[0]?.content));

async function blocksOf(paper: string, name: string) {
  const found = shop.papers.find((each) => each.name === paper);
  if (found === undefined) throw new Error(`no ${paper}`);
  return goodOf(setOnePaper(await demo(name), found, shop));
}

describe.each(demoNames)('the valve positions of %s', (name) => {
  test('say over the table what bold means, on every face that it stands on', async () => {
    const [positions] = tablesIn((await blocksOf('card-valve-positions', name)).blocks);
    expect(wordsOf(positions?.caption)).toContain('Bold: otherwise than parked.');
  });

  test('have the tags in one order in the table and in the list of places', async () => {
    const [positions, places] = tablesIn((await blocksOf('card-valve-positions', name)).blocks);
    if (positions === undefined || places === undefined) throw new Error('no tables');
    const inTable = firstCells(positions);
    const inList = firstCells(places).flatMap((cell) => cell.split(', '));
    expect(inTable.length).toBeGreaterThan(10);
    // a line of the list holds several tags; the first of each is in order
    const heads = firstCells(places).map((cell) => inTable.indexOf(cell.split(', ')[0] ?? ''));
    expect(heads).toEqual([...heads].sort((one, other) => one - other));
    expect([...inList].sort()).toEqual([...inTable].sort());
  });
});

test.each(demoNames)('signs on the burner-front card of %s have no numbers under them', async (name) => {
  const { laidOut } = await blocksOf('card-burner-front', name);
  const figures = laidOut.structure.filter(({ type }) => type === 'Figure');
  expect(figures.length).toBeGreaterThan(1);
  const drawn = laidOut.pages
    .flatMap(({ items }) => items)
    .flatMap((item) => (item.kind === 'shape' && item.shape.kind === 'text' ? [item.shape.text] : []));
  expect(drawn.filter((text) => /^[A-Z]\d{3}$/.test(text))).toEqual([]);
});
