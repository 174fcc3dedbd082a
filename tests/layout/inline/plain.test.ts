import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FontSet } from '../../../src/font/metrics';
import { extentOf } from '../../../src/layout/inline/extent';
import { breakLines } from '../../../src/layout/inline/lines';
import { type PlainText, RememberedWords, tokensOf } from '../../../src/layout/inline/plain';
import { cutText, isPlain, tokenize } from '../../../src/layout/inline/tokens';
import { origin } from '../../helpers/blocks';
import { plexFonts } from '../../helpers/fonts';
import { squareSetting } from '../../helpers/setting';

const run = (text: string) => ({ kind: 'text', text, strong: false, emphasis: false }) as const;

/** A setting with the real fonts, whose widths are not round numbers. */
function plexSetting() {
  const setting = squareSetting();
  const fonts: FontSet = plexFonts;
  return { ...setting, look: { ...setting.look, fonts } };
}

function plainOf(text: string): PlainText {
  const setting = plexSetting();
  const cut = cutText([run(text)], setting.look.body, setting, origin());
  if (!isPlain(cut)) throw new Error('the text is not plain');
  return cut;
}

const word = fc.stringMatching(/^[a-zA-Z0-9.,–/-]{1,14}$/);
const spaces = fc.constantFrom(' ', ' ', ' ', '  ', '\n', '\u00a0', ' \t ');
const text = fc
  .array(fc.tuple(word, spaces), { maxLength: 25 })
  .map((parts) => parts.flat().join(''))
  .chain((words) => fc.constantFrom(words, words.trim(), ` ${words}`));

describe('plain text', () => {
  it('is cut into the same words as any text is, to the last bit of their widths', () => {
    fc.assert(
      fc.property(text, (words) => {
        const setting = plexSetting();
        expect(tokensOf(plainOf(words))).toEqual(
          tokenize([run(words)], setting.look.body, setting, origin()),
        );
      }),
    );
  });

  it('is set in the same lines as its words are one by one, whatever the width', () => {
    fc.assert(
      fc.property(text, fc.double({ min: 1, max: 400, noNaN: true }), (words, widthPt) => {
        const plain = plainOf(words);
        const { sizePt } = plain;
        expect(breakLines(plain, sizePt, widthPt, plexFonts)).toEqual(
          breakLines(tokensOf(plain), sizePt, widthPt, plexFonts),
        );
      }),
      { numRuns: 400 },
    );
  });

  it('is as wide, at least and at most, as its words are one by one', () => {
    fc.assert(
      fc.property(text, (words) => {
        const plain = plainOf(words);
        expect(extentOf(plain, plain.sizePt, plexFonts)).toEqual(
          extentOf(tokensOf(plain), plain.sizePt, plexFonts),
        );
      }),
    );
  });

  it('says which letters cannot be printed', () => {
    const setting = plexSetting();
    cutText([run('boiler 漢')], setting.look.body, setting, origin());
    expect(setting.problems.told().map(({ code }) => code)).toEqual(['layout-missing-letters']);
  });

  it('is one run that leads nowhere', () => {
    const setting = plexSetting();
    const { body } = setting.look;
    const link = { ...run('here'), link: 'there' };
    for (const content of [[], [run('a'), run('b')], [link], [{ kind: 'break' } as const]])
      expect(isPlain(cutText(content, body, setting, origin()))).toBe(false);
  });

  it('is remembered by its words and face', () => {
    const words = new RememberedWords();
    const one = run('the pilot valve');
    expect(words.of(one, plexFonts.text)).toBe(words.of(one, plexFonts.text));
    expect(words.of(one, plexFonts.narrow)).toEqual(new RememberedWords().of(one, plexFonts.narrow));
    expect(words.of(one, plexFonts.narrow)).not.toEqual(words.of(one, plexFonts.text));
  });
});
