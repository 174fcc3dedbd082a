/**
 * Fonts as the writer uses them: words turned into glyphs, each word and each line of words once.
 *
 * Glyphs keep the numbers they have in the whole font, so that a word is written the same in every file.
 */
import { type Face, faces } from '../font/metrics';
import type { ShapedWord } from '../font/plain';
import { type Shaper, shaperOf } from '../font/shaper';
import { eachWord } from '../font/words';
import { embedFont, type Letters } from './embed';
import type { ObjectStore } from './objects';
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

/** One face of the document. */
export interface Ink {
  /** The name of the font in the page's resources. */
  readonly id: string;
  /** The number of the font's object. */
  readonly object: number;
  encode(text: string): EncodedText;
}

/** Gives each face when it is first asked for; a face that is never used is not embedded. */
export class Inks {
  private readonly inks = new Map<Face, FaceInk>();

  constructor(
    private readonly store: ObjectStore,
    private readonly files: Readonly<Record<Face, Uint8Array>>,
  ) {}

  /** The face, made ready for writing. */
  of(face: Face): Ink {
    const known = this.inks.get(face);
    if (known) return known;
    const ink = new FaceInk(`F${faces.indexOf(face) + 1}`, this.store, shaperOf(this.files[face]));
    this.inks.set(face, ink);
    return ink;
  }

  /** Embeds the faces with the glyphs that were used. */
  finish(): void {
    for (const ink of this.inks.values()) ink.embed();
  }
}

class FaceInk implements Ink {
  readonly object: number;
  private readonly words = new Map<string, EncodedWord>();
  /** Lines of text: more than half of a book's read like another. */
  private readonly texts = new Map<string, EncodedText>();
  /** The letters that each glyph stood for when it was first used. */
  private readonly letters = new Map<number, Letters>();

  constructor(
    readonly id: string,
    private readonly store: ObjectStore,
    private readonly shaper: Shaper,
  ) {
    this.object = store.reserve();
  }

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

  embed(): void {
    embedFont(this.shaper, this.letters, this.object, this.store);
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
