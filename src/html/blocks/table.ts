/** Tables: a caption, heads that say what they head, and a frame that scrolls where the screen is narrower. */
import { plainText } from '../../layout/survey';
import type { TableBlock, TableCell, TableColumn, TableRow } from '../../markup/block';
import { element, type Html } from '../element';
import { words } from '../inline';
import type { Writing } from '../writing';

/** A table in its frame. */
export function writeTable(block: TableBlock, writing: Writing): Html {
  const hasCaption = block.caption.length > 0;
  const name = writing.fresh('table');
  const caption = hasCaption ? [element('caption', { id: name }, words(block.caption, writing))] : [];
  const head =
    block.head.length > 0 ? [element('thead', {}, ...rows(block.head, block.columns, writing))] : [];
  const body = element('tbody', {}, ...rows(block.body, block.columns, writing));
  const style = [block.style, ...(block.striped ? ['striped'] : [])].join(' ');
  const table = element('table', { id: block.id, class: style }, ...caption, ...head, body);
  const said = hasCaption ? { 'aria-labelledby': name } : { 'aria-label': writing.look.words.table };
  return element('div', { class: 'frame', role: 'group', tabindex: 0, ...said }, table);
}

function rows(list: readonly TableRow[], columns: readonly TableColumn[], writing: Writing): Html[] {
  return list.map((row) => {
    let at = 0;
    const cells = row.cells.map((cell) => {
      const column = columns[at];
      at += cell.span;
      return writeCell(cell, column, writing);
    });
    return element('tr', {}, ...cells);
  });
}

/** A head without words heads nothing, so it is written as a plain cell. */
function writeCell(cell: TableCell, column: TableColumn | undefined, writing: Writing): Html {
  const isHead = cell.head !== 'none' && plainText(cell.content) !== '';
  const scope = isHead ? { scope: cell.head === 'row' ? 'row' : 'col' } : {};
  const colspan = cell.span === 1 ? undefined : cell.span;
  const align = column === undefined || column.align === 'left' ? undefined : `to-${column.align}`;
  return element(isHead ? 'th' : 'td', { ...scope, colspan, class: align }, words(cell.content, writing));
}
