/** Tables whose cells may have nothing to say: columns that nothing fills are left out, a dash stands in other empty cells. */
import type { TableBlock, TableCell, TableRow } from '../block';

type Cells = Pick<TableBlock, 'columns' | 'head' | 'body'>;

/** The table without the columns that nothing in its body fills, dashes in what stays empty. */
export function dashed({ columns, head, body }: Cells): Cells {
  const filled = columns.map((_, column) => body.length === 0 || body.some((row) => fills(row, column)));
  // a cell over several columns cannot lose one of them
  const spanned = columns.map((_, column) => [...head, ...body].some((row) => isSpanned(row, column)));
  const kept = columns.map((_, column) => filled[column] === true || spanned[column] === true);
  const narrowed = (row: TableRow): TableRow => ({
    ...row,
    cells: row.cells.filter((_, index) => kept[columnOf(row, index)] !== false),
  });
  return {
    columns: columns.filter((_, column) => kept[column]),
    head: head.map(narrowed),
    body: body.map(narrowed).map((row) => ({ ...row, cells: row.cells.map(withDash) })),
  };
}

const dash = [{ kind: 'text', text: '–', strong: false, emphasis: false }] as const;

function withDash(cell: TableCell): TableCell {
  return isEmpty(cell) ? { ...cell, content: dash } : cell;
}

function isEmpty({ content, field }: TableCell): boolean {
  return (
    field === undefined && content.every((inline) => inline.kind === 'text' && inline.text.trim() === '')
  );
}

function columnOf({ cells }: TableRow, index: number): number {
  return cells.slice(0, index).reduce((sum, { span }) => sum + span, 0);
}

function cellAt(row: TableRow, column: number): TableCell | undefined {
  return row.cells.find((cell, index) => {
    const from = columnOf(row, index);
    return column >= from && column < from + cell.span;
  });
}

function fills(row: TableRow, column: number): boolean {
  const cell = cellAt(row, column);
  return cell !== undefined && !isEmpty(cell);
}

function isSpanned(row: TableRow, column: number): boolean {
  return (cellAt(row, column)?.span ?? 1) > 1;
}
