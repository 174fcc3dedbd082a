/** Tables: caption, head and rows set in measured columns. */
import type { Inline, TableBlock, TableCell } from '../../markup/block';
import { changeLayer } from '../blocks/change';
import { filledRect, rule, ruleDown } from '../blocks/marks';
import { fits } from '../fits';
import type { PlacedItem, StructureIndex } from '../frame';
import { placeText, setText, textHeight } from '../inline/text';
import { gap, type Layer, type Piece } from '../pieces';
import type { ProblemText } from '../problems';
import type { Place, Setting } from '../setting';
import { chooseGrid, type Grid, gridCells } from './cells';
import { type RowContext, rowLayers, type SetRow, setRow } from './rows';
import { type SetTable, splitTable, stacked, type TableTop } from './split-table';

/** Makes a table ready for pages. */
export function collectTable(block: TableBlock, place: Place, setting: Setting): Piece[] {
  const grid = chooseGrid(block, place.widthPt, setting);
  if (grid.breaksWords && !fits(narrowest(block, grid), place.widthPt)) {
    setting.problems.add(tooWide(block.columns.length, place.widthPt), block.origin);
    return [];
  }
  const table = setTable(block, grid, place, setting);
  const problem = tallProblem(table);
  if (problem !== undefined) {
    setting.problems.add(problem, block.origin);
    return [];
  }
  const around = gap(setting.look.space.block);
  return [around, splitTable(table, 0), around];
}

/** Width of a table whose columns hold one letter each and their padding. */
function narrowest(block: TableBlock, grid: Grid): number {
  return block.columns.length * (2 * grid.padX + 1.5 * grid.style.sizePt);
}

function setTable(block: TableBlock, grid: Grid, place: Place, setting: Setting): SetTable {
  const { structure } = setting;
  const context: RowContext = { block, grid, x: place.x, setting };
  const tag = structure.add('Table', place.tag);
  const captionTag = block.caption.length > 0 ? structure.add('Caption', tag) : undefined;
  const firstCaption = setCaption(block.caption, place, context, captionTag);
  const headTag = block.head.length > 0 ? structure.add('THead', tag) : undefined;
  const firstHead = setHead(context, headTag);
  const bodyTag = block.body.length > 0 ? structure.add('TBody', tag) : undefined;
  const rows = withIntroductions(
    block.body.map((row) => setRow(row, context, bodyTag)),
    block,
  );
  const nextCaption = setCaption(continued(block.caption, setting), place, context);
  return {
    firstTop: stacked(firstCaption, firstHead),
    nextTop: stacked(nextCaption, setHead(context)),
    sectionAgain: setSectionsAgain(context, rows),
    rows,
    rowLines: rowLines(context, rows),
    padPt: grid.padY,
    leastPadShare: setting.look.space.leastCellY,
    roomPt: setting.roomPt,
    origin: block.origin,
  };
}

function setCaption(
  content: readonly Inline[],
  place: Place,
  { block, setting }: RowContext,
  tag?: StructureIndex,
): TableTop {
  const { look } = setting;
  const text = setText(content, look.caption, place.widthPt, setting, block.origin, tag);
  if (text.lines.length === 0) return { heightPt: 0, layers: [] };
  const own: Layer = { y: 0, items: placeText(text, place.x, 0, 'left', setting, tag) };
  const marked = block.change === undefined ? [] : [changeLayer(textHeight(text), block.change)];
  return { heightPt: textHeight(text) + look.space.caption, layers: [own, ...marked] };
}

/** A cell over all columns right below the head of a section introduces it, and stays with it and with what follows. */
function withIntroductions(rows: readonly SetRow[], { body, columns }: TableBlock): readonly SetRow[] {
  return rows.map((row, index) => {
    const introduces =
      columns.length > 1 && body[index]?.cells.length === 1 && rows[index - 1]?.opensSection === true;
    return introduces ? { ...row, opensSection: true } : row;
  });
}

/** Heads of sections once more, for every row that may be the first overleaf. */
function setSectionsAgain(context: RowContext, rows: readonly SetRow[]): SetTable['sectionAgain'] {
  const { block, grid, x, setting } = context;
  const { colours, line } = setting.look;
  const again = new Map<number, TableTop>();
  let head: TableTop | undefined;
  rows.forEach(({ opensSection }, index) => {
    const row = block.body[index];
    if (!opensSection) {
      if (head !== undefined) again.set(index, head);
    } else if (row?.cells[0]?.head !== 'none' && row !== undefined) {
      const cells = row.cells.map((cell) => ({ ...cell, content: continued(cell.content, setting) }));
      const set = setRow({ cells }, context);
      const below = rule(x, set.heightPt, grid.widthPt, colours.hair, line.hair);
      head = { heightPt: set.heightPt, layers: [{ y: 0, items: [below] }, ...rowLayers(set, 0)] };
    }
  });
  return again;
}

function continued(caption: readonly Inline[], { look }: Setting): Inline[] {
  if (caption.length === 0) return [];
  return [...caption, { kind: 'text', text: ` (${look.words.continued})`, strong: false, emphasis: false }];
}

/** The head rows with the lines above and below them. */
function setHead(context: RowContext, parent?: StructureIndex): TableTop {
  const { block, grid, x, setting } = context;
  const { look } = setting;
  const linePt = look.line.thin;
  const line = (y: number) => rule(x, y, grid.widthPt, look.colours.ink, linePt);
  const lines: PlacedItem[] = block.style === 'plain' ? [] : [line(linePt / 2)];
  const layers: Layer[] = [{ y: 0, items: lines }];
  let y = block.style === 'plain' ? 0 : linePt;
  for (const row of block.head) {
    const set = setRow(row, context, parent);
    layers.push(...rowLayers(set, y));
    y += set.heightPt;
    if (row !== block.head[block.head.length - 1]) lines.push(...spanLines(row, y, context));
  }
  if (block.head.length === 0) return { heightPt: y, layers };
  lines.push(line(y + linePt / 2));
  return { heightPt: y + linePt, layers };
}

/** Thin lines below head cells that stand over several columns. */
function spanLines(
  row: TableBlock['head'][number],
  y: number,
  { grid, x, setting }: RowContext,
): PlacedItem[] {
  const { look } = setting;
  return gridCells(row)
    .filter(({ cell }) => cell.span > 1 && cell.content.length > 0)
    .map(({ cell, from }) => {
      const left = (grid.edges[from] ?? 0) + (from === 0 ? grid.padEdge : grid.padX);
      const right = (grid.edges[from + cell.span] ?? grid.widthPt) - grid.padX;
      return rule(x + left, y, right - left, look.colours.rule, look.line.hair);
    });
}

/** Stripes behind every second row of a section, lines between rows, and around cells that are written in. */
function rowLines({ block, grid, x, setting }: RowContext, rows: readonly SetRow[]): SetTable['rowLines'] {
  const { colours, line } = setting.look;
  const striped = rows.map(() => false);
  let even = false;
  rows.forEach((row, index) => {
    striped[index] = block.striped && even;
    even = row.opensSection ? false : !even;
  });
  return (index, y, heightPt, last) => {
    const stripe = striped[index] ? [filledRect(x, y, grid.widthPt, heightPt, colours.stripe)] : [];
    if (block.style === 'plain') return stripe;
    const boxes = block.boxes === true ? emptyCells(index, { block, grid, x, setting }, y, heightPt) : [];
    const isIntroduced = rows[index]?.opensSection === true && rows[index + 1]?.opensSection === true;
    if ((block.striped || isIntroduced) && !last) return [...stripe, ...boxes];
    const [colour, widthPt] = last ? [colours.ink, line.thin] : [colours.hair, line.hair];
    return [...stripe, ...boxes, rule(x, y + heightPt, grid.widthPt, colour, widthPt)];
  };
}

/** Lines around the cells of a row that are left empty to write in. */
function emptyCells(
  index: number,
  { block, grid, x, setting }: RowContext,
  y: number,
  heightPt: number,
): PlacedItem[] {
  const { colours, line } = setting.look;
  const row = block.body[index];
  const empty = row === undefined ? [] : gridCells(row).filter(({ cell }) => isEmpty(cell));
  const spans = empty.map(({ cell, from }) => [from, from + cell.span] as const);
  const edge = (column: number) => x + (grid.edges[column] ?? grid.widthPt);
  return [
    ...[...new Set(spans.flat())].map((side) => ruleDown(edge(side), y, heightPt, colours.rule, line.thin)),
    ...spans.flatMap(([from, to]) =>
      [y, y + heightPt].map((at) => rule(edge(from), at, edge(to) - edge(from), colours.rule, line.thin)),
    ),
  ];
}

function isEmpty({ content, field }: TableCell): boolean {
  return (
    field === undefined && content.every((inline) => inline.kind === 'text' && inline.text.trim() === '')
  );
}

/** What is too tall to be placed at all, if anything. */
function tallProblem({ nextTop, firstTop, sectionAgain, rows, roomPt }: SetTable): ProblemText | undefined {
  const againPt = Math.max(0, ...[...sectionAgain.values()].map(({ heightPt }) => heightPt));
  const topPt = Math.max(nextTop.heightPt + againPt, firstTop.heightPt);
  const tallest = Math.max(0, ...rows.map((row) => row.heightPt));
  if (fits(topPt + tallest, roomPt)) return undefined;
  const expected = `at most ${roomPt.toFixed(0)} pt together, the height of a page’s text`;
  const found = `a head of ${topPt.toFixed(0)} pt and a row of ${tallest.toFixed(0)} pt`;
  const mend = 'use a larger sheet, or shorter words in the table’s head and rows';
  if (fits(tallest, 0.8 * roomPt)) {
    return {
      code: 'layout-head-too-tall',
      severity: 'error',
      message: 'the head of a table leaves no room for its rows',
      found,
      expected,
      mend,
    };
  }
  return {
    code: 'layout-too-tall',
    severity: 'error',
    message: 'a row of a table is taller than a page',
    found,
    expected,
    mend,
  };
}

function tooWide(columns: number, widthPt: number): ProblemText {
  return {
    code: 'layout-table-too-wide',
    severity: 'error',
    message: `a table of ${columns} columns does not fit the width of the page`,
    found: `${columns} columns in ${widthPt.toFixed(0)} pt`,
    expected: 'room for at least a letter in each column',
    mend: 'turn the sheet, use a larger one, or make two tables of it',
  };
}
