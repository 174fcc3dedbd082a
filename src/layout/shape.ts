/**
 * Moves, scales and measures shapes and placed items.
 */
import type { PathPiece, Shape } from '../drawing/drawing';
import { placeShape } from '../drawing/place';
import type { FontSet } from '../font/metrics';
import type { PlacedItem, PlacedText } from './frame';

/** Left, top, right, bottom in points. */
export type Bounds = readonly [number, number, number, number];

/** The item, moved. */
export function moveItem(item: PlacedItem, dx: number, dy: number): PlacedItem {
  if (item.kind === 'text') return moveText(item, dx, dy);
  if (item.kind === 'link' || item.kind === 'field') return { ...item, x: item.x + dx, y: item.y + dy };
  const shape = placeShape(item.shape, 1, dx, dy);
  return item.tag === undefined ? { kind: 'shape', shape } : { kind: 'shape', shape, tag: item.tag };
}

/** Spelt out, since most of a page is text and copying it key by key is several times slower. */
function moveText(item: PlacedText, dx: number, dy: number): PlacedText {
  const { widthPt, text, face, sizePt, colour, tag } = item;
  const x = item.x + dx;
  const y = item.y + dy;
  if (tag === undefined) return { kind: 'text', x, y, widthPt, text, face, sizePt, colour };
  return { kind: 'text', x, y, widthPt, text, face, sizePt, colour, tag };
}

/** The box a shape stands in, without the width of its line; for text, its letters from cap height to descender. */
export function shapeBounds(shape: Shape, fonts: FontSet): Bounds {
  switch (shape.kind) {
    case 'path':
      return pathBounds(shape.pieces);
    case 'rect':
      return [shape.x, shape.y, shape.x + shape.width, shape.y + shape.height];
    case 'circle':
      return [shape.cx - shape.r, shape.cy - shape.r, shape.cx + shape.r, shape.cy + shape.r];
    case 'text':
      return turnedTextBounds(shape, fonts);
  }
}

function pathBounds(pieces: readonly PathPiece[]): Bounds {
  const xs: number[] = [];
  const ys: number[] = [];
  for (const piece of pieces) {
    if (piece.op === 'close') continue;
    xs.push(piece.x);
    ys.push(piece.y);
    if (piece.op !== 'curve') continue;
    xs.push(piece.x1, piece.x2);
    ys.push(piece.y1, piece.y2);
  }
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

function turnedTextBounds(shape: Extract<Shape, { kind: 'text' }>, fonts: FontSet): Bounds {
  const width = fonts[shape.face].widthOf(shape.text, shape.sizePt);
  const [left, top, right, bottom] = textBounds(0, 0, width, shape.face, shape.sizePt, fonts);
  const shift = { start: 0, middle: -width / 2, end: -width }[shape.anchor];
  const angle = ((shape.turn ?? 0) * Math.PI) / 180;
  const corners = [left + shift, right + shift].flatMap((x) =>
    [top, bottom].map(
      (y) => [x * Math.cos(angle) - y * Math.sin(angle), x * Math.sin(angle) + y * Math.cos(angle)] as const,
    ),
  );
  const xs = corners.map(([x]) => x + shape.x);
  const ys = corners.map(([, y]) => y + shape.y);
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

/** The box of a run of text standing at `x`, baseline `y`: from its cap height down to a descender. */
export function textBounds(
  x: number,
  y: number,
  widthPt: number,
  face: keyof FontSet,
  sizePt: number,
  fonts: FontSet,
): Bounds {
  return [x, y - fonts[face].capHeight * sizePt, x + widthPt, y + descenderShare * sizePt];
}

/** Depth of a descender below the baseline, as a share of the type size: about what text faces draw. */
const descenderShare = 0.22;
