/** Headings: kept with what follows them. */
import type { HeadingBlock } from '../../markup/block';
import { setBalanced } from '../inline/balance';
import { lineBoxes } from '../inline/text';
import { cutText } from '../inline/tokens';
import { gap, heldTogether, heldToNext, type Piece } from '../pieces';
import type { Place, Setting } from '../setting';

const types = ['H1', 'H2', 'H3', 'H4'] as const;

/** Makes a heading ready for pages. */
export function collectHeading(block: HeadingBlock, place: Place, setting: Setting): Piece[] {
  const index = (block.level - 1) as 0 | 1 | 2 | 3;
  const { style, abovePt, belowPt, besidePt = 0 } = setting.look.headings[index];
  const tag = setting.structure.add(types[index], place.tag);
  const cut = cutText(block.content, style, setting, block.origin, tag);
  const text = setBalanced(cut, style, place.widthPt - besidePt, setting, block.origin);
  const lines = lineBoxes(text, place.x, 'left', setting, block.origin, tag);
  const startsPage = block.level === 1 && setting.chaptersOnNewPage;
  return [
    ...(startsPage ? [{ kind: 'break' } as const] : []),
    gap(abovePt),
    ...heldToNext(heldTogether(lines, 'must')),
    gap(belowPt),
  ];
}
