/** Cells of tables that are empty, though nobody is to write in them. */
import { eachBlock, plainText } from '../../src/layout/survey';
import type { Block, TableBlock, TableCell } from '../../src/markup/block';

/** Columns that nothing fills, and cells that are empty before one that is not, in tables that are not written in. */
export function emptyCells(blocks: readonly Block[]): string[] {
  return eachBlock(blocks).flatMap((block) => {
    if (block.kind !== 'table' || block.boxes === true) return [];
    const { template, line } = block.origin;
    return [...emptyColumns(block), ...gaps(block)].map((fault) => `${template}:${line} ${fault}`);
  });
}

function emptyColumns({ columns, body }: TableBlock): string[] {
  return columns.flatMap((_, column) => {
    const cells = body.map((row) => (row.cells.length === columns.length ? row.cells[column] : undefined));
    const isEmptyColumn = cells.length > 0 && cells.every((cell) => cell !== undefined && isEmpty(cell));
    return isEmptyColumn ? [`column ${column + 1} is empty`] : [];
  });
}

function gaps({ body }: TableBlock): string[] {
  return body.flatMap(({ cells }, row) => {
    const last = cells.findLastIndex((cell) => !isEmpty(cell));
    return cells.slice(0, Math.max(0, last)).some(isEmpty) ? [`row ${row + 1} has an empty cell`] : [];
  });
}

function isEmpty({ content, field }: TableCell): boolean {
  const isBlank = content.every(({ kind }) => kind !== 'page-of') && plainText(content).trim() === '';
  return field === undefined && isBlank;
}
