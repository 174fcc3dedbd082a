/**
 * Fonts as the writer uses them: words turned into glyphs of the embedded subset, each word once.
 */
import type { Face } from '../font/metrics';
import { type ShapedWord, shaperOf } from '../font/shaper';
import { splitWords } from '../font/words';
import { hex4, num } from './syntax';

/** A run of text, ready for a `TJ` operator. */
export interface EncodedText {
  /** What stands between the brackets of `TJ`. */
  readonly array: string;
  /** In thousandths of the type size. */
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
  const words = new Map<string, EncodedText>();
  // glyph 0 stands for a letter the font lacks; readers must not take it for the letter NUL
  embedded.unicode[0] = [0xfffd];
  const word = (text: string): EncodedText => {
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
      const parts = splitWords(text).map(word);
      const array = parts
        .map((part) => part.array)
        .join('')
        .replaceAll('><', '');
      return { array, advance: parts.reduce((sum, part) => sum + part.advance, 0) };
    },
  };
}

/** Glyphs move the pen by their own width; what shaping adds or takes (kerning) is a number between them. */
function encodeWord(
  font: PDFKit.EmbeddedFont,
  { glyphs, positions, advance }: ShapedWord,
  scale: number,
): EncodedText {
  let array = '';
  let owed = 0;
  for (const [index, glyph] of glyphs.entries()) {
    const id = font.subset.includeGlyph(glyph.id);
    font.widths[id] ??= glyph.advanceWidth * scale;
    font.unicode[id] ??= glyph.codePoints;
    const { xAdvance = glyph.advanceWidth, xOffset = 0 } = positions[index] ?? {};
    const shift = Math.round((owed + xOffset) * scale * 1000) / 1000;
    array += shift === 0 ? `<${hex4(id)}>` : `${num(-shift)}<${hex4(id)}>`;
    owed = xAdvance - glyph.advanceWidth - xOffset;
  }
  if (owed !== 0) array += num(-owed * scale);
  return { array, advance: advance * scale };
}
