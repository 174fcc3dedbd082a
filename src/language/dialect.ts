/**
 * One language, several ways of saying things: the words of library and templates in the English of the papers.
 *
 * A list of words stands in `shared/languages/<language>/<language>-<country>.yaml`. It is applied to texts before
 * anything of a car is put into them, so that a car's own names and words are never touched.
 */
import * as z from 'zod';
import { bad, good, type Outcome } from '../diagnostic/diagnostic';
import { inForm } from '../spec/inForm';
import { problemsOf } from '../spec/problems';
import { readSource } from '../spec/source';

const dialectForm = z.strictObject({ 'instead-of': z.record(z.string().min(1), z.string().min(1)) });

/** The words of one language tag. */
export interface Dialect {
  /** The text with every word of the list replaced; what stands in double braces is left as it is. */
  say(text: string): string;
  /** The same for a template: what stands in tags is left too. */
  sayTemplate(text: string): string;
}

/** Leaves every text as it is: for languages that have no list. */
export const plainDialect: Dialect = {
  say: (text) => text,
  sayTemplate: (text) => text,
};

/** Read one list. A word that another word of the list is replaced by is an error: the order would matter. */
export function readDialect(text: string, file: string): Outcome<Dialect> {
  const source = readSource(text, file);
  if (!source.ok) return source;
  const parsed = inForm(source.value, dialectForm, 'words of a country');
  if (!parsed.success) return bad(problemsOf(parsed.error.issues, source.value, dialectForm));
  const list = parsed.data['instead-of'];
  const chained = Object.entries(list).filter(([, wanted]) => Object.hasOwn(list, wanted));
  if (chained.length > 0)
    return bad(
      chained.map(([word, wanted]) => ({
        code: 'words-chain',
        severity: 'error',
        at: source.value.spotOfKey(['instead-of', word]),
        message: `\`${word}\` is replaced by \`${wanted}\`, which is itself replaced`,
        found: `\`${wanted}\``,
        expected: `\`${list[wanted] ?? ''}\``,
        mend: 'let each word be replaced by the one that is printed',
      })),
    );
  return good(dialectOf(list));
}

const braces = /\{\{[\s\S]*?\}\}/gu;
const bracesOrTags = /\{\{[\s\S]*?\}\}|<[^>]*>/gu;

/** The dialect of a list of words, lower-case. */
export function dialectOf(list: Readonly<Record<string, string>>): Dialect {
  const words = Object.keys(list);
  if (words.length === 0) return plainDialect;
  const anywhere = words.map(asPattern).join('|');
  // most texts have none of the words: that is seen sooner where it does not matter what stands around them
  const any = new RegExp(anywhere, 'iu');
  const whole = new RegExp(`(?<![\\p{L}\\p{N}-])(?:${anywhere})(?![\\p{L}\\p{N}-])`, 'giu');
  const swap = (text: string) =>
    any.test(text) ? text.replace(whole, (word) => likeCase(word, list[word.toLowerCase()] ?? word)) : text;
  return {
    say: (text) => outside(text, braces, swap),
    sayTemplate: (text) => outside(text, bracesOrTags, swap),
  };
}

/** Says sentences that hold words of a car's own: those stay as they are, wherever they stand. */
export function sayingAround({ say }: Dialect, own: readonly string[]): (sentence: string) => string {
  const longestFirst = [...new Set(own)]
    .filter((words) => words !== '')
    .sort((a, b) => b.length - a.length || (a < b ? -1 : 1));
  // the same words stand in many workings
  const known = new Map<string, string>();
  return (sentence) => {
    const said = known.get(sentence) ?? sayAround(sentence);
    known.set(sentence, said);
    return said;
  };

  function sayAround(sentence: string): string {
    const here = longestFirst.filter((words) => sentence.includes(words));
    if (here.length === 0) return say(sentence);
    let made = '';
    let from = 0;
    for (let next = firstOf(here, sentence, from); next !== undefined; next = firstOf(here, sentence, from)) {
      made += say(sentence.slice(from, next.at)) + next.words;
      from = next.at + next.words.length;
    }
    return made + say(sentence.slice(from));
  }
}

/** Which of some words stands first in a sentence from a place on, as words of their own; of two at one place the one named first. */
function firstOf(
  words: readonly string[],
  sentence: string,
  from: number,
): { readonly words: string; readonly at: number } | undefined {
  let first: { readonly words: string; readonly at: number } | undefined;
  for (const each of words) {
    const at = placeOf(each, sentence, from);
    if (at !== undefined && (first === undefined || at < first.at)) first = { words: each, at };
  }
  return first;
}

function placeOf(words: string, sentence: string, from: number): number | undefined {
  for (let at = sentence.indexOf(words, from); at !== -1; at = sentence.indexOf(words, at + 1))
    if (!isInWord(sentence, at, at + words.length)) return at;
  return undefined;
}

/** Whether a stretch of a text is part of a longer word. */
function isInWord(text: string, start: number, end: number): boolean {
  return (
    endsInWord.test(text.slice(Math.max(0, start - 2), start)) || beginsInWord.test(text.slice(end, end + 2))
  );
}

const endsInWord = /[\p{L}\p{N}]$/u;
const beginsInWord = /^[\p{L}\p{N}]/u;

/** `change` applied to everything that `kept`, which looks everywhere, does not match. */
function outside(text: string, kept: RegExp, change: (text: string) => string): string {
  let made = '';
  let from = 0;
  for (const match of text.matchAll(kept)) {
    made += change(text.slice(from, match.index)) + match[0];
    from = match.index + match[0].length;
  }
  return made + change(text.slice(from));
}

function likeCase(found: string, wanted: string): string {
  if (found.length > 1 && found === found.toUpperCase()) return wanted.toUpperCase();
  const [first = ''] = found;
  return first === first.toUpperCase() ? wanted.charAt(0).toUpperCase() + wanted.slice(1) : wanted;
}

/** A text as a pattern that finds just that text. */
export function asPattern(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
}

/** Keys whose texts are printed, in the forms of library, glossary, faults and prose. */
const printed: ReadonlySet<string> = new Set([
  ...['say', 'result', 'remark', 'row', 'title', 'purpose', 'good', 'wrong', 'seen', 'never'],
  ...[
    'hazard',
    'consequence',
    'avoidance',
    'short',
    'again',
    'says',
    'term',
    'meaning',
    'where',
    'causes',
    'do',
  ],
]);

/** Keys under which duties, traits, needs and dimensions stand, never printed. */
const conditions: ReadonlySet<string> = new Set([
  ...['when', 'for', 'of', 'applies-when', 'on', 'each', 'beside', 'with', 'needs', 'dimension'],
]);

/** A form of the library with its printed texts in the dialect; keys, names and conditions stay. */
export function formIn<T>(dialect: Dialect, form: T): T {
  return mapTexts(form, (text, key) => (printed.has(key) ? dialect.say(text) : text)) as T;
}

/** The same for data of which every text is printed, such as a word list, but for what stands under `unprinted`. */
export function textsIn<T>(dialect: Dialect, data: T, unprinted: readonly string[] = []): T {
  return mapTexts(data, (text, key) => (unprinted.includes(key) ? text : dialect.say(text))) as T;
}

function mapTexts(value: unknown, change: (text: string, key: string) => string, key = ''): unknown {
  if (typeof value === 'string') return change(value, key);
  if (Array.isArray(value)) return value.map((each) => mapTexts(each, change, key));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([name, each]) => [
      name,
      conditions.has(name) ? each : mapTexts(each, change, name),
    ]),
  );
}
