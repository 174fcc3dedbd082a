import { describe, expect, test } from 'vitest';
import { lackingIn } from '../../src/language/lacking';
import { type Language, listed, partName } from '../../src/language/language';
import { messageValues } from '../../src/language/messages';
import { readLanguages } from '../../src/language/readLanguages';
import { english, languageFiles, languages } from '../helpers/english';

/** Codes and places of what is wrong when `file` has `to` in place of `from`, which must stand in it. */
function spoilt(file: string, from: string, to: string): readonly string[] {
  const files = languageFiles();
  const text = files.get(file) ?? '';
  expect(text).toContain(from);
  files.set(
    file,
    text.replace(from, () => to),
  );
  const read = readLanguages(files);
  const line = text.slice(0, text.indexOf(from)).split('\n').length;
  return read.ok ? [] : read.problems.map(({ code, at }) => `${code} ${at?.file} ${(at?.line ?? 0) - line}`);
}

/** A language by its tag; fails if it cannot be read. */
function inCountry(tag: string): Language {
  const read = languages.of(tag);
  if (!read.ok) throw new Error(`there is no ${tag}`);
  return read.value;
}

const en = (name: string) => `languages/en/${name}.yaml`;

describe('a language is refused', () => {
  test('that lacks a word, a message or a piece of furniture', () => {
    expect(spoilt(en('words'), '  seated: ', '  sitting: ')[0]).toMatch(/^spec-/);
    expect(spoilt(en('messages'), '  not-known: ', '  unknown: ')[0]).toMatch(/^spec-/);
    expect(spoilt(en('furniture'), '  continued: ', '  goes-on: ')[0]).toMatch(/^spec-/);
    expect(spoilt(en('language'), '    turns: ', '    rounds: ')[0]).toMatch(/^spec-/);
  });

  test('whose message leaves a value out, or puts in one that nobody gives, at its line', () => {
    const at = (code: string) => [`${code} shared/${en('messages')} 0`];
    expect(spoilt(en('messages'), '{{name}} ({{tag}})', '{{name}}')).toEqual(at('language-values'));
    expect(spoilt(en('messages'), '"Moved: {{steps}}"', '"Moved: {{steps}} {{why}}"')).toEqual(
      at('language-values'),
    );
    expect(spoilt(en('messages'), '"Moved: {{steps}}"', '"Moved: {{steps}} {{"')).toEqual(
      at('language-values'),
    );
  });

  test('that lacks one of its files', () => {
    const files = languageFiles();
    files.delete(en('messages'));
    const read = readLanguages(files);
    expect(read.ok ? [] : read.problems.map(({ code, message }) => [code, message])).toEqual([
      ['language-absent', 'the language `en` has no file `shared/languages/en/messages.yaml`'],
    ]);
  });
});

describe('another language', () => {
  const de = (name: string) => `languages/de/${name}.yaml`;

  function german(file: string, from: RegExp, to: string) {
    const files = languageFiles();
    expect(files.get(file)).toMatch(from);
    files.set(file, (files.get(file) ?? '').replace(from, to));
    const read = readLanguages(files);
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    expect(read.value.of('en-US').ok).toBe(true);
    return read.value.of('de');
  }

  test.each([
    [de('messages'), /^ {2}not-known: .*\n/m, 'not known'],
    [de('furniture'), /^ {2}front: .*\n/m, 'front'],
    [de('words'), /^ {2}seated: .*\n/m, 'from the driver’s seat'],
    [de('phrases'), /^ {2}get-at: .*\n/m, '{{#if part.how}}First {{part.how}}.{{/if}}'],
  ])('that leaves a text out of %s lacks that one text', (file, from, lacks) => {
    const read = german(file, from, '');
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    const { words, phrases, furniture, messages } = read.value;
    const printed = JSON.stringify([words, phrases, furniture, messages.say('not-known', {})]);
    expect(lackingIn(printed)).toEqual([lacks]);
  });

  test('may say it in a file of texts instead', () => {
    const files = languageFiles();
    const messages = files.get(de('messages')) ?? '';
    files.set(de('messages'), messages.replace(/^ {2}not-known: .*\n/m, ''));
    files.set(de('more'), 'texts:\n  - { english: not known, say: unbekannt }\n');
    const read = readLanguages(files);
    const language = read.ok ? read.value.of('de') : read;
    expect(language.ok && language.value.messages.say('not-known', {})).toBe('unbekannt');
  });

  test.each([
    [de('messages'), 'value', /"\{\{name\}\} \(\{\{tag\}\}\)"/, '"{{name}}"', 'language-values'],
    [de('furniture'), 'value', /Seite \{face\} von \{faces\}/, 'Seite {face}', 'language-values'],
    [de('phrases'), 'phrase', /^ {2}is-shut: /m, '  is-closed: zu\n  is-shut: ', 'language-keys'],
    [de('words'), 'word', /^ {2}seated: /m, '  sitting: ', 'spec-'],
  ])(
    'with a fault in %s (%s) is refused when it is asked for, and English is not',
    (file, _, from, to, code) => {
      const read = german(file, from, to);
      const [first] = read.ok ? [] : read.problems;
      expect(first?.code).toContain(code);
      expect(first?.at?.file).toBe(`shared/${file}`);
    },
  );
});

describe('English', () => {
  test('says every message with its values', () => {
    for (const [key, names] of Object.entries(messageValues)) {
      const values = Object.fromEntries(names.map((name) => [name, `<${name}>`]));
      const said = english.messages.say(key as never, values as never);
      for (const name of names) expect(said).toContain(`<${name}>`);
      expect(said).not.toMatch(/[{}]/);
    }
  });

  test('names parts and lists', () => {
    expect(partName(english, { name: 'pilot valve', tag: 'F4' })).toBe('the pilot valve (F4)');
    expect(partName(english, { name: 'boiler' })).toBe('the boiler');
    expect(listed(english, [])).toBe('');
    expect(listed(english, ['a'])).toBe('a');
    expect(listed(english, ['a', 'b', 'c'])).toBe('a, b and c');
  });

  test('of a country says its own words in that country’s way, and another country’s is plain', () => {
    expect(inCountry('en-GB').furniture.screen).toEqual(english.furniture.screen);
    expect(inCountry('en-GB').words.opens.anticlockwise).toBe('opens anticlockwise');
    expect(inCountry('en-US').words.opens.anticlockwise).toBe('opens counterclockwise');
    expect(inCountry('en-NZ').words).toEqual(english.words);
    expect(inCountry('en-NZ').tag).toBe('en-NZ');
  });

  test('is not put in the place of a language that is not there', () => {
    const read = languages.of('xx');
    expect(read.ok ? [] : read.problems.map(({ code, found }) => [code, found])).toEqual([
      ['language-unknown', '`xx`'],
    ]);
  });
});
