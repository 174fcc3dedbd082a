/**
 * Fonts as the writer uses them: words turned into glyphs, each word and each line of words once.
 *
 * Glyphs keep the numbers they have in the whole font, so that a word is written the same in every file.
 */
import { type Face, faces } from '../font/metrics';
import type { ShapedWord } from '../font/plain';
import { type Shaper, shaperOf } from '../font/shaper';
import { eachWord } from '../font/words';
import type { Letters } from './embed';
import { literal16, num } from './syntax';

/** A run of text, ready to be shown. */
export interface EncodedText {
  /** The operator that shows it, with its operand. */
  readonly shown: string;
  /** In thousandths of the type size. */
  readonly advance: number;
}

/** A word between the brackets of a string of glyphs; `moved` if it ends one string and begins another. */
interface EncodedWord {
  readonly inside: string;
  readonly moved: boolean;
  readonly advance: number;
}

/** The name that a face has on every page of every file. */
export const fontName = (face: Face): string => `F${faces.indexOf(face) + 1}`;

/** One face, as it is written with. */
export interface Ink {
  /** The name of the font in the page's resources. */
  readonly id: string;
  encode(text: string): EncodedText;
}

/** Gives each face when it is first asked for. */
export class Inks {
  private readonly inks = new Map<Face, FaceInk>();

  constructor(private readonly files: Readonly<Record<Face, Uint8Array>>) {}

  /** The face, made ready for writing. */
  of(face: Face): Ink {
    const known = this.inks.get(face);
    if (known) return known;
    const ink = new FaceInk(fontName(face), shaperOf(this.files[face]));
    this.inks.set(face, ink);
    return ink;
  }

  /** What each glyph that was used stood for when it first was. */
  letters(): ReadonlyMap<Face, ReadonlyMap<number, Letters>> {
    return new Map([...this.inks].map(([face, ink]) => [face, ink.letters]));
  }
}

class FaceInk implements Ink {
  /** The letters that each glyph stood for when it was first used. */
  readonly letters = new Map<number, Letters>();
  private readonly words = new Map<string, EncodedWord>();
  /** Lines of text: more than half of a book's read like another. */
  private readonly texts = new Map<string, EncodedText>();

  constructor(
    readonly id: string,
    private readonly shaper: Shaper,
  ) {}

  encode(text: string): EncodedText {
    const known = this.texts.get(text);
    if (known) return known;
    const encoded = this.encodeWords(text);
    this.texts.set(text, encoded);
    return encoded;
  }

  private encodeWords(text: string): EncodedText {
    let inside = '';
    let advance = 0;
    let moved = false;
    eachWord(text, (piece) => {
      const word = this.word(piece);
      inside += word.inside;
      advance += word.advance;
      moved ||= word.moved;
    });
    return { shown: moved ? `[(${inside})] TJ` : `(${inside}) Tj`, advance };
  }

  private word(text: string): EncodedWord {
    const known = this.words.get(text);
    if (known) return known;
    const shaped = this.shaper.shape(text);
    this.note(text, shaped);
    const encoded = encodeWord(shaped, this.shaper);
    this.words.set(text, encoded);
    return encoded;
  }

  private note(text: string, { glyphs, letters }: ShapedWord): void {
    for (let at = 0; at < glyphs.length; at += 1) {
      const glyph = glyphs[at] ?? 0;
      if (!this.letters.has(glyph)) this.letters.set(glyph, letters?.[at] ?? [text.charCodeAt(at)]);
    }
  }
}

/** Glyphs move the pen by their own width; what shaping adds or takes (kerning) is a number between them. */
function encodeWord({ glyphs, moves, offsets, advance }: ShapedWord, shaper: Shaper): EncodedWord {
  const scale = 1000 / shaper.heights.unitsPerEm;
  let inside = '';
  let moved = false;
  let owed = 0;
  for (let at = 0; at < glyphs.length; at += 1) {
    const glyph = glyphs[at] ?? 0;
    const offset = offsets?.[at] ?? 0;
    if (owed + offset !== 0) {
      inside += shiftBy(owed + offset, scale);
      moved = true;
    }
    inside += literal16(glyph);
    owed = (moves[at] ?? 0) - shaper.widthOf(glyph) - offset;
  }
  if (owed === 0) return { inside, moved, advance: advance * scale };
  return { inside: inside + shiftBy(owed, scale), moved: true, advance: advance * scale };
}

/** Ends the string of glyphs, moves the pen, begins the next string. */
function shiftBy(units: number, scale: number): string {
  return `)${num(-units * scale)}(`;
}
