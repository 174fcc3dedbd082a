/** Groups: kept on one page if they fit on one; some with a line around them, some in columns, some in a look of their own. */
import type { GroupBlock } from '../../markup/block';
import { fits } from '../fits';
import { columned } from '../flow/columns-splittable';
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
  if (block.style === 'columns') return inColumns(block, place, setting, collectBlocks);
  if (block.style === 'look-up')
    return collectBlocks(block.blocks, place, { ...setting, look: setting.look.lookUp ?? setting.look });
  if (block.style === 'close')
    return collectBlocks(block.blocks, place, { ...setting, look: setting.look.close ?? setting.look });
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

/** A column is no narrower than this, in sizes of its type; where two are, there is one. */
const leastColumnEm = 15;

function inColumns(block: GroupBlock, place: Place, setting: Setting, collectBlocks: CollectBlocks): Piece[] {
  const { look } = setting;
  const gapPt = look.space.columnGap;
  const halfPt = (place.widthPt - gapPt) / 2;
  const count = fits(leastColumnEm * look.column.sizePt, halfPt) ? 2 : 1;
  const widthPt = count === 2 ? halfPt : place.widthPt;
  const inside = { ...setting, look: { ...look, body: look.column } };
  const pieces = collectBlocks(block.blocks, { ...place, widthPt }, inside);
  return [
    columned(pieces, { count, pitchPt: widthPt + gapPt }, setting, block.origin),
    gap(look.space.paragraph),
  ];
}
