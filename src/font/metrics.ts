/**
 * What layout may know of a font. The real measurer reads font files; tests use a square fake.
 */

/** The faces the program prints with, by job. `narrow` is the condensed cut, for cards and tables. */
export const faces = ['text', 'text-italic', 'text-bold', 'narrow', 'narrow-bold'] as const;

/** One face, by job. */
export type Face = (typeof faces)[number];

/** Measures of one face. Heights are shares of the type size (1 = the size itself). */
export interface FontMetrics {
  readonly face: Face;
  readonly ascent: number;
  /** Positive downwards. */
  readonly descent: number;
  readonly capHeight: number;
  readonly xHeight: number;
  /** Width of a run of text set solid in one line, in points, at `sizePt`. */
  widthOf(text: string, sizePt: number): number;
  /** The letters of `text` that this face cannot print, each once. */
  missing(text: string): readonly string[];
}

/** Every face, measured. */
export type FontSet = Readonly<Record<Face, FontMetrics>>;
