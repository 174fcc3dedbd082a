import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dialectOf, formIn, readDialect, sayingAround, textsIn } from '../../src/language/dialect';

const shared = join(import.meta.dirname, '..', '..', 'shared');
const listed = (language: string) => {
  const read = readDialect(
    readFileSync(join(shared, 'languages', 'en', `${language}.yaml`), 'utf8'),
    language,
  );
  if (!read.ok) throw new Error('the list cannot be read');
  return read.value;
};
const british = dialectOf({ tire: 'tyre', vapor: 'vapour', hood: 'bonnet' });

describe('a list of words', () => {
  test('changes whole words and keeps capitals', () => {
    expect(british.say('Press the tire. Tire, TIRE and tires; a tired driver.')).toBe(
      'Press the tyre. Tyre, TYRE and tires; a tired driver.',
    );
  });

  test('finds a word between letters of any script, capitals of any kind', () => {
    const kerb = dialectOf({ kerb: 'curb' });
    expect(kerb.say('Ω – KERB, \u212aerb, İkerb, kerb™')).toBe('Ω – CURB, Curb, İkerb, curb™');
    expect(kerb.say('nothing of the kind ſ')).toBe('nothing of the kind ſ');
  });

  test('leaves names of values and keys with hyphens as they are', () => {
    expect(british.say('{{tire}} of vapor, main-vapor')).toBe('{{tire}} of vapour, main-vapor');
  });

  test('in a template, leaves tags and their attributes as they are', () => {
    expect(british.sayTemplate('<p id="hood">The hood {{#if hood}}is up{{/if}}</p>')).toBe(
      '<p id="hood">The bonnet {{#if hood}}is up{{/if}}</p>',
    );
  });

  test('touches printed texts of a form, not its conditions', () => {
    const form = { say: 'Open the hood', when: { has: { duty: 'hood' } }, id: 'hood' };
    expect(formIn(british, form)).toEqual({ ...form, say: 'Open the bonnet' });
    expect(textsIn(british, form)).toEqual({ ...form, say: 'Open the bonnet', id: 'bonnet' });
  });

  test('is refused when a replacement is itself replaced', () => {
    const read = readDialect('instead-of: { petrol: gasoline, gasoline: benzine }', 'words/xx-XX.yaml');
    expect(read.ok ? [] : read.problems.map(({ code, at }) => [code, at?.line])).toEqual([
      ['words-chain', 1],
    ]);
  });

  test('is refused in another form', () => {
    expect(readDialect('instead-of: [petrol]', 'words/xx-XX.yaml').ok).toBe(false);
  });
});

describe('the lists that come with the program', () => {
  const american = listed('en-US');
  const english = listed('en-GB');

  test.each([
    ['vapour', 'vapor'],
    ['tyre', 'tire'],
    ['petrol', 'gasoline'],
    ['bonnet', 'hood'],
    ['colour', 'color'],
    ['licence', 'license'],
    ['spanner', 'wrench'],
  ])('%s in Britain is %s in America', (gb, us) => {
    expect(american.say(gb)).toBe(us);
    expect(american.say(us)).toBe(us);
    expect(english.say(us)).toBe(gb);
    expect(english.say(gb)).toBe(gb);
  });

  test('said twice is said once', () => {
    const words = fc.constantFrom('vapour', 'Tire', 'PETROL', 'gray', 'steam', 'licence,', 'hood.', 'meters');
    fc.assert(
      fc.property(fc.array(words), (list) => {
        const text = list.join(' ');
        for (const dialect of [american, english])
          expect(dialect.say(dialect.say(text))).toBe(dialect.say(text));
      }),
    );
  });
});

describe('sentences with words of a car’s own', () => {
  const loud = { say: (text: string) => text.toUpperCase(), sayTemplate: (text: string) => text };

  test('leave those as they are, the longest first, and not within another word', () => {
    const say = sayingAround(loud, ['main', 'main tank', 'é']);
    expect(say('the main tank, the main, remains; é, né')).toBe('THE main tank, THE main, REMAINS; é, NÉ');
  });

  test('are said as one search for all of the words at once finds them', () => {
    const pieces = fc.constantFrom('a', 'b', 'ab', ' ', '-', 'é', '7', '😀', '𝒂', 'ba a', '.');
    const text = fc.array(pieces, { maxLength: 12 }).map((each) => each.join(''));
    fc.assert(
      fc.property(text, fc.array(text, { maxLength: 4 }), (sentence, own) => {
        const words = own
          .filter((each) => each !== '')
          .sort((a, b) => b.length - a.length || (a < b ? -1 : 1))
          .map((each) => each.replace('.', '\\.'));
        const whole =
          words.length === 0
            ? /(?!)/gu
            : new RegExp(`(?<![\\p{L}\\p{N}])(?:${words.join('|')})(?![\\p{L}\\p{N}])`, 'gu');
        const marked = {
          say: (text: string) => (text === '' ? '' : `[${text}]`),
          sayTemplate: (text: string) => text,
        };
        let expected = '';
        let from = 0;
        for (const { 0: found, index } of sentence.matchAll(whole)) {
          expected += marked.say(sentence.slice(from, index)) + found;
          from = index + found.length;
        }
        expect(sayingAround(marked, own)(sentence)).toBe(expected + marked.say(sentence.slice(from)));
      }),
    );
  });
});
