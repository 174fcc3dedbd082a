/** A panel as white as the paper is parted from the words by a line, and nothing is laid over the paper. */
import { describe, expect, it } from 'vitest';
import type { Block, CautionBlock } from '../../../src/markup/block';
import { caution } from '../../helpers/blocks';
import { evenTheme, laidOutCleanly, squareOptions } from '../../helpers/squarePage';

const { notice, warning } = evenTheme.cautions;

function shapesOf(block: Block) {
  return (laidOutCleanly([block], squareOptions(40, 20)).pages[0]?.items ?? []).flatMap((item) =>
    item.kind === 'shape' ? [item.shape] : [],
  );
}

const filled = (block: Block) =>
  shapesOf(block).flatMap((shape) =>
    shape.kind === 'rect' && shape.paint.fill !== undefined ? [shape.paint.fill] : [],
  );

/** Straight lines by how far they go across and down. */
const lines = (block: Block) =>
  shapesOf(block).flatMap((shape) => {
    if (shape.kind !== 'path' || shape.paint.stroke === undefined) return [];
    const [from, to] = shape.pieces;
    return from && to && 'x' in from && 'x' in to ? [{ across: to.x - from.x, down: to.y - from.y }] : [];
  });

const brief = (signal: CautionBlock['signal']): CautionBlock => ({
  ...caution(signal, 'Frost.'),
  brief: true,
});

describe('a caution whose panel is white', () => {
  it('has a line down beside its words where it is brief', () => {
    expect(filled(brief('notice'))).toEqual([]);
    const [line, ...others] = lines(brief('notice'));
    expect(others).toEqual([]);
    expect(line?.across).toBe(0);
    expect(line?.down).toBeGreaterThan(10);
    expect(filled(brief('warning'))).toContain(warning.panel);
    expect(lines(brief('warning'))).toEqual([]);
  });

  it('has a line across under its signal word where it is whole', () => {
    const whole = caution('notice', 'Frost.', 'It cracks.', 'Drain.');
    expect(filled(whole)).not.toContain(notice.panel);
    expect(lines(whole).map(({ down }) => down)).toEqual([0]);
    expect(lines(caution('warning', 'Hot.', 'It burns.', 'Gloves on.'))).toEqual([]);
  });
});
