/**
 * How wide the columns of a table are: wide enough for their words if the table's width allows, spare width going to
 * the columns that ask for it.
 */
import { fits } from '../fits';

/** Widths of one column's content with its padding: `minPt` breaks no word, `maxPt` breaks no line. */
export interface ColumnNeed {
  readonly minPt: number;
  readonly maxPt: number;
  /** Share of spare width; 0 keeps the column at its natural width. */
  readonly weight: number;
}

/** A cell over several columns, and what it needs of them together. */
export interface SpanNeed {
  readonly from: number;
  readonly count: number;
  readonly minPt: number;
  readonly maxPt: number;
}

/** Widths found. `breaksWords` says that some column is narrower than its longest word. */
export interface ColumnWidths {
  readonly widthsPt: readonly number[];
  readonly breaksWords: boolean;
}

/** How tall the table is about to be with columns so wide, in whatever measure; the least is best. */
export type TallAt = (widthsPt: readonly number[]) => number;

/** Shares `widthPt` among the columns: where lines must be broken, in the way of those tried that makes the table least tall. */
export function shareWidth(
  columns: readonly ColumnNeed[],
  spans: readonly SpanNeed[],
  widthPt: number,
  tallAt: TallAt = () => 0,
): ColumnWidths {
  const needs = spans.reduce(widenedFor, [...columns]);
  const least = total(needs.map((need) => need.minPt));
  if (!fits(least, widthPt)) return { widthsPt: squeezed(needs, widthPt), breaksWords: true };
  const most = total(needs.map((need) => need.maxPt));
  if (fits(most, widthPt)) return { widthsPt: grown(needs, widthPt - most), breaksWords: false };
  const plain = between(needs, widthPt, 1);
  const ways = [...dampings.map((damping) => between(needs, widthPt, damping)), byWeight(needs, widthPt)];
  const best = ways.reduce(
    (least, widthsPt) => {
      const tall = tallAt(widthsPt);
      return tall < least.tall ? { widthsPt, tall } : least;
    },
    { widthsPt: plain, tall: tallAt(plain) },
  );
  return { widthsPt: best.widthsPt, breaksWords: false };
}

/**
 * What could be given to a column counts to one of these powers. By the first power a single long cell takes nearly all
 * there is, and leaves the others no more than their longest words.
 */
const dampings = [0.75, 0.5, 0.25] as const;

/** Columns made wide enough, together, for a cell that spans them; the weighted ones take what is lacking. */
function widenedFor(columns: readonly ColumnNeed[], span: SpanNeed): ColumnNeed[] {
  const spanned = columns.slice(span.from, span.from + span.count);
  const weights = total(spanned.map((column) => column.weight));
  const shareOf = (column: ColumnNeed) => (weights > 0 ? column.weight / weights : 1 / spanned.length);
  const lackMin = Math.max(0, span.minPt - total(spanned.map((column) => column.minPt)));
  const lackMax = Math.max(0, span.maxPt - total(spanned.map((column) => column.maxPt)));
  return columns.map((column, index) => {
    if (index < span.from || index >= span.from + span.count) return column;
    const minPt = column.minPt + lackMin * shareOf(column);
    return { ...column, minPt, maxPt: Math.max(minPt, column.maxPt + lackMax * shareOf(column)) };
  });
}

/** Every column at its natural width, the spare shared out by weight. */
function grown(needs: readonly ColumnNeed[], sparePt: number): number[] {
  const weights = total(needs.map((need) => need.weight));
  return needs.map((need) => need.maxPt + (weights > 0 ? (sparePt * need.weight) / weights : 0));
}

/** Between least and natural widths. Columns without weight keep their natural width while the others can give way. */
function between(needs: readonly ColumnNeed[], widthPt: number, damping: number): number[] {
  const firm = (need: ColumnNeed) => need.weight === 0;
  const held = total(needs.map((need) => (firm(need) ? need.maxPt : need.minPt)));
  const floors = needs.map((need) => (firm(need) && fits(held, widthPt) ? need.maxPt : need.minPt));
  const slack = needs.map((need, index) => Math.max(0, need.maxPt - (floors[index] ?? 0)) ** damping);
  const slackTotal = total(slack);
  const sparePt = widthPt - total(floors);
  return floors.map(
    (floor, index) => floor + (slackTotal > 0 ? (sparePt * (slack[index] ?? 0)) / slackTotal : 0),
  );
}

/** Between least and natural widths as the weights ask; what a column has no use for goes to the others. */
function byWeight(needs: readonly ColumnNeed[], widthPt: number): number[] {
  const widthsPt = needs.map((need) => need.minPt);
  let sparePt = widthPt - total(widthsPt);
  let open = needs.map((need, index) => ({ ...need, index })).filter(({ weight }) => weight > 0);
  while (open.length > 0) {
    const weights = total(open.map(({ weight }) => weight));
    const own = (weight: number): number => (sparePt * weight) / weights;
    const full = open.filter(({ minPt, maxPt, weight }) => maxPt - minPt <= own(weight));
    if (full.length === 0) {
      for (const { index, minPt, weight } of open) widthsPt[index] = minPt + own(weight);
      return widthsPt;
    }
    for (const { index, maxPt } of full) widthsPt[index] = maxPt;
    sparePt -= total(full.map(({ minPt, maxPt }) => maxPt - minPt));
    open = open.filter((each) => !full.includes(each));
  }
  return widthsPt;
}

/** Too narrow for the longest words: the widest columns give way first, down to one common width. */
function squeezed(needs: readonly ColumnNeed[], widthPt: number): number[] {
  const ascending = needs.map((need) => need.minPt).sort((a, b) => a - b);
  let left = widthPt;
  let cap = 0;
  for (const [index, minPt] of ascending.entries()) {
    cap = left / (ascending.length - index);
    if (minPt >= cap) break;
    left -= minPt;
  }
  return needs.map((need) => Math.min(need.minPt, cap));
}

function total(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0);
}
