import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lacking, lackingIn, withoutMarks } from '../../src/language/lacking';
import { readTexts, saying } from '../../src/language/texts';

const file = (yaml: string) => [{ file: 'shared/languages/xx/cards.yaml', text: yaml }];

const one = (english: string, say: string) =>
  `texts:\n  - english: ${JSON.stringify(english)}\n    say: ${JSON.stringify(say)}\n`;

/** Code, line and message of what is wrong with a file of texts. */
function faultsOf(yaml: string): readonly string[] {
  const read = readTexts(file(yaml));
  return read.ok ? [] : read.problems.map(({ code, at, message }) => `${code} ${at?.line}: ${message}`);
}

function dialectOf(yaml: string) {
  const read = readTexts(file(yaml));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return saying(read.value);
}

describe('a text of another language', () => {
  test('is found by its English, whatever the white space', () => {
    const { say } = dialectOf(one('Open {{part}}\n  slowly.', '{{part}} langsam öffnen.'));
    expect(say('Open {{part}} slowly.')).toBe('{{part}} langsam öffnen.');
  });

  test('is said in a template without the tags around it', () => {
    const { sayTemplate } = dialectOf(
      `${one('Seen:', 'Anzeichen:')}  - { english: 'of <em>it</em>', say: 'von <em>ihm</em>' }\n`,
    );
    expect(sayTemplate('<p><strong>Seen:</strong></p><p>of <em>it</em></p>')).toBe(
      '<p><strong>Anzeichen:</strong></p><p>von <em>ihm</em></p>',
    );
  });

  test('that is not there is the English one, marked as lacking', () => {
    const { say } = dialectOf(one('Shut it.', 'Schließen.'));
    expect(lackingIn(say('Open it.'))).toEqual(['Open it.']);
    expect(withoutMarks(say('Open it.'))).toBe('Open it.');
  });

  test('is not asked for where there are no words', () => {
    const { say, sayTemplate } = dialectOf(one('Shut it.', 'Schließen.'));
    for (const bare of [
      '',
      '{{part}} ({{tag}})',
      '<strong>{{name}}</strong>, {{at}}.',
      'M009',
      '25 %, 3',
      '&nbsp;',
    ])
      expect(lackingIn(`${say(bare)}${sayTemplate(bare)}`), bare).toEqual([]);
  });
});

describe('a file of texts is refused, at the line of what is said,', () => {
  test.each([
    ['without a value of the English', 'Open {{part}}.', 'Öffnen.', /\{\{part\}\}.* is not put in/],
    [
      'with a value that the English has not',
      'Open it.',
      '{{part}} öffnen.',
      /\{\{part\}\}.* is not in the English/,
    ],
    ['without a condition of it', '{{#if a}}Now{{/if}} go.', 'Jetzt los.', /\{\{a\}\}.* is not put in/],
    ['with another number', 'For 20 minutes.', '10 Minuten lang.', /the same numbers/],
    ['with other tags', '<em>Driver</em>: go.', 'Fahrer: los.', /the same tags/],
  ])('%s', (_, english, say, fault) => {
    const [first = '', ...others] = faultsOf(one(english, say));
    expect(first).toMatch(/^language-values 3: /);
    expect(first).toMatch(fault);
    expect(others).toEqual([]);
  });

  test('with a text that is said twice, or not at all', () => {
    expect(faultsOf(`${one('Go.', 'Los.')}  - { english: Go., say: Ab. }\n`)[0]).toMatch(
      /^language-values 4: .*twice/,
    );
    expect(faultsOf(one('Go.', ''))[0]).toMatch(/^spec-/);
  });
});

describe('marks of what is lacking', () => {
  test('give the text back from wherever it was put, and leave no trace when they are taken off', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), fc.string(), fc.string(), (text, before, after) => {
        const printed = `${before}${lacking(text)}${after}`;
        expect(lackingIn(printed)).toEqual([text]);
        expect(withoutMarks(printed)).toBe(`${before}${text}${after}`);
      }),
    );
  });
});
