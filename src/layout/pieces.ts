/**
 * Pieces: content made ready for pages. Every block has become boxes, splittables, gaps and forced breaks,
 * with what each needs; filling pages never asks what a piece is.
 */
import type { BlockOrigin, ChangeMark } from '../markup/block';
import type { PlacedItem, StructureIndex } from './frame';
import type { Bounds } from './shape';

/** How a piece holds on to the one after it: it must stay on its page, ought to if one page can hold both, or need not. */
export type Keep = 'must' | 'ought' | 'free';

/** A named place in a piece. */
export interface Anchor {
  readonly name: string;
  /** From the top of the piece. */
  readonly y: number;
}

/** A figure in a piece, whose place on the page the structure tree must say. */
export interface FigurePlace {
  readonly tag: StructureIndex;
  readonly bounds: Bounds;
}

/** Items that are moved down together by `y` when they are placed. They count from the body's left edge. */
export interface Layer {
  readonly y: number;
  readonly items: readonly PlacedItem[];
  /** What is to be marked beside it, in the outer margin of whatever page it comes to stand on. */
  readonly beside?: Beside;
  /** What ties it to something else on the page it comes to stand on. */
  readonly tied?: Tie;
}

/** A caution, or the mark of a step that it holds for too: both show one letter, if a page has both. */
export interface Tie {
  /** The same for a caution and all marks that stand for it. */
  readonly key: string;
  readonly kind: 'caution' | 'mark';
  /** What is shown with that letter, or without one. */
  readonly show: (letter: string | undefined) => readonly PlacedItem[];
}

/** A stretch of a page that reads otherwise than in the issue before, or after which something is gone. */
export interface Beside {
  readonly heightPt: number;
  readonly change: ChangeMark;
}

/** Something that never breaks: a line of text, a caution, a figure. */
export interface Box {
  readonly kind: 'box';
  readonly heightPt: number;
  /** What it shows, from the back to the front and in reading order; counted from the top of the box. */
  readonly layers: readonly Layer[];
  readonly keep: Keep;
  readonly anchors: readonly Anchor[];
  readonly figures: readonly FigurePlace[];
  /** Baseline of its first line, if it has one; marks of lists stand on it. */
  readonly baselinePt?: number;
  readonly origin: BlockOrigin;
  /** Set if it need not be shown where the same is shown above it on the page and all it holds on to follows there. */
  readonly said?: Said;
  /** Set if the mark for what is said above it belongs to what it holds on to. */
  readonly passesMark?: true;
  /** How much taller it is than it must be, to take up what room there is. */
  readonly stretchPt?: number;
  /** Set if it belongs to what stands above it, and ought not to begin a page. */
  readonly belongsAbove?: true;
  /** Set if it ought not to be the last on its page where that takes no page more. */
  readonly notLast?: true;
}

/** Something that is said once on a page. */
export interface Said {
  /** The same for all that say the same. */
  readonly key: string;
  /** Shown on the step, in its stead; counted from the top of that. A step has room for one. */
  readonly layer: Layer;
  readonly figures: readonly FigurePlace[];
}

/** Something that can go on on the next page: a table, a boxed group. */
export interface Splittable {
  readonly kind: 'splittable';
  /** Height if it does not break. */
  readonly heightPt: number;
  /** Room that must be there for any of it to stand on a page. */
  readonly leastPt: number;
  /** Room that ought to be there, if an empty page has it. */
  readonly wantPt: number;
  readonly keep: Keep;
  readonly anchors: readonly Anchor[];
  readonly origin: BlockOrigin;
  /** Set if it ought not to be the last on its page where that takes no page more. */
  readonly notLast?: true;
  /** The same with the given share of the spaces inside it, where it has any to give. */
  readonly closer?: (share: number) => Splittable;
  /** What stands in `roomPt`. `lastResort` is set when no other page has more room. */
  take(roomPt: number, lastResort: boolean): Take;
}

/** Outcome of `take`: all of it, a part and the rest, or nothing yet. */
export type Take =
  | { readonly kind: 'all'; readonly box: Box }
  | { readonly kind: 'part'; readonly box: Box; readonly rest: Splittable }
  | { readonly kind: 'nothing' };

/** Space between pieces. Neighbouring gaps do not add up, the largest counts; at the top of a page there are none. */
export interface Gap {
  readonly kind: 'gap';
  readonly heightPt: number;
}

/** What follows starts on a new page. */
export interface ForcedBreak {
  readonly kind: 'break';
  /**
   * A line shown instead of breaking where at least that share of a page is left, and what comes next has room below it;
   * or where all that comes before the next break has room there (`whole`).
   */
  readonly unlessLeft?: { readonly share: number | 'whole'; readonly line: Box };
}

/** Anything a page can be filled with. */
export type Piece = Box | Splittable | Gap | ForcedBreak;

/** Space between pieces. */
export function gap(heightPt: number): Gap {
  return { kind: 'gap', heightPt };
}

/** A box; it holds on to nothing unless told to. */
export function box(
  heightPt: number,
  items: readonly PlacedItem[],
  origin: BlockOrigin,
  baselinePt?: number,
  keep: Keep = 'free',
): Box {
  return layeredBox(heightPt, [{ y: 0, items }], origin, baselinePt, keep);
}

/** A box made of layers. */
export function layeredBox(
  heightPt: number,
  layers: readonly Layer[],
  origin: BlockOrigin,
  baselinePt?: number,
  keep: Keep = 'free',
): Box {
  const [anchors, figures] = [none, none];
  if (baselinePt === undefined) return { kind: 'box', heightPt, layers, keep, anchors, figures, origin };
  return { kind: 'box', heightPt, layers, keep, anchors, figures, origin, baselinePt };
}

const none: readonly never[] = [];

/** Layers moved down. */
export function lowered(layers: readonly Layer[], dy: number): Layer[] {
  return layers.map((layer) => ({ ...layer, y: layer.y + dy }));
}

/** The box with `items` before, and others after, what it shows. */
export function withItems(piece: Box, before: readonly PlacedItem[], after: readonly PlacedItem[] = []): Box {
  const own = [{ y: 0, items: before }, ...piece.layers, { y: 0, items: after }];
  const shows = ({ items, beside, tied }: Layer) =>
    items.length > 0 || beside !== undefined || tied !== undefined;
  return { ...piece, layers: own.filter(shows) };
}

/** True for pieces that take up room of their own. */
export function isSolid(piece: Piece): piece is Box | Splittable {
  return piece.kind === 'box' || piece.kind === 'splittable';
}

/** Height of pieces set one under another, without gaps at either end. A forced break counts as nothing. */
export function stackHeight(pieces: readonly Piece[]): number {
  let height = 0;
  let pending = 0;
  let begun = false;
  for (const piece of pieces) {
    if (piece.kind === 'gap') pending = Math.max(pending, piece.heightPt);
    else if (isSolid(piece)) {
      height += (begun ? pending : 0) + piece.heightPt;
      begun = true;
      pending = 0;
    }
  }
  return height;
}

/** The pieces with every one but the last holding on to the next, at least as strongly as `keep`. */
export function heldTogether(pieces: readonly Piece[], keep: 'must' | 'ought'): Piece[] {
  const last = pieces.findLastIndex(isSolid);
  return pieces.map((piece, index) => {
    if (!isSolid(piece) || index >= last || piece.keep === 'must') return piece;
    return { ...piece, keep };
  });
}

/** The pieces with the last one holding on to whatever follows, at least as strongly as `keep`. */
export function heldToNext(pieces: readonly Piece[], keep: 'must' | 'ought' = 'must'): Piece[] {
  const last = pieces.findLastIndex(isSolid);
  return pieces.map((piece, index) =>
    isSolid(piece) && index === last && piece.keep !== 'must' ? { ...piece, keep } : piece,
  );
}

/** The pieces with the last one marked as one that ought not to end a page. */
export function notLast(pieces: readonly Piece[]): Piece[] {
  const last = pieces.findLastIndex(isSolid);
  return pieces.map((piece, index) =>
    isSolid(piece) && index === last && piece.keep === 'free' ? { ...piece, notLast: true } : piece,
  );
}

/** The pieces with those at the places `which` holding on to the next. */
export function heldWhere(pieces: readonly Piece[], which: ReadonlySet<number>): Piece[] {
  return pieces.map((piece, index) =>
    isSolid(piece) && which.has(index) ? { ...piece, keep: 'ought' } : piece,
  );
}

/** The pieces with `anchors` at the top of the first one. */
export function anchored(pieces: readonly Piece[], names: readonly string[], origin: BlockOrigin): Piece[] {
  if (names.length === 0) return [...pieces];
  const anchors = names.map((name) => ({ name, y: 0 }));
  const first = pieces.findIndex(isSolid);
  if (first === -1) return [...pieces, { ...box(0, [], origin), anchors, keep: 'must' }];
  return pieces.map((piece, index) =>
    index === first && isSolid(piece) ? { ...piece, anchors: [...anchors, ...piece.anchors] } : piece,
  );
}
