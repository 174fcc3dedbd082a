/**
 * Shaping words: which glyphs stand for a word, and where.
 *
 * Measuring and drawing share the shaper of a font file, so that a file is read once and a word is shaped once.
 */
import * as fontkit from 'fontkit';
import { plainShaper, type ShapedWord } from './plain';
import { unpackWoff } from './woff';

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
  const sfnt = unpackWoff(file);
  const font = fontkit.create(sfnt as Buffer);
  if ('fonts' in font) throw new Error('the file holds a collection of fonts, not one font');
  const words = new Map<string, ShapedWord>();
  const plain = plainShaper(sfnt);
  return {
    font,
    shape(word) {
      const known = words.get(word);
      if (known) return known;
      const shaped = plain(word) ?? shapeFully(font, word);
      words.set(word, shaped);
      return shaped;
    },
  };
}

/** Shapes any word, with every rule the font has. */
function shapeFully(font: fontkit.Font & Partial<GlyphMemory>, word: string): ShapedWord {
  font._glyphs = {};
  const { advanceWidth, glyphs, positions } = font.layout(word);
  return {
    advance: advanceWidth,
    glyphs: glyphs.map(({ id, codePoints, advanceWidth: width }, index) => {
      const { xAdvance = width, xOffset = 0 } = positions[index] ?? {};
      return { id, codePoints, width, advance: xAdvance, offset: xOffset };
    }),
  };
}
