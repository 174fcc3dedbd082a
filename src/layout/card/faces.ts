/**
 * What stands at the foot of each face of a card: which card it is, which face of how many, and the mark that more
 * follows or that this is the end.
 */
import type { Inline } from '../../markup/block';
import { pointer, rule } from '../blocks/marks';
import { fits } from '../fits';
import type { PlacedItem } from '../frame';
import { placeText, setText, textHeight } from '../inline/text';
import { strongStyle, type TextStyle } from '../look';
import type { Setting } from '../setting';
import { moveItem } from '../shape';
import { originOf } from '../survey';
import { type Strip, words } from './strip';

const origin = originOf([]);

/** Which face of how many. Both count from 1. */
export interface FaceNumber {
  readonly face: number;
  readonly faces: number;
  /** A part of the card that stands alone ends on it, and another begins on the next: nobody is to read on. */
  readonly endsPart?: boolean;
}

/** The smallest share of the foot's width, and the most lines, for which what it says stands beside the mark. */
const besideShare = 0.35;
const besideLines = 3;

/**
 * The foot. What card this is stands small at the left; the number of the face and the mark stand beside it, in type
 * that is legible where the card is read. Where a card is too narrow for both, the pointer alone says that more follows;
 * where it is too narrow even so, they stand above.
 */
export function footStrip(
  pieces: readonly string[],
  number: FaceNumber,
  style: TextStyle,
  widthPt: number,
  setting: Setting,
): Strip {
  const { look } = setting;
  const set = (textPt: number) =>
    setText(footContent(pieces, style, textPt, setting), style, textPt, setting, origin);
  const line = rule(0, 0, widthPt, look.colours.rule, look.line.thin);
  const top = 0.3 * style.sizePt;
  for (const saying of ['in-words', 'by-sign'] as const) {
    const leftPt = widthPt - widestMarkPt(saying, widthPt, setting) - look.note.sizePt;
    const narrow = leftPt < besideShare * widthPt ? undefined : set(leftPt);
    if (narrow === undefined || narrow.lines.length > besideLines) continue;
    const mark = faceMark(number, saying, widthPt, setting);
    const heightPt = Math.max(textHeight(narrow), mark.heightPt);
    return {
      heightPt: top + heightPt,
      items: [
        line,
        ...placeText(narrow, 0, top, 'left', setting),
        ...moved(mark.items, widthPt - mark.widthPt, top + (heightPt - mark.heightPt) / 2),
      ],
    };
  }
  const whole = set(widthPt);
  const mark = faceMark(number, 'in-words', widthPt, setting);
  return {
    heightPt: top + mark.heightPt + textHeight(whole),
    items: [
      line,
      ...moved(mark.items, widthPt - mark.widthPt, top),
      ...placeText(whole, 0, top + mark.heightPt, 'left', setting),
    ],
  };
}

/** Height that no foot of a card is taller than, whatever the number of its faces. */
export function mostFootPt(
  pieces: readonly string[],
  style: TextStyle,
  widthPt: number,
  setting: Setting,
): number {
  return Math.max(...manyFaces.map((number) => footStrip(pieces, number, style, widthPt, setting).heightPt));
}

/** Numbers as wide as any: one of a face that the card goes on after, one of the end of a part, one of its end. */
const manyFaces: readonly FaceNumber[] = [
  { face: 88, faces: 89 },
  { face: 88, faces: 89, endsPart: true },
  { face: 89, faces: 89 },
];

/** So that what stands beside the mark is the same on every face, it is set beside the widest. */
function widestMarkPt(saying: Saying, widthPt: number, setting: Setting): number {
  return Math.max(...manyFaces.map((number) => faceMark(number, saying, widthPt, setting).widthPt));
}

/** Whether words, too, say that more follows. That a card ends is always said. */
type Saying = 'in-words' | 'by-sign';

function moved(items: readonly PlacedItem[], x: number, y: number): PlacedItem[] {
  return items.map((item) => moveItem(item, x, y));
}

/** Number of the face, and that the card goes on, with a pointer to the next; or that it, or a part of it, ends here, with a bar. */
function faceMark(
  { face, faces, endsPart = false }: FaceNumber,
  saying: Saying,
  widthPt: number,
  setting: Setting,
): Strip & { widthPt: number } {
  const { look } = setting;
  const style = strongStyle(look.note);
  const em = style.sizePt;
  const isLast = face === faces;
  const label = look.words.face.replace('{face}', String(face)).replace('{faces}', String(faces));
  const goesOn = saying === 'in-words' ? [look.words.continuesNext] : [];
  const ends = isLast ? look.words.end : look.words.partEnds;
  const said = [label, ...(isLast || endsPart ? [ends] : goesOn)].map(keptWhole).join(' · ');
  const signPt = 0.9 * em;
  const text = setText([words(said, true)], style, widthPt - signPt, setting, origin);
  const textPt = Math.max(0, ...text.lines.map((line) => line.widthPt));
  const middle = textHeight(text) - style.leadingPt / 2;
  const sign =
    isLast || endsPart
      ? rule(textPt + 0.35 * em, middle, 0.55 * em, look.colours.ink, 0.25 * em)
      : pointer(textPt + 0.35 * em, middle, 0.65 * em, look.colours.ink);
  return {
    widthPt: textPt + signPt,
    heightPt: textHeight(text),
    items: [...placeText(text, textPt - text.widthPt, 0, 'right', setting), sign],
  };
}

/** Pieces of the foot, parted by dots where they stand on one line; a piece that fits on a line is not broken. */
function footContent(
  pieces: readonly string[],
  style: TextStyle,
  widthPt: number,
  { look }: Setting,
): Inline[] {
  const metrics = look.fonts[style.face];
  const fitsOnLine = (text: string) => fits(metrics.widthOf(text, style.sizePt), widthPt);
  const lines: string[] = [];
  for (const piece of pieces) {
    const units = fitsOnLine(piece) ? [piece] : piece.split(' ');
    units.forEach((unit, index) => {
      const longer = `${lines.at(-1)}${index === 0 ? ' · ' : ' '}${unit}`;
      if (lines.length > 0 && fitsOnLine(longer)) lines[lines.length - 1] = longer;
      else lines.push(unit);
    });
  }
  return lines.flatMap((line, index): Inline[] => {
    const whole = words(fitsOnLine(line) ? keptWhole(line) : line, false);
    return index === 0 ? [whole] : [{ kind: 'break' }, whole];
  });
}

function keptWhole(text: string): string {
  return text.replaceAll(' ', '\u00a0');
}
