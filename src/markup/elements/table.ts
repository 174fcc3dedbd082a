/** `table` and everything in it. */
import type { TableCell, TableColumn, TableRow } from '../block';
import type { Checked } from '../check';
import { baseOf, type ElementReader, elementsOf, type Reader, takeParts } from '../reader';
import { fieldIn } from './field';

/** A table. Every row has as many columns as `colgroup` says or, without one, as the first row has. */
export const readTable: ElementReader = (node, reader) => {
  const parts = takeParts(node, reader, [
    { form: 'caption', least: 0, most: 1 },
    { form: 'colgroup', least: 0, most: 1 },
    { form: 'thead', least: 0, most: 1 },
    { form: 'tbody', least: 1, most: 1 },
  ]);
  const headRows = parts.thead.flatMap(elementsOf);
  const bodyRows = parts.tbody.flatMap(elementsOf);
  if (headRows.length + bodyRows.length === 0) {
    reader.report('markup-empty', node, {
      message: 'the table has no rows',
      mend: 'leave the table out with `{{#if}}` when there is nothing to list',
    });
  }
  const columns = columnsOf(parts.colgroup, headRows[0] ?? bodyRows[0]);
  const words = (node.attributes.get('class') ?? '').split(/\s+/);
  const body = bodyRows.map((row) => readRow(row, columns.length, reader));
  return {
    kind: 'table',
    ...baseOf(node),
    caption: reader.words(parts.caption[0]),
    columns,
    head: headRows.map((row) => readRow(row, columns.length, reader)),
    body: words.includes('dashed') ? body.map(dashed) : body,
    style: words.includes('large') ? 'large' : words.includes('plain') ? 'plain' : 'ruled',
    striped: words.includes('striped'),
    ...(words.includes('boxes') ? { boxes: true } : {}),
  };
};

function columnsOf(groups: readonly Checked[], firstRow: Checked | undefined): readonly TableColumn[] {
  const [group] = groups;
  if (group) return elementsOf(group).map(columnOf);
  const count = firstRow ? elementsOf(firstRow).reduce((sum, cell) => sum + spanOf(cell), 0) : 0;
  return Array.from({ length: count }, () => ({ align: 'left', weight: 1 }) as const);
}

function columnOf(col: Checked): TableColumn {
  const align = col.attributes.get('data-align');
  return {
    align: align === 'right' || align === 'centre' ? align : 'left',
    weight: Number(col.attributes.get('data-weight') ?? 1),
  };
}

function readRow(row: Checked, columns: number, reader: Reader): TableRow {
  const cells = elementsOf(row).map((cell) => readCell(cell, row.form, reader));
  const width = cells.reduce((sum, cell) => sum + cell.span, 0);
  if (width !== columns) {
    reader.report('markup-table', row, {
      message: `this row has ${width} columns, the table ${columns}`,
      mend: 'give the row as many cells as there are columns, or make one wider with `colspan`',
    });
  }
  const id = row.attributes.get('id');
  return id === undefined ? { cells } : { cells, id };
}

const dash = [{ kind: 'text', text: '–', strong: false, emphasis: false }] as const;

/** The row with a dash in every cell that says nothing. Columns stay, so that the next issue of a car has the same. */
function dashed(row: TableRow): TableRow {
  const saysNothing = ({ content, field }: TableCell) =>
    field === undefined && content.every((inline) => inline.kind === 'text' && inline.text.trim() === '');
  return { ...row, cells: row.cells.map((cell) => (saysNothing(cell) ? { ...cell, content: dash } : cell)) };
}

function readCell(cell: Checked, row: Checked['form'], reader: Reader): TableCell {
  const scope = cell.attributes.get('scope');
  const heads = scope === undefined ? (row === 'tr in thead' ? 'col' : 'row') : scope;
  const field = fieldIn(cell, reader);
  return {
    content: reader.words(cell),
    span: spanOf(cell),
    head: cell.form === 'td' ? 'none' : heads === 'col' ? 'column' : 'row',
    ...(cell.attributes.has('data-counts') ? { counts: true } : {}),
    ...(field === undefined ? {} : { field }),
  };
}

function spanOf(cell: Checked): number {
  return Number(cell.attributes.get('colspan') ?? 1);
}
