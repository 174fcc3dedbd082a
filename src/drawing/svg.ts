/**
 * Drawings as SVG, for a screen or for another program.
 */
import svgBuilder from 'svg-builder';
import type { Face, FontSet } from '../font/metrics';
import type { Drawing, Paint, PathPiece, Shape } from './drawing';

type Builder = ReturnType<typeof svgBuilder.create>;
type ShapeElement = 'path' | 'rect' | 'circle' | 'text' | 'title' | 'desc';
type Attributes = Readonly<Record<string, string | number | undefined>>;

/** How each face is asked for; whoever lacks the font gets the reader's own of the same kind. */
const fontAttributes: Readonly<Record<Face, Attributes>> = {
  text: { 'font-family': family('IBM Plex Sans') },
  'text-italic': { 'font-family': family('IBM Plex Sans'), 'font-style': 'italic' },
  'text-bold': { 'font-family': family('IBM Plex Sans'), 'font-weight': 'bold' },
  narrow: { 'font-family': family('IBM Plex Sans Condensed') },
  'narrow-bold': { 'font-family': family('IBM Plex Sans Condensed'), 'font-weight': 'bold' },
};

function family(name: string): string {
  return `'${name}', sans-serif`;
}

/**
 * The drawing as one SVG element, with its name and its words for those who cannot see it. Throws if a number is none.
 *
 * With the `fonts` it was made for, each text is held to its width in them, so that nothing is covered or cut off where
 * the reader has only other fonts.
 */
export function toSvg(drawing: Drawing, fonts?: FontSet): string {
  const builder = svgBuilder.newInstance();
  const [width, height] = [num(drawing.widthPt), num(drawing.heightPt)];
  builder.root = `<svg xmlns="http://www.w3.org/2000/svg" role="img" width="${width}pt" height="${height}pt" viewBox="0 0 ${width} ${height}">`;
  put(builder, 'title', {}, drawing.name);
  put(builder, 'desc', {}, drawing.alt);
  for (const shape of drawing.shapes) putShape(builder, shape, fonts);
  return builder.render();
}

function putShape(builder: Builder, shape: Shape, fonts: FontSet | undefined): void {
  const { name, attributes, words } = elementOf(shape, fonts);
  put(builder, name, attributes, words);
}

interface SvgElement {
  readonly name: ShapeElement;
  readonly attributes: Attributes;
  readonly words?: string;
}

function elementOf(shape: Shape, fonts: FontSet | undefined): SvgElement {
  switch (shape.kind) {
    case 'path': {
      const d = shape.pieces.map(pieceText).join(' ');
      return { name: 'path', attributes: { d, ...paintAttributes(shape.paint) } };
    }
    case 'rect': {
      const { x, y, width, height, radius = 0, paint } = shape;
      const rx = radius > 0 ? radius : undefined;
      return { name: 'rect', attributes: { x, y, width, height, rx, ...paintAttributes(paint) } };
    }
    case 'circle': {
      const { cx, cy, r, paint } = shape;
      return { name: 'circle', attributes: { cx, cy, r, ...paintAttributes(paint) } };
    }
    case 'text': {
      const { x, y, anchor, turn = 0, face, sizePt, colour } = shape;
      const transform = turn === 0 ? undefined : `rotate(${num(turn)} ${num(x)} ${num(y)})`;
      const place = { x, y, 'text-anchor': anchor === 'start' ? undefined : anchor, transform };
      const look = { ...fontAttributes[face], 'font-size': sizePt, fill: colour };
      const width = fonts?.[face].widthOf(shape.text, sizePt) ?? 0;
      const held = width > 0 ? { textLength: width, lengthAdjust: 'spacingAndGlyphs' } : {};
      const spaced = /^\s|\s$|\s\s/.test(shape.text) ? { 'xml:space': 'preserve' } : {};
      return { name: 'text', attributes: { ...place, ...look, ...held, ...spaced }, words: shape.text };
    }
  }
}

/** The builder escapes nothing and writes any number it is given, so both are seen to here. */
function put(builder: Builder, name: ShapeElement, attributes: Attributes, words?: string): void {
  const safe: Record<string, string> = {};
  for (const [key, value] of Object.entries(attributes)) {
    if (value !== undefined) safe[key] = typeof value === 'number' ? num(value) : escapeXml(value);
  }
  builder[name](safe, words === undefined ? undefined : escapeXml(words));
}

function paintAttributes({ fill, stroke }: Paint): Attributes {
  if (!stroke) return { fill: fill ?? 'none' };
  return {
    fill: fill ?? 'none',
    stroke: stroke.colour,
    'stroke-width': stroke.widthPt,
    'stroke-dasharray': stroke.dashPt?.map(num).join(' '),
    'stroke-linecap': stroke.cap === 'round' ? 'round' : undefined,
  };
}

function pieceText(piece: PathPiece): string {
  switch (piece.op) {
    case 'move':
      return `M${num(piece.x)} ${num(piece.y)}`;
    case 'line':
      return `L${num(piece.x)} ${num(piece.y)}`;
    case 'curve':
      return `C${[piece.x1, piece.y1, piece.x2, piece.y2, piece.x, piece.y].map(num).join(' ')}`;
    case 'close':
      return 'Z';
  }
}

function num(value: number): string {
  if (!Number.isFinite(value)) throw new RangeError(`a coordinate of a drawing is ${value}`);
  const rounded = Math.round(value * 1000) / 1000;
  return rounded === 0 ? '0' : String(rounded);
}

const marks: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** Letters XML cannot hold at all are left out. */
function escapeXml(words: string): string {
  return words
    .replace(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, '')
    .replace(/[&<>"]/g, (letter) => marks[letter] ?? letter);
}
