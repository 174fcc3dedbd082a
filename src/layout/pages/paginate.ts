/** Shares pieces out over pages, from the first to the last. */
import type { Piece } from '../pieces';
import type { Setting } from '../setting';
import { bind } from '../flow/bind';
import { begin, type FilledBox, fill, type Work } from '../flow/fill';

/** Boxes page by page. Always ends: each page takes at least one piece. There is at least one page. */
export function paginate(pieces: readonly Piece[], setting: Setting): FilledBox[][] {
  const room = { heightPt: setting.roomPt, emptyPt: setting.roomPt };
  const pages: FilledBox[][] = [];
  let work: Work = begin(bind(pieces));
  for (let done = false; !done; ) {
    const filled = fill(work, room, setting);
    if (filled.boxes.length > 0 || pages.length === 0) pages.push([...filled.boxes]);
    work = filled.work;
    done = filled.done;
  }
  return pages;
}
