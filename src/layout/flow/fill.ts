/**
 * Fills one page, or the inside of one box, with pieces from the front of what is left.
 *
 * A page ends early only if the next one offers more room; so filling always ends, even with something
 * taller than any page, which is reported and left out.
 */
import { fits } from '../fits';
import {
  type Box,
  type ForcedBreak,
  isSolid,
  type Piece,
  type Splittable,
  stackHeight,
  type Take,
} from '../pieces';
import { Problems, type ProblemText } from '../problems';
import type { Setting } from '../setting';
import { type Bound, canStayTogether } from './bind';

/** What is still to be placed. */
export interface Work {
  readonly bound: Bound;
  /** The piece to go on with. */
  readonly at: number;
  /** What is left of that piece, if a part of it was placed. */
  readonly rest: Splittable | undefined;
  /** Up to this piece, what ought to stay together cannot, and is let go. */
  readonly letGoTo: number;
}

/** A box at its place on a page. */
export interface FilledBox {
  readonly box: Box;
  /** From the top of the body. */
  readonly y: number;
}

/** A page's worth of boxes, and the work left. `done` means there is nothing left. */
export interface Filled {
  readonly boxes: readonly FilledBox[];
  readonly usedPt: number;
  readonly work: Work;
  readonly done: boolean;
}

/** How much room there is, and how much an empty page has. */
export interface Room {
  readonly heightPt: number;
  readonly emptyPt: number;
}

/** The work of placing pieces, from the first. */
export function begin(bound: Bound): Work {
  return { bound, at: 0, rest: undefined, letGoTo: -1 };
}

/** The same work, its first pieces no longer held together more than they must be. */
export function lettingGo(work: Work): Work {
  return { ...work, letGoTo: Math.max(work.letGoTo, work.bound.chainEnd[work.at] ?? work.at) };
}

/** Fills `room` with as much of the work as stands in it. */
export function fill(work: Work, room: Room, setting: Setting): Filled {
  return new Filler(work, room, setting).run();
}

type Step = 'go-on' | 'page-full';

class Filler {
  private readonly boxes: FilledBox[] = [];
  private readonly bound: Bound;
  private at: number;
  private rest: Splittable | undefined;
  private letGoTo: number;
  private y = 0;
  private gapPt = 0;
  /** What has been shown on this page and need not be shown again, by its key. */
  private readonly saidHere = new Set<string>();
  /** What was not shown again, to be marked on the step that follows. */
  private leftUnsaid: Box | undefined;

  constructor(
    work: Work,
    private readonly room: Room,
    private readonly setting: Setting,
  ) {
    this.bound = work.bound;
    this.at = work.at;
    this.rest = work.rest;
    this.letGoTo = work.letGoTo;
  }

  run(): Filled {
    const { pieces } = this.bound;
    return this.filled(this.runTo(pieces.length));
  }

  private filled(done: boolean): Filled {
    const work = { bound: this.bound, at: this.at, rest: this.rest, letGoTo: this.letGoTo };
    return { boxes: this.boxes, usedPt: this.y, work, done };
  }

  private place(piece: Piece): Step {
    if (piece.kind === 'gap') {
      this.gapPt = Math.max(this.gapPt, piece.heightPt);
      this.at += 1;
      return 'go-on';
    }
    if (!isSolid(piece)) return this.endPage(piece);
    if (!this.hasRoomForNeed(piece)) {
      if (this.nextPageGains) return 'page-full';
      this.letGo();
    }
    if (piece.kind === 'splittable') return this.takeFrom(piece);
    if (!this.isSaid(piece)) return this.placeBox(piece);
    this.leftUnsaid = piece;
    this.at += 1;
    return 'go-on';
  }

  /** Whether the same is shown above, and the step it belongs to has room for the mark of it. */
  private isSaid(piece: Piece): piece is Box {
    if (piece.kind !== 'box' || piece.said === undefined || this.leftUnsaid !== undefined) return false;
    return this.saidHere.has(piece.said.key);
  }

  /** A forced break ends the page, unless nothing stands on it yet, or enough is left for one that depends on it. */
  private endPage({ unlessLeft }: ForcedBreak): Step {
    this.at += 1;
    if (unlessLeft !== undefined && this.boxes.length > 0 && this.hasRoomBelow(unlessLeft)) {
      this.put(unlessLeft.line);
      return 'go-on';
    }
    this.gapPt = 0;
    return this.boxes.length > 0 || this.nextPageGains ? 'page-full' : 'go-on';
  }

  /**
   * Whether that share of a page is left, and below the line across it room for what follows: all that ought to stay with
   * it and what comes after that, so that no heading stands there with a single step.
   */
  private hasRoomBelow({ share, line }: NonNullable<ForcedBreak['unlessLeft']>): boolean {
    if (share === 'whole') return this.hasRoomForAll(line);
    const { pieces, ought, chainEnd } = this.bound;
    const next = this.nextFrom(this.at);
    if (next === undefined) return false;
    const heldTo = chainEnd[next] ?? next;
    const second = this.nextFrom(heldTo + 1);
    const gapPt = (from: number, to: number) =>
      stackHeight([line, ...pieces.slice(from, to), line]) - 2 * line.heightPt;
    const secondPt = second === undefined ? 0 : gapPt(heldTo + 1, second) + (ought[second] ?? 0);
    const needPt = line.heightPt + gapPt(this.at, next) + (ought[next] ?? 0) + secondPt;
    return fits(share * this.room.emptyPt, this.roomLeft) && fits(needPt, this.roomLeft);
  }

  /** Whether all that comes before the next break, or the end, stands on this page below the line across it. */
  private hasRoomForAll(line: Box): boolean {
    const { pieces } = this.bound;
    const next = pieces.findIndex((piece, index) => index >= this.at && piece.kind === 'break');
    const end = next < 0 ? pieces.length : next;
    // what does not stand here even with all cautions but the first of each unsaid need not be tried
    const heightPt = this.roomLeft - line.heightPt;
    const repeated = pieces
      .slice(this.at, end)
      .filter((piece) => piece.kind === 'box' && piece.said !== undefined);
    if (!fits(stackHeight(pieces.slice(this.at, end)) - stackHeight(repeated), heightPt)) return false;
    // no page offers enough room, so that nothing is forced onto this one
    const room = { heightPt, emptyPt: Number.POSITIVE_INFINITY };
    const quiet = { ...this.setting, problems: new Problems() };
    const rest = new Filler(
      { bound: this.bound, at: this.at, rest: undefined, letGoTo: this.letGoTo },
      room,
      quiet,
    );
    for (const key of this.saidHere) rest.saidHere.add(key);
    return rest.runTo(end);
  }

  /** Places pieces up to the one at `end`; whether all of them had room. */
  private runTo(end: number): boolean {
    const { pieces } = this.bound;
    for (let piece = pieces[this.at]; this.at < end && piece !== undefined; piece = pieces[this.at]) {
      if (this.place(this.rest ?? piece) === 'page-full') return false;
    }
    return true;
  }

  /** Where what comes next stands, from `index` on; nothing if a break or the end comes first. */
  private nextFrom(index: number): number | undefined {
    const { pieces } = this.bound;
    const next = pieces.findIndex((piece, at) => at >= index && piece.kind !== 'gap');
    const following = pieces[next];
    return following !== undefined && isSolid(following) ? next : undefined;
  }

  private get top(): number {
    return this.boxes.length === 0 ? 0 : this.y + this.gapPt;
  }

  private get roomLeft(): number {
    return this.room.heightPt - this.top;
  }

  private get nextPageGains(): boolean {
    return this.boxes.length > 0 || !fits(this.room.emptyPt, this.room.heightPt);
  }

  private hasRoomForNeed(piece: Box | Splittable): boolean {
    if (this.rest !== undefined) return fits(this.rest.wantPt, this.roomLeft);
    if (piece.keep !== 'free' && !canStayTogether(this.bound, this.at, this.room.emptyPt)) this.letGo();
    const held = this.at <= this.letGoTo ? 'must' : 'ought';
    return fits((this.bound[held][this.at] ?? 0) - this.unsaidPt(held), this.roomLeft);
  }

  /** How much less is needed, because some of what holds together from here on is said above. */
  private unsaidPt(held: 'must' | 'ought'): number {
    if (this.saidHere.size === 0) return 0;
    const { pieces } = this.bound;
    let above = this.gapPt;
    for (let index = this.at; index < pieces.length; index += 1) {
      const piece = pieces[index];
      if (piece === undefined || piece.kind === 'break') break;
      if (piece.kind === 'gap') {
        above = piece.heightPt;
        continue;
      }
      const below = pieces[index + 1];
      if (this.isSaid(piece))
        return piece.heightPt + Math.min(above, below?.kind === 'gap' ? below.heightPt : 0);
      if (piece.keep === 'free' || (held === 'must' && piece.keep === 'ought')) break;
      above = 0;
    }
    return 0;
  }

  private letGo(): void {
    this.letGoTo = Math.max(this.letGoTo, this.bound.chainEnd[this.at] ?? this.at);
  }

  private placeBox(piece: Box): Step {
    if (!fits(piece.heightPt, this.roomLeft)) return this.leaveOut(piece);
    if (!fits(this.bound.must[this.at] ?? 0, this.room.emptyPt)) this.reportKept(piece);
    this.put(piece);
    this.at += 1;
    return 'go-on';
  }

  private takeFrom(piece: Splittable): Step {
    const taken = this.takenOf(piece);
    if (taken.kind === 'nothing') return this.nextPageGains ? 'page-full' : this.leaveOut(piece);
    const isFirstPart = this.rest === undefined;
    this.put(isFirstPart ? { ...taken.box, anchors: [...piece.anchors, ...taken.box.anchors] } : taken.box);
    if (taken.kind === 'part') {
      this.rest = taken.rest;
      return 'page-full';
    }
    this.rest = undefined;
    this.at += 1;
    return 'go-on';
  }

  /**
   * What of it stands here. If all of it does and no more, some of it goes overleaf with what belongs to it, where the next
   * page has room for that.
   */
  private takenOf(piece: Splittable): Take {
    const taken = piece.take(this.roomLeft, !this.nextPageGains);
    const belowPt = this.belongingPt();
    const hasSomeToGive = this.rest !== undefined || !fits(piece.heightPt, piece.wantPt);
    if (taken.kind !== 'all' || belowPt === 0 || !hasSomeToGive) return taken;
    if (fits(taken.box.heightPt + belowPt, this.roomLeft)) return taken;
    const less = piece.take(this.roomLeft - belowPt, false);
    return less.kind === 'nothing' ? taken : less;
  }

  /** Height of what belongs to the piece that is being placed, with the gap above it. */
  private belongingPt(): number {
    const { pieces } = this.bound;
    const next = pieces.findIndex((piece, index) => index > this.at && piece.kind !== 'gap');
    const first = pieces[next];
    if (first?.kind !== 'box' || first.belongsAbove !== true) return 0;
    const end = pieces.findIndex(
      (piece, index) => index > next && !(piece.kind === 'box' && piece.belongsAbove),
    );
    const own = pieces.slice(next, end < 0 ? pieces.length : end);
    const line = { ...first, heightPt: 0 };
    return stackHeight([line, ...pieces.slice(this.at + 1, next), ...own]);
  }

  private put(piece: Box): void {
    const y = this.top;
    const mark = piece.passesMark ? undefined : this.leftUnsaid;
    this.boxes.push({ box: mark === undefined ? piece : marked(piece, mark), y });
    if (mark !== undefined) this.leftUnsaid = undefined;
    if (piece.said !== undefined) this.saidHere.add(piece.said.key);
    this.y = y + piece.heightPt;
    this.gapPt = 0;
  }

  private leaveOut(piece: Box | Splittable): Step {
    this.setting.problems.add(tooTall(piece, this.room.emptyPt), piece.origin);
    this.rest = undefined;
    this.at += 1;
    return 'go-on';
  }

  private reportKept(piece: Box): void {
    this.setting.problems.add(keptTooTall(this.bound.must[this.at] ?? 0, this.room.emptyPt), piece.origin);
  }
}

/** A step with what shows that a caution of it is said above: read after its number, and before its words. */
function marked(box: Box, { said, anchors }: Box): Box {
  const number = box.layers.findIndex(({ items }) => items.some(({ kind }) => kind === 'text'));
  const [upTo, after] = [box.layers.slice(0, number + 1), box.layers.slice(number + 1)];
  return {
    ...box,
    layers: said === undefined ? box.layers : [...upTo, said.layer, ...after],
    anchors: [...anchors, ...box.anchors],
    figures: [...(said?.figures ?? []), ...box.figures],
  };
}

function tooTall(piece: Box | Splittable, roomPt: number): ProblemText {
  const needPt = piece.kind === 'box' ? piece.heightPt : piece.leastPt;
  return {
    code: 'layout-too-tall',
    severity: 'error',
    message: 'something that must stay whole is taller than a page',
    found: `${needPt.toFixed(0)} pt tall`,
    expected: `at most ${roomPt.toFixed(0)} pt, the height of a page’s text`,
    mend: 'use a larger sheet, or say it in fewer words or in several parts',
  };
}

function keptTooTall(needPt: number, roomPt: number): ProblemText {
  return {
    code: 'layout-kept-too-tall',
    severity: 'error',
    message: 'what stands here and what must stay with it do not fit on one page',
    found: `${needPt.toFixed(0)} pt tall together`,
    expected: `at most ${roomPt.toFixed(0)} pt, the height of a page’s text`,
    mend: 'use a larger sheet, or say it in fewer words or in several parts',
  };
}
