/** Shares pieces out over pages, from the first to the last. */

import { bind } from '../flow/bind';
import { begin, type FilledBox, fill, type Work } from '../flow/fill';
import { type Box, isSolid, type Piece, stackHeight } from '../pieces';
import { Problems } from '../problems';
import type { Setting } from '../setting';

/** What a page's room depends on, where heads differ. */
export interface HeadRooms {
  /** The parts that a page can go on in, by name. */
  readonly parts: { has(name: string): boolean };
  /**
   * Height of the body of a page: the first has index 0, `part` is what goes on on it, `heading` that of the part which
   * begins it. Never less than `setting.roomPt`.
   */
  roomOf(page: number, part: string | undefined, heading: PartHeading | undefined): number;
  /** Whether pages that go on one into the other are filled evenly, so that none stands half empty beside full ones. */
  readonly evenEnd?: boolean;
  /** With so many pages filled, what is left is left. */
  readonly mostPages?: number;
}

/** The heading of a part that begins a page. */
export interface PartHeading {
  /** Its lines. */
  readonly boxes: readonly Box[];
  /** Their height with the space below them. */
  readonly heightPt: number;
}

/** The boxes of a page, and the part of the paper that goes on on it from the page before, or the heading of one that begins it. */
export interface FilledPage {
  readonly boxes: FilledBox[];
  readonly goesOnIn: string | undefined;
  readonly heading: PartHeading | undefined;
}

/** Pages that all have the same room. */
export function alike({ roomPt }: Setting): HeadRooms {
  return { parts: new Set(), roomOf: () => roomPt };
}

/** Boxes page by page, all pages alike. */
export function paginate(pieces: readonly Piece[], setting: Setting): readonly StartedPage[] {
  return paginateUnderHeads(pieces, setting, alike(setting));
}

/** Just the boxes of each page. */
export function boxesOf(pages: readonly FilledPage[]): FilledBox[][] {
  return pages.map(({ boxes }) => boxes);
}

/**
 * Boxes page by page, where a page's room depends on its head, and that on which part of the paper goes on. Always ends: each
 * page takes at least one piece. There is at least one page.
 */
export function paginateUnderHeads(
  pieces: readonly Piece[],
  setting: Setting,
  heads: HeadRooms,
): readonly StartedPage[] {
  const { mostPages = Number.POSITIVE_INFINITY } = heads;
  const pages: StartedPage[] = [];
  let start: Start = { work: begin(bind(pieces)), part: undefined };
  let done = false;
  while (!done && pages.length < mostPages) {
    const { goesOnIn, heading, filled, next } = filledPage(start, pages.length, heads, setting);
    if (filled.boxes.length > 0 || pages.length === 0)
      pages.push({ ...start, boxes: [...filled.boxes], goesOnIn, heading });
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
  const heading = headingAt(work, parts);
  const goesOnIn = heading === undefined ? part : undefined;
  const heightPt = share * roomOf(index, goesOnIn, heading);
  const filled = fill(work, { heightPt, emptyPt: setting.roomPt }, setting);
  const next: Start = { work: filled.work, part: partsIn(filled.boxes, parts).at(-1)?.name ?? part };
  return { goesOnIn, heading, filled, next };
}

/** A page with what there was to place when it began. */
export type StartedPage = FilledPage & Start;

/** A page filled to less than this share is given something of those before it; of the first, only below that share. */
const lowShare = 0.8;
const littleShare = 0.3;
/** So many pages at most share what they hold, */
const mostShared = 4;
/** none of them filled to more than one of these shares, tried in turn. */
const evenShares = [0.6, 0.68, 0.76, 0.84, 0.92] as const;
/** What pages hold may come out so much less tall where it is shared out otherwise, or their room be so much more: a share. */
const mostGain = 1.05;

/** The same pages, what stands on those that go on one into the other shared out more evenly. */
function evened(pages: readonly StartedPage[], heads: HeadRooms, setting: Setting): StartedPage[] {
  // what is only tried leaves no problems behind
  const trial = { ...setting, problems: new Problems() };
  const even = [...pages];
  even.forEach((page, last) => {
    if (filledPt(page) >= lowShare * setting.roomPt) return;
    for (let count = 2; count <= mostShared; count += 1) {
      const from = last - count + 1;
      if (from < 0 || (from === 0 && filledPt(page) > littleShare * setting.roomPt)) return;
      // what begins after a break begins a page
      if (even.slice(from + 1, last + 1).some(isAfterBreak)) return;
      const shared = sharedOut(even.slice(from, last + 1), { from, end: even[last + 1] }, heads, trial);
      if (shared !== undefined) even.splice(from, count, ...shared);
      if (filledPt(even[last]) >= lowShare * setting.roomPt) return;
    }
  });
  return even;
}

function filledPt(page: FilledPage | undefined): number {
  return Math.max(0, ...(page?.boxes ?? []).map(({ box, y }) => y + box.heightPt));
}

function isAfterBreak({ work }: Start): boolean {
  return work.rest === undefined && work.bound.pieces[work.at - 1]?.kind === 'break';
}

/** Which page a run of pages begins on, and the start of the page after it. */
interface RunEnds {
  readonly from: number;
  readonly end: Start | undefined;
}

/** What stands on a run of pages, on as many that are more even; nothing if there is no such way. */
function sharedOut(
  run: readonly StartedPage[],
  { from, end }: RunEnds,
  heads: HeadRooms,
  setting: Setting,
): readonly StartedPage[] | undefined {
  const [first] = run;
  const leastPt = Math.min(...run.map(filledPt));
  const sumPt = run.reduce((sum, page) => sum + filledPt(page), 0);
  for (const share of evenShares) {
    // so much less than they hold is not worth trying
    if (sumPt > mostGain * share * run.length * setting.roomPt) continue;
    const pages: StartedPage[] = [];
    let start: Start | undefined = first;
    let done = false;
    while (start !== undefined && !done && pages.length < run.length) {
      const { goesOnIn, heading, filled, next } = filledPage(
        start,
        from + pages.length,
        heads,
        setting,
        share,
      );
      if (filled.boxes.length === 0) break;
      pages.push({ ...start, boxes: [...filled.boxes], goesOnIn, heading });
      start = next;
      done = filled.done;
    }
    const isWhole =
      end === undefined ? done : start?.work.at === end.work.at && start.work.rest === end.work.rest;
    const isFuller = Math.min(...pages.map(filledPt)) > leastPt;
    if (isWhole && isFuller && pages.length === run.length) return pages;
  }
  return undefined;
}

/** The heading of the part that comes next, if one does. */
function headingAt({ bound, at, rest }: Work, parts: HeadRooms['parts']): PartHeading | undefined {
  if (rest !== undefined) return undefined;
  const { pieces } = bound;
  const from = pieces.findIndex((piece, index) => index >= at && isSolid(piece));
  const first = pieces[from];
  if (first?.kind !== 'box' || !first.anchors.some(({ name, y }) => y === 0 && parts.has(name)))
    return undefined;
  const next = pieces.findIndex((piece, index) => index > from && piece.kind !== 'box');
  const end = next < 0 ? pieces.length : next;
  const boxes = pieces
    .slice(from, end)
    .flatMap((piece) => (piece.kind === 'box' && piece.origin === first.origin ? piece : []));
  const below = pieces[from + boxes.length];
  return { boxes, heightPt: stackHeight(boxes) + (below?.kind === 'gap' ? below.heightPt : 0) };
}

function partsIn(boxes: readonly FilledBox[], parts: HeadRooms['parts']) {
  return boxes.flatMap(({ box }) => box.anchors).filter(({ name }) => parts.has(name));
}
