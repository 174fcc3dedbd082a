/**
 * An entry of a list of words: its term, and the lines under it. Where it breaks, its term is said again at the head of
 * the next column or page, with "continued"; what is said again is an artifact.
 */
import type { BlockOrigin } from '../../markup/block';
import { fits } from '../fits';
import { type Box, layeredBox, lowered, type Splittable, type Take } from '../pieces';

/** Lines of one entry, and what stands above those that go on elsewhere. */
export interface EntryLines {
  /** Term and meaning, a box each; a box that must stay with the next says so. */
  readonly lines: readonly Box[];
  /** The term again, with "continued". */
  readonly continued: () => readonly Box[];
  readonly origin: BlockOrigin;
}

/** An entry of no more lines than this moves to the next column rather than break. */
const shortLines = 6;

/** The entry as something that can go on in the next column. */
export function entry({ lines, continued, origin }: EntryLines): Splittable {
  const heightPt = height(lines);
  const leastPt = height(lines.slice(0, firstBreak(lines)));
  return {
    kind: 'splittable',
    heightPt,
    leastPt,
    wantPt: lines.length <= shortLines ? heightPt : leastPt,
    keep: 'free',
    anchors: [],
    origin,
    take: (roomPt) => take({ lines, continued, origin }, roomPt),
  };
}

function take({ lines, continued, origin }: EntryLines, roomPt: number): Take {
  const count = linesThatFit(lines, roomPt);
  if (count === lines.length) return { kind: 'all', box: stacked(lines, origin) };
  const at = breakBefore(lines, count);
  if (at === 0) return { kind: 'nothing' };
  const rest = { lines: [...continued(), ...lines.slice(at)], continued, origin };
  return { kind: 'part', box: stacked(lines.slice(0, at), origin), rest: entry(rest) };
}

function linesThatFit(lines: readonly Box[], roomPt: number): number {
  let heightPt = 0;
  let count = 0;
  for (const line of lines) {
    heightPt += line.heightPt;
    if (!fits(heightPt, roomPt)) break;
    count += 1;
  }
  return count;
}

/** The last place at or before `count` lines where the entry may be broken; 0 if there is none. */
function breakBefore(lines: readonly Box[], count: number): number {
  for (let at = count; at > 0; at -= 1) if (lines[at - 1]?.keep !== 'must') return at;
  return 0;
}

/** How many lines stand together at its head. */
function firstBreak(lines: readonly Box[]): number {
  const at = lines.findIndex(({ keep }) => keep !== 'must');
  return at < 0 ? lines.length : at + 1;
}

function height(lines: readonly Box[]): number {
  return lines.reduce((sum, { heightPt }) => sum + heightPt, 0);
}

function stacked(lines: readonly Box[], origin: BlockOrigin): Box {
  let y = 0;
  const layers = lines.flatMap((line) => {
    const own = lowered(line.layers, y);
    y += line.heightPt;
    return own;
  });
  return layeredBox(y, layers, origin);
}
