/**
 * Breaks a short text into lines of much the same length, so that no single word hangs on the last: for headings, and
 * for results at the right edge.
 */
import type { BlockOrigin } from '../../markup/block';
import type { TextStyle } from '../look';
import type { Setting } from '../setting';
import { breakLines, type Line } from './lines';
import { type SetText, setCut } from './text';
import type { Cut } from './tokens';

const mostLines = 4;
const halvings = 7;

/** Sets text in as few lines as `widthPt` allows, and those as even as they can be. */
export function setBalanced(
  cut: Cut,
  style: TextStyle,
  widthPt: number,
  setting: Setting,
  origin: BlockOrigin,
): SetText {
  return evened(setCut(cut, style, widthPt, setting, origin), cut, setting);
}

/** The text in as many lines, those as even as they can be. */
function evened(full: SetText, cut: Cut, setting: Setting): SetText {
  const { style, widthPt } = full;
  const count = full.lines.length;
  if (count < 2 || count > mostLines) return full;
  let narrow = widthPt / count;
  let wide = widthPt;
  for (let round = 0; round < halvings; round += 1) {
    const middle = (narrow + wide) / 2;
    const { lines, brokenWords } = breakLines(cut, style.sizePt, middle, setting.look.fonts);
    if (lines.length > count || brokenWords.length > 0) narrow = middle;
    else wide = middle;
  }
  if (wide === widthPt) return full;
  return { ...full, lines: breakLines(cut, style.sizePt, wide, setting.look.fonts).lines };
}

/** The same in no more lines than `most`; nothing if that cannot be done without breaking a word. */
export function setBalancedWithin(
  cut: Cut,
  style: TextStyle,
  widthPt: number,
  most: number,
  setting: Setting,
): SetText | undefined {
  const { lines, brokenWords } = breakLines(cut, style.sizePt, widthPt, setting.look.fonts);
  if (lines.length > most || brokenWords.length > 0) return undefined;
  return evened({ lines, style, widthPt }, cut, setting);
}

/**
 * The same where only `firstPt` is left of the first line; meant to stand at the right edge. Nothing if that would take
 * more lines than `most`, or leave fewer than `leastPt` on the first.
 */
export function setBalancedAfter(
  cut: Cut,
  style: TextStyle,
  widthPt: number,
  { firstPt, leastPt, most }: { readonly firstPt: number; readonly leastPt: number; readonly most: number },
  { look: { fonts } }: Setting,
): SetText | undefined {
  if (firstPt < leastPt) return undefined;
  const within = (width: number): readonly Line[] | undefined => {
    const fromX = width - firstPt;
    const { lines, brokenWords } = breakLines(cut, style.sizePt, width, fonts, fromX);
    const [first, ...rest] = lines;
    if (first === undefined || brokenWords.length > 0 || lines.length > most) return undefined;
    const inkPt = first.widthPt - fromX;
    if (inkPt < leastPt) return undefined;
    const fragments = first.fragments.map((fragment) => ({ ...fragment, x: fragment.x - fromX }));
    return [{ fragments, widthPt: inkPt }, ...rest];
  };
  let lines = within(widthPt);
  if (lines === undefined) return undefined;
  let narrow = firstPt;
  let wide = widthPt;
  for (let round = 0; round < halvings; round += 1) {
    const middle = (narrow + wide) / 2;
    const tried = within(middle);
    if (tried === undefined) narrow = middle;
    else {
      wide = middle;
      lines = tried;
    }
  }
  return { lines, style, widthPt };
}
