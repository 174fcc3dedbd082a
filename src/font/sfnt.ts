/**
 * The tables of a TrueType or OpenType file that measuring needs, read where they lie (ISO/IEC 14496-22).
 */

import type { FontTables } from './fontFile';

/** Heights of a face and its own units, as the tables `head`, `hhea` and `OS/2` give them. */
export interface FaceHeights {
  readonly unitsPerEm: number;
  readonly ascent: number;
  /** Below zero. */
  readonly descent: number;
  readonly capHeight: number;
  readonly xHeight: number;
}

/** The heights of a face. Throws if the font does not say them. */
export function heightsOf(tables: FontTables): FaceHeights {
  const [head, hhea, os2] = ['head', 'hhea', 'OS/2'].map((tag) => tables.view(tag));
  if (!head || !hhea || !os2 || os2.getUint16(0) < 2)
    throw new Error('the font does not say how tall its letters are');
  return {
    unitsPerEm: head.getUint16(18),
    ascent: hhea.getInt16(4),
    descent: hhea.getInt16(6),
    capHeight: os2.getInt16(88),
    xHeight: os2.getInt16(86),
  };
}

/** The glyphs of a font: which one stands for a letter, and how far each moves the pen. */
export interface Glyphs {
  /** The glyph for a code point; 0 if the font has none. */
  of(codePoint: number): number;
  /** Width in the font's own units. */
  advance(glyph: number): number;
}

/** Four letters of a tag. */
export function tagAt(view: DataView, at: number): string {
  return String.fromCharCode(
    view.getUint8(at),
    view.getUint8(at + 1),
    view.getUint8(at + 2),
    view.getUint8(at + 3),
  );
}

/** Glyphs of a font with a Unicode `cmap` of format 4; nothing if it has others. */
export function glyphsOf(tables: FontTables): Glyphs | undefined {
  const [hhea, hmtx, cmap] = [tables.view('hhea'), tables.view('hmtx'), tables.view('cmap')];
  if (hhea === undefined || hmtx === undefined || cmap === undefined) return undefined;
  const subtable = basicPlane(cmap);
  if (subtable === undefined) return undefined;
  const lastWide = hhea.getUint16(34) - 1;
  return {
    of: (codePoint) => (codePoint > 0xffff ? 0 : glyphFor(subtable, codePoint)),
    advance: (glyph) => hmtx.getUint16(4 * Math.min(glyph, lastWide)),
  };
}

/** The `cmap` subtable of format 4 for Windows, Unicode BMP. */
function basicPlane(cmap: DataView): DataView | undefined {
  for (let index = 0; index < cmap.getUint16(2); index += 1) {
    const at = 4 + 8 * index;
    const offset = cmap.getUint32(at + 4);
    const isWindowsUnicode = cmap.getUint16(at) === 3 && cmap.getUint16(at + 2) === 1;
    if (isWindowsUnicode && cmap.getUint16(offset) === 4)
      return new DataView(cmap.buffer, cmap.byteOffset + offset, cmap.getUint16(offset + 2));
  }
  return undefined;
}

/** Format 4: segments in order of their last code point; a segment's glyphs by a difference, or listed. */
function glyphFor(subtable: DataView, codePoint: number): number {
  const segments2 = subtable.getUint16(6);
  let low = 0;
  let high = segments2 / 2 - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (subtable.getUint16(14 + 2 * middle) < codePoint) low = middle + 1;
    else high = middle;
  }
  const startAt = 16 + segments2 + 2 * low;
  const start = subtable.getUint16(startAt);
  if (codePoint < start) return 0;
  const delta = subtable.getUint16(startAt + segments2);
  const rangeAt = startAt + 2 * segments2;
  const range = subtable.getUint16(rangeAt);
  if (range === 0) return (codePoint + delta) & 0xffff;
  const glyph = subtable.getUint16(rangeAt + range + 2 * (codePoint - start));
  return glyph === 0 ? 0 : (glyph + delta) & 0xffff;
}
