/** The problems a single field can have, in words. */
import * as z from 'zod';
import type { Diagnostic } from '../diagnostic/diagnostic';
import { nearest } from '../diagnostic/nearest';
import { entryOf } from './entry';
import type { CheckFacts, FieldMeta } from './schema/field';
import { asClause, kindOf, oneOfWords, shown } from './shown';
import { type SpecPath, type SpecSource, showPath } from './source';

/** A field of the file, as the problem writer needs it. */
export interface Field {
  readonly path: SpecPath;
  readonly meta: FieldMeta;
  /** Plain data at the path. */
  readonly value: unknown;
  readonly source: SpecSource;
}

/** Something required is not there. Told at what it should stand in. `choices` are its words, if it has some. */
export function missing(
  { path, meta, source }: Field,
  schema: z.ZodType | undefined,
  choices: readonly string[] = [],
): Diagnostic {
  const name = String(path.at(-1) ?? '');
  const described = meta.description === undefined ? `a value for \`${name}\`` : asClause(meta.description);
  return {
    code: 'spec-missing',
    severity: 'error',
    at: source.spotOfKey(path),
    message: `\`${showPath(path)}\` is missing`,
    expected: choices.length === 0 ? described : oneOfWords(choices),
    mend: `add \`${name}\`${missingHint(name, meta, schema)}`,
  };
}

function missingHint(name: string, { sample }: FieldMeta, schema: z.ZodType | undefined): string {
  if (sample !== undefined) return `, such as \`${name}: ${sample}\``;
  return schema instanceof z.ZodRecord ? `, or \`${name}: {}\` if there is none` : '';
}

/** What may be said of a key nobody knows. */
export interface StrangerHints {
  /** The absent key it was probably meant for. */
  readonly near: string | undefined;
  /** A mapping further up that has a field of this name. */
  readonly above: SpecPath | undefined;
  readonly known: readonly string[];
  /** Nothing is said of it, and it is no key: the rest of a text that a comma cut in two. */
  readonly cutText: boolean;
}

/** A key that the schema does not know. */
export function unknownKey(
  path: SpecPath,
  name: string,
  hints: StrangerHints,
  source: SpecSource,
): Diagnostic {
  const { near, above, known, cutText } = hints;
  if (cutText) return cutByComma(path, name, source);
  return {
    code: 'spec-unknown-key',
    severity: 'error',
    at: source.spotOfKey(path),
    message: `there is no key \`${name}\` here`,
    found: `\`${name}\``,
    expected: near === undefined ? oneOfWords(known) : `\`${near}\``,
    mend: strangerMend(near, above),
  };
}

/** What stands behind a comma in braces, where a text was meant to go on. */
function cutByComma(path: SpecPath, name: string, source: SpecSource): Diagnostic {
  return {
    code: 'spec-unknown-key',
    severity: 'error',
    at: source.spotOfKey(path),
    message: 'the text before this is cut off, since in braces a comma ends it',
    found: `\`${name}\` by itself`,
    expected: 'the whole text in quotes',
    mend: `put the text in quotes, from its beginning as far as \`${name}\``,
  };
}

function strangerMend(near: string | undefined, above: SpecPath | undefined): string {
  if (near !== undefined) return `write \`${near}\``;
  if (above !== undefined) return `indent it less, so that it stands in \`${showPath(above)}\``;
  return 'take it out, or put it where it belongs';
}

/** A key of a keyed list that is not of the form a key must have. */
export function badKey({ path, source }: Field): Diagnostic {
  const name = String(path.at(-1));
  const quoted = name === '' ? 'an empty text' : `\`${name}\``;
  return {
    code: 'spec-key',
    severity: 'error',
    at: source.spotOfKey(path),
    message: `${quoted} cannot be a key`,
    found: quoted,
    expected: 'lower-case words joined by hyphens, such as `pilot-valve`',
    mend: 'rename it, here and wherever it is named',
  };
}

/** Words for yes and no that are not ours. */
const sameMeaning: Readonly<Record<string, string>> = { true: 'yes', false: 'no' };

/** A word that is not one of the field's choices; also another version of the format. */
export function notAChoice({ path, value, source }: Field, choices: readonly string[]): Diagnostic {
  const written = source.written(path);
  const near = written === undefined ? undefined : nearest(entryOf(sameMeaning, written) ?? written, choices);
  const version = path.length === 1 && path[0] === 'kettlebook';
  return {
    code: version ? 'spec-version' : 'spec-not-a-choice',
    severity: 'error',
    at: source.spotOfValue(path),
    message: version
      ? 'this program reads version 1 of the spec format'
      : `\`${showPath(path)}\` is not one of its choices`,
    found: shown(written, value),
    expected: oneOfWords(choices),
    mend: choiceMend(version ? written : undefined, near, choices.includes(written ?? '')),
  };
}

function choiceMend(version: string | undefined, near: string | undefined, rightButQuoted: boolean): string {
  if (rightButQuoted) return 'write it without quotes';
  if (version !== undefined && Number(version) > 1)
    return 'read it with the newer program it was written for: what this one does not know it would leave out of the papers';
  if (version !== undefined) return 'write `kettlebook: 1`, and see whether the rest of the file still fits';
  return near === undefined ? 'choose one of them' : `write \`${near}\``;
}

/** A custom check's own words. */
export function fromFacts(
  field: Field,
  params: Record<string, unknown> | undefined,
  message: string,
): Diagnostic {
  const { path, value, source } = field;
  const given = params?.facts;
  const facts = isFacts(given) ? given : undefined;
  return {
    code: facts?.code ?? 'spec-value',
    severity: 'error',
    at: source.spotOfValue(path),
    message: `\`${showPath(path)}\` cannot be used as it stands`,
    found: shown(source.written(path) ?? facts?.found, value),
    expected: facts?.expected ?? message,
    mend: facts?.mend ?? 'correct the value',
  };
}

function isFacts(value: unknown): value is CheckFacts {
  return typeof value === 'object' && value !== null && 'code' in value && 'mend' in value;
}

/** A key with nothing after its colon. */
export function empty({ path, meta, source }: Field, schema: z.ZodType | undefined): Diagnostic {
  const sample = meta.sample === undefined ? '' : `, such as \`${meta.sample}\``;
  const many = schema instanceof z.ZodRecord || schema instanceof z.ZodArray;
  return {
    code: 'spec-wrong-type',
    severity: 'error',
    at: source.spotOfKey(path),
    message: `\`${showPath(path)}\` is empty`,
    found: 'nothing after the colon',
    expected: `${meta.description === undefined ? 'a value' : asClause(meta.description)}${sample}`,
    mend: many
      ? `write what belongs to it, or \`${schema instanceof z.ZodArray ? '[]' : '{}'}\` if there is none`
      : 'write a value after the colon, or take the key out; text after ` #` is a comment',
  };
}

const typeWords: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: '`true` or `false`',
  array: 'a list',
  object: 'keys and values',
  record: 'keys and values',
};

/** A value of the wrong kind. */
export function wrongType({ path, meta, value, source }: Field, expected: string): Diagnostic {
  const written = source.written(path);
  const wanted =
    meta.dimension === undefined ? (typeWords[expected] ?? expected) : 'one amount with its unit';
  const sample = meta.sample === undefined || expected === 'boolean' ? '' : `, such as \`${meta.sample}\``;
  return {
    code: 'spec-wrong-type',
    severity: 'error',
    at: source.spotOfValue(path),
    message: `\`${showPath(path)}\` is ${kindOf(value)}; it should be ${wanted}`,
    found: shown(written, value),
    expected: `${wanted}${sample}`,
    mend: typeMend(expected, value, written),
  };
}

function typeMend(expected: string, value: unknown, written: string | undefined): string {
  switch (expected) {
    case 'boolean':
      return booleanMend(written ?? '');
    case 'string':
      return typeof value === 'object' ? 'write one value here' : `put it in quotes: \`"${written ?? ''}"\``;
    case 'array':
      return 'write it as a list: `[one, another]`, or one to a line after `- `';
    case 'number':
    case 'int':
      return 'write a plain number, without quotes or unit';
    default:
      return 'indent the keys that belong to it under it';
  }
}

function booleanMend(written: string): string {
  if (/^(?:no|off|n)$/i.test(written)) return 'write `false`';
  return /^(?:yes|on|y)$/i.test(written) ? 'write `true`' : 'write `true` or `false`';
}

/** A value outside its bounds, or text not of the form it should have. */
export function outOfBounds({ path, meta, value, source }: Field, issue: z.core.$ZodIssue): Diagnostic {
  const sample = meta.sample === undefined ? '' : `, such as \`${meta.sample}\``;
  return {
    code: 'spec-value',
    severity: 'error',
    at: source.spotOfValue(path),
    message: `\`${showPath(path)}\` is not as it should be`,
    found: shown(source.written(path), value),
    expected: `${bounds(issue)}${sample}`,
    mend: boundsMend(issue, meta, value),
  };
}

function boundsMend(issue: z.core.$ZodIssue, { description }: Field['meta'], value: unknown): string {
  if (issue.code === 'invalid_format' && issue.format === 'date')
    return /^\d{4}-\d{2}-\d{2}$/.test(String(value))
      ? 'write a day that is in the calendar'
      : 'write the year first, then month and day, each of two figures, with hyphens between';
  return description === undefined ? 'correct the value' : `give: ${asClause(description)}`;
}

function bounds(issue: z.core.$ZodIssue): string {
  if (issue.code === 'too_big') return `at most ${issue.maximum}`;
  if (issue.code === 'invalid_format' && issue.format === 'date') return 'a date as year-month-day';
  if (issue.code !== 'too_small') return 'text of the right form';
  if (issue.origin === 'array') return `at least ${issue.minimum} in the list`;
  if (issue.origin === 'string') return 'some words';
  return `${issue.inclusive ? 'at least' : 'more than'} ${issue.minimum}`;
}
