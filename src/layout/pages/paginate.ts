/** Shares pieces out over pages, from the first to the last. */

import { bind } from '../flow/bind';
import { begin, type FilledBox, fill, type Work } from '../flow/fill';
import type { Piece } from '../pieces';
import type { Setting } from '../setting';

/** What a page's room depends on, where heads differ. */
export interface HeadRooms {
  /** The parts that a page can go on in, by name. */
  readonly parts: { has(name: string): boolean };
  /** Height of the body of a page: the first has index 0, `part` is what goes on on it. Never less than `setting.roomPt`. */
  roomOf(page: number, part: string | undefined): number;
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
  { parts, roomOf, mostPages = Number.POSITIVE_INFINITY }: HeadRooms,
): FilledPage[] {
  const pages: FilledPage[] = [];
  let work: Work = begin(bind(pieces));
  let part: string | undefined;
  for (let done = false; !done && pages.length < mostPages; ) {
    const filledIn = (within: string | undefined) =>
      fill(work, { heightPt: roomOf(pages.length, within), emptyPt: setting.roomPt }, setting);
    let goesOnIn = part;
    let filled = filledIn(goesOnIn);
    if (goesOnIn !== undefined && partsIn(filled.boxes.slice(0, 1), parts)[0]?.y === 0) {
      goesOnIn = undefined;
      filled = filledIn(goesOnIn);
    }
    if (filled.boxes.length > 0 || pages.length === 0) pages.push({ boxes: [...filled.boxes], goesOnIn });
    part = partsIn(filled.boxes, parts).at(-1)?.name ?? part;
    work = filled.work;
    done = filled.done;
  }
  return pages;
}

function partsIn(boxes: readonly FilledBox[], parts: HeadRooms['parts']) {
  return boxes.flatMap(({ box }) => box.anchors).filter(({ name }) => parts.has(name));
}
