/** A cell in a table with boxes is drawn as one to write in if it is empty: none is empty by chance. */
import { describe, expect, test } from 'vitest';
import { setOnePaper } from '../../src/kettlebook';
import type { Block } from '../../src/markup/block';
import { demo, demoNames, goodOf, workshop } from './made';

const shop = await workshop();

type Table = Extract<Block, { kind: 'table' }>;

function tablesIn(blocks: readonly Block[]): readonly Table[] {
  return blocks.flatMap((block) => {
    if (block.kind === 'table') return [block];
    return block.kind === 'group' ? tablesIn(block.blocks) : [];
  });
}

const isEmpty = (cell: Table['body'][number]['cells'][number]) =>
  cell.content.every((inline) => inline.kind === 'text' && inline.text.trim() === '');

describe.each(demoNames)('%s', (name) => {
  test('has columns to write in and columns of words in its tables with boxes, and none of both', async () => {
    const ready = await demo(name);
    const mixed: string[] = [];
    let tables = 0;
    for (const paper of ready.papers)
      for (const { head, body } of tablesIn(goodOf(setOnePaper(ready, paper, shop)).blocks).filter(
        ({ boxes }) => boxes === true,
      )) {
        tables += 1;
        const columns = body[0]?.cells.length ?? 0;
        for (let at = 0; at < columns; at += 1) {
          const empty = body.map(({ cells }) => cells[at]).map((cell) => cell !== undefined && isEmpty(cell));
          if (empty.includes(true) && empty.includes(false))
            mixed.push(`${paper.name}: column ${at + 1} of ${JSON.stringify(head)}`.slice(0, 300));
        }
      }
    expect(tables).toBeGreaterThan(3);
    expect(mixed).toEqual([]);
  });
});
