/**
 * Shaping words: which glyphs stand for a word, and where.
 *
 * Measuring and drawing share the shaper of a font file, so that a file is read once and a word is shaped once.
 */
import * as fontkit from 'fontkit';
import { type FontTables, tablesOf } from './fontFile';
import { plainShaper, type ShapedWord } from './plain';
import { type FaceHeights, type Glyphs, glyphsOf, heightsOf } from './sfnt';
import { unpackWoff } from './woff';

/** A font file, read, with every word it has shaped so far. */
export interface Shaper {
  readonly tables: FontTables;
  readonly heights: FaceHeights;
  /** Shapes a word with the font's default features; the same word gives the same object again. */
  shape(word: string): ShapedWord;
  /** How far a word moves the pen, in the font's own units. */
  advanceOf(word: string): number;
  /** Width of a glyph, in the font's own units. */
  widthOf(glyph: number): number;
  /** Whether the font has a glyph for a code point. */
  has(codePoint: number): boolean;
}

/**
 * fontkit's own memory of glyphs. It keeps with each glyph the letters it stood for the first time it was asked for;
 * another word, or another paper, may have it stand for others, or for none where it was a part of another glyph. So
 * every word begins with an empty memory.
 */
interface GlyphMemory {
  _glyphs: Record<number, fontkit.Glyph>;
}

const shapers = new WeakMap<Uint8Array, Shaper>();

/** The shaper of a font file (TrueType, OpenType or WOFF). Throws if the file cannot be read as one font. */
export function shaperOf(file: Uint8Array): Shaper {
  const known = shapers.get(file);
  if (known) return known;
  const shaper = makeShaper(file);
  shapers.set(file, shaper);
  return shaper;
}

function makeShaper(file: Uint8Array): Shaper {
  const tables = tablesOf(file);
  const glyphs = glyphsOf(tables);
  const plain = plainShaper(tables);
  const words = new Map<string, ShapedWord>();
  // few papers have a word that needs every rule of the font
  let opened: fontkit.Font | undefined;
  const general = (): fontkit.Font => {
    opened ??= openFully(file);
    return opened;
  };
  const shape = (word: string): ShapedWord => {
    const known = words.get(word);
    if (known) return known;
    const shaped = plain.shape(word) ?? shapeFully(general(), word);
    words.set(word, shaped);
    return shaped;
  };
  return {
    tables,
    heights: heightsOf(tables),
    shape,
    advanceOf: (word) => plain.advanceOf(word) ?? shape(word).advance,
    widthOf: (glyph) => glyphs?.advance(glyph) ?? general().getGlyph(glyph).advanceWidth,
    has: (codePoint) => has(codePoint, glyphs) || general().hasGlyphForCodePoint(codePoint),
  };
}

function has(codePoint: number, glyphs: Glyphs | undefined): boolean {
  return glyphs !== undefined && glyphs.of(codePoint) !== 0;
}

function openFully(file: Uint8Array): fontkit.Font {
  const font = fontkit.create(unpackWoff(file) as Buffer);
  if ('fonts' in font) throw new Error('the file holds a collection of fonts, not one font');
  return font;
}

/** Shapes any word, with every rule the font has. */
function shapeFully(font: fontkit.Font & Partial<GlyphMemory>, word: string): ShapedWord {
  font._glyphs = {};
  const { advanceWidth, glyphs, positions } = font.layout(word);
  return {
    advance: advanceWidth,
    glyphs: glyphs.map(({ id }) => id),
    moves: glyphs.map((glyph, index) => positions[index]?.xAdvance ?? glyph.advanceWidth),
    offsets: positions.map(({ xOffset }) => xOffset),
    letters: glyphs.map(({ codePoints }) => codePoints),
  };
}
