import { describe, expect, it } from 'vitest';
import { setBalanced } from '../../../src/layout/inline/balance';
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
