/**
 * Measures font files. Each word is shaped once per face and remembered in font units.
 */
import { type Face, type FontMetrics, type FontSet, faces } from './metrics';
import { type Shaper, shaperOf } from './shaper';
import { eachWord } from './words';

/** Measures every face from the bytes of its font file (TrueType, OpenType or WOFF). Throws if one cannot be read. */
export function measureFonts(files: Readonly<Record<Face, Uint8Array>>): FontSet {
  const measured = faces.map((face) => [face, measureFace(face, files[face])] as const);
  return Object.fromEntries(measured) as FontSet;
}

function measureFace(face: Face, file: Uint8Array): FontMetrics {
  const shaper = shaperOf(file);
  const { heights } = shaper;
  const unit = 1 / heights.unitsPerEm;
  const advances = new Map<string, number>();
  const letters = new Letters(shaper);

  /** Of a word without spaces, or of a space. */
  const advanceOf = (word: string): number => {
    const known = advances.get(word);
    if (known !== undefined) return known;
    const advance = shaper.advanceOf(word);
    advances.set(word, advance);
    return advance;
  };

  return {
    face,
    ascent: heights.ascent * unit,
    descent: -heights.descent * unit,
    capHeight: heights.capHeight * unit,
    xHeight: heights.xHeight * unit,
    widthOf(text, sizePt) {
      if (!text.includes(' ')) return advanceOf(text) * unit * sizePt;
      let advance = 0;
      eachWord(text, (word) => {
        advance += advanceOf(word);
      });
      return advance * unit * sizePt;
    },
    missing: (text) => (letters.hasAll(text) ? none : letters.missing(text)),
  };
}

/** Which letters a font can print, each looked up once. */
class Letters {
  /** For each code unit: 0 not looked up, 1 there, 2 not there or half of a letter. */
  private readonly known = new Uint8Array(0x10000);

  constructor(private readonly shaper: Shaper) {}

  hasAll(text: string): boolean {
    for (let at = 0; at < text.length; at += 1) {
      const unit = text.charCodeAt(at);
      if ((this.known[unit] || this.look(unit)) !== 1) return false;
    }
    return true;
  }

  missing(text: string): readonly string[] {
    const letters = new Set<string>();
    for (const letter of text) {
      const code = letter.codePointAt(0);
      if (code !== undefined && !this.shaper.has(code)) letters.add(letter);
    }
    return letters.size === 0 ? none : [...letters];
  }

  private look(unit: number): number {
    const isHalf = unit >= 0xd800 && unit <= 0xdfff;
    const found = !isHalf && this.shaper.has(unit) ? 1 : 2;
    this.known[unit] = found;
    return found;
  }
}

const none: readonly string[] = [];
