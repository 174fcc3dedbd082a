/** Shares pieces out over pages, from the first to the last. */

import { bind } from '../flow/bind';
import { begin, type FilledBox, fill, type Work } from '../flow/fill';
import type { Piece } from '../pieces';
import type { Setting } from '../setting';

/**
 * Boxes page by page; the first page's room may differ from that of the others. Always ends: each page takes at least
 * one piece. There is at least one page.
 */
export function paginate(
  pieces: readonly Piece[],
  setting: Setting,
  firstRoomPt = setting.roomPt,
): FilledBox[][] {
  const pages: FilledBox[][] = [];
  let work: Work = begin(bind(pieces));
  for (let done = false; !done; ) {
    const heightPt = pages.length === 0 ? firstRoomPt : setting.roomPt;
    const filled = fill(work, { heightPt, emptyPt: setting.roomPt }, setting);
    if (filled.boxes.length > 0 || pages.length === 0) pages.push([...filled.boxes]);
    work = filled.work;
    done = filled.done;
  }
  return pages;
}
