/**
 * Fonts as the writer uses them: words turned into glyphs of the embedded subset, each word once.
 */
import type { Face } from '../font/metrics';
import type { ShapedWord } from '../font/plain';
import { shaperOf } from '../font/shaper';
import { splitWords } from '../font/words';
import { hex4, num } from './syntax';

/** A run of text, ready for a `TJ` operator. */
export interface EncodedText {
  /** What stands between the brackets of `TJ`. */
  readonly array: string;
  /** In thousandths of the type size. */
  readonly advance: number;
}

/** A word between the angle brackets of a string of glyphs. */
interface EncodedWord {
  readonly inside: string;
  readonly advance: number;
}

/** One face of the document. */
export interface Ink {
  /** The name of the font in the page's resources. */
  readonly id: string;
  readonly dictionary: PDFKit.Dictionary;
  encode(text: string): EncodedText;
}

/** Gives each face when it is first asked for; a face that is never used is not embedded. */
export class Inks {
  private readonly inks = new Map<Face, Ink>();

  constructor(
    private readonly doc: PDFKit.PDFDocument,
    private readonly files: Readonly<Record<Face, Uint8Array>>,
  ) {}

  /** The face, made ready for writing. */
  of(face: Face): Ink {
    const known = this.inks.get(face);
    if (known) return known;
    const ink = makeInk(this.doc, this.files[face]);
    this.inks.set(face, ink);
    return ink;
  }
}

function makeInk(doc: PDFKit.PDFDocument, file: Uint8Array): Ink {
  const shaper = shaperOf(file);
  doc.font(shaper.font);
  const embedded = doc._font;
  const scale = 1000 / shaper.font.unitsPerEm;
  const words = new Map<string, EncodedWord>();
  // glyph 0 stands for a letter the font lacks; readers must not take it for the letter NUL
  embedded.unicode[0] = [0xfffd];
  const word = (text: string): EncodedWord => {
    const known = words.get(text);
    if (known) return known;
    const encoded = encodeWord(embedded, shaper.shape(text), scale);
    words.set(text, encoded);
    return encoded;
  };
  return {
    id: embedded.id,
    dictionary: embedded.ref(),
    encode(text) {
      let inside = '';
      let advance = 0;
      for (const piece of splitWords(text)) {
        const part = word(piece);
        inside += part.inside;
        advance += part.advance;
      }
      return { array: `<${inside}>`, advance };
    },
  };
}

/** What is read for a glyph that adds nothing to the letters before it: a zero-width space. */
const nothingSeen: readonly number[] = [0x200b];

/** Glyphs move the pen by their own width; what shaping adds or takes (kerning) is a number between them. */
function encodeWord(font: PDFKit.EmbeddedFont, { glyphs, advance }: ShapedWord, scale: number): EncodedWord {
  let inside = '';
  let owed = 0;
  for (const { id: glyph, codePoints, width, advance: moved, offset } of glyphs) {
    const id = font.subset.includeGlyph(glyph);
    font.widths[id] ??= width * scale;
    font.unicode[id] ??= codePoints.length > 0 ? codePoints : nothingSeen;
    inside += shiftBy(owed + offset, scale) + hex4(id);
    owed = moved - width - offset;
  }
  return { inside: inside + shiftBy(owed, scale), advance: advance * scale };
}

/** Ends the string of glyphs, moves the pen, begins the next string. */
function shiftBy(units: number, scale: number): string {
  return units === 0 ? '' : `>${num(-units * scale)}<`;
}
