/** Shares pieces out over pages, from the first to the last. */

import { bind } from '../flow/bind';
import { begin, type FilledBox, fill, type Work } from '../flow/fill';
import type { Piece } from '../pieces';
import { Problems } from '../problems';
import type { Setting } from '../setting';

/** What a page's room depends on, where heads differ. */
export interface HeadRooms {
  /** The parts that a page can go on in, by name. */
  readonly parts: { has(name: string): boolean };
  /** Height of the body of a page: the first has index 0, `part` is what goes on on it. Never less than `setting.roomPt`. */
  roomOf(page: number, part: string | undefined): number;
  /** Whether the last page gets a fair part of the one before it where it would hold little. */
  readonly evenEnd?: boolean;
  /** With so many pages filled, what is left is left. */
  readonly mostPages?: number;
}

/** The boxes of a page, and the part of the paper that goes on on it from the page before. */
export interface FilledPage {
  readonly boxes: FilledBox[];
  readonly goesOnIn: string | undefined;
}

/** Boxes page by page. Always ends: each page takes at least one piece. There is at least one page. */
export function paginate(pieces: readonly Piece[], setting: Setting): FilledBox[][] {
  const alike: HeadRooms = { parts: new Set(), roomOf: () => setting.roomPt };
  return paginateUnderHeads(pieces, setting, alike).map(({ boxes }) => boxes);
}

/** The same where a page's room depends on its head, and that on which part of the paper goes on. */
export function paginateUnderHeads(
  pieces: readonly Piece[],
  setting: Setting,
  heads: HeadRooms,
): FilledPage[] {
  const { mostPages = Number.POSITIVE_INFINITY } = heads;
  const pages: (FilledPage & Start)[] = [];
  let start: Start = { work: begin(bind(pieces)), part: undefined };
  let done = false;
  while (!done && pages.length < mostPages) {
    const { goesOnIn, filled, next } = filledPage(start, pages.length, heads, setting);
    if (filled.boxes.length > 0 || pages.length === 0)
      pages.push({ ...start, boxes: [...filled.boxes], goesOnIn });
    start = next;
    done = filled.done;
  }
  return done && heads.evenEnd === true ? evened(pages, heads, setting) : pages;
}

/** Where a page begins: the work left, and the part of the paper that it is in. */
interface Start {
  readonly work: Work;
  readonly part: string | undefined;
}

/** The page at `index`, no more than `share` of its room filled. */
function filledPage(
  { work, part }: Start,
  index: number,
  { parts, roomOf }: HeadRooms,
  setting: Setting,
  share = 1,
) {
  const filledIn = (within: string | undefined) =>
    fill(work, { heightPt: share * roomOf(index, within), emptyPt: setting.roomPt }, setting);
  let goesOnIn = part;
  let filled = filledIn(goesOnIn);
  if (goesOnIn !== undefined && partsIn(filled.boxes.slice(0, 1), parts)[0]?.y === 0) {
    goesOnIn = undefined;
    filled = filledIn(goesOnIn);
  }
  const next: Start = { work: filled.work, part: partsIn(filled.boxes, parts).at(-1)?.name ?? part };
  return { goesOnIn, filled, next };
}

/** A last page filled to no more than this share is given something of the one before. */
const littleShare = 0.3;
/** How much of the page before the last is left to it, tried in turn. */
const leftShares = [0.85, 0.75, 0.65, 0.55] as const;

/** The same pages, the last two filled more evenly if the last holds little and they go on one into the other. */
function evened(pages: (FilledPage & Start)[], heads: HeadRooms, setting: Setting): FilledPage[] {
  const index = pages.length - 2;
  const before = pages[index];
  const holdsLittle = (boxes: readonly FilledBox[]) =>
    Math.max(0, ...boxes.map(({ box, y }) => y + box.heightPt)) <= littleShare * setting.roomPt;
  const end = pages[index + 1];
  if (before === undefined || end === undefined || !holdsLittle(end.boxes)) return pages;
  if (end.work.bound.pieces[end.work.at - 1]?.kind === 'break') return pages;
  // what is only tried leaves no problems behind
  const trial = { ...setting, problems: new Problems() };
  for (const share of leftShares) {
    const shorter = filledPage(before, index, heads, trial, share);
    const last = filledPage(shorter.next, index + 1, heads, trial);
    if (shorter.filled.boxes.length === 0 || !last.filled.done) return pages;
    if (holdsLittle(last.filled.boxes)) continue;
    return [
      ...pages.slice(0, index),
      { boxes: [...shorter.filled.boxes], goesOnIn: shorter.goesOnIn },
      { boxes: [...last.filled.boxes], goesOnIn: last.goesOnIn },
    ];
  }
  return pages;
}

function partsIn(boxes: readonly FilledBox[], parts: HeadRooms['parts']) {
  return boxes.flatMap(({ box }) => box.anchors).filter(({ name }) => parts.has(name));
}
