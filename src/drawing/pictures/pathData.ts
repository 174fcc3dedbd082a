/** Path data of SVG (SVG 1.1, 8.3) as pieces with absolute coordinates. */
import type { PathPiece } from '../drawing';
import { arcCurves } from './arc';

/** How many numbers each command takes. */
const counts: Readonly<Record<string, number>> = {
  M: 2,
  L: 2,
  H: 1,
  V: 1,
  C: 6,
  S: 4,
  Q: 4,
  T: 2,
  A: 7,
  Z: 0,
};

/** The pieces of a path; nothing if the data cannot be read to the end. */
export function readPathData(text: string): readonly PathPiece[] | undefined {
  const pen = new Pen();
  let rest = text.trim();
  let command = '';
  while (rest !== '') {
    const letter = /^[A-Za-z]/.exec(rest)?.[0];
    if (letter !== undefined) rest = rest.slice(1).trimStart();
    // numbers without a letter go on with the command before; after a move they are lines
    command = letter ?? (command === 'M' ? 'L' : command === 'm' ? 'l' : command);
    const count = counts[command.toUpperCase()];
    if (count === undefined || (letter === undefined && count === 0)) return undefined;
    if (pen.pieces.length === 0 && command.toUpperCase() !== 'M') return undefined;
    const numbers: number[] = [];
    for (let index = 0; index < count; index += 1) {
      const flag = count === 7 && (index === 3 || index === 4);
      const found = (flag ? /^[01]/ : /^[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?/).exec(rest)?.[0];
      if (found === undefined) return undefined;
      numbers.push(Number(found));
      rest = rest.slice(found.length).replace(/^\s*,?\s*/, '');
    }
    pen.draw(command, numbers);
  }
  return pen.pieces;
}

/** Where the path has come to. */
class Pen {
  readonly pieces: PathPiece[] = [];
  private x = 0;
  private y = 0;
  private startX = 0;
  private startY = 0;
  /** The last handle, for commands that mirror it, and the kind of curve it belonged to. */
  private handle: { readonly x: number; readonly y: number; readonly of: 'C' | 'Q' } | undefined;

  draw(command: string, numbers: readonly number[]): void {
    const kind = command.toUpperCase();
    const relative = command !== kind;
    const [baseX, baseY] = relative ? [this.x, this.y] : [0, 0];
    const at = (index: number) => ({
      x: baseX + (numbers[index] ?? 0),
      y: baseY + (numbers[index + 1] ?? 0),
    });
    const [first = 0] = numbers;
    switch (kind) {
      case 'M':
        this.to('move', at(0));
        [this.startX, this.startY] = [this.x, this.y];
        return;
      case 'L':
        this.to('line', at(0));
        return;
      case 'H':
        this.to('line', { x: baseX + first, y: this.y });
        return;
      case 'V':
        this.to('line', { x: this.x, y: baseY + first });
        return;
      case 'C':
        this.curve(at(0), at(2), at(4));
        return;
      case 'S':
        this.curve(this.mirrored('C'), at(0), at(2));
        return;
      case 'Q':
        this.bend(at(0), at(2));
        return;
      case 'T':
        this.bend(this.mirrored('Q'), at(0));
        return;
      case 'A': {
        const [rx = 0, ry = 0, turnDeg = 0, large = 0, sweep = 0] = numbers;
        const end = at(5);
        this.pieces.push(
          ...arcCurves(this.x, this.y, { rx, ry, turnDeg, large: large === 1, sweep: sweep === 1, ...end }),
        );
        this.stand(end);
        return;
      }
      default:
        this.pieces.push({ op: 'close' });
        this.stand({ x: this.startX, y: this.startY });
    }
  }

  private stand({ x, y }: Place): void {
    [this.x, this.y, this.handle] = [x, y, undefined];
  }

  private to(op: 'move' | 'line', end: Place): void {
    this.pieces.push({ op, ...end });
    this.stand(end);
  }

  private curve(one: Place, two: Place, end: Place): void {
    this.pieces.push({ op: 'curve', x1: one.x, y1: one.y, x2: two.x, y2: two.y, ...end });
    this.stand(end);
    this.handle = { ...two, of: 'C' };
  }

  /** A curve with one handle, written with two. */
  private bend(handle: Place, end: Place): void {
    const [x, y] = [this.x, this.y];
    const toward = (from: number, to: number) => from + (2 / 3) * (to - from);
    this.curve(
      { x: toward(x, handle.x), y: toward(y, handle.y) },
      { x: toward(end.x, handle.x), y: toward(end.y, handle.y) },
      end,
    );
    this.handle = { ...handle, of: 'Q' };
  }

  private mirrored(of: 'C' | 'Q'): Place {
    const { x, y } = this.handle?.of === of ? this.handle : { x: this.x, y: this.y };
    return { x: 2 * this.x - x, y: 2 * this.y - y };
  }
}

interface Place {
  readonly x: number;
  readonly y: number;
}
