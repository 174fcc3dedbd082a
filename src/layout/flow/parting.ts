/** Where a book is parted for two to lay it out: by how much its chapters say, which is about what they take. */
import type { Block, Inline } from '../../markup/block';
import { eachBlock } from '../survey';

/** How much a chapter says: letters in it, and what a block takes beside them. */
export function lengthOf(chapter: readonly Block[]): number {
  return eachBlock(chapter).reduce((sum, block) => sum + perBlock + lettersIn(block), 0);
}

/**
 * Where to part chapters of these lengths for two, so that the first part comes as near as it can to `share` of the whole; neither
 * part is empty.
 */
export function partedAt(lengths: readonly number[], share: number): number {
  const wanted = share * lengths.reduce((sum, length) => sum + length, 0);
  let before = 0;
  let best = { at: 1, off: Number.POSITIVE_INFINITY };
  lengths.slice(0, -1).forEach((length, index) => {
    before += length;
    const off = Math.abs(before - wanted);
    if (off < best.off) best = { at: index + 1, off };
  });
  return best.at;
}

/** What a block takes beside its letters, in letters. */
const perBlock = 20;
/** A drawing takes as long as so many letters. */
const perFigure = 400;

function lettersIn(block: Block): number {
  switch (block.kind) {
    case 'heading':
    case 'paragraph':
      return lettersOf(block.content);
    case 'steps':
      return sumOf(block.items, ({ action, result, remark }) => sumOf([action, result, remark], lettersOf));
    case 'table':
      return sumOf([...block.head, ...block.body], (row) =>
        sumOf(row.cells, ({ content }) => lettersOf(content)),
      );
    case 'caution':
      return sumOf([block.hazard, block.consequence, block.avoidance], lettersOf);
    case 'definitions':
      return sumOf(block.items, ({ term, meaning }) => lettersOf(term) + lettersOf(meaning));
    case 'figure':
      return perFigure;
    default:
      return 0;
  }
}

function lettersOf(content: readonly Inline[]): number {
  return sumOf(content, (inline) => (inline.kind === 'text' ? inline.text.length : 0));
}

function sumOf<T>(all: readonly T[], of: (one: T) => number): number {
  return all.reduce((sum, one) => sum + of(one), 0);
}
