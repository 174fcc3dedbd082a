/** Reading the languages: each is a folder under `languages`, and English is the one the library is written in. */
import type { z } from 'zod';
import { bad, type Diagnostic, good, hasErrors, type Outcome } from '../diagnostic/diagnostic';
import { problemsOf } from '../spec/problems';
import { readSource, type SpecPath, type SpecSource } from '../spec/source';
import { type Dialect, plainDialect, readDialect, textsIn } from './dialect';
import type { Language } from './language';
import { furnitureForm, languageFileForm, messageFileForm, phraseFileForm, wordsForm } from './languageForm';
import { faultOfMessage, type MessageKey, messagesOf } from './messages';

/** The language that steps, cautions, prose and templates are written in. */
export const libraryLanguage = 'en';

/** Everything a language needs, as it stands in its files. */
interface Files {
  readonly language: Read<typeof languageFileForm>;
  readonly words: Read<typeof wordsForm>;
  readonly phrases: Read<typeof phraseFileForm>;
  readonly messages: Read<typeof messageFileForm>;
  readonly furniture: Read<typeof furnitureForm>;
}

interface Read<T extends z.ZodType> {
  readonly data: z.output<T>;
  readonly source: SpecSource;
}

/** Every language there is. */
export interface Languages {
  /** The language the library is written in. */
  readonly plain: Language;
  /** Tags that papers can ask for, without country: `en`, `de`. */
  readonly tags: readonly string[];
  /** The language of a tag; nothing if its folder is not there. A country without a list of its own has the plain language. */
  of(tag: string): Language | undefined;
}

/** Read all of them. `texts` are named relative to `shared`. Every problem is told at its place. */
export function readLanguages(texts: ReadonlyMap<string, string>): Outcome<Languages> {
  const tags = [...new Set([libraryLanguage, ...[...texts.keys()].flatMap(tagOfFile)])];
  const problems: Diagnostic[] = [];
  const found = new Map<string, Files>();
  for (const tag of tags) {
    const read = readFiles(texts, tag);
    if (read.ok) found.set(tag, read.value);
    else problems.push(...read.problems);
  }
  const plain = found.get(libraryLanguage);
  if (plain === undefined) return bad(problems);
  for (const files of found.values()) problems.push(...faultsOf(files, plain));
  const countries = readCountries(texts);
  if (!countries.ok) problems.push(...countries.problems);
  if (hasErrors(problems) || !countries.ok) return bad(problems);
  return good(languagesOf(found, plain, countries.value));
}

function languagesOf(
  found: ReadonlyMap<string, Files>,
  plain: Files,
  countries: ReadonlyMap<string, Dialect>,
): Languages {
  const made = new Map<string, Language>();
  return {
    plain: languageOf(libraryLanguage, plain, plainDialect),
    tags: [...found.keys()],
    of: (tag) => {
      const files = found.get(tag.split('-')[0] ?? tag);
      if (files === undefined) return undefined;
      const language = made.get(tag) ?? languageOf(tag, files, countries.get(tag) ?? plainDialect);
      made.set(tag, language);
      return language;
    },
  };
}

/** A language in one country's way: its own words are said in that way too. */
function languageOf(tag: string, files: Files, country: Dialect): Language {
  const said = <T>(data: T): T => textsIn(country, data);
  const { name, papers, numbers } = files.language.data;
  return {
    tag,
    name,
    papers,
    numbers: { ...numbers, units: said(numbers.units) },
    words: said(files.words.data),
    phrases: said(files.phrases.data.phrases),
    ways: said(files.phrases.data.ways),
    messages: messagesOf(said(files.messages.data.messages)),
    furniture: said(files.furniture.data),
    texts: country,
  };
}

const folder = /^languages\/([a-z]{2,3})\//;

function tagOfFile(name: string): readonly string[] {
  const tag = folder.exec(name)?.[1];
  return tag === undefined ? [] : [tag];
}

function readFiles(texts: ReadonlyMap<string, string>, tag: string): Outcome<Files> {
  const language = readFile(texts, tag, 'language', languageFileForm);
  const words = readFile(texts, tag, 'words', wordsForm);
  const phrases = readFile(texts, tag, 'phrases', phraseFileForm);
  const messages = readFile(texts, tag, 'messages', messageFileForm);
  const furniture = readFile(texts, tag, 'furniture', furnitureForm);
  if (!language.ok || !words.ok || !phrases.ok || !messages.ok || !furniture.ok)
    return bad(
      [language, words, phrases, messages, furniture].flatMap((each) => (each.ok ? [] : each.problems)),
    );
  return good({
    language: language.value,
    words: words.value,
    phrases: phrases.value,
    messages: messages.value,
    furniture: furniture.value,
  });
}

function readFile<T extends z.ZodType>(
  texts: ReadonlyMap<string, string>,
  tag: string,
  name: string,
  form: T,
): Outcome<Read<T>> {
  const file = `languages/${tag}/${name}.yaml`;
  const text = texts.get(file);
  if (text === undefined)
    return bad([
      {
        code: 'language-absent',
        severity: 'error',
        message: `the language \`${tag}\` has no file \`shared/${file}\``,
        mend: `copy \`shared/languages/${libraryLanguage}/${name}.yaml\` and say its words in the language`,
      },
    ]);
  const source = readSource(text, `shared/${file}`);
  if (!source.ok) return source;
  const parsed = form.safeParse(source.value.data);
  return parsed.success
    ? good({ data: parsed.data, source: source.value })
    : bad(problemsOf(parsed.error.issues, source.value, form));
}

/** What the forms cannot say: that messages, phrases and furniture hold the same values as in the library's language. */
function faultsOf({ messages, phrases, furniture }: Files, plain: Files): readonly Diagnostic[] {
  const inMessages = Object.entries(messages.data.messages).flatMap(([key, text]) => {
    const fault = faultOfMessage(key as MessageKey, text);
    return fault === undefined ? [] : [slots(messages.source, ['messages', key], fault, text)];
  });
  const inPhrases = [
    ...differences(phrases, plain.phrases, ['phrases']),
    ...differences(phrases, plain.phrases, ['ways']),
  ];
  const sections = ['sheets', 'screen'] as const;
  const inFurniture = sections.flatMap((section) =>
    Object.entries(furniture.data[section]).flatMap(([name, text]) => {
      const wanted: string = (plain.furniture.data[section] as Readonly<Record<string, string>>)[name] ?? '';
      const [has, needs] = [bracedIn(text), bracedIn(wanted)];
      return has === needs
        ? []
        : [slots(furniture.source, [section, name], `it must put in ${needs || 'nothing'}`, text)];
    }),
  );
  return [...inMessages, ...inPhrases, ...inFurniture];
}

/** Phrases or ways that the library's language has and this one has not, or the other way round. */
function differences(
  { data, source }: Files['phrases'],
  plain: Files['phrases'],
  [section]: readonly ['phrases' | 'ways'],
): readonly Diagnostic[] {
  const [own, wanted] = [Object.keys(data[section]), Object.keys(plain.data[section])];
  const told = (path: SpecPath, message: string, mend: string): Diagnostic => ({
    code: 'language-keys',
    severity: 'error',
    at: source.spotOfKey(path),
    message,
    mend,
  });
  return [
    ...wanted
      .filter((name) => !own.includes(name))
      .map((name) => told([section], `\`${name}\` is missing under \`${section}\``, 'say it here too')),
    ...own
      .filter((name) => !wanted.includes(name))
      .map((name) => told([section, name], `nothing asks for \`${name}\``, 'take it out')),
  ];
}

function bracedIn(text: string): string {
  return [...new Set(text.match(/\{[a-z]+\}/g) ?? [])].sort().join(' ');
}

function slots(source: SpecSource, path: SpecPath, message: string, text: string): Diagnostic {
  return {
    code: 'language-values',
    severity: 'error',
    at: source.spotOfValue(path),
    message,
    found: `\`${text}\``,
    mend: 'put in the same values as the same text in English, in any order',
  };
}

const countryFile = /^languages\/[a-z]{2,3}\/([a-z]{2,3}-[A-Z]{2})\.ya?ml$/;

/** The lists of words of single countries, by language tag. */
function readCountries(texts: ReadonlyMap<string, string>): Outcome<ReadonlyMap<string, Dialect>> {
  const problems: Diagnostic[] = [];
  const countries = new Map<string, Dialect>();
  for (const [name, text] of texts) {
    const tag = countryFile.exec(name)?.[1];
    if (tag === undefined) continue;
    const read = readDialect(text, `shared/${name}`);
    if (read.ok) countries.set(tag, read.value);
    else problems.push(...read.problems);
  }
  return problems.length > 0 ? bad(problems) : good(countries);
}
