/**
 * Running heads and feet: three parts on one line where they fit, in lines of their own where they do not. Their
 * height is settled before any page is made, by the longest chapter title.
 */
import type { BlockOrigin, Inline } from '../../markup/block';
import { fits } from '../fits';
import type { PlacedItem } from '../frame';
import { type Align, placeText, type SetText, setText, textHeight } from '../inline/text';
import type { TextStyle } from '../look';
import type { Setting } from '../setting';
import type { RunningLine, RunningPiece } from '../types';

/** What the fields of a running line say on one page. */
export interface RunningFields {
  readonly chapter: string;
  readonly page: string;
  readonly pages: string;
}

/** A running line set for one page. */
export interface SetRunning {
  readonly heightPt: number;
  readonly items: readonly PlacedItem[];
}

/** How running lines are set. */
export interface RunningContext {
  readonly style: TextStyle;
  readonly widthPt: number;
  readonly setting: Setting;
  readonly origin: BlockOrigin;
}

/** Sets a running line, its top left corner at (0, 0). All of it is an artifact. */
export function setRunning(line: RunningLine, fields: RunningFields, context: RunningContext): SetRunning {
  const { widthPt, setting } = context;
  const parts = (['left', 'centre', 'right'] as const).map((align) => ({
    align,
    content: contentOf(line[align], saidOnce(line, fields)),
  }));
  const filled = parts.filter(({ content }) => content.length > 0);
  const oneLine = filled.map(({ align, content }) => ({ align, text: set(content, widthPt, context) }));
  if (standsOnOneLine(oneLine, context)) {
    const items = oneLine.flatMap(({ align, text }) => placeText(text, 0, 0, align, setting));
    return { heightPt: Math.max(0, ...oneLine.map(({ text }) => textHeight(text))), items };
  }
  let y = 0;
  const items = oneLine.flatMap(({ align, text }) => {
    const placed = placeText(text, 0, y, align, setting);
    y += textHeight(text);
    return placed;
  });
  return { heightPt: y, items };
}

/** What the fields say, without a chapter whose title begins with what stands strong at the left, as that of a cover does. */
function saidOnce({ left }: RunningLine, fields: RunningFields): RunningFields {
  const [first] = left;
  if (first?.kind !== 'words' || !first.strong) return fields;
  const { chapter } = fields;
  return chapter === first.text || chapter.startsWith(`${first.text}:`) ? { ...fields, chapter: '' } : fields;
}

/** The tallest that a running line gets, whatever the chapter and page. */
export function runningHeight(
  line: RunningLine,
  chapters: readonly string[],
  context: RunningContext,
): number {
  const heights = [...chapters, ''].map(
    (chapter) => setRunning(line, { chapter, page: '0000', pages: '0000' }, context).heightPt,
  );
  return Math.max(...heights);
}

function set(
  content: readonly Inline[],
  widthPt: number,
  { style, setting, origin }: RunningContext,
): SetText {
  return setText(content, style, widthPt, setting, origin);
}

function contentOf(pieces: readonly RunningPiece[], fields: RunningFields): Inline[] {
  return pieces.flatMap((piece): Inline[] => {
    const text = piece.kind === 'words' ? piece.text : fields[piece.kind];
    if (text === '') return [];
    return [{ kind: 'text', text, strong: piece.kind === 'words' && piece.strong, emphasis: false }];
  });
}

function standsOnOneLine(
  parts: readonly { align: Align; text: SetText }[],
  { widthPt, style }: RunningContext,
): boolean {
  if (parts.some(({ text }) => text.lines.length > 1)) return false;
  const width = (align: Align) => parts.find((part) => part.align === align)?.text.lines[0]?.widthPt ?? 0;
  const gapPt = 1.5 * style.sizePt;
  const [left, centre, right] = [width('left'), width('centre'), width('right')];
  if (centre === 0) return fits(left + right + (left > 0 && right > 0 ? gapPt : 0), widthPt);
  const side = Math.max(left > 0 ? left + gapPt : 0, right > 0 ? right + gapPt : 0);
  return fits(centre + 2 * side, widthPt);
}
