/**
 * What the writer uses of pdfkit that its published types leave out.
 *
 * Found in pdfkit 0.20.2. Names with an underscore are the library's own; look at them again when it is upgraded.
 */
declare namespace PDFKit {
  /** A font being embedded: only the glyphs that were included go into the file. */
  interface EmbeddedFont {
    /** The name text operators call it by. */
    readonly id: string;
    readonly subset: { includeGlyph(glyph: number): number };
    /** Widths in thousandths of the type size, by glyph of the subset. */
    readonly widths: number[];
    /** Code points by glyph of the subset: what a reader gets when text is copied out. */
    readonly unicode: (readonly number[])[];
    /** The font's dictionary; asking for it is what makes the font part of the file. */
    ref(): Dictionary;
  }

  /** An object of the file. */
  interface Dictionary {
    readonly id: number;
    readonly data: Record<string, unknown>;
    end(): void;
    toString(): string;
  }

  interface PDFDocument {
    _root: Dictionary;
    _info: Dictionary;
    _id: Uint8Array;
    _font: EmbeddedFont;
    /** One entry for every object of the file, in order of their numbers. */
    _offsets: (number | null)[];
    _write(data: string | Uint8Array): void;
    _refEnd(reference: { readonly id: number }): void;
    _finalize(): void;
    endMetadata(): void;
    endAcroForm(): void;
  }

  namespace Mixins {
    interface PDFFont {
      /** A font that has been read already. */
      font(src: { layout(text: string): unknown }): this;
    }
  }
}
