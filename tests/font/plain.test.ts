import fc from 'fast-check';
import * as fontkit from 'fontkit';
import { describe, expect, it } from 'vitest';
import { tablesOf } from '../../src/font/fontFile';
import { faces } from '../../src/font/metrics';
import { plainShaper, type ShapedWord } from '../../src/font/plain';
import { unpackWoff } from '../../src/font/woff';
import { fontFiles } from '../helpers/fonts';

const shapers = faces.map((face) => {
  const font = fontkit.create(unpackWoff(fontFiles[face]) as Buffer) as fontkit.Font;
  return { face, plain: plainShaper(tablesOf(fontFiles[face])), font };
});

/** What a general shaper makes of a word; its memory of glyphs is emptied before. */
function fully(font: fontkit.Font, word: string) {
  (font as fontkit.Font & { _glyphs: object })._glyphs = {};
  const { advanceWidth, glyphs, positions } = font.layout(word);
  return {
    advance: advanceWidth,
    glyphs: glyphs.map(({ id, codePoints }, index) => ({
      id,
      codePoints,
      move: positions[index]?.xAdvance,
      offset: positions[index]?.xOffset,
    })),
  };
}

/** A shaped word spelt out, glyph by glyph. */
function spelt(word: string, { advance, glyphs, moves, offsets, letters }: ShapedWord) {
  return {
    advance,
    glyphs: glyphs.map((id, index) => ({
      id,
      codePoints: letters?.[index] ?? [word.charCodeAt(index)],
      move: moves[index],
      offset: offsets?.[index] ?? 0,
    })),
  };
}

const letters = [
  ...Array.from({ length: 0x5f }, (_, index) => String.fromCharCode(0x20 + index)),
  ...Array.from({ length: 0xe0 }, (_, index) => String.fromCharCode(0xa0 + index)),
  ...'–—‘’“”…‰−‐‑←↑→↓',
].filter((letter) => letter !== '\u00ad' && shapers.every(({ plain }) => plain.shape(letter) !== undefined));

describe('plainShaper', () => {
  it('takes every letter, figure and sign of English and of Western names', () => {
    const wanted =
      'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789.,;:!?()[]/&%°½¼¾×–—‘’“”…−éèüßñçøåÆœŠž←↑→↓';
    for (const letter of wanted) expect(letters).toContain(letter);
  });

  it('takes a grave accent by itself where the font does not put it on letters', () => {
    const taken = shapers.filter(({ plain }) => plain.shape('(`a`)') !== undefined);
    expect(taken.map(({ face }) => face)).toContain('text');
    expect(taken.map(({ face }) => face)).not.toContain('narrow-bold');
    for (const { plain, font } of taken)
      for (const letter of letters)
        for (const word of [`\`${letter}`, `${letter}\``])
          expect(plain.shape(word)?.advance, word).toBe(fully(font, word).advance);
  });

  it('shapes every pair of letters as a general shaper does', () => {
    const common = letters.filter((letter) => letter < '\u0100' || letter > '\u2000');
    for (const { plain, font } of shapers.slice(0, 1)) {
      for (const first of common)
        for (const second of common) {
          const shaped = plain.shape(first + second);
          if (shaped?.advance !== fully(font, first + second).advance)
            expect.fail(`${first}${second}: ${shaped?.advance} for ${fully(font, first + second).advance}`);
        }
    }
  }, 120_000);

  it.each(shapers)('shapes any plain word of $face as a general shaper does', ({ plain, font }) => {
    const joining = fc.constantFrom('fi', 'fl', 'ffi', 'AV', 'To', '1/2', 'ﬁ');
    const word = fc
      .array(fc.oneof(fc.constantFrom(...letters), joining), { minLength: 1, maxLength: 12 })
      .map((parts) => parts.join(''));
    fc.assert(
      fc.property(word, (text) => {
        const shaped = plain.shape(text);
        expect(plain.advanceOf(text)).toBe(shaped?.advance);
        if (shaped !== undefined) expect(spelt(text, shaped)).toEqual(fully(font, text));
      }),
      { numRuns: 600 },
    );
  });

  it('leaves marks to be put on, slanted fractions and absent letters to the general shaper', () => {
    for (const { plain } of shapers)
      for (const word of ['e\u0301', '3\u20444', '漢', '\u{1F525}', 'ﬁ\u00ad'])
        expect([plain.shape(word), plain.advanceOf(word)]).toEqual([undefined, undefined]);
  });

  it('is not used for a font without the tables it knows', () => {
    const sfnt = unpackWoff(fontFiles.text).slice();
    const tag = new TextDecoder('latin1').decode(sfnt.subarray(0, 600)).indexOf('GPOS');
    sfnt[tag] = 'X'.charCodeAt(0);
    expect(plainShaper(tablesOf(sfnt)).shape('boiler')).toBeUndefined();
  });
});
