import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { breakLines, type Line } from '../../../src/layout/inline/lines';
import { breakOffsets } from '../../../src/layout/inline/opportunities';
import { setText } from '../../../src/layout/inline/text';
import type { Token } from '../../../src/layout/inline/tokens';
import type { Inline } from '../../../src/markup/block';
import { inlines, origin } from '../../helpers/blocks';
import { squareSetting } from '../../helpers/setting';
import { squareFonts } from '../../helpers/squareMetrics';

const text = 'Read the glass before anything is lit, and once more after every fill of the tank.';

/** Lines of `content` in a column of `columns` square letters. */
function lines(content: string | readonly Inline[], columns: number): readonly Line[] {
  const setting = squareSetting();
  const own = typeof content === 'string' ? inlines(content) : content;
  return setText(own, setting.look.body, columns * 10, setting, origin()).lines;
}

function words(set: readonly Line[]): string[] {
  return set.map((line) =>
    line.fragments
      .map((fragment) => fragment.text)
      .join('')
      .trimEnd(),
  );
}

describe('breakLines', () => {
  it('puts as many words on a line as fit, to the letter', () => {
    expect(words(lines('aaaa bbbb cccc', 9))).toEqual(['aaaa bbbb', 'cccc']);
    expect(words(lines('aaaa bbbb cccc', 8))).toEqual(['aaaa', 'bbbb', 'cccc']);
  });

  it.each(Array.from({ length: 60 }, (_, index) => index + 7))(
    'loses no word in a column of %d letters',
    (columns) => {
      const set = lines(text, columns);
      expect(set.map((line) => line.fragments.map((fragment) => fragment.text).join('')).join('')).toBe(text);
      for (const line of set) expect(line.widthPt).toBeLessThanOrEqual(columns * 10);
      for (const [index, line] of words(set).entries()) {
        const next = words(set)[index + 1]?.split(' ')[0];
        if (next !== undefined) expect(`${line} ${next}`.length).toBeGreaterThan(columns);
      }
    },
  );

  it('ends a line inside a paragraph with a space and the last one without', () => {
    const set = lines('aaaa bbbb', 5);
    expect(set.map((line) => line.fragments[0]?.text)).toEqual(['aaaa ', 'bbbb']);
    expect(set.map((line) => line.widthPt)).toEqual([40, 40]);
  });

  it('never breaks at U+00A0 or U+2011', () => {
    expect(words(lines('at 40\u00a0psi now', 6))).toEqual(['at', '40\u00a0psi', 'now']);
    expect(words(lines('low\u2011water cut', 10))).toEqual(['low\u2011water', 'cut']);
  });

  it('breaks after hyphens, dashes and slashes between words, not in numbers', () => {
    expect(words(lines('the low-water cut-off', 8))).toEqual(['the low-', 'water', 'cut-off']);
    expect(words(lines('kerosene/gasoline', 10))).toEqual(['kerosene/', 'gasoline']);
    expect(words(lines('on 2026-04-12 it', 10))).toEqual(['on', '2026-04-12', 'it']);
    expect(words(lines('about 1/2 in', 7))).toEqual(['about', '1/2 in']);
  });

  it('does not break at a hyphen a word that fits on a line of its own', () => {
    expect(words(lines('the low-water cut-off', 10))).toEqual(['the', 'low-water', 'cut-off']);
    expect(words(lines('use kerosene/gasoline', 18))).toEqual(['use kerosene/', 'gasoline']);
  });

  it('breaks a word longer than the line between letters, and says which', () => {
    const { lines: set, brokenWords } = breakLines([word('abcdefghij')], 10, 40, squareFonts);
    expect(words(set)).toEqual(['abcd', 'efgh', 'ij']);
    expect(set.map((line) => line.fragments[0]?.text).join('')).toBe('abcdefghij');
    expect(brokenWords[0]).toBe('abcdefghij');
  });

  it('places a letter wider than its line all the same, and says so', () => {
    const { lines: set, overfull } = breakLines([word('abc')], 10, 4, squareFonts);
    expect(words(set)).toEqual(['a', 'b', 'c']);
    expect(overfull).toBe(true);
  });

  it('keeps a word together that changes face inside', () => {
    expect(words(lines('aaa *bbb*ccc', 7))).toEqual(['aaa', 'bbbccc']);
  });

  it('ends lines where told to, and leaves an empty one for two ends in a row', () => {
    const end: Inline = { kind: 'break' };
    expect(words(lines([...inlines('aa'), end, end, ...inlines('bb')], 20))).toEqual(['aa', '', 'bb']);
  });

  it('drops spaces at the start of a line only', () => {
    expect(lines('  aa  bb', 20)[0]?.fragments[0]?.text).toBe('aa  bb');
  });

  it('keeps every letter of any text in any column', () => {
    const anyText = fc.string({
      unit: fc.constantFrom('a', 'b', ' ', '-', '/', '–', '1', '\u00a0', 'é'),
      maxLength: 80,
    });
    fc.assert(
      fc.property(anyText, fc.integer({ min: 1, max: 30 }), (any, columns) => {
        const set = lines(any, columns);
        const letters = set.flatMap((line) => line.fragments.map((fragment) => fragment.text)).join('');
        expect(letters.replace(/ /g, '')).toBe(any.replace(/ /g, ''));
        expect(letters.split(/ +/).filter(Boolean)).toEqual(any.split(/ +/).filter(Boolean));
        for (const line of set) expect(line.widthPt).toBeLessThanOrEqual(columns * 10 + 0.001);
      }),
    );
  });
});

describe('breakOffsets', () => {
  it.each([
    ['low-water', [4]],
    ['left/right', [5]],
    ['wait—then', [5]],
    ['10–12', []],
    ['A-1', []],
    ['1/2', []],
    ['plain', []],
  ])('of %s are %j', (own, offsets) => {
    expect(breakOffsets(own)).toEqual(offsets);
  });
});

function word(letters: string): Token {
  return {
    text: letters,
    face: 'text',
    widthPt: letters.length * 10,
    spaces: '',
    spacesPt: 0,
    end: 'joined',
  };
}
