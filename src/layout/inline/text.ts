/**
 * A stretch of text made into lines, and lines into boxes.
 */
import type { BlockOrigin, Inline } from '../../markup/block';
import { fits } from '../fits';
import type { PlacedItem, PlacedText, StructureIndex } from '../frame';
import { baselineIn, type TextStyle } from '../look';
import { type Box, box } from '../pieces';
import type { Setting } from '../setting';
import { breakLines, type Fragment, type Line } from './lines';
import { type Cut, cutText } from './tokens';

/** Which edge lines stand at. */
export type Align = 'left' | 'right' | 'centre';

/** Text ready to be placed. */
export interface SetText {
  readonly lines: readonly Line[];
  readonly style: TextStyle;
  readonly widthPt: number;
}

/** Sets inlines in lines no wider than `widthPt`. */
export function setText(
  content: readonly Inline[],
  style: TextStyle,
  widthPt: number,
  setting: Setting,
  origin: BlockOrigin,
  tag?: StructureIndex,
): SetText {
  return setCut(cutText(content, style, setting, origin, tag), style, widthPt, setting, origin);
}

/** Sets text in lines no wider than `widthPt`; says so if a word had to be broken or a letter does not fit. */
export function setCut(
  cut: Cut,
  style: TextStyle,
  widthPt: number,
  setting: Setting,
  origin: BlockOrigin,
): SetText {
  const { lines, brokenWords, overfull } = breakLines(cut, style.sizePt, widthPt, setting.look.fonts);
  for (const word of brokenWords) setting.problems.brokenWord(word, origin);
  if (overfull) setting.problems.add(tooNarrow(widthPt), origin);
  return { lines, style, widthPt };
}

/** Height of text in lines. */
export function textHeight(text: SetText): number {
  return text.lines.length * text.style.leadingPt;
}

/** Places all lines of a text, the first line's top at `y`. Without `tag` they are artifacts. */
export function placeText(
  text: SetText,
  x: number,
  y: number,
  align: Align,
  setting: Setting,
  tag?: StructureIndex,
): PlacedItem[] {
  const baseline = baselineIn(text.style, setting.look.fonts);
  const items: PlacedItem[] = [];
  for (const [index, line] of text.lines.entries()) {
    const top = y + index * text.style.leadingPt;
    addLine(items, line, x + alignShift(line, text.widthPt, align), top + baseline, text.style, tag);
  }
  return items;
}

/** One box a line. No line stands alone at the foot or the head of a page. */
export function lineBoxes(
  text: SetText,
  x: number,
  align: Align,
  setting: Setting,
  origin: BlockOrigin,
  tag?: StructureIndex,
): Box[] {
  const { lines, style } = text;
  const baseline = baselineIn(style, setting.look.fonts);
  return lines.map((line, index) => {
    const items = placeLine(line, x + alignShift(line, text.widthPt, align), baseline, style, tag);
    const holds = index < lines.length - 1 && (index === 0 || index === lines.length - 2);
    return box(style.leadingPt, items, origin, baseline, holds ? 'must' : 'free');
  });
}

/** Places the fragments of a line, its left end at `x` on the baseline `y`. */
export function placeLine(
  line: Line,
  x: number,
  y: number,
  style: TextStyle,
  tag?: StructureIndex,
): PlacedItem[] {
  const items: PlacedItem[] = [];
  addLine(items, line, x, y, style, tag);
  return items;
}

function addLine(
  items: PlacedItem[],
  line: Line,
  x: number,
  y: number,
  style: TextStyle,
  tag: StructureIndex | undefined,
): void {
  for (const fragment of line.fragments) {
    if (fragment.text === '') continue;
    items.push(placeFragment(fragment, x, y, style, tag));
    const { link } = fragment;
    if (link === undefined || tag === undefined) continue;
    items.push({
      kind: 'link',
      x: x + fragment.x,
      y: y - 0.8 * style.sizePt,
      widthPt: fragment.widthPt,
      heightPt: 1.05 * style.sizePt,
      target: link.target,
      words: link.words,
      ...(link.tag === undefined ? {} : { tag: link.tag }),
    });
  }
}

function placeFragment(
  fragment: Fragment,
  lineX: number,
  y: number,
  style: TextStyle,
  tag?: StructureIndex,
): PlacedText {
  const { text, face, widthPt, link } = fragment;
  const { sizePt, colour } = style;
  const x = lineX + fragment.x;
  if (tag === undefined) return { kind: 'text', x, y, widthPt, text, face, sizePt, colour };
  return { kind: 'text', x, y, widthPt, text, face, sizePt, colour, tag: link?.tag ?? tag };
}

function alignShift(line: Line, widthPt: number, align: Align): number {
  if (align === 'left') return 0;
  const spare = widthPt - line.widthPt;
  return align === 'right' ? spare : spare / 2;
}

/** Says so if a column has no room for a letter and a half. */
export function refuseTooNarrow(
  widthPt: number,
  style: TextStyle,
  setting: Setting,
  origin: BlockOrigin,
): void {
  if (!fits(1.5 * style.sizePt, widthPt)) setting.problems.add(tooNarrow(widthPt), origin);
}

function tooNarrow(widthPt: number) {
  return {
    code: 'layout-too-narrow',
    severity: 'error',
    message: 'there is no room for even one letter in a line',
    found: `a line ${widthPt.toFixed(1)} pt wide`,
    expected: 'a line wider than its letters',
    mend: 'use a wider sheet, or fewer lists inside each other',
  } as const;
}
