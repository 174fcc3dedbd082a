/** Reading the languages: each is a folder under `languages`, and English is the one the library is written in. */
import type * as z from 'zod';
import { bad, type Diagnostic, good, hasErrors, type Outcome } from '../diagnostic/diagnostic';
import { inForm } from '../spec/inForm';
import { problemsOf } from '../spec/problems';
import { readSource, type SpecSource } from '../spec/source';
import { type Dialect, plainDialect, readDialect, sayingAround, textsIn } from './dialect';
import type { Language } from './language';
import { furnitureForm, languageFileForm, messageFileForm, phraseFileForm, wordsForm } from './languageForm';
import { faultOfMessage, type MessageKey, messagesOf } from './messages';
import { readTexts, saying, type TextsFile } from './texts';
import { wrongValues } from './wrongValues';

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
  /**
   * The language of a tag; a country without a list of its own has the plain language. It is read when it is first asked
   * for, so that a fault in one language stops no paper in another. Bad also if its folder is not there.
   *
   * `onlyBurner` is the name of the one burner of a car that has no other: such papers speak of no main burner, unless
   * the car calls it so itself.
   */
  of(tag: string, onlyBurner?: string): Outcome<Language>;
}

/** Read the language of the library, and find the others. `texts` are named relative to `shared`. */
export function readLanguages(texts: ReadonlyMap<string, string>): Outcome<Languages> {
  const files = readFiles(texts, libraryLanguage);
  if (!files.ok) return files;
  const faults = faultsOf(files.value, files.value);
  if (hasErrors(faults)) return bad(faults);
  const tags = [...new Set([libraryLanguage, ...[...texts.keys()].flatMap(tagOfFile)])];
  const known = new Map<string, Outcome<Language>>();
  const languages: Languages = {
    plain: libraryIn(libraryLanguage, files.value, plainDialect),
    tags,
    of: (tag, onlyBurner) => {
      const words = wordsOfOneBurner(texts, tag, onlyBurner);
      if (!words.ok) return words;
      const key = words.value === plainDialect ? tag : `${tag}, one burner`;
      const language = known.get(key) ?? readLanguage(tag, { tags, texts, plain: files.value }, words.value);
      known.set(key, language);
      return language;
    },
  };
  return good(languages);
}

/** What every language is read from. */
interface Shelf {
  readonly tags: readonly string[];
  readonly texts: ReadonlyMap<string, string>;
  readonly plain: Files;
}

function readLanguage(tag: string, { tags, texts, plain }: Shelf, oneBurner: Dialect): Outcome<Language> {
  const [name = tag] = tag.split('-');
  if (!tags.includes(name)) return bad([noLanguage(tag, tags)]);
  const list = readCountry(texts, name, tag);
  const country = list.ok ? good(inCountry(oneBurner, list.value)) : list;
  if (name === libraryLanguage) return country.ok ? good(libraryIn(tag, plain, country.value)) : country;
  const said = readTexts(textsOf(texts, name));
  const dialect = saying(said.ok ? said.value : new Map());
  const files = readFiles(texts, name, { plain, say: dialect.say });
  const faults = files.ok ? faultsOf(files.value, plain) : files.problems;
  const problems = [...faults, ...(country.ok ? [] : country.problems), ...(said.ok ? [] : said.problems)];
  if (!files.ok || !country.ok || !said.ok || problems.length > 0) return bad(problems);
  return good({
    ...wordsIn(tag, files.value, country.value),
    texts: inCountry(dialect, country.value),
    telling: () => tellsNothing,
  });
}

/** What a language says, in one country's way of it. */
function inCountry(language: Dialect, country: Dialect): Dialect {
  if (language === plainDialect) return country;
  return {
    say: (text) => country.say(language.say(text)),
    sayTemplate: (text) => country.sayTemplate(language.sayTemplate(text)),
  };
}

/** Workings of figures and reasons of rules are put together in English: another language says none of them. */
const tellsNothing = saying(new Map()).say;

/** The library’s own language in one country's way. */
function libraryIn(tag: string, files: Files, country: Dialect): Language {
  return {
    ...wordsIn(tag, files, country),
    texts: country,
    telling: (own) => sayingAround(country, own),
  };
}

/** A language's own words, in one country's way. */
function wordsIn(tag: string, files: Files, country: Dialect): Omit<Language, 'texts' | 'telling'> {
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
  };
}

const folder = /^languages\/([a-z]{2,3})\//;

function tagOfFile(name: string): readonly string[] {
  const tag = folder.exec(name)?.[1];
  return tag === undefined ? [] : [tag];
}

/** The library’s own files, and how the language says what its file has not got. */
interface Filling {
  readonly plain: Files;
  readonly say: Dialect['say'];
}

/**
 * The files of a language. What one that is not the library’s has left out is said as any text is: by a file of texts, or
 * as lacking, so that one word that is new in English stops the papers that print it and no other.
 */
function readFiles(texts: ReadonlyMap<string, string>, tag: string, filling?: Filling): Outcome<Files> {
  const language = readFile(texts, tag, 'language', languageFileForm);
  const words = readFile(texts, tag, 'words', wordsForm, filling);
  const phrases = readFile(texts, tag, 'phrases', phraseFileForm, filling);
  const messages = readFile(texts, tag, 'messages', messageFileForm, filling);
  const furniture = readFile(texts, tag, 'furniture', furnitureForm, filling);
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
  name: keyof Files,
  form: T,
  filling?: Filling,
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
  if (filling === undefined) {
    const whole = inForm(source.value, form, `${name} of a language`);
    if (!whole.success) return bad(problemsOf(whole.error.issues, source.value, form));
    return good({ data: whole.data, source: source.value });
  }
  const own = source.value.data;
  const parsed = form.safeParse(filledUp(own, filling.plain[name].data));
  if (!parsed.success) return bad(problemsOf(parsed.error.issues, source.value, form));
  return good({ data: saidWhereFilled(parsed.data, own, filling.say), source: source.value });
}

/** `own` with what `plain` has and it has not. */
function filledUp(own: unknown, plain: unknown): unknown {
  if (own === undefined) return plain;
  if (!isGroup(own) || !isGroup(plain)) return own;
  const keys = [...new Set([...Object.keys(own), ...Object.keys(plain)])];
  return Object.fromEntries(keys.map((key) => [key, filledUp(own[key], plain[key])]));
}

/** `whole` with every text said that `own` did not have. */
function saidWhereFilled<T>(whole: T, own: unknown, say: Dialect['say']): T {
  if (own === undefined) return textsIn({ say, sayTemplate: say }, whole);
  if (!isGroup(whole) || !isGroup(own)) return whole;
  return Object.fromEntries(
    Object.entries(whole).map(([key, each]) => [key, saidWhereFilled(each, own[key], say)]),
  ) as T;
}

function isGroup(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** What the forms cannot say: that messages, phrases and furniture hold the same values as in the library's language. */
function faultsOf({ messages, phrases, furniture }: Files, plain: Files): readonly Diagnostic[] {
  const inMessages = Object.entries(messages.data.messages).flatMap(([key, text]) => {
    const fault = faultOfMessage(key as MessageKey, text);
    return fault === undefined ? [] : [wrongValues(messages.source, ['messages', key], fault, text)];
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
        : [wrongValues(furniture.source, [section, name], `it must put in ${needs || 'nothing'}`, text)];
    }),
  );
  return [...inMessages, ...inPhrases, ...inFurniture];
}

/** Phrases or ways that this language has and the library’s has not. */
function differences(
  { data, source }: Files['phrases'],
  plain: Files['phrases'],
  [section]: readonly ['phrases' | 'ways'],
): readonly Diagnostic[] {
  const [own, wanted] = [Object.keys(data[section]), Object.keys(plain.data[section])];
  return own
    .filter((name) => !wanted.includes(name))
    .map((name) => ({
      code: 'language-keys',
      severity: 'error',
      at: source.spotOfKey([section, name]),
      message: `nothing asks for \`${name}\``,
      mend: 'take it out',
    }));
}

function bracedIn(text: string): string {
  return [...new Set(text.match(/\{[a-z]+\}/g) ?? [])].sort().join(' ');
}

/** The files of a language that every language has; every other file in its folder holds texts. */
const ownFiles = ['language', 'words', 'phrases', 'messages', 'furniture'];

/** The list of words that are said otherwise of a car with one burner. */
const oneBurnerFile = 'one-burner';

/** The files of texts of a language: all but those every language has and its lists of words. */
function textsOf(texts: ReadonlyMap<string, string>, name: string): readonly TextsFile[] {
  const inFolder = `languages/${name}/`;
  return [...texts]
    .filter(([file]) => file.startsWith(inFolder))
    .filter(([file]) => {
      const short = file.slice(inFolder.length).replace(/\.ya?ml$/, '');
      return ![...ownFiles, oneBurnerFile].includes(short) && !/^[a-z]{2,3}-[A-Z]{2}$/.test(short);
    })
    .map(([file, text]) => ({ file: `shared/${file}`, text }));
}

/** The list of words of one country; without one, nothing is said otherwise. */
function readCountry(texts: ReadonlyMap<string, string>, name: string, tag: string): Outcome<Dialect> {
  const file = `languages/${name}/${tag}.yaml`;
  const text = texts.get(file);
  return tag === name || text === undefined ? good(plainDialect) : readDialect(text, `shared/${file}`);
}

/**
 * What a language says of a car with one burner. Nothing otherwise if the car has several, or calls its one burner by the very
 * name that the list does without: the papers would part from the car.
 */
function wordsOfOneBurner(
  texts: ReadonlyMap<string, string>,
  tag: string,
  onlyBurner: string | undefined,
): Outcome<Dialect> {
  const file = `languages/${tag.split('-')[0]}/${oneBurnerFile}.yaml`;
  const text = texts.get(file);
  if (onlyBurner === undefined || text === undefined) return good(plainDialect);
  const list = readDialect(text, `shared/${file}`);
  return list.ok && list.value.say(onlyBurner) !== onlyBurner ? good(plainDialect) : list;
}

function noLanguage(tag: string, tags: readonly string[]): Diagnostic {
  return {
    code: 'language-unknown',
    severity: 'error',
    message: `the papers cannot be made in the language \`${tag}\`, whose words are not there`,
    found: `\`${tag}\``,
    expected: `one of ${tags.map((each) => `\`${each}\``).join(', ')}, with or without a country, such as \`en-GB\``,
    mend: 'write one of these, or add a folder for the language (`docs/languages.md`)',
  };
}
