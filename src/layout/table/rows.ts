/** Rows of a table, set and ready to be placed at any height. */
import type { ChangeMark, TableBlock, TableCell, TableRow } from '../../markup/block';
import { changeLayer } from '../blocks/change';
import { fieldHeightPt, placeField } from '../blocks/field';
import type { PlacedItem, StructureIndex } from '../frame';
import { placeText, setCut, textHeight } from '../inline/text';
import { type Cut, cutText } from '../inline/tokens';
import type { TextStyle } from '../look';
import type { Layer } from '../pieces';
import type { Setting } from '../setting';
import { moveItem } from '../shape';
import { cellPadding, cellStyle, type Grid, gridCells } from './cells';

/** A row with its items, counted from the row's top. */
export interface SetRow {
  readonly heightPt: number;
  readonly items: readonly PlacedItem[];
  /** A row that is one head over all columns; it stays with the row below. */
  readonly opensSection: boolean;
  /** A row with room for a pencil, which it keeps. */
  readonly isFilledIn: boolean;
  readonly change?: ChangeMark;
  /** Target of links that lead to it. */
  readonly id?: string;
}

/** Between a field and the lines above and below its row. */
const fieldInsetPt = 1.75;

/** Where a table stands and how its cells are set. */
export interface RowContext {
  readonly block: TableBlock;
  readonly grid: Grid;
  readonly x: number;
  readonly setting: Setting;
}

/** Sets a row. With `parent` its cells enter the structure tree; without, they are an artifact. */
export function setRow(row: TableRow, context: RowContext, parent?: StructureIndex): SetRow {
  const { block, grid, x, setting } = context;
  const tag = parent === undefined ? undefined : setting.structure.add('TR', parent);
  const isHead = row.cells.every((cell) => cell.head === 'column');
  const cells = gridCells(row).map(({ cell, from }) => {
    const own = tag === undefined ? undefined : cellTag(cell, tag, setting);
    const style = cellStyle(cell, grid.style);
    const pad = cellPadding(grid, from, cell.span, block.columns.length);
    const left = (grid.edges[from] ?? 0) + pad.left;
    const right = (grid.edges[from + cell.span] ?? grid.widthPt) - pad.right;
    const words = cellWords(cell, style, context, own);
    const text = setCut(words, style, right - left, setting, block.origin);
    const align = cell.span === block.columns.length ? 'left' : (block.columns[from]?.align ?? 'left');
    return { cell, text, x: x + left, widthPt: right - left, align, tag: own };
  });
  const texts = Math.max(grid.style.leadingPt, ...cells.map(({ text }) => textHeight(text)));
  const fieldLines = Math.max(0, ...row.cells.map(({ field }) => field?.lines ?? 0));
  const isFilledIn = fieldLines > 0;
  const tallest = isFilledIn ? Math.max(texts, fieldHeightPt(fieldLines, setting) - 2 * grid.padY) : texts;
  const heightPt = tallest + 2 * grid.padY;
  const items = cells.flatMap(({ cell, text, x: cellX, widthPt, align, tag: own }) => {
    if (cell.field !== undefined) {
      const box = { x: cellX, y: fieldInsetPt, widthPt, heightPt: heightPt - 2 * fieldInsetPt };
      return placeField(cell.field, box, setting, own);
    }
    const below = isHead ? tallest - textHeight(text) : isFilledIn ? (tallest - textHeight(text)) / 2 : 0;
    return placeText(text, cellX, grid.padY + below, align, setting, own);
  });
  const opensSection = row.cells.length === 1 && row.cells[0]?.head !== 'none';
  return {
    heightPt,
    items,
    opensSection,
    isFilledIn,
    ...(row.change === undefined ? {} : { change: row.change }),
    ...(row.id === undefined ? {} : { id: row.id }),
  };
}

/** A cell's words as measured, unless they hold links, which need elements of the structure tree. */
function cellWords(
  cell: TableCell,
  style: TextStyle,
  { block, grid, setting }: RowContext,
  tag: StructureIndex | undefined,
): Cut {
  const leads = cell.content.some(
    (inline) => inline.kind === 'page-of' || (inline.kind === 'text' && inline.link),
  );
  const measured = leads ? undefined : grid.words.get(cell);
  return measured ?? cutText(cell.content, style, setting, block.origin, tag);
}

function cellTag(
  cell: TableRow['cells'][number],
  parent: StructureIndex,
  { structure }: Setting,
): StructureIndex {
  const span = cell.span > 1 ? { columnSpan: cell.span } : {};
  if (cell.head === 'none') return structure.add('TD', parent, span);
  return structure.add('TH', parent, { ...span, scope: cell.head === 'row' ? 'Row' : 'Column' });
}

/** The row with so much less space above and below its words. */
export function closedUpRow(row: SetRow, lessPt: number): SetRow {
  return {
    ...row,
    heightPt: row.heightPt - 2 * lessPt,
    items: row.items.map((item) => moveItem(item, 0, -lessPt)),
  };
}

/** A row at its height, with what is to be marked beside it. */
export function rowLayers({ items, heightPt, change }: SetRow, y: number): readonly Layer[] {
  const own: Layer = { y, items };
  return change === undefined ? [own] : [own, { ...changeLayer(heightPt, change), y }];
}
