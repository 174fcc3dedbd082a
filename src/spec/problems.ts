/**
 * From what the schema found wrong to problems a keeper can mend, each at its line.
 */
import type { z } from 'zod';
import type { Diagnostic } from '../diagnostic/diagnostic';
import { nearest } from '../diagnostic/nearest';
import { schemaAt } from './schemaWalk';
import { type CheckFacts, type FieldMeta, metaOf } from './schema/field';
import { type SpecPath, type SpecSource, showPath } from './source';

type Issue = z.core.$ZodIssue;

/** Turn every issue into one or more problems. `root` is the schema that was applied. */
export function problemsOf(issues: readonly Issue[], source: SpecSource, root: z.ZodType): Diagnostic[] {
  return issues.flatMap((issue) => describe(issue, source, root));
}

function describe(issue: Issue, source: SpecSource, root: z.ZodType): Diagnostic[] {
  const path = issue.path.filter((part): part is string | number => typeof part !== 'symbol');
  const schema = schemaAt(root, path, source.data);
  const meta: FieldMeta = schema === undefined ? {} : metaOf(schema);
  const value = valueAt(source.data, path);
  if (value === undefined && issue.code !== 'unrecognized_keys') return [missing(path, meta, source)];
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((name) => unknownKey([...path, name], name, keysOf(root, path, source.data), source));
    case 'invalid_key':
      return [badKey(path, source)];
    case 'invalid_value':
      return [notAChoice(path, issue.values.map(String), source)];
    case 'custom':
      return [fromFacts(path, issue.params, issue.message, source)];
    case 'invalid_type':
      return [wrongType(path, issue.expected, value, meta, source)];
    case 'invalid_union':
      return [wrongKind(path, root, source)];
    default:
      return [outOfBounds(path, issue, meta, source)];
  }
}

function missing(path: SpecPath, meta: FieldMeta, source: SpecSource): Diagnostic {
  const name = String(path.at(-1) ?? '');
  const sample = meta.sample === undefined ? '' : `, such as \`${name}: ${meta.sample}\``;
  return {
    code: 'spec-missing', severity: 'error', at: source.spotOfKey(path),
    message: `\`${showPath(path)}\` is missing`,
    expected: meta.description === undefined ? `a value for \`${name}\`` : lowerFirst(meta.description),
    mend: `add \`${name}\`${sample}`,
  };
}

function unknownKey(path: SpecPath, name: string, known: readonly string[], source: SpecSource): Diagnostic {
  const near = nearest(name, known);
  return {
    code: 'spec-unknown-key', severity: 'error', at: source.spotOfKey(path),
    message: `there is no key \`${name}\` here`, found: `\`${name}\``,
    expected: near === undefined ? `one of ${known.map((each) => `\`${each}\``).join(', ')}` : `\`${near}\``,
    mend: near === undefined ? 'take it out, or put it where it belongs' : `write \`${near}\``,
  };
}

function badKey(path: SpecPath, source: SpecSource): Diagnostic {
  return {
    code: 'spec-key', severity: 'error', at: source.spotOfKey(path),
    message: `\`${String(path.at(-1))}\` cannot be a key`, found: `\`${String(path.at(-1))}\``,
    expected: 'lower-case words joined by hyphens, such as `pilot-valve`', mend: 'rename it, here and wherever it is named',
  };
}

function notAChoice(path: SpecPath, choices: readonly string[], source: SpecSource): Diagnostic {
  const written = source.written(path);
  const near = written === undefined ? undefined : nearest(written, choices);
  const version = path.length === 1 && path[0] === 'kettlebook';
  return {
    code: version ? 'spec-version' : 'spec-not-a-choice', severity: 'error', at: source.spotOfValue(path),
    message: version ? 'this program reads version 1 of the spec format' : `\`${showPath(path)}\` is not one of its choices`,
    found: shown(written, valueAt(source.data, path)),
    expected: choices.length === 1 ? `\`${choices[0]}\`` : `one of ${choices.map((each) => `\`${each}\``).join(', ')}`,
    mend: near === undefined ? 'choose one of them' : `write \`${near}\``,
  };
}

function fromFacts(path: SpecPath, params: Record<string, unknown> | undefined, message: string, source: SpecSource): Diagnostic {
  const facts = isFacts(params?.['facts']) ? params['facts'] : undefined;
  return {
    code: facts?.code ?? 'spec-value', severity: 'error', at: source.spotOfValue(path),
    message: `\`${showPath(path)}\` cannot be used as it stands`,
    found: facts?.found ?? shown(source.written(path), valueAt(source.data, path)),
    expected: facts?.expected ?? message,
    mend: facts?.mend ?? 'correct the value',
  };
}

function isFacts(value: unknown): value is CheckFacts {
  return typeof value === 'object' && value !== null && 'code' in value && 'mend' in value;
}

const typeWords: Readonly<Record<string, string>> = {
  string: 'text', number: 'a number', int: 'a whole number', boolean: '`true` or `false`', array: 'a list', object: 'keys and values', record: 'keys and values',
};

function wrongType(path: SpecPath, expected: string, value: unknown, meta: FieldMeta, source: SpecSource): Diagnostic {
  const written = source.written(path);
  const sample = meta.sample === undefined ? '' : `, such as \`${meta.sample}\``;
  return {
    code: 'spec-wrong-type', severity: 'error', at: source.spotOfValue(path),
    message: `\`${showPath(path)}\` is ${kindOf(value)}; ${typeWords[expected] ?? expected} is needed`,
    found: shown(written, value), expected: `${typeWords[expected] ?? expected}${sample}`,
    mend: typeMend(expected, value, written),
  };
}

function typeMend(expected: string, value: unknown, written: string | undefined): string {
  if (value === null) return 'write a value after the colon, or take the key out';
  if (expected === 'boolean') return /^(no|off|n)$/i.test(written ?? '') ? 'write `false`' : 'write `true` or `false`';
  if (expected === 'string') return typeof value === 'object' ? 'write one text here' : `put it in quotes: \`"${written ?? ''}"\``;
  if (expected === 'array') return 'write it as a list: `[one, another]`, or one to a line after `- `';
  if (expected === 'number' || expected === 'int') return 'write a plain number, without quotes or unit';
  return 'indent the keys that belong to it under it';
}

function wrongKind(path: SpecPath, root: z.ZodType, source: SpecSource): Diagnostic {
  const kinds = kindsAt(root, path, source.data);
  const written = source.written([...path, 'kind']);
  const near = written === undefined ? undefined : nearest(written, kinds);
  return {
    code: 'spec-not-a-choice', severity: 'error', at: source.spotOfValue([...path, 'kind']),
    message: `\`${showPath(path)}\` needs a \`kind\` that is known`, found: shown(written, undefined),
    expected: `one of ${kinds.map((each) => `\`${each}\``).join(', ')}`,
    mend: near === undefined ? 'choose one of them' : `write \`${near}\``,
  };
}

function outOfBounds(path: SpecPath, issue: Issue, meta: FieldMeta, source: SpecSource): Diagnostic {
  const sample = meta.sample === undefined ? '' : ` Such as \`${meta.sample}\`.`;
  return {
    code: 'spec-value', severity: 'error', at: source.spotOfValue(path),
    message: `\`${showPath(path)}\` is not as it should be`,
    found: shown(source.written(path), valueAt(source.data, path)),
    expected: `${bounds(issue)}${sample.length > 0 ? `, such as \`${meta.sample ?? ''}\`` : ''}`,
    mend: meta.description === undefined ? 'correct the value' : `give: ${lowerFirst(meta.description)}`,
  };
}

function bounds(issue: Issue): string {
  if (issue.code === 'too_small') return issue.origin === 'array' ? `at least ${issue.minimum} in the list` : issue.origin === 'string' ? 'some words' : `${issue.inclusive ? 'at least' : 'more than'} ${issue.minimum}`;
  if (issue.code === 'too_big') return `at most ${issue.maximum}`;
  if (issue.code === 'invalid_format' && issue.format === 'date') return 'a date as year-month-day';
  return 'text of the right form';
}

function kindOf(value: unknown): string {
  if (value === null) return 'empty';
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object') return 'keys and values';
  if (typeof value === 'string') return 'text';
  return typeof value === 'boolean' ? '`true` or `false`' : 'a number';
}

function shown(written: string | undefined, value: unknown): string {
  if (written === undefined) return kindOf(value);
  const short = written.length > 60 ? `${written.slice(0, 57)}…` : written;
  return short === '' ? 'nothing' : `\`${short}\``;
}

function valueAt(data: unknown, path: SpecPath): unknown {
  let here = data;
  for (const part of path) {
    if (typeof here !== 'object' || here === null) return undefined;
    here = Object.getOwnPropertyDescriptor(here, part)?.value;
  }
  return here;
}

function keysOf(root: z.ZodType, path: SpecPath, data: unknown): readonly string[] {
  const schema = schemaAt(root, path, data);
  return schema !== undefined && 'shape' in schema ? Object.keys(schema.shape as object) : [];
}

function kindsAt(root: z.ZodType, path: SpecPath, data: unknown): readonly string[] {
  const schema = schemaAt(root, path, data, { stopAtUnion: true });
  if (schema === undefined || !('options' in schema) || !Array.isArray(schema.options)) return [];
  return schema.options.flatMap((option: { shape?: { kind?: { value?: unknown } } }) => (option.shape?.kind?.value === undefined ? [] : [String(option.shape.kind.value)]));
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1).replace(/\.$/, '');
}
