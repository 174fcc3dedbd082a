/** Words and their meanings: the word stands out, its meaning is set in beneath it. */
import type { DefinitionsBlock, Inline } from '../../markup/block';
import { lineBoxes, setText } from '../inline/text';
import { strongStyle, type TextStyle } from '../look';
import { type Box, gap, heldTogether, heldToNext, type Piece } from '../pieces';
import type { Place, Setting } from '../setting';
import { linesWithChange } from './change';
import { entry } from './entry';
import { measure } from './paragraph';

/** Makes definitions ready for pages. */
export function collectDefinitions(block: DefinitionsBlock, place: Place, setting: Setting): Piece[] {
  const { look, structure } = setting;
  const { body, space } = look;
  const list = structure.add('L', place.tag, { numbering: 'None' });
  const set = (content: readonly Inline[], style: TextStyle, indentPt: number, tag?: number) => {
    const widthPt = measure(place.widthPt, look) - indentPt;
    const text = setText(content, style, widthPt, setting, block.origin, tag);
    return lineBoxes(text, place.x + indentPt, 'left', setting, block.origin, tag);
  };
  const strong = strongStyle(body);
  const pieces = block.items.flatMap(({ term, meaning, change }): Piece[] => {
    const item = structure.add('LI', list);
    const termTag = structure.add('Lbl', item);
    const meaningTag = structure.add('LBody', item);
    const lines = linesWithChange(
      [...headLines(set(term, strong, 0, termTag)), ...set(meaning, body, space.indent, meaningTag)],
      change,
    );
    const continued = () => headLines(set(termContinued(term, setting), strong, 0));
    return [entry({ lines, continued, origin: block.origin }), gap(space.paragraph * 0.75)];
  });
  return [...pieces, gap(space.paragraph)];
}

/** Lines of a term: they hold together and to what follows. */
function headLines(lines: readonly Box[]): Box[] {
  return heldToNext(heldTogether(lines, 'must')).filter((piece): piece is Box => piece.kind === 'box');
}

/** The words of a term, without where they lead, and "continued". */
function termContinued(term: readonly Inline[], { look }: Setting): Inline[] {
  const words = term.flatMap((inline): Inline[] => {
    if (inline.kind === 'page-of') return [];
    if (inline.kind === 'break') return [plain(' ')];
    return [{ ...plain(inline.text), strong: inline.strong, emphasis: inline.emphasis }];
  });
  return [...words, plain(` (${look.words.continued})`)];
}

function plain(text: string) {
  return { kind: 'text', text, strong: false, emphasis: false } as const;
}
