/** Lists of safety signs: each sign at the left, what it means here beside it. */
import type { SignsBlock } from '../../markup/block';
import { placeText, setText, textHeight } from '../inline/text';
import { type Box, box, gap, type Piece } from '../pieces';
import type { Place, Setting } from '../setting';
import { withChange } from './change';
import { measure } from './paragraph';
import { setSigns } from './sign';

/** Makes a list of signs ready for pages. */
export function collectSigns(block: SignsBlock, place: Place, setting: Setting): Piece[] {
  const { look, structure } = setting;
  const list = structure.add('L', place.tag, { numbering: 'None' });
  const rows = block.items.map((item) => {
    const entry = structure.add('LI', list);
    const signs = setSigns([item.sign], structure.add('Lbl', entry), setting);
    return { item, signs, tag: structure.add('LBody', entry) };
  });
  const columnPt = Math.max(0, ...rows.map(({ signs }) => signs.widthPt));
  // signs without a number under them still stand apart
  const apartPt = look.signs.label === undefined ? look.space.paragraph : look.space.listItem;
  const textX = place.x + columnPt + look.body.sizePt;
  const textPt = place.x + measure(place.widthPt, look) - textX;
  const pieces = rows.flatMap(({ item, signs, tag }): Piece[] => {
    const text = setText(item.content, look.body, textPt, setting, block.origin, tag);
    const heightPt = Math.max(signs.heightPt, textHeight(text));
    const { items, figures } = signs.place(place.x + (columnPt - signs.widthPt) / 2, 0);
    // a line or two stand against the middle of the sign, more from its top
    const top = Math.max(0, (look.signs.heightPt - textHeight(text)) / 2);
    const row: Box = box(
      heightPt,
      [...items, ...placeText(text, textX, top, 'left', setting, tag)],
      block.origin,
    );
    return [...withChange([{ ...row, figures }], item.change), gap(apartPt)];
  });
  return [gap(look.space.paragraph), ...pieces, gap(look.space.paragraph)];
}
