/** Outlines written down in short, as SVG writes a path: `M`, `L`, `C` and `Z` with absolute coordinates. */
import type { Colour, Paint, PathPiece, Shape } from '../drawing';
import { type Point, polyline, stroke } from '../shapes';

/** The pieces of an outline. Throws a RangeError for anything else than those four letters and numbers. */
export function trace(outline: string): PathPiece[] {
  const words = outline.trim().split(/[\s,]+/);
  const pieces: PathPiece[] = [];
  let at = 0;
  const number = () => {
    const value = Number(words[at]);
    at += 1;
    if (!Number.isFinite(value)) throw new RangeError(`not a number in an outline: ${words[at - 1]}`);
    return value;
  };
  while (at < words.length) {
    const letter = words[at];
    at += 1;
    if (letter === 'M' || letter === 'L')
      pieces.push({ op: letter === 'M' ? 'move' : 'line', x: number(), y: number() });
    else if (letter === 'C') {
      const [x1, y1, x2, y2] = [number(), number(), number(), number()];
      pieces.push({ op: 'curve', x1, y1, x2, y2, x: number(), y: number() });
    } else if (letter === 'Z') pieces.push({ op: 'close' });
    else throw new RangeError(`not a letter of an outline: ${letter}`);
  }
  return pieces;
}

/** A filled outline. */
export function filled(outline: string, colour: Colour): Shape {
  return inked(outline, { fill: colour });
}

/** A line along an outline, with round ends. */
export function drawn(outline: string, widthPt: number, colour: Colour): Shape {
  return inked(outline, { stroke: stroke(widthPt, colour) });
}

/** A straight bar with round ends. */
export function bar(from: Point, to: Point, widthPt: number, colour: Colour): Shape {
  return polyline([from, to], stroke(widthPt, colour));
}

function inked(outline: string, paint: Paint): Shape {
  return { kind: 'path', pieces: trace(outline), paint };
}
