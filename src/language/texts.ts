/**
 * What another language says for each text of the library and of the templates.
 *
 * A text is found by its English words as they stand in their file, so that German can never stand beside English that
 * has changed since: once the English reads otherwise, the language lacks the text until somebody has looked at it again.
 */
import * as z from 'zod';
import { bad, type Diagnostic, good, type Outcome } from '../diagnostic/diagnostic';
import { problemsOf } from '../spec/problems';
import { readSource } from '../spec/source';
import type { Dialect } from './dialect';
import { lacking } from './lacking';
import { segmentsIn } from './segments';
import { wrongValues } from './wrongValues';

const text = z.string().min(1);

const textsForm = z.strictObject({
  texts: z.array(z.strictObject({ english: text, say: text })).min(1),
});

/** One file of texts, as it stands under the folder of its language. */
export interface TextsFile {
  readonly file: string;
  readonly text: string;
}

/** What a language says, by the English. */
export type Said = ReadonlyMap<string, string>;

/** Read the texts of a language. All faults of all its files are told at once. */
export function readTexts(files: readonly TextsFile[]): Outcome<Said> {
  const said = new Map<string, string>();
  const problems: Diagnostic[] = [];
  for (const { file, text: yaml } of files) {
    const source = readSource(yaml, file);
    if (!source.ok) {
      problems.push(...source.problems);
      continue;
    }
    const parsed = textsForm.safeParse(source.value.data);
    if (!parsed.success) {
      problems.push(...problemsOf(parsed.error.issues, source.value, textsForm));
      continue;
    }
    for (const [at, { english, say }] of parsed.data.texts.entries()) {
      const key = evenly(english);
      const fault = faultOf(key, say, said);
      if (fault === undefined) said.set(key, evenly(say));
      else problems.push(wrongValues(source.value, ['texts', at, 'say'], fault, say));
    }
  }
  return problems.length > 0 ? bad(problems) : good(said);
}

/** What is wrong with what is said for a text; nothing if it may stand. */
function faultOf(english: string, say: string, said: Said): string | undefined {
  if (said.has(english)) return 'this English text is said twice; one text is said in one way';
  const [wanted, given] = [valuesIn(english), valuesIn(say)];
  const gone = wanted.filter((value) => !given.includes(value));
  const strange = given.filter((value) => !wanted.includes(value));
  const shown = (values: readonly string[]) => values.map((value) => `\`{{${value}}}\``).join(', ');
  if (gone.length > 0) return `${shown(gone)} of the English text is not put in`;
  if (strange.length > 0) return `${shown(strange)} is not in the English text`;
  if (numbersIn(english) !== numbersIn(say)) return 'it does not hold the same numbers as the English text';
  if (tagsIn(english) !== tagsIn(say)) return 'it does not hold the same tags as the English text';
  return undefined;
}

/** What stands in double braces, each once: values, conditions and phrases; not where a condition ends. */
function valuesIn(words: string): readonly string[] {
  const found = [...words.matchAll(/\{\{~?([^{}]*?)~?\}\}/g)].map(([, inner = '']) =>
    inner.trim().replace(/^#(?:if|unless)\s+/, ''),
  );
  return [...new Set(found.filter((inner) => inner !== 'else' && !inner.startsWith('/')))].sort();
}

function numbersIn(words: string): string {
  return (words.replace(/\{\{.*?\}\}/g, '').match(/\d+/g) ?? []).sort().join(' ');
}

function tagsIn(words: string): string {
  return (words.match(/<[^>]*>/g) ?? []).sort().join('');
}

/** White space is one blank, as it is in print. */
function evenly(words: string): string {
  return words.replace(/[ \t\r\n]+/g, ' ').trim();
}

/** Whether a text has words at all, beside values, tags and codes such as the number of a sign. */
function hasWords(words: string): boolean {
  const bare = words
    .replace(/\{\{.*?\}\}|<[^>]*>/gs, ' ')
    .replace(/&[a-z]+;/g, ' ')
    .trim();
  return /\p{L}/u.test(bare) && !/^[A-Z]\d+$/.test(bare);
}

/** A language that says those texts, and marks every other as lacking. */
export function saying(said: Said): Dialect {
  const say = (words: string): string =>
    hasWords(words) ? (said.get(evenly(words)) ?? lacking(words)) : words;
  return {
    say,
    sayTemplate: (template) =>
      segmentsIn(template)
        .map(({ words, isText }) => (isText ? say(words) : words))
        .join(''),
  };
}
