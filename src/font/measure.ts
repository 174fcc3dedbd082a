/**
 * Measures font files. Each word is shaped once per face and remembered in font units.
 */
import type * as fontkit from 'fontkit';
import { type Face, type FontMetrics, type FontSet, faces } from './metrics';
import { shaperOf } from './shaper';
import { splitWords } from './words';

/** Measures every face from the bytes of its font file (TrueType, OpenType or WOFF). Throws if one cannot be read. */
export function measureFonts(files: Readonly<Record<Face, Uint8Array>>): FontSet {
  const measured = faces.map((face) => [face, measureFace(face, files[face])] as const);
  return Object.fromEntries(measured) as FontSet;
}

function measureFace(face: Face, file: Uint8Array): FontMetrics {
  const { font, shape } = shaperOf(file);
  const unit = 1 / font.unitsPerEm;
  const advances = new Map<string, number>();
  const absent = new Map<string, readonly string[]>();

  const advanceOf = (word: string): number => {
    const known = advances.get(word);
    if (known !== undefined) return known;
    const { advance } = shape(word);
    advances.set(word, advance);
    return advance;
  };

  return {
    face,
    ascent: font.ascent * unit,
    descent: -font.descent * unit,
    capHeight: font['OS/2'].capHeight * unit,
    xHeight: font['OS/2'].xHeight * unit,
    widthOf(text, sizePt) {
      const whole = advances.get(text);
      if (whole !== undefined) return whole * unit * sizePt;
      let advance = 0;
      for (const word of splitWords(text)) advance += advanceOf(word);
      return advance * unit * sizePt;
    },
    missing(text) {
      const known = absent.get(text);
      if (known !== undefined) return known;
      const letters = lettersWithoutGlyph(font, text);
      absent.set(text, letters);
      return letters;
    },
  };
}

function lettersWithoutGlyph(font: fontkit.Font, text: string): readonly string[] {
  const letters = new Set<string>();
  for (const letter of text) {
    const code = letter.codePointAt(0);
    if (code !== undefined && !font.hasGlyphForCodePoint(code)) letters.add(letter);
  }
  return letters.size === 0 ? none : [...letters];
}

const none: readonly string[] = [];
