/** Problems as they are read on a terminal. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { printForTerminal } from '../../src/diagnostic/print/terminal';
import { due, gallons, placeless, pressures } from './examples';

describe('printed for a terminal', () => {
  test('in the usual width', () => {
    expect(printForTerminal([gallons, pressures, due], 80)).toMatchInlineSnapshot(`
      "cars/pipkin.yaml:63:15 error[spec-quantity] \`tanks.water-tank.capacity\` cannot
        be used as it stands
          found     \`20 gal\`
          expected  a volume, such as \`25 US gal\`, \`20 imp gal\` or \`95 L\`
          mend      write \`20 US gal\` or \`20 imp gal\`: a US gallon is 3.785 L and an
                    imperial gallon 4.546 L

      cars/pipkin.yaml:103:20 error[spec-pressures] the pressure at which the burner
        cuts out (260 psi gauge) is not below the safety valve’s set pressure (250 psi
        gauge)
          found     \`260 psi gauge\`
          expected  less than \`250 psi gauge\`
          mend      correct one of the two
          note      The safety valve would lift before the automatic shuts the burner,
                    and be worn out when it is needed.
          note      It is the last thing between the boiler and its bursting.

      cars/pipkin.yaml:112:66 remark[spec-inspection-due] the boiler’s inspection was
        due on 2026-02-01
          mend      do not raise steam before the inspector has seen it

      2 errors, 1 remark"
    `);
  });

  test('in a narrow window', () => {
    expect(printForTerminal([pressures], 48)).toMatchInlineSnapshot(`
      "cars/pipkin.yaml:103:20 error[spec-pressures]
        the pressure at which the burner cuts out (260
        psi gauge) is not below the safety valve’s set
        pressure (250 psi gauge)
          found     \`260 psi gauge\`
          expected  less than \`250 psi gauge\`
          mend      correct one of the two
          note      The safety valve would lift before
                    the automatic shuts the burner,
                    and be worn out when it is needed.
          note      It is the last thing between the
                    boiler and its bursting.

      1 error"
    `);
  });

  test('in a very wide window lines stay short enough to follow', () => {
    const lines = printForTerminal([pressures], 500).split('\n');
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(110);
  });

  test('a problem that stands nowhere in a file', () => {
    expect(printForTerminal([placeless], 80)).toMatchInlineSnapshot(`
      "error[theme-yaml] the theme cannot be read
          mend      look at its first line

      1 error"
    `);
  });

  test('nothing to tell', () => {
    expect(printForTerminal([], 80)).toBe('no errors');
  });

  test('remarks alone', () => {
    expect(printForTerminal([due, due], 80).split('\n').at(-1)).toBe('no errors, 2 remarks');
  });

  test('letters of a file that would move the cursor or change colours are not passed on', () => {
    const sly = { ...gallons, found: '`\u001b[2J\u0007gone\u202E`', message: 'two\nlines\tand a tab' };
    const text = printForTerminal([sly], 80);
    expect(text).toContain('found     `\uFFFD[2J\uFFFDgone\uFFFD`');
    expect(text).toContain('two lines and a tab');
  });

  test('no line is wider than asked unless one word is, and no word is lost or broken', () => {
    const words = fc.array(
      fc.string({ unit: fc.constantFrom('a', 'b', 'é', '`', '𝛑', '.'), minLength: 1, maxLength: 60 }),
      { minLength: 1, maxLength: 30 },
    );
    fc.assert(
      fc.property(words, fc.integer({ min: 40, max: 110 }), (said, width) => {
        const text = printForTerminal([{ ...gallons, mend: said.join(' ') }], width);
        for (const line of text.split('\n')) {
          if ([...line].length > width) expect(line.trim().split(/\s+/).length).toBeLessThanOrEqual(2);
        }
        const [, mend = ''] = text.split(/\n {4}mend {6}/);
        expect(mend.replace(/\n\n.*$/s, '').split(/\s+/)).toEqual(said);
      }),
    );
  });
});
