/**
 * Pieces in columns that stand side by side: filled from the left; where all that is left fits on the page, the columns
 * are made as short, and so as even, as what must stay together allows. What does not fit goes on on the next page.
 */
import type { BlockOrigin } from '../../markup/block';
import { closedUp } from '../closer';
import type { PlacedItem } from '../frame';
import {
  type Box,
  isSolid,
  type Layer,
  layeredBox,
  type Piece,
  type Splittable,
  stackHeight,
  type Take,
} from '../pieces';
import { Problems } from '../problems';
import type { Setting } from '../setting';
import { moveItem } from '../shape';
import { bind } from './bind';
import { begin, type Filled, type FilledBox, fill, lettingGo, type Work } from './fill';

/** How columns stand: how many, and from the left edge of one to that of the next. */
export interface ColumnsPlan {
  readonly count: number;
  readonly pitchPt: number;
}

interface Fixed extends ColumnsPlan {
  readonly setting: Setting;
  readonly origin: BlockOrigin;
}

/** Pieces collected for the width of one column, set in columns. */
export function columned(
  pieces: readonly Piece[],
  plan: ColumnsPlan,
  setting: Setting,
  origin: BlockOrigin,
): Splittable {
  const closer = (share: number) => columned(closedUp(pieces, share), plan, setting, origin);
  return { ...part(begin(bind(pieces)), { ...plan, setting, origin }), closer };
}

/** What is left of the pieces, as something that can go on on the next page. */
function part(work: Work, fixed: Fixed): Splittable {
  const { pieces, must } = work.bound;
  const heightPt = stackHeight(pieces.slice(work.at)) / fixed.count;
  const first = pieces.findIndex((piece, index) => index >= work.at && isSolid(piece));
  const leastPt = work.rest?.leastPt ?? must[first] ?? 0;
  return {
    kind: 'splittable',
    heightPt,
    leastPt,
    wantPt: leastPt,
    keep: 'free',
    anchors: [],
    origin: fixed.origin,
    take: (roomPt, lastResort) => take(work, roomPt, lastResort, fixed),
  };
}

function take(work: Work, roomPt: number, lastResort: boolean, fixed: Fixed): Take {
  const emptyPt = lastResort ? roomPt : fixed.setting.roomPt;
  const full = fillColumns(work, roomPt, emptyPt, fixed);
  if (!full.done) {
    if (full.columns.every(({ length }) => length === 0)) return { kind: 'nothing' };
    return { kind: 'part', box: sideBySide(full, fixed), rest: part(full.work, fixed) };
  }
  return { kind: 'all', box: sideBySide(evened(work, full, fixed), fixed) };
}

interface FilledColumns {
  readonly columns: readonly (readonly FilledBox[])[];
  readonly usedPt: number;
  readonly work: Work;
  readonly done: boolean;
}

/** Fills column after column, each of them `heightPt` tall. */
function fillColumns(
  work: Work,
  heightPt: number,
  emptyPt: number,
  { count, setting }: Fixed,
): FilledColumns {
  const columns: (readonly FilledBox[])[] = [];
  let usedPt = 0;
  let left: Pick<Filled, 'work' | 'done'> = { work, done: false };
  while (columns.length < count && !left.done) {
    const kept = fill(left.work, { heightPt, emptyPt }, setting);
    // what only ought to stay together must not keep a column empty
    const filled =
      kept.boxes.length > 0 || kept.done ? kept : fill(lettingGo(left.work), { heightPt, emptyPt }, setting);
    columns.push(filled.boxes);
    usedPt = Math.max(usedPt, filled.usedPt);
    left = filled;
  }
  return { columns, usedPt, work: left.work, done: left.done };
}

const halvings = 12;

/** The same in columns as short as still hold everything. Trying leaves no problems behind. */
function evened(work: Work, full: FilledColumns, fixed: Fixed): FilledColumns {
  const trial = { ...fixed, setting: { ...fixed.setting, problems: new Problems() } };
  let best = full;
  let low = stackHeight(work.bound.pieces.slice(work.at)) / (2 * fixed.count);
  let high = full.usedPt;
  for (let round = 0; round < halvings && high - low > 0.25; round += 1) {
    const middle = (low + high) / 2;
    const tried = fillColumns(work, middle, fixed.setting.roomPt, trial);
    if (tried.done) {
      best = tried;
      high = Math.min(middle, tried.usedPt);
    } else low = middle;
  }
  return best;
}

function acrossBy(dx: number, items: readonly PlacedItem[]): readonly PlacedItem[] {
  return dx === 0 ? items : items.map((item) => moveItem(item, dx, 0));
}

function sideBySide({ columns, usedPt }: FilledColumns, { pitchPt, origin }: Fixed): Box {
  const placed = columns.flatMap((boxes, column) =>
    boxes.map(({ box, y }) => ({ box, dx: column * pitchPt, dy: y })),
  );
  const layers = placed.flatMap(({ box, dx, dy }) =>
    box.layers.map(
      ({ y, items, tied, ...layer }): Layer => ({
        ...layer,
        y: y + dy,
        items: acrossBy(dx, items),
        ...(tied === undefined
          ? {}
          : { tied: { ...tied, show: (letter) => acrossBy(dx, tied.show(letter)) } }),
      }),
    ),
  );
  return {
    ...layeredBox(usedPt, layers, origin),
    anchors: placed.flatMap(({ box, dy }) => box.anchors.map(({ name, y }) => ({ name, y: y + dy }))),
    figures: placed.flatMap(({ box, dx, dy }) =>
      box.figures.map(({ tag, bounds: [left, top, right, bottom] }) => ({
        tag,
        bounds: [left + dx, top + dy, right + dx, bottom + dy] as const,
      })),
    ),
  };
}
