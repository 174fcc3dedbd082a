import fc from 'fast-check';
import * as fontkit from 'fontkit';
import { describe, expect, it } from 'vitest';
import { faces } from '../../src/font/metrics';
import { unpackWoff } from '../../src/font/woff';
import { eachWord } from '../../src/font/words';
import { fontFiles, plexFonts } from '../helpers/fonts';

function open(face: (typeof faces)[number]): fontkit.Font {
  const font = fontkit.create(fontFiles[face] as Buffer);
  if ('fonts' in font) throw new Error('a collection');
  return font;
}

describe('measureFonts', () => {
  it.each(faces)('finds the x-height and cap height of %s as its letters x and H are drawn', (face) => {
    const font = open(face);
    const heightOf = (letter: string) => (font.layout(letter).glyphs[0]?.bbox.maxY ?? 0) / font.unitsPerEm;
    expect(plexFonts[face].xHeight).toBeCloseTo(heightOf('x'), 3);
    expect(plexFonts[face].capHeight).toBeCloseTo(heightOf('H'), 3);
  });

  it('measures a line as its words and spaces are shaped, one by one', () => {
    const font = open('text');
    const line = 'AV Tore off the last fifth, "To 1/2 in"';
    const shaped = line.split(/( )/).map((part) => font.layout(part).advanceWidth);
    const expected = shaped.reduce((sum, advance) => sum + advance, 0) / font.unitsPerEm;
    expect(plexFonts.text.widthOf(line, 10)).toBeCloseTo(expected * 10, 6);
  });

  it('kerns inside words: AV is narrower than A and V', () => {
    const { widthOf } = plexFonts.text;
    expect(widthOf('AV', 10)).toBeLessThan(widthOf('A', 10) + widthOf('V', 10) - 0.1);
  });

  it('has figures of one width, so that columns of numbers stand under each other', () => {
    for (const face of faces) {
      const widths = [...'0123456789'].map((digit) => plexFonts[face].widthOf(digit, 10).toFixed(6));
      expect(new Set(widths).size).toBe(1);
    }
  });

  it('widths grow with the type size', () => {
    fc.assert(
      fc.property(
        fc.stringMatching(/^[ -~]{1,40}$/),
        fc.double({ min: 4, max: 40, noNaN: true }),
        (text, size) => {
          expect(plexFonts.narrow.widthOf(text, size)).toBeCloseTo(
            plexFonts.narrow.widthOf(text, 1) * size,
            6,
          );
        },
      ),
    );
  });

  it('names each letter it cannot print once', () => {
    expect(plexFonts.text.missing('boiler \u{1F525} and \u{1F525} 漢')).toEqual(['\u{1F525}', '漢']);
    expect(plexFonts.text.missing('½ °F ≥ µ × – — ‘’ “” U+2011: \u2011\u00a0')).toEqual([]);
  });
});

/** Everything that is given, in order. */
function words(text: string): readonly string[] {
  const given: string[] = [];
  eachWord(text, (piece) => given.push(piece));
  return given;
}

describe('eachWord', () => {
  it('gives back the text when joined, for any text', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(words(text).join('')).toBe(text);
      }),
    );
  });

  it('parts words at spaces only, not at U+00A0', () => {
    expect(words('a  b\u00a0c ')).toEqual(['a', ' ', ' ', 'b\u00a0c', ' ']);
  });
});

describe('unpackWoff', () => {
  it('yields a font that measures and draws as the packed one does', () => {
    const packed = open('text-bold');
    const unpacked = fontkit.create(unpackWoff(fontFiles['text-bold']) as Buffer) as fontkit.Font;
    expect(unpacked.numGlyphs).toBe(packed.numGlyphs);
    for (const word of ['Öl', 'fifth', 'AV', '½']) {
      expect(unpacked.layout(word).advanceWidth).toBe(packed.layout(word).advanceWidth);
      expect(unpacked.layout(word).glyphs[0]?.path.toSVG()).toBe(packed.layout(word).glyphs[0]?.path.toSVG());
    }
  });

  it('has table checksums that are true (OpenType: sum of the table as 32-bit words)', () => {
    const sfnt = unpackWoff(fontFiles.narrow);
    const view = new DataView(sfnt.buffer, sfnt.byteOffset, sfnt.byteLength);
    const tables = Array.from({ length: view.getUint16(4) }, (_, index) => 12 + index * 16);
    const head = 0x68656164;
    for (const at of tables.filter((entry) => view.getUint32(entry) !== head)) {
      const offset = view.getUint32(at + 8);
      let sum = 0;
      for (let byte = 0; byte < view.getUint32(at + 12); byte += 4)
        sum = (sum + view.getUint32(offset + byte)) >>> 0;
      expect(sum).toBe(view.getUint32(at + 4));
    }
  });
});
