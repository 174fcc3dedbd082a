/**
 * How much room each part takes: its symbol, its label beside it, its gauges.
 */
import type { FontSet } from '../../font/metrics';
import { wrapLine } from '../wrapLine';
import type { Extent } from './columns';
import type { Item, PlumbingPart, SymbolKind } from './plumbing';

/** Type of labels, and from baseline to baseline. */
export const labelSizePt = 8.5;
/** From baseline to baseline of a label. */
export const labelLeadingPt = 9.75;
/** From a symbol to its label. */
export const labelGapPt = 4;
/** A gauge's circle, and from the middle of one to that of the next. */
export const gaugeRadiusPt = 8;
/** From the middle of a gauge to the next, or to the edge of its part. */
export const gaugeStepPt = 20;
/** Between the pipes of one vessel. */
export const portStepPt = 9;

const sizes: Readonly<Record<SymbolKind, readonly [width: number, height: number]>> = {
  tank: [40, 22],
  boiler: [48, 34],
  engine: [44, 24],
  burner: [40, 20],
  coil: [26, 18],
  exchanger: [34, 20],
  pump: [19, 19],
  valve: [12, 20],
  'check-valve': [12, 18],
  automatic: [12, 20],
  'relief-valve': [12, 20],
  strainer: [13, 16],
  joint: [12, 10],
  muffler: [26, 16],
  glass: [9, 30],
  dial: [16, 16],
  plain: [14, 14],
  'open-air': [12, 11],
  ground: [14, 9],
};

/** Vessels take each pipe at a place of its own; at anything else pipes of one kind meet. */
const vessels: ReadonlySet<SymbolKind> = new Set([
  'tank',
  'boiler',
  'engine',
  'burner',
  'exchanger',
  'coil',
  'glass',
]);

/** Whether the part takes each pipe at a place of its own. */
export function isVessel(item: Item): boolean {
  return item.part !== undefined && vessels.has(item.part.symbol);
}

/** Width and height of a symbol with so many places for pipes on its fuller side. */
export function symbolSize({ symbol }: PlumbingPart, pipes: number): readonly [number, number] {
  const [width, height] = sizes[symbol];
  const step = symbol === 'boiler' ? portStepPt * 1.6 : portStepPt;
  return [pipes > 1 ? Math.max(width, (pipes - 1) * step + 10) : width, height];
}

/** Room to the left of a symbol's middle for what stands there beside the pipes: the head of a valve that acts by itself. */
const headPt = 6;
const headed: ReadonlySet<SymbolKind> = new Set(['valve', 'automatic', 'relief-valve']);

/** No word of a label stays whole that is wider; those of ordinary names are half as wide. */
const mostWordPt = 110;

/** Type in a gauge’s circle. */
export const gaugeSizePt = 8;

/** Whether a gauge’s tag has room in its circle; the name of a gauge without a tag has none. */
export function fitsCircle(tag: string, fonts: FontSet): boolean {
  return fonts['narrow-bold'].widthOf(tag, gaugeSizePt) <= 2 * gaugeRadiusPt - 2;
}

/** The label in lines no wider than `widthPt`, unless a word is. Gauges that are not told in their circles are told here. */
export function labelLines(
  { tag, name, gauges }: PlumbingPart,
  fonts: FontSet,
  widthPt: number,
): readonly string[] {
  const told = gauges.filter((each) => !fitsCircle(each, fonts));
  const called = tag === '' ? name : `${tag} ${name}`;
  const words = told.length === 0 ? called : `${called} (${told.join(', ')})`;
  return wrapLine(words, fonts['narrow-bold'], labelSizePt, widthPt, mostWordPt);
}

/** Width of the label as it is set. */
export function labelWidth(lines: readonly string[], fonts: FontSet): number {
  return Math.max(0, ...lines.map((line) => fonts['narrow-bold'].widthOf(line, labelSizePt)));
}

/** How far an item reaches to both sides when labels are no wider than `mostPt`. */
export function extentOf(item: Item, pipes: number, fonts: FontSet, mostPt: number): Extent {
  const { part } = item;
  if (!part) return { left: 2.5, right: 2.5 };
  const half = symbolSize(part, pipes)[0] / 2;
  const lines = labelLines(part, fonts, mostPt);
  const head = headed.has(part.symbol) ? headPt : 0;
  const beside = part.gauges.length > 0 ? part.gauges.length * gaugeStepPt + 1 : head;
  return { left: half + beside, right: half + labelGapPt + labelWidth(lines, fonts) };
}
