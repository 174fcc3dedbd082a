/** Words and their meanings: the word stands out, its meaning is set in beneath it. */
import type { DefinitionsBlock } from '../../markup/block';
import { lineBoxes, setText } from '../inline/text';
import { strongStyle } from '../look';
import { gap, heldToNext, type Piece } from '../pieces';
import type { Place, Setting } from '../setting';
import { measure } from './paragraph';

/** Makes definitions ready for pages. */
export function collectDefinitions(block: DefinitionsBlock, place: Place, setting: Setting): Piece[] {
  const { look, structure } = setting;
  const { body, space } = look;
  const list = structure.add('L', place.tag, { numbering: 'None' });
  const pieces = block.items.flatMap(({ term, meaning }): Piece[] => {
    const item = structure.add('LI', list);
    const termTag = structure.add('Lbl', item);
    const meaningTag = structure.add('LBody', item);
    const set = (content: typeof term, style: typeof body, indentPt: number, tag: number) => {
      const text = setText(
        content,
        style,
        measure(place.widthPt, look) - indentPt,
        setting,
        block.origin,
        tag,
      );
      return lineBoxes(text, place.x + indentPt, 'left', setting, block.origin, tag);
    };
    const termLines = set(term, strongStyle(body), 0, termTag);
    return [
      ...heldToNext(termLines),
      ...set(meaning, body, space.indent, meaningTag),
      gap(space.paragraph * 0.75),
    ];
  });
  return [...pieces, gap(space.paragraph)];
}
