/** The grid of a table: where each cell stands, its type and its padding. */
import type { TableBlock, TableCell, TableRow } from '../../markup/block';
import { fieldWidthPt } from '../blocks/field';
import { fits } from '../fits';
import { extentOf, forcedLinesPt } from '../inline/extent';
import { type Cut, cutText } from '../inline/tokens';
import { strongStyle, type TextStyle } from '../look';
import type { Setting } from '../setting';
import { type ColumnNeed, type ColumnWidths, type SpanNeed, shareWidth } from './columns';

/** A table's measures once its type is chosen. */
export interface Grid {
  readonly style: TextStyle;
  /** Left edges of the columns, counted from the table's left; one more for the right edge. */
  readonly edges: readonly number[];
  readonly widthPt: number;
  readonly padX: number;
  readonly padY: number;
  /** Padding at the table's own left and right edge. */
  readonly padEdge: number;
  /** The cells' words as they were measured. */
  readonly words: ReadonlyMap<TableCell, Cut>;
  /** Some column is narrower than its longest word. */
  readonly breaksWords: boolean;
}

/** A cell with the columns it stands in. */
export interface GridCell {
  readonly cell: TableCell;
  readonly from: number;
}

/** The cells of a row with their columns. */
export function gridCells(row: TableRow): GridCell[] {
  let from = 0;
  return row.cells.map((cell) => {
    const placed = { cell, from };
    from += cell.span;
    return placed;
  });
}

/** The style of a cell: heads are strong. */
export function cellStyle(cell: TableCell, style: TextStyle): TextStyle {
  return cell.head === 'none' ? style : strongStyle(style);
}

/** Space left and right of a cell's text. */
export function cellPadding(
  grid: Pick<Grid, 'padX' | 'padEdge'>,
  from: number,
  span: number,
  columns: number,
) {
  return {
    left: from === 0 ? grid.padEdge : grid.padX,
    right: from + span >= columns ? grid.padEdge : grid.padX,
  };
}

/**
 * Chooses the first style of the table's kind in which no word is broken, or the last, and shares out the width.
 */
export function chooseGrid(block: TableBlock, widthPt: number, setting: Setting): Grid {
  const { look } = setting;
  const padEdge = block.striped || block.boxes === true ? look.space.cellX : 0;
  const padding = { padX: look.space.cellX, padY: look.space.cellY, padEdge };
  let chosen: { style: TextStyle; widths: ColumnWidths; words: Map<TableCell, Cut> } | undefined;
  for (const style of look.tables[block.style]) {
    const words = new Map<TableCell, Cut>();
    chosen = { style, widths: measureColumns(block, style, padding, widthPt, setting, words), words };
    if (!chosen.widths.breaksWords) break;
  }
  const edges = [0];
  for (const width of chosen?.widths.widthsPt ?? []) edges.push((edges[edges.length - 1] ?? 0) + width);
  return {
    style: chosen?.style ?? look.body,
    edges,
    widthPt: edges[edges.length - 1] ?? 0,
    words: chosen?.words ?? new Map(),
    breaksWords: chosen?.widths.breaksWords ?? false,
    ...padding,
  };
}

function measureColumns(
  block: TableBlock,
  style: TextStyle,
  padding: Pick<Grid, 'padX' | 'padEdge'>,
  widthPt: number,
  setting: Setting,
  measured: Map<TableCell, Cut>,
): ColumnWidths {
  const columns = block.columns.map(({ weight }) => ({ minPt: 0, maxPt: 0, weight }));
  const spans: SpanNeed[] = [];
  const rows: CellLine[][] = [];
  const measure = (cell: TableCell, from: number, lines: CellLine[]) => {
    const own = cellStyle(cell, style);
    const cut = cutText(cell.content, own, setting, block.origin);
    measured.set(cell, cut);
    const words = extentOf(cut, own.sizePt, setting.look.fonts);
    const fieldPt = cell.field === undefined ? 0 : fieldWidthPt(cell.field, own.sizePt);
    const wordsPt = Math.max(words.maxPt, fieldPt);
    const { left, right } = cellPadding(padding, from, cell.span, columns.length);
    const minPt = Math.max(words.minPt, fieldPt) + left + right;
    // what heads a section has the whole width of a table that takes all there is, and asks no column for more
    const hasAll = cell.span === columns.length && columns.some(({ weight }) => weight > 0);
    const need = { minPt, maxPt: hasAll && cell.span > 1 ? minPt : wordsPt + left + right };
    const column = columns[from];
    if (cell.span > 1) spans.push({ from, count: cell.span, ...need });
    else if (column !== undefined) {
      const forced = forcedLinesPt(cut);
      lines.push({ from, linesPt: forced.length > 1 ? forced : [wordsPt], padPt: left + right });
      column.minPt = Math.max(column.minPt, need.minPt);
      column.maxPt = Math.max(column.maxPt, need.maxPt);
    }
  };
  const measureRow = (row: TableRow) => {
    const lines: CellLine[] = [];
    let from = 0;
    for (const cell of row.cells) {
      measure(cell, from, lines);
      from += cell.span;
    }
    rows.push(lines);
  };
  block.head.forEach(measureRow);
  block.body.forEach(measureRow);
  const needs: readonly ColumnNeed[] = columns;
  return shareWidth(needs, spans, widthPt, (widthsPt) => linesAt(rows, widthsPt));
}

/** A cell’s column, the widths of its words between forced line ends, and the space beside them. */
interface CellLine {
  readonly from: number;
  readonly linesPt: readonly number[];
  readonly padPt: number;
}

/** Lines are broken between words, so that one holds about this share of its width. */
const filledShare = 0.94;

/** About how many lines the rows come to in columns so wide. Cells over several columns are left out. */
function linesAt(rows: readonly (readonly CellLine[])[], widthsPt: readonly number[]): number {
  return rows.reduce((sum, cells) => {
    const lines = cells.map(({ from, linesPt, padPt }) => {
      const roomPt = (widthsPt[from] ?? 0) - padPt;
      return linesPt.reduce(
        (count, wordsPt) => count + (fits(wordsPt, roomPt) ? 1 : Math.ceil(wordsPt / (filledShare * roomPt))),
        0,
      );
    });
    return sum + Math.max(1, ...lines);
  }, 0);
}
