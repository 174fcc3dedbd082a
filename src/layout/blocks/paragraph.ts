/** Paragraphs: lines of running text, no longer than can be read with ease. */
import type { ParagraphBlock } from '../../markup/block';
import { lineBoxes, setText } from '../inline/text';
import type { Look } from '../look';
import { gap, heldTogether, heldToNext, type Piece } from '../pieces';
import type { Place, Setting } from '../setting';

/** Makes a paragraph ready for pages. */
export function collectParagraph(block: ParagraphBlock, place: Place, setting: Setting): Piece[] {
  const style = { body: setting.look.body, lead: setting.look.lead, note: setting.look.note }[block.style];
  const tag = setting.structure.add('P', place.tag);
  const text = setText(
    block.content,
    style,
    measure(place.widthPt, setting.look),
    setting,
    block.origin,
    tag,
  );
  const lines = lineBoxes(text, place.x, 'left', setting, block.origin, tag);
  const made = [...lines, gap(setting.look.space.paragraph)];
  return block.keep === true ? heldToNext(heldTogether(made, 'ought')) : made;
}

/** Width of a column of running text: all there is, up to what can be read with ease in body type. */
export function measure(widthPt: number, look: Look): number {
  return Math.min(widthPt, look.measureEm * look.body.sizePt);
}
