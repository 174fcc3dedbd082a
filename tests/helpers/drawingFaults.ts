/** What is wrong with a drawing that can be measured: words over words, anything outside the frame, NaN. */
import type { Drawing, Shape } from '../../src/drawing/drawing';
import type { TextShape } from '../../src/drawing/shapes';
import { plexFonts } from './fonts';

type Bounds = readonly [left: number, top: number, right: number, bottom: number];

/** Every fault in words; none for a good drawing. */
export function drawingFaults({ shapes, widthPt, heightPt }: Drawing): readonly string[] {
  const all = shapes.map((shape) => ({ shape, bounds: boundsOf(shape) }));
  const outside = all.flatMap(({ shape, bounds: [left, top, right, bottom] }) =>
    left >= -0.01 && top >= -0.01 && right <= widthPt + 0.01 && bottom <= heightPt + 0.01
      ? []
      : [`${nameOf(shape)} at ${left.toFixed(1)}, ${top.toFixed(1)} is not inside the frame`],
  );
  const words = all.filter(({ shape }) => shape.kind === 'text' && (shape.turn ?? 0) === 0);
  const over = words.flatMap((one, index) =>
    words
      .slice(0, index)
      .flatMap((other) =>
        touch(one.bounds, other.bounds) ? [`${nameOf(one.shape)} runs into ${nameOf(other.shape)}`] : [],
      ),
  );
  return [...outside, ...over];
}

function nameOf(shape: Shape): string {
  return shape.kind === 'text' ? `“${shape.text}”` : `a ${shape.kind}`;
}

function touch([l, t, r, b]: Bounds, [left, top, right, bottom]: Bounds): boolean {
  return l < right - 0.01 && left < r - 0.01 && t < bottom && top < b;
}

/** Bounds of a shape; NaN anywhere makes all of it NaN, which lies in no frame. */
function boundsOf(shape: Shape): Bounds {
  switch (shape.kind) {
    case 'text':
      return boundsOfText(shape);
    case 'circle':
      return [shape.cx - shape.r, shape.cy - shape.r, shape.cx + shape.r, shape.cy + shape.r];
    case 'rect':
      return [shape.x, shape.y, shape.x + shape.width, shape.y + shape.height];
    case 'path': {
      const points = shape.pieces.flatMap((piece) => ('x' in piece ? [piece] : []));
      const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
      return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
    }
  }
}

function boundsOfText({ x, y, text, face, sizePt, anchor, turn = 0 }: TextShape): Bounds {
  const width = plexFonts[face].widthOf(text, sizePt);
  const left = -width * { start: 0, middle: 0.5, end: 1 }[anchor];
  const up = plexFonts[face].capHeight * sizePt;
  if (turn === -90) return [x - up, y - left - width, x, y - left];
  return [x + left, y - up, x + left + width, y];
}
