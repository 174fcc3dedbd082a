/**
 * Shaping words: which glyphs stand for a word, and where.
 *
 * Measuring and drawing share the shaper of a font file, so that a file is read once and a word is shaped once.
 */
import * as fontkit from 'fontkit';
import { unpackWoff } from './woff';

/** A word as glyphs, in the font's own units. */
export interface ShapedWord {
  readonly advance: number;
  readonly glyphs: readonly fontkit.Glyph[];
  readonly positions: readonly fontkit.GlyphPosition[];
}

/** A font file, read, with every word it has shaped so far. */
export interface Shaper {
  readonly font: fontkit.Font;
  /** Shapes a word with the font's default features; the same word gives the same object again. */
  shape(word: string): ShapedWord;
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
  const font = fontkit.create(unpackWoff(file) as Buffer);
  if ('fonts' in font) throw new Error('the file holds a collection of fonts, not one font');
  const words = new Map<string, ShapedWord>();
  const memory = font as fontkit.Font & GlyphMemory;
  return {
    font,
    shape(word) {
      const known = words.get(word);
      if (known) return known;
      memory._glyphs = {};
      const { advanceWidth, glyphs, positions } = font.layout(word);
      const shaped = { advance: advanceWidth, glyphs, positions };
      words.set(word, shaped);
      return shaped;
    },
  };
}
