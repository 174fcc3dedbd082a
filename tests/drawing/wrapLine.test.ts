import fc from 'fast-check';
import { expect, test } from 'vitest';
import { firstLine, wrapLine } from '../../src/drawing/wrapLine';
import { plexFonts } from '../helpers/fonts';

test('asked line by line, words break where they break all at once', () => {
  const words = fc.array(fc.stringMatching(/^[A-Za-z,.-]{1,12}$/), { minLength: 1, maxLength: 12 });
  fc.assert(
    fc.property(words, fc.double({ min: 5, max: 200, noNaN: true }), (some, widthPt) => {
      const line = some.join(' ');
      const all = wrapLine(line, plexFonts.narrow, 9, widthPt);
      const one: string[] = [];
      for (let rest = line; rest !== ''; rest = rest.slice(one.at(-1)?.length ?? 1).trimStart())
        one.push(firstLine(rest, plexFonts.narrow, 9, widthPt));
      expect(one).toEqual(all);
    }),
  );
});
