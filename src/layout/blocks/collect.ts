/**
 * Blocks into pieces: each kind of block has a file of its own here, and the registry below sends it there.
 */
import type { Block } from '../../markup/block';
import { anchored, heldToNext, isSolid, type Piece, stackHeight } from '../pieces';
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
  let introFrom: number | undefined;
  let previous: Block | undefined;
  blocks.forEach((block, index) => {
    if (introFrom !== undefined) {
      if (isIntroduced(block) && isShort(pieces.slice(introFrom), setting)) holdFrom(pieces, introFrom);
      else keptFrom = undefined;
    }
    const keptAbovePt = keptFrom === undefined ? 0 : stackHeight(pieces.slice(keptFrom)) + gapBelow(pieces);
    const above = previous === undefined ? place.keptAbovePt : keptAbovePt;
    const own = { ...place, keptAbovePt: above };
    const collected = setting.reuse.pieces(block, own, setting, () => collectBlock(block, own, setting));
    const named = block.kind === 'heading' ? setting.survey.nameOf.get(block) : block.id;
    const isFirstBelow = previous?.kind === 'heading' && block.kind !== 'heading';
    const below = previous?.kind === 'table' && block.kind === 'paragraph' && isShort(collected, setting);
    const ownPieces = isFirstBelow ? withoutGapAbove(collected) : collected;
    const standing = below ? ownPieces.map(belongingAbove) : ownPieces;
    introFrom = isFirstBelow && block.kind === 'paragraph' ? pieces.length : undefined;
    if (block.kind === 'heading') keptFrom ??= pieces.length;
    else if (introFrom === undefined) keptFrom = undefined;
    const isFollowed = block.kind === 'caution' && isCautioned(blocks[index + 1]);
    const following = isFollowed ? heldToNext(standing, 'ought') : standing;
    for (const piece of anchored(following, named === undefined ? [] : [named], block.origin))
      pieces.push(piece);
    previous = block;
  });
  return pieces;
};

/** A paragraph of at most so many lines right below a heading introduces what comes next. */
const introLines = 4;

/** What a heading with a few words below it would stand apart from if it came overleaf. */
function isIntroduced(block: Block): boolean {
  if (block.kind === 'figure') return block.trueSize !== true;
  return ['table', 'list', 'steps', 'caution', 'signs', 'definitions', 'group'].includes(block.kind);
}

/** What a caution is said for, and other cautions of the same. */
function isCautioned(block: Block | undefined): boolean {
  return block?.kind === 'caution' || block?.kind === 'steps';
}

function isShort(pieces: readonly Piece[], { look }: Setting): boolean {
  return stackHeight(pieces) <= introLines * look.lead.leadingPt;
}

/** A few words right below a table are said of it. */
function belongingAbove(piece: Piece): Piece {
  return piece.kind === 'box' ? { ...piece, belongsAbove: true } : piece;
}

/** Lets every piece from the given one on hold on to the next, and the last to what comes. */
function holdFrom(pieces: Piece[], from: number): void {
  for (let index = from; index < pieces.length; index += 1) {
    const piece = pieces[index];
    if (piece !== undefined && isSolid(piece) && piece.keep === 'free')
      pieces[index] = { ...piece, keep: 'ought' };
  }
}

/** A heading's own space below it stands; what follows adds none. */
function withoutGapAbove(pieces: readonly Piece[]): readonly Piece[] {
  const first = pieces.findIndex((piece) => piece.kind !== 'gap');
  return first > 0 ? pieces.slice(first) : pieces;
}

function gapBelow(pieces: readonly Piece[]): number {
  const last = pieces[pieces.length - 1];
  return last?.kind === 'gap' ? last.heightPt : 0;
}
