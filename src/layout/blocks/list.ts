/** Plain lists: bullets or numbers hang before the text, numbers ending at one line so that texts stand under each other. */
import type { Block, BlockOrigin, ListBlock } from '../../markup/block';
import type { PlacedItem, StructureIndex } from '../frame';
import { refuseTooNarrow } from '../inline/text';
import { baselineIn } from '../look';
import { box, gap, heldTogether, heldToNext, isSolid, type Piece, withItems } from '../pieces';
import { indented, type Place, type Setting } from '../setting';
import type { CollectBlocks } from './collect';
import { bullet } from './marks';

/** Makes a list ready for pages. */
export function collectList(
  block: ListBlock,
  place: Place,
  setting: Setting,
  collectBlocks: CollectBlocks,
): Piece[] {
  const { structure, look } = setting;
  const list = structure.add('L', place.tag, { numbering: block.ordered ? 'Decimal' : 'Disc' });
  const indentPt = block.ordered ? numberColumn(block.items.length, setting) : look.space.indent;
  refuseTooNarrow(place.widthPt - indentPt, look.body, setting, block.origin);
  const pieces: Piece[] = [];
  block.items.forEach((blocks, index) => {
    const item = structure.add('LI', list);
    const label = block.ordered ? structure.add('Lbl', item) : undefined;
    const body = structure.add('LBody', item);
    const inside = { ...indented(place, indentPt), tag: body, depth: place.depth + 1 };
    const collected = tightened(collectBlocks(blocks, inside, setting));
    const mark = block.ordered
      ? number(index + 1, place.x + indentPt, setting, label)
      : dot(place.x + 0.4 * indentPt, place.depth, setting);
    const whole = marked(collected, mark, setting, blocks, block.origin);
    const held = isShort(whole) ? heldTogether(whole, 'ought') : whole;
    // the last item does not stand alone on a page
    const beforeLast = index === block.items.length - 2;
    pieces.push(...(beforeLast ? heldToNext(held, 'ought') : held), gap(itemGap(blocks, setting)));
  });
  return [...tightened(pieces), gap(look.space.paragraph)];
}

/** An item of no more lines than this stays whole if a page can hold it. */
const shortLines = 4;

function isShort(pieces: readonly Piece[]): boolean {
  return pieces.length <= shortLines && pieces.every(({ kind }) => kind === 'box');
}

type Mark = (baseline: number) => PlacedItem[];

function dot(x: number, depth: number, { look }: Setting): Mark {
  return (baseline) => [
    bullet(
      x,
      baseline - look.fonts.text.xHeight * 0.5 * look.body.sizePt,
      look.body.sizePt,
      depth,
      look.colours.ink,
    ),
  ];
}

function number(value: number, right: number, { look }: Setting, tag: StructureIndex | undefined): Mark {
  const { face, sizePt, colour } = look.body;
  const text = `${value}.`;
  const widthPt = look.fonts[face].widthOf(text, sizePt);
  const placed = {
    kind: 'text',
    x: right - numberGapEm * sizePt - widthPt,
    widthPt,
    text,
    face,
    sizePt,
    colour,
  } as const;
  return (y) => [tag === undefined ? { ...placed, y } : { ...placed, y, tag }];
}

const numberGapEm = 0.5;

/** Width of the hanging numbers and the space after them. */
function numberColumn(count: number, { look }: Setting): number {
  const widest = look.fonts[look.body.face].widthOf(`${'0'.repeat(String(count).length)}.`, look.body.sizePt);
  return Math.max(look.space.indent, widest + numberGapEm * look.body.sizePt);
}

/** Puts the mark on the first line; or on a line of its own, if the item does not begin with one. */
function marked(
  pieces: Piece[],
  mark: Mark,
  setting: Setting,
  blocks: readonly Block[],
  origin: BlockOrigin,
): Piece[] {
  const first = pieces.findIndex(isSolid);
  const piece = pieces[first];
  if (piece?.kind === 'box' && piece.baselinePt !== undefined) {
    pieces[first] = withItems(piece, mark(piece.baselinePt));
    return pieces;
  }
  const baseline = baselineIn(setting.look.body, setting.look.fonts);
  const alone = box(setting.look.body.leadingPt, mark(baseline), blocks[0]?.origin ?? origin, baseline);
  return [{ ...alone, keep: piece === undefined ? 'free' : 'must' }, ...pieces];
}

/** Space after an item: close if it is one paragraph, else as between paragraphs. */
function itemGap(blocks: readonly Block[], { look }: Setting): number {
  return blocks.length <= 1 ? look.space.listItem : look.space.paragraph;
}

/** The pieces without space at their ends. */
function tightened(pieces: readonly Piece[]): Piece[] {
  const first = pieces.findIndex((piece) => piece.kind !== 'gap');
  const last = pieces.findLastIndex((piece) => piece.kind !== 'gap');
  return pieces.slice(Math.max(first, 0), last + 1);
}
