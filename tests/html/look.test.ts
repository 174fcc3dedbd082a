/** The look of screen pages: what comes with the program can be read, and what could not be is refused. */
import { Script } from 'node:vm';
import { describe, expect, test } from 'vitest';
import { readScreenLook } from '../../src/html/look';
import { pairsOf, tooFaint } from '../../src/html/pairs';
import { styleOf } from '../../src/html/style';
import { contrast } from '../../src/layout/contrast';
import { lookFiles, plainLook } from './look';

const look = plainLook();

describe('the look that comes with the program', () => {
  test('has 7 : 1 for all text and at least 4.5 : 1 for signal words (WCAG 2.2, 1.4.6 and 1.4.3)', () => {
    const pairs = pairsOf(look);
    expect(pairs.length).toBeGreaterThan(40);
    for (const pair of pairs) expect([pair, tooFaint(pair)]).toEqual([pair, undefined]);
    const panels = pairs.filter(({ path }) => path[0] === 'signals');
    expect(panels.map(({ front, ground }) => Number(contrast(front, ground).toFixed(2)))).toEqual([
      6.22, 7.06, 13.09, 6,
    ]);
  });

  test('uses no colour in its style but those that are checked', () => {
    const rules = lookFiles.style.replace(/\/\*.*?\*\//gs, '');
    expect(rules).not.toMatch(/#[0-9a-f]{3,8}\b(?![^{]*\{)/i);
    expect(rules).not.toMatch(/\b(?:rgba?|hsla?|oklch|lab|color-mix)\(/);
    const colours = [
      ...rules.matchAll(/(?:^|[\s;{])(?:color|background(?:-color)?|fill|stroke|border-color):\s*([^;]+);/g),
    ].map(([, value]) => value?.trim());
    const allowed = /^(var\(--[a-z-]+\)|currentColor|inherit|none|transparent|white)$/;
    expect(colours.length).toBeGreaterThan(20);
    expect(colours.filter((value) => !allowed.test(value ?? ''))).toEqual([]);
  });

  test('defines every variable it uses', () => {
    const style = styleOf(look);
    const defined = new Set([...style.matchAll(/(--[a-z-]+)\s*:/g)].map(([, name]) => name));
    const used = [...style.matchAll(/var\((--[a-z-]+)/g)].map(([, name]) => name);
    expect(used.length).toBeGreaterThan(40);
    // `--least` stands at each drawing
    expect(used.filter((name) => name !== '--least' && !defined.has(name))).toEqual([]);
  });

  test('never takes dark colours to paper', () => {
    expect(styleOf(look)).toContain('@media screen and (prefers-color-scheme: dark)');
  });

  test('has a script that is well-formed', () => {
    expect(() => new Script(lookFiles.script)).not.toThrow();
    expect(() => new Script(`${lookFiles.script} (`)).toThrow();
  });
});

describe('a look is refused', () => {
  const codesOf = (changed: Partial<typeof lookFiles>): string[] => {
    const read = readScreenLook({ ...lookFiles, ...changed });
    return read.ok ? [] : read.problems.map(({ code, at }) => `${code} ${at?.file}:${at?.line}`);
  };

  test('if its text is too faint, at the place of the colour', () => {
    const line = lookFiles.data.split('\n').findIndex((each) => each.includes("soft: '#454545'")) + 1;
    const codes = codesOf({ data: lookFiles.data.replace("soft: '#454545'", "soft: '#888888'") });
    expect(new Set(codes)).toEqual(new Set([`screen-contrast shared/screen/screen.yaml:${line}`]));
  });

  test('if a signal word is', () => {
    const codes = codesOf({
      data: lookFiles.data.replace(
        "panel: '#e97600', letters: '#000000'",
        "panel: '#e97600', letters: '#ffffff'",
      ),
    });
    expect(codes).toHaveLength(1);
    expect(codes[0]).toMatch(/^screen-contrast/);
  });

  test.each([
    ['an import', { style: '@import "x.css";' }],
    ['a picture', { style: 'body {\n background: url(x.png) }' }],
    ['a request', { script: 'fetch("/x")' }],
    ['a message away', { script: 'navigator.sendBeacon("/x")' }],
    ['an address', { script: '"https://example.org"' }],
    ['an end of the script', { script: '"</script>"' }],
    ['an end of the style', { style: '/* </STYLE> */' }],
    ['a comment of HTML', { script: '"<!--"' }],
  ])('for %s', (_, changed) => {
    const codes = codesOf(changed);
    expect(codes.length).toBeGreaterThan(0);
    for (const code of codes) expect(code).toMatch(/^screen-outside shared\/screen\/page\.(css|js):\d+$/);
  });

  test('if a colour is missing or unknown, together with all else that is wrong', () => {
    const codes = codesOf({
      data: lookFiles.data.replace('    paper: ', '    papper: '),
      style: 'a { background: url(x) }',
    });
    expect(codes.some((code) => code.startsWith('spec-'))).toBe(true);
    expect(codes.some((code) => code.startsWith('screen-outside'))).toBe(true);
  });
});
