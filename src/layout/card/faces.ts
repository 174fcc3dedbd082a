/**
 * What surrounds the steps on each face of a card: title, "continued", the mark that more follows or that this is the
 * end, and the foot that says which card it is.
 */
import type { Inline } from '../../markup/block';
import { pointer, rule } from '../blocks/marks';
import { fits } from '../fits';
import type { PlacedItem } from '../frame';
import { placeText, type SetText, setText, textHeight } from '../inline/text';
import { strongStyle, type TextStyle } from '../look';
import type { Setting } from '../setting';
import { moveItem } from '../shape';
import { originOf } from '../survey';

/** Items with the height they take. */
export interface Strip {
  readonly heightPt: number;
  readonly items: readonly PlacedItem[];
}

const origin = originOf([]);

/** A title with the line below it. `title` counts from its own top. */
export function headStrip(title: Strip, widthPt: number, { look }: Setting): Strip {
  if (title.heightPt === 0) return title;
  const gapPt = 0.2 * look.body.sizePt;
  const lineY = title.heightPt + gapPt + look.line.heavy / 2;
  const line = rule(0, lineY, widthPt, look.colours.ink, look.line.heavy);
  return { heightPt: lineY + look.line.heavy / 2 + 0.45 * look.body.sizePt, items: [...title.items, line] };
}

/** The title of a face that goes on from the one before. All of it is an artifact. */
export function continuedTitle(title: string, widthPt: number, setting: Setting): Strip {
  const { look } = setting;
  const content: Inline[] = [words(title, true), words(` (${look.words.continued})`, false)];
  const style = { ...look.headings[0].style, face: look.body.face };
  const text = setText(content, style, widthPt, setting, origin);
  return { heightPt: textHeight(text), items: placeText(text, 0, 0, 'left', setting) };
}

/** The mark at the end of a face: that the card goes on, or that it ends here. */
export function markStrip(isLast: boolean, widthPt: number, setting: Setting): Strip {
  const { look } = setting;
  const style = strongStyle(look.note);
  const em = style.sizePt;
  const pointerPt = isLast ? 0 : 0.9 * em;
  const content = [words(isLast ? look.words.end : look.words.continuesNext, true)];
  const text = setText(content, style, widthPt - pointerPt, setting, origin);
  const top = 0.25 * em;
  const items = placeText(text, 0, top, isLast ? 'centre' : 'right', setting);
  const lastMiddle = top + textHeight(text) - style.leadingPt / 2;
  const mark = isLast
    ? endLines(text, top + style.leadingPt / 2, widthPt, setting)
    : [pointer(widthPt - 0.6 * em, lastMiddle, 0.65 * em, look.colours.ink)];
  return { heightPt: top + textHeight(text), items: [...items, ...mark] };
}

/** Short lines left and right of the word that ends a card. */
function endLines(text: SetText, y: number, widthPt: number, { look }: Setting): PlacedItem[] {
  const em = look.note.sizePt;
  const clear = (text.lines[0]?.widthPt ?? 0) / 2 + 0.6 * em;
  const length = Math.min(2.5 * em, widthPt / 2 - clear);
  if (length < em || text.lines.length > 1) return [];
  const line = (x: number) => rule(x, y, length, look.colours.ink, look.line.thin);
  return [line(widthPt / 2 - clear - length), line(widthPt / 2 + clear)];
}

/** The foot: what card this is, and which face of how many. */
export function footStrip(
  pieces: readonly string[],
  face: number,
  faces: number,
  style: TextStyle,
  widthPt: number,
  setting: Setting,
): Strip {
  const { look } = setting;
  const label = look.words.face.replace('{face}', String(face)).replace('{faces}', String(faces));
  const faceText = setText([words(label, true)], style, widthPt, setting, origin);
  const facePt = faceText.lines[0]?.widthPt ?? 0;
  const leftPt = Math.max(widthPt - facePt - 1.2 * style.sizePt, 0.4 * widthPt);
  const beside = fits(leftPt + facePt, widthPt);
  const textPt = beside ? leftPt : widthPt;
  const text = setText(footContent(pieces, style, textPt, setting), style, textPt, setting, origin);
  const top = 0.35 * style.sizePt;
  const faceY = beside ? top + Math.max(0, textHeight(text) - style.leadingPt) : top + textHeight(text);
  const faceItems = placeText(faceText, 0, 0, 'right', setting).map((item) => moveItem(item, 0, faceY));
  return {
    heightPt: Math.max(top + textHeight(text), faceY + textHeight(faceText)),
    items: [
      rule(0, 0, widthPt, look.colours.rule, look.line.thin),
      ...placeText(text, 0, top, 'left', setting),
      ...faceItems,
    ],
  };
}

/** Pieces of the foot, parted by dots; a piece that fits on a line is not broken. */
function footContent(
  pieces: readonly string[],
  style: TextStyle,
  widthPt: number,
  { look }: Setting,
): Inline[] {
  const metrics = look.fonts[style.face];
  const whole = pieces.map((piece, index) => {
    const ended = index < pieces.length - 1 ? `${piece} ·` : piece;
    return fits(metrics.widthOf(ended, style.sizePt), widthPt) ? ended.replaceAll(' ', '\u00a0') : ended;
  });
  return whole.length === 0 ? [] : [words(whole.join(' '), false)];
}

function words(text: string, strong: boolean): Inline {
  return { kind: 'text', text, strong, emphasis: false };
}
