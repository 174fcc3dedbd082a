/** Groups: kept on one page if they fit on one; some with a line around them. */
import type { GroupBlock } from '../../markup/block';
import { fits } from '../fits';
import { surrounded } from '../flow/frame-splittable';
import { gap, heldTogether, type Piece, stackHeight } from '../pieces';
import type { Place, Setting } from '../setting';
import type { CollectBlocks } from './collect';
import { filledRect, outlinedRect } from './marks';

/** Makes a group ready for pages. */
export function collectGroup(
  block: GroupBlock,
  place: Place,
  setting: Setting,
  collectBlocks: CollectBlocks,
): Piece[] {
  if (block.style === 'boxed') return boxed(block, place, setting, collectBlocks);
  const pieces = collectBlocks(block.blocks, place, setting);
  return fits(stackHeight(pieces) + place.keptAbovePt, setting.roomPt)
    ? heldTogether(pieces, 'ought')
    : pieces;
}

function boxed(block: GroupBlock, place: Place, setting: Setting, collectBlocks: CollectBlocks): Piece[] {
  const { look } = setting;
  const { boxX, boxY } = look.space;
  const { x, widthPt } = place;
  const tag = setting.structure.add('Div', place.tag);
  const inside = { ...place, x: x + boxX, widthPt: widthPt - 2 * boxX, tag };
  const pieces = collectBlocks(block.blocks, inside, { ...setting, roomPt: setting.roomPt - 2 * boxY });
  const surround = (heightPt: number) => [
    filledRect(x, 0, widthPt, heightPt, look.colours.box),
    outlinedRect(x, 0, widthPt, heightPt, look.colours.rule, look.line.thin),
  ];
  const around = gap(look.space.block);
  return [around, surrounded(pieces, boxY, surround, setting, block.origin), around];
}
