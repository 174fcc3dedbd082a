/**
 * A fake font in which every glyph, the space too, is a square of one em: five letters at 4 pt are 20 pt wide, so no
 * expected number needs a calculator. It has every letter except those of the private use area.
 */
import { type Face, type FontMetrics, type FontSet, faces } from '../../src/font/metrics';

function squareFace(face: Face): FontMetrics {
  return {
    face,
    ascent: 0.75,
    descent: 0.25,
    capHeight: 0.7,
    xHeight: 0.5,
    widthOf: (text, sizePt) => [...text].length * sizePt,
    missing: (text) => [...new Set(text)].filter((letter) => /\p{Co}/u.test(letter)),
  };
}

/** All faces, square. */
export const squareFonts = Object.fromEntries(faces.map((face) => [face, squareFace(face)])) as FontSet;
