/**
 * A box drawn around pieces, which goes on on the next page if it must: boxed groups, and steps marked with a bar.
 */
import type { BlockOrigin } from '../../markup/block';
import { fits } from '../fits';
import type { PlacedItem } from '../frame';
import { type Box, lowered, type Piece, type Splittable, stackHeight, type Take } from '../pieces';
import type { Setting } from '../setting';
import { bind } from './bind';
import { begin, type Filled, fill, lettingGo, type Work } from './fill';

/** Draws what surrounds the pieces, given the height of the part on this page. Stands behind them. */
export type Surround = (heightPt: number) => readonly PlacedItem[];

/** Pieces with something drawn around them, `padPt` above and below. Kept on one page if they fit on one. */
export function surrounded(
  pieces: readonly Piece[],
  padPt: number,
  surround: Surround,
  setting: Setting,
  origin: BlockOrigin,
): Splittable {
  const bound = bind(pieces);
  const heightPt = stackHeight(pieces) + 2 * padPt;
  const first = pieces.findIndex((piece) => piece.kind === 'box' || piece.kind === 'splittable');
  const leastPt = (bound.must[first] ?? 0) + 2 * padPt;
  const whole = fits(heightPt, setting.roomPt);
  const wantPt = whole ? heightPt : leastPt;
  return part(begin(bound), { heightPt, leastPt, wantPt }, { padPt, surround, setting, origin });
}

interface Fixed {
  readonly padPt: number;
  readonly surround: Surround;
  readonly setting: Setting;
  readonly origin: BlockOrigin;
}

function part(
  work: Work,
  needs: Pick<Splittable, 'heightPt' | 'leastPt' | 'wantPt'>,
  fixed: Fixed,
): Splittable {
  return {
    kind: 'splittable',
    ...needs,
    keep: 'free',
    anchors: [],
    origin: fixed.origin,
    take: (roomPt, lastResort) => take(work, needs.leastPt, roomPt, lastResort, fixed),
  };
}

function take(work: Work, leastPt: number, roomPt: number, lastResort: boolean, fixed: Fixed): Take {
  const { padPt, setting } = fixed;
  const insidePt = roomPt - 2 * padPt;
  const emptyPt = lastResort ? insidePt : setting.roomPt - 2 * padPt;
  const room = { heightPt: insidePt, emptyPt };
  const kept = fill(work, room, setting);
  const promised = kept.boxes.length === 0 && !kept.done && fits(leastPt, roomPt);
  const filled = promised ? fill(lettingGo(work), room, setting) : kept;
  if (filled.boxes.length === 0)
    return filled.done ? { kind: 'all', box: wrap(filled, fixed) } : { kind: 'nothing' };
  if (filled.done) return { kind: 'all', box: wrap(filled, fixed) };
  const restPt = stackHeight(filled.work.bound.pieces.slice(filled.work.at)) + 2 * padPt;
  const restLeastPt = (filled.work.rest?.leastPt ?? filled.work.bound.must[filled.work.at] ?? 0) + 2 * padPt;
  const rest = part(filled.work, { heightPt: restPt, leastPt: restLeastPt, wantPt: restLeastPt }, fixed);
  return { kind: 'part', box: wrap(filled, fixed), rest };
}

function wrap(filled: Filled, { padPt, surround, origin }: Fixed): Box {
  const heightPt = filled.usedPt + 2 * padPt;
  const inside = filled.boxes.map(({ box, y }) => ({ box, dy: y + padPt }));
  return {
    kind: 'box',
    heightPt,
    layers: [
      { y: 0, items: surround(heightPt) },
      ...inside.flatMap(({ box, dy }) => lowered(box.layers, dy)),
    ],
    keep: 'free',
    anchors: inside.flatMap(({ box, dy }) => box.anchors.map(({ name, y }) => ({ name, y: y + dy }))),
    figures: inside.flatMap(({ box, dy }) =>
      box.figures.map(({ tag, bounds: [left, top, right, bottom] }) => ({
        tag,
        bounds: [left, top + dy, right, bottom + dy] as const,
      })),
    ),
    origin,
  };
}
