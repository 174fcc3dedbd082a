/** How high a cold boiler may stand: what the spec may say of it. */
import { describe, expect, test } from 'vitest';
import { spoiled } from '../helpers/tinySpec';
import { told } from './told';

const least = '  lowest-level: a quarter of the glass\n';
const more = (lines: string) => [least, `${least}${lines}`] as const;
const heights = (cold: string) =>
  `  heights: { from: foot, top: 13 in, least-safe: 3 in, lowest-level: 6 in, working-level: 7 in, highest-level: 9 in, ${cold}, glass: { bottom: 4 in, top: 10 in } }\n`;

describe('highest-level-cold', () => {
  test('is taken above the level to be filled to', () => {
    expect(told(spoiled(more('  highest-level-cold: two thirds of the glass\n')))).toBe('fine');
  });

  test('is not for a coil', () => {
    expect(
      told(
        spoiled(more('  highest-level-cold: two thirds of the glass\n'), [
          'kind: fire-tube',
          'kind: monotube',
        ]),
      ),
    ).toMatchInlineSnapshot(`
      "110:23 error spec-cold-level at “two thirds of the glass”
        a coil has no level that could stand too high
        found: \`two thirds of the glass\`
        expected: nothing, for a boiler of \`kind: monotube\`, which is filled until water runs from it
        mend: take \`highest-level-cold\` out"
    `);
  });

  test.each([
    ['Half a glass', 'found: `Half a glass`, as in `working-level`'],
    ['a quarter of the glass', 'found: `a quarter of the glass`, as in `lowest-level`'],
  ])('%s leaves no room', (most, found) => {
    expect(told(spoiled(more(`  highest-level-cold: ${most}\n`)))).toContain(found);
  });

  test('a height without its words is in no step', () => {
    expect(told(spoiled(more(heights('highest-level-cold: 8 in'))))).toContain('error spec-cold-level');
  });

  test.each([
    ['8 in', undefined],
    ['6 in', 'the lowest level with a fire (6 in) is not below the highest cold level (6 in)'],
    ['9 in', 'the highest cold level (9 in) is not below the highest level (9 in)'],
    ['10 in', 'the highest cold level (10 in) is not below the top of the glass (10 in)'],
  ])('a height of %s', (height, message) => {
    const text = spoiled(
      more(`  highest-level-cold: two thirds of the glass\n${heights(`highest-level-cold: ${height}`)}`),
    );
    if (message === undefined) expect(told(text)).toBe('fine');
    else expect(told(text)).toContain(message);
  });
});
