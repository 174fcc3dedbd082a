import { describe, expect, it } from 'vitest';
import { setBalanced, setBalancedAfter, setBalancedWithin } from '../../../src/layout/inline/balance';
import { breakLines } from '../../../src/layout/inline/lines';
import { tokenize } from '../../../src/layout/inline/tokens';
import { inlines, origin } from '../../helpers/blocks';
import { squareSetting } from '../../helpers/setting';

function lines(text: string, columns: number): string[] {
  const setting = squareSetting();
  const { body } = setting.look;
  const tokens = tokenize(inlines(text), body, setting, origin());
  const set = setBalanced(tokens, body, columns * 10, setting, origin());
  return set.lines.map((line) => line.fragments.map((fragment) => fragment.text).join(''));
}

describe('setBalanced', () => {
  it('leaves no single word hanging where lines can be even', () => {
    expect(lines('aaa bbb ccc ddd eee', 16)).toEqual(['aaa bbb ccc ', 'ddd eee']);
  });

  it('takes no more lines than needed, and loses nothing, at any width', () => {
    const text = 'a wet rag touched to it hisses and dries at once';
    for (let columns = 8; columns < 60; columns += 1) {
      const even = lines(text, columns);
      expect(even.join('')).toBe(text);
      expect(Math.max(...even.map((line) => line.trimEnd().length))).toBeLessThanOrEqual(columns);
      const setting = squareSetting();
      const tokens = tokenize(inlines(text), setting.look.body, setting, origin());
      const greedy = breakLines(tokens, 10, columns * 10, setting.look.fonts).lines.length;
      expect(even).toHaveLength(greedy);
    }
  });

  it('leaves one line, or a word that must be broken, as it is', () => {
    expect(lines('aaa bbb', 20)).toEqual(['aaa bbb']);
    expect(lines('aaaaaaaaaa', 4)).toEqual(['aaaa', 'aaaa', 'aa']);
  });
});

describe('setBalancedWithin', () => {
  const within = (text: string, columns: number, most: number) => {
    const setting = squareSetting();
    const { body } = setting.look;
    const cut = tokenize(inlines(text), body, setting, origin());
    return setBalancedWithin(cut, body, columns * 10, most, setting)?.lines.length;
  };

  it('takes no more lines than it may, and breaks no word for it', () => {
    expect(within('aaa bbb ccc ddd eee', 8, 3)).toBe(3);
    expect(within('aaa bbb ccc ddd eee', 8, 2)).toBeUndefined();
    expect(within('aaaaaaaaaa', 4, 9)).toBeUndefined();
  });
});

describe('setBalancedAfter', () => {
  it('leaves the first line no more than what is left of it, and loses nothing', () => {
    const setting = squareSetting();
    const { body } = setting.look;
    const text = 'a wet rag touched to it hisses and dries at once';
    const cut = tokenize(inlines(text), body, setting, origin());
    for (let left = 6; left < 20; left += 1) {
      const room = { firstPt: left * 10, leastPt: 20, most: 4 };
      const set = setBalancedAfter(cut, body, 200, room, setting);
      const [first, ...rest] = set?.lines ?? [];
      expect(first?.widthPt).toBeLessThanOrEqual(left * 10);
      expect(rest.length).toBeGreaterThan(0);
      for (const { widthPt } of rest) expect(widthPt).toBeLessThanOrEqual(200);
      const said = set?.lines.flatMap(({ fragments }) => fragments.map((fragment) => fragment.text)).join('');
      expect(said).toBe(text);
    }
  });
});
