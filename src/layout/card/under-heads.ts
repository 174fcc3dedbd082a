/** Shares pieces out over the faces of a card, each below its head; the heading of a part that begins a face is its head. */
import type { FilledBox } from '../flow/fill';
import { bettered } from '../pages/last-on-page';
import { type HeadRooms, type PartHeading, paginateUnderHeads } from '../pages/paginate';
import type { Piece } from '../pieces';
import type { Setting } from '../setting';
import { beginsAlone, type Closeness, closenessOf, withCloseness } from './closer-parts';
import type { Heads } from './heads';
import type { Strip } from './strip';

/** What faces are filled by. */
export interface FaceRooms {
  readonly heads: Heads;
  /** Height between a head and the foot. */
  roomUnder(head: Strip): number;
  /** Whether a heading that begins a face is its head. */
  readonly headed: boolean;
  /** With so many faces filled, what is left is left. */
  readonly mostFaces: number;
  /** What is left of the spaces in each part; left out, what saves faces is found. */
  readonly closeness: Closeness | undefined;
}

/** Faces from the first to the last, and what was left of the spaces in each part. */
export interface FilledFaces {
  readonly faces: readonly Face[];
  readonly closeness: Closeness;
}

/** One face. Its boxes count from the top of its head. */
export interface Face {
  readonly head: Strip;
  /** Names of the places that the head holds. */
  readonly headNames: readonly string[];
  readonly boxes: readonly FilledBox[];
  /** A part that stands alone ends on it, and another begins on the next. */
  readonly endsPart: boolean;
}

/** Fills faces. */
export function facesUnderHeads(pieces: readonly Piece[], setting: Setting, rooms: FaceRooms): FilledFaces {
  const { heads, roomUnder } = rooms;
  const headingOn = (face: number, heading: PartHeading | undefined) =>
    face > 0 && rooms.headed ? heading : undefined;
  const headOf = (face: number, part: string | undefined, heading: PartHeading | undefined) => {
    if (face === 0) return heads.first;
    return heading === undefined ? heads.next(part) : heads.begins(heading);
  };
  const headRooms: HeadRooms = {
    parts: heads.parts,
    evenEnd: true,
    roomOf: (face, part, begins) => {
      const heading = headingOn(face, begins);
      return roomUnder(headOf(face, part, heading)) + (heading?.heightPt ?? 0);
    },
    mostPages: rooms.mostFaces,
  };
  const closeness = rooms.closeness ?? closenessOf(pieces, setting, headRooms);
  const closed = withCloseness(pieces, closeness);
  const pages = bettered(paginateUnderHeads(closed, setting, headRooms), closed, setting, headRooms);
  const standAlone = rooms.headed && pieces.some(beginsAlone);
  const firstPart = pages.findIndex(({ heading }, index) => index > 0 && heading !== undefined);
  const faces = pages.map(({ boxes, goesOnIn, heading: begins }, index) => {
    const heading = headingOn(index, begins);
    const head = headOf(index, goesOnIn, heading);
    const down = head.heightPt - (heading?.heightPt ?? 0);
    const below = boxes.slice(heading?.boxes.length ?? 0);
    return {
      head,
      headNames: index === 0 ? heads.titleNames : (heading?.boxes ?? []).flatMap(namesIn),
      boxes: below.map(({ box, y }) => ({ box, y: y + down })),
      // what comes before the first of them, such as a list, is no part that somebody has to act by
      endsPart:
        standAlone && index >= firstPart && headingOn(index + 1, pages[index + 1]?.heading) !== undefined,
    };
  });
  return { faces, closeness };
}

function namesIn({ anchors }: FilledBox['box']): string[] {
  return anchors.map(({ name }) => name);
}
