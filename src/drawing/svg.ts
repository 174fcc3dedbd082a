/**
 * Drawings as SVG, for a screen or for another program.
 */
import svgBuilder from 'svg-builder';
import type { Face, FontSet } from '../font/metrics';
import { decimal as num } from './decimal';
import type { Drawing, Paint, PathPiece, Shape } from './drawing';

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
  const [width, height] = [num(drawing.widthPt), num(drawing.heightPt)];
  let svg = `<svg xmlns="http://www.w3.org/2000/svg" role="img" width="${width}pt" height="${height}pt" viewBox="0 0 ${width} ${height}">`;
  svg += written({ name: 'title', attributes: {}, words: drawing.name });
  svg += written({ name: 'desc', attributes: {}, words: drawing.alt });
  for (const shape of drawing.shapes) svg += written(elementOf(shape, fonts));
  return `${svg}</svg>`;
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
function written({ name, attributes, words }: SvgElement): string {
  let keys = '';
  const values: string[] = [];
  for (const key in attributes) {
    const value = attributes[key];
    if (value === undefined) continue;
    keys += ` ${key}`;
    values.push(typeof value === 'number' ? num(value) : escapeXml(value));
  }
  if (words !== undefined) values.push(escapeXml(words));
  const [first = '', ...others] = formOf(name, keys, words !== undefined);
  let text = first;
  for (const [index, stretch] of others.entries()) text += values[index] + stretch;
  return text;
}

/**
 * What the builder writes around the values of an element with these attributes (each with a space before it) and words or
 * none. It looks at every attribute of every element anew, so each form is asked for once.
 */
function formOf(name: ShapeElement, keys: string, hasWords: boolean): readonly string[] {
  const key = `${name}${keys}${hasWords ? ' words' : ''}`;
  const known = forms.get(key);
  if (known !== undefined) return known;
  const builder = svgBuilder.newInstance();
  builder.root = '<svg>';
  const attributes = keys
    .split(' ')
    .slice(1)
    .map((attribute) => [attribute, hole]);
  builder[name](Object.fromEntries(attributes), hasWords ? hole : undefined);
  const form = builder.render().slice('<svg>'.length, -'</svg>'.length).split(hole);
  forms.set(key, form);
  return form;
}

const forms = new Map<string, readonly string[]>();

/** Stands for a value; no value can hold it. */
const hole = '\u0000';

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

const marks: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

const plain = /^[ !#-%'-;=?-~]*$/;

/** Letters XML cannot hold at all are left out. */
function escapeXml(words: string): string {
  if (plain.test(words)) return words;
  return words
    .replace(/[^\t\n\r\u0020-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, '')
    .replace(/[&<>"]/g, (letter) => marks[letter] ?? letter);
}
