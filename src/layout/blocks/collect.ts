/**
 * Blocks into pieces: each kind of block has a file of its own here, and the registry below sends it there.
 */
import type { Block } from '../../markup/block';
import { anchored, type Piece, stackHeight } from '../pieces';
import type { Place, Setting } from '../setting';
import { collectTable } from '../table/collect-table';
import { collectCaution } from './caution';
import { withChange } from './change';
import { collectContents } from './contents';
import { collectDefinitions } from './definitions';
import { collectFigure } from './figure';
import { collectGroup } from './group';
import { collectHeading } from './heading';
import { collectList } from './list';
import { collectParagraph } from './paragraph';
import { collectPageBreak, collectRule } from './rule';
import { collectSigns } from './signs';
import { collectSteps } from './steps';

/** Makes one block ready for pages. */
function collectBlock(block: Block, place: Place, setting: Setting): readonly Piece[] {
  switch (block.kind) {
    case 'heading':
      return withChange(collectHeading(block, place, setting), block.change);
    case 'paragraph':
      return withChange(collectParagraph(block, place, setting), block.change);
    case 'list':
      return collectList(block, place, setting, collectBlocks);
    case 'steps':
      return collectSteps(block, place, setting);
    case 'table':
      return collectTable(block, place, setting);
    case 'figure':
      return withChange(collectFigure(block, place, setting), block.change);
    case 'caution':
      return withChange(collectCaution(block, place, setting), block.change);
    case 'signs':
      return collectSigns(block, place, setting);
    case 'definitions':
      return collectDefinitions(block, place, setting);
    case 'contents':
      return collectContents(block, place, setting);
    case 'group':
      return collectGroup(block, place, setting, collectBlocks);
    case 'page-break':
      return collectPageBreak(block, place, setting);
    case 'rule':
      return withChange(collectRule(block, place, setting), block.change);
  }
}

/** Makes a run of blocks in one column ready for pages. */
export type CollectBlocks = (blocks: readonly Block[], place: Place, setting: Setting) => Piece[];

/** Makes blocks ready for pages, one under another. */
export const collectBlocks: CollectBlocks = (blocks, place, setting) => {
  const pieces: Piece[] = [];
  let keptFrom: number | undefined;
  let previous: Block | undefined;
  for (const block of blocks) {
    const keptAbovePt =
      keptFrom === undefined ? 0 : stackHeight(pieces.slice(keptFrom)) + gapAfterHeadings(pieces);
    const above = previous === undefined ? place.keptAbovePt : keptAbovePt;
    const own = { ...place, keptAbovePt: above };
    const collected = setting.reuse.pieces(block, own, setting, () => collectBlock(block, own, setting));
    const named = block.kind === 'heading' ? setting.survey.nameOf.get(block) : block.id;
    const standing =
      previous?.kind === 'heading' && block.kind !== 'heading' ? withoutGapAbove(collected) : collected;
    if (block.kind !== 'heading') keptFrom = undefined;
    else keptFrom ??= pieces.length;
    for (const piece of anchored(standing, named === undefined ? [] : [named], block.origin))
      pieces.push(piece);
    previous = block;
  }
  return pieces;
};

/** A heading's own space below it stands; what follows adds none. */
function withoutGapAbove(pieces: readonly Piece[]): readonly Piece[] {
  const first = pieces.findIndex((piece) => piece.kind !== 'gap');
  return first > 0 ? pieces.slice(first) : pieces;
}

function gapAfterHeadings(pieces: readonly Piece[]): number {
  const last = pieces[pieces.length - 1];
  return last?.kind === 'gap' ? last.heightPt : 0;
}
