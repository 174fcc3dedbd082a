/**
 * A table that can go on on the next page: caption and head are repeated, rows are never broken, and neither fewer than
 * three rows nor a section's head stand alone if it can be helped. Where all that is left would fit with less space
 * in its rows, it is given less.
 */
import type { BlockOrigin } from '../../markup/block';
import { fits } from '../fits';
import type { PlacedItem } from '../frame';
import {
  type Anchor,
  type Box,
  type Layer,
  layeredBox,
  lowered,
  type Splittable,
  type Take,
} from '../pieces';
import { closedUpRow, rowLayers, type SetRow } from './rows';

/** Something that stands above the rows. */
export interface TableTop {
  readonly heightPt: number;
  readonly layers: readonly Layer[];
}

/** A table, set. */
export interface SetTable {
  /** Caption and head where the table begins. */
  readonly firstTop: TableTop;
  /** Caption and head where it goes on. */
  readonly nextTop: TableTop;
  /** By row: the head of the section it stands in, as it stands where the table goes on with that row. */
  readonly sectionAgain: ReadonlyMap<number, TableTop>;
  readonly rows: readonly SetRow[];
  /** What is drawn behind and below the row at `index`; `last` if it is the last one on the page. */
  readonly rowLines: (index: number, y: number, heightPt: number, last: boolean) => readonly PlacedItem[];
  /** Space above and below the words of a row. */
  readonly padPt: number;
  /** What must be left of it where rows are set closer: a share. */
  readonly leastPadShare: number;
  readonly roomPt: number;
  readonly origin: BlockOrigin;
}

/** So many rows ought to stand on either side of a break, and must where a page can hold no more. */
const wishedRows = 3;
const leastRows = 2;
/** A table of no more rows than these, and no taller than this share of a page, ought not to be broken. */
const wholeRows = 6;
const wholeShare = 0.25;

/** What stands above the row at `from` where a page begins with it. */
function topAt({ firstTop, nextTop, sectionAgain }: SetTable, from: number): TableTop {
  const section = sectionAgain.get(from);
  if (from === 0) return firstTop;
  return section === undefined ? nextTop : stacked(nextTop, section);
}

/** One above the other. */
export function stacked(above: TableTop, below: TableTop): TableTop {
  const layers = [...above.layers, ...lowered(below.layers, above.heightPt)];
  return { heightPt: above.heightPt + below.heightPt, layers };
}

/** The table from the row at `from` on. */
export function splitTable(table: SetTable, from: number): Splittable {
  const top = topAt(table, from);
  const heights = table.rows.slice(from).map((row) => row.heightPt);
  const heightPt = top.heightPt + sum(heights);
  const headedPt = (rows: number) => top.heightPt + sum(heights.slice(0, firstRows(table, from, rows)));
  const leastPt = fits(headedPt(leastRows), table.roomPt)
    ? headedPt(leastRows)
    : top.heightPt + (heights[0] ?? 0);
  const isShort =
    heights.length < 2 * wishedRows ||
    (heights.length <= wholeRows && fits(heightPt, wholeShare * table.roomPt));
  const wantPt = isShort ? heightPt : headedPt(wishedRows);
  return {
    kind: 'splittable',
    heightPt,
    leastPt,
    wantPt: fits(wantPt, table.roomPt) ? wantPt : leastPt,
    keep: 'free',
    anchors: [],
    origin: table.origin,
    closer: (share) => splitTable(closedUp(table, (1 - share) * table.padPt), from),
    take: (roomPt, lastResort) => take(table, from, roomPt, lastResort || fits(leastPt, roomPt)),
  };
}

/** How many rows must stand below the head: those given, and more if the last of them opens a section. */
function firstRows(table: SetTable, from: number, rows: number): number {
  let count = Math.min(rows, table.rows.length - from);
  while (from + count < table.rows.length && table.rows[from + count - 1]?.opensSection) count += 1;
  return count;
}

/** As many rows as stand in the room. If some must be placed, a break after any row is better than none. */
function take(table: SetTable, from: number, roomPt: number, mustPlace: boolean): Take {
  const left = table.rows.length - from;
  const count = rowsThatFit(table, from, roomPt);
  if (count === left) return { kind: 'all', box: part(table, from, left) };
  const closer = count < wishedRows ? undefined : closedUpToFit(table, from, roomPt);
  if (closer !== undefined) return { kind: 'all', box: part(closer, from, left) };
  const good = goodBreak(table, from, count);
  const rows = good > 0 || !mustPlace ? good : count;
  if (rows <= 0) return { kind: 'nothing' };
  return { kind: 'part', box: part(table, from, rows), rest: splitTable(table, from + rows) };
}

/** The table with just so much less space in its rows that all from `from` on fits, if that leaves enough. */
function closedUpToFit(table: SetTable, from: number, roomPt: number): SetTable | undefined {
  const rows = table.rows.slice(from);
  const { heightPt } = topAt(table, from);
  const lackPt = heightPt + sum(rows.map((row) => row.heightPt)) - roomPt;
  const giving = rows.filter(({ isFilledIn }) => !isFilledIn).length;
  const lessPt = lackPt / (2 * giving);
  return giving > 0 && fits(lessPt, (1 - table.leastPadShare) * table.padPt)
    ? closedUp(table, lessPt)
    : undefined;
}

/** The table with so much less space above and below the words of each row, but for rows that are written in. */
function closedUp(table: SetTable, lessPt: number): SetTable {
  const rows = table.rows.map((row) => (row.isFilledIn ? row : closedUpRow(row, lessPt)));
  return { ...table, rows, padPt: table.padPt - lessPt };
}

/** How many rows stand in the room; less than 0 if not even the head does. */
function rowsThatFit(table: SetTable, from: number, roomPt: number): number {
  let y = topAt(table, from).heightPt;
  if (!fits(y, roomPt)) return -1;
  let count = 0;
  for (const row of table.rows.slice(from)) {
    y += row.heightPt;
    if (!fits(y, roomPt)) break;
    count += 1;
  }
  return count;
}

/** The largest number of rows, up to `count`, after which the table may well be broken; 0 if there is none. */
function goodBreak(table: SetTable, from: number, count: number): number {
  const left = table.rows.length - from;
  for (const beside of [wishedRows, leastRows]) {
    for (let rows = Math.min(count, left - beside); rows >= beside; rows -= 1)
      if (!table.rows[from + rows - 1]?.opensSection) return rows;
  }
  const least = Math.min(leastRows, left);
  for (let rows = count; rows >= least; rows -= 1)
    if (!table.rows[from + rows - 1]?.opensSection) return rows;
  return 0;
}

function part(table: SetTable, from: number, count: number): Box {
  const top = topAt(table, from);
  const behind: PlacedItem[] = [];
  const anchors: Anchor[] = [];
  const layers: Layer[] = [...top.layers];
  let y = top.heightPt;
  for (let index = from; index < from + count; index += 1) {
    const row = table.rows[index];
    if (row === undefined) continue;
    behind.push(...table.rowLines(index, y, row.heightPt, index === from + count - 1));
    layers.push(...rowLayers(row, y));
    if (row.id !== undefined) anchors.push({ name: row.id, y });
    y += row.heightPt;
  }
  return { ...layeredBox(y, [{ y: 0, items: behind }, ...layers], table.origin), anchors };
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
