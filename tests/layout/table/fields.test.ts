import { describe, expect, it } from 'vitest';
import { contrast } from '../../../src/layout/contrast';
import type { PlacedField } from '../../../src/layout/frame';
import type { Block, CellField } from '../../../src/markup/block';
import { origin, table } from '../../helpers/blocks';
import { evenTheme, laidOutCleanly, squareOptions } from '../../helpers/squarePage';

const field = (name: string, more: Partial<CellField> = {}): CellField => ({
  kind: 'line',
  name,
  title: name,
  letters: 5,
  lines: 1,
  ...more,
});

/** A table of one row: words, and a cell for each field. */
function filledIn(...fields: readonly CellField[]): Block {
  const words = table({ rows: [['x', ...fields.map(() => '')]], style: 'plain' });
  return {
    ...words,
    columns: words.columns.map((column) => ({ ...column, weight: 0 })),
    body: words.body.map(({ cells }) => ({
      cells: cells.map((cell, index) => {
        const own = fields[index - 1];
        return own === undefined ? cell : { ...cell, field: own };
      }),
    })),
  };
}

function placed(...blocks: readonly Block[]): readonly PlacedField[] {
  const { pages } = laidOutCleanly(blocks, squareOptions(60, 30));
  return pages.flatMap(({ items }) => items.filter((item) => item.kind === 'field'));
}

describe('fields', () => {
  it('are as wide as their letters, half as wide as the type is high', () => {
    const [few, many] = placed(filledIn(field('a', { letters: 6 }), field('b', { letters: 24 })));
    expect((many?.widthPt ?? 0) - (few?.widthPt ?? 0)).toBeCloseTo((24 - 6) * 0.5 * 10, 6);
  });

  it('leave room for a pencil: 6 mm a line', () => {
    const height = (lines: number) =>
      placed(filledIn(field('a', { kind: 'lines', lines })))[0]?.heightPt ?? 0;
    expect(height(1)).toBeGreaterThan(13);
    expect(height(3) - height(2)).toBeGreaterThanOrEqual((6 / 25.4) * 72 - 0.01);
  });

  it('have a frame dark enough to be seen', () => {
    const { pages } = laidOutCleanly([filledIn(field('a'))], squareOptions(60, 30));
    const frames = (pages[0]?.items ?? []).flatMap((item) =>
      item.kind === 'shape' && item.shape.kind === 'rect' ? (item.shape.paint.stroke ?? []) : [],
    );
    expect(frames).toHaveLength(1);
    for (const { colour } of frames)
      expect(contrast(colour, evenTheme.colours.paper)).toBeGreaterThanOrEqual(3);
  });

  it('are boxes as high as they are wide where something is ticked', () => {
    const [box] = placed(filledIn(field('a', { kind: 'tick' })));
    expect(box?.widthPt).toBeCloseTo(box?.heightPt ?? 0, 6);
  });

  it('of several lines between blocks are ruled, from edge to edge', () => {
    const lines = { kind: 'lines', name: 'c', title: 'c' } as const;
    const [own] = placed({ kind: 'rule', lines: 3, field: lines, origin: origin() });
    expect(own?.widthPt).toBe(600);
  });

  it('each have a Form element, in the cell or beside the blocks', () => {
    const { structure, pages } = laidOutCleanly([filledIn(field('a'))], squareOptions(60, 30));
    const [own] = pages.flatMap(({ items }) => items.filter((item) => item.kind === 'field'));
    const form = structure[own?.tag ?? -1];
    expect(form?.type).toBe('Form');
    expect(structure[form?.parent ?? -1]?.type).toBe('TD');
  });
});
