/**
 * Parts of a card that each begin a face unless they stand whole on one: a part that would take a face more for a little
 * is set a little closer, the spaces between its steps and blocks alike on all its faces. Its type stays.
 */

import { closedUp } from '../closer';
import { fits } from '../fits';
import { type HeadRooms, paginateUnderHeads } from '../pages/paginate';
import { type Piece, stackHeight } from '../pieces';
import { Problems } from '../problems';
import type { Setting } from '../setting';

/** What is left of the spaces in each part, from the first to the last. */
export type Closeness = readonly number[];

/** What may be left of the spaces in a part, tried in turn. */
const shares = [0.85, 0.7, 0.6, 0.5] as const;

/** The room of a face is no more than so many times the least that any face has. */
const moreRoom = 1.1;

/** What has to be left of the spaces in each part for it to take no face that it need not. */
export function closenessOf(pieces: readonly Piece[], setting: Setting, rooms: HeadRooms): Closeness {
  // what is only tried leaves no problems behind
  const trial = { ...setting, problems: new Problems() };
  const parts = partsOf(pieces);
  if (parts.length === 1) return [1];
  return parts.map((part, index) => {
    // the first stands below the title, with what comes before any part
    const before = index === 0 ? 0 : 1;
    const facesOf = (share: number) =>
      paginateUnderHeads(closedUp(part, share), trial, {
        ...rooms,
        evenEnd: false,
        roomOf: (page, within, heading) => rooms.roomOf(page + before, within, heading),
      }).length;
    const faces = facesOf(1);
    if (faces === 1) return 1;
    const mostPt = (faces - 1) * moreRoom * setting.roomPt;
    // a table gives more of its spaces than it is asked for where it then ends on its page
    const isSteps = !part.some((piece) => piece.kind === 'splittable' && piece.closer !== undefined);
    const possible = shares.filter(
      (share) => !isSteps || fits(stackHeight(closedUp(part, share)) - saidPt(part), mostPt),
    );
    return possible.find((share) => facesOf(share) < faces) ?? 1;
  });
}

/** The pieces with so much left of the spaces in each part. */
export function withCloseness(pieces: readonly Piece[], closeness: Closeness): readonly Piece[] {
  if (closeness.every((share) => share === 1)) return pieces;
  return partsOf(pieces).flatMap((part, index) => closedUp(part, closeness[index] ?? 1));
}

/** Parts with the break before each. */
function partsOf(pieces: readonly Piece[]): Piece[][] {
  const parts: Piece[][] = [[]];
  for (const piece of pieces) {
    if (beginsAlone(piece)) parts.push([]);
    parts.at(-1)?.push(piece);
  }
  return parts;
}

/** The most that is saved by what need not be said again. */
function saidPt(pieces: readonly Piece[]): number {
  return stackHeight(pieces.filter((piece) => piece.kind === 'box' && piece.said !== undefined));
}

/** Before a part that stands alone a face begins, unless all of it stands on the rest of one. */
export function beginsAlone(piece: Piece): boolean {
  return piece.kind === 'break' && piece.unlessLeft?.share === 'whole';
}
