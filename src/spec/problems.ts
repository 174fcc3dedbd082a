/**
 * From what the schema found wrong to problems a keeper can mend, each at its line.
 */
import * as z from 'zod';
import type { Diagnostic } from '../diagnostic/diagnostic';
import { nearest } from '../diagnostic/nearest';
import { isMapping, valueAt } from './entry';
import {
  badKey,
  empty,
  type Field,
  fromFacts,
  missing,
  notAChoice,
  outOfBounds,
  unknownKey,
  wrongType,
} from './fieldProblems';
import { metaOf } from './schema/field';
import { fieldsOf, isRequired, schemaAt, visit } from './schemaWalk';
import { type SpecPath, type SpecSource, showPath } from './source';

type Issue = z.core.$ZodIssue;

/** Turn every issue into one or more problems. `root` is the schema that was applied. */
export function problemsOf(issues: readonly Issue[], source: SpecSource, root: z.ZodType): Diagnostic[] {
  const strangers = issues.flatMap((issue) =>
    issue.code === 'unrecognized_keys' ? strangersOf(plainPath(issue), issue.keys, source, root) : [],
  );
  const meant = new Set(strangers.flatMap(({ meantPath }) => (meantPath === undefined ? [] : [meantPath])));
  return [
    ...strangers.map(({ problem }) => problem),
    ...issues
      .filter((issue) => issue.code !== 'unrecognized_keys')
      .flatMap((issue) => describe(issue, source, root, meant)),
  ];
}

/**
 * Keys that the schema passes over in silence, because plain objects cannot hold them: told as keys that cannot be.
 * They would otherwise vanish from the papers without a word.
 */
export function hiddenKeys(source: SpecSource, root: z.ZodType): Diagnostic[] {
  const problems: Diagnostic[] = [];
  visit(root, source.data, [], (schema, value, path) => {
    if (schema instanceof z.ZodRecord && isMapping(value) && Object.hasOwn(value, '__proto__')) {
      problems.push(badKey({ path: [...path, '__proto__'], meta: {}, value: undefined, source }));
    }
  });
  return problems;
}

interface Stranger {
  readonly problem: Diagnostic;
  /** The field the stranger was surely meant to be, which is then not missing as well. */
  readonly meantPath?: string;
}

/** Keys the schema does not know, each with the absent key it was probably meant for. */
function strangersOf(
  path: SpecPath,
  keys: readonly string[],
  source: SpecSource,
  root: z.ZodType,
): Stranger[] {
  const known = namesAt(path, source, root);
  const here = valueAt(source.data, path);
  const absent = known.filter((name) => !isMapping(here) || !Object.hasOwn(here, name));
  return keys.map((name) => {
    const cutText = /\s/.test(name) && valueAt(source.data, [...path, name]) === null;
    const near = cutText ? undefined : nearest(name, absent);
    const above = near === undefined && path.length > 0 ? ownerAbove(name, path, source, root) : undefined;
    const problem = unknownKey([...path, name], name, { near, above, known, cutText }, source);
    return near === undefined ? { problem } : { problem, meantPath: showPath([...path, near]) };
  });
}

/** The nearest mapping further up that has a field of this name: the key was indented too far. */
function ownerAbove(name: string, path: SpecPath, source: SpecSource, root: z.ZodType): SpecPath | undefined {
  for (let length = path.length - 1; length > 0; length -= 1) {
    const up = path.slice(0, length);
    if (namesAt(up, source, root).includes(name)) return up;
  }
  return undefined;
}

function namesAt(path: SpecPath, source: SpecSource, root: z.ZodType): readonly string[] {
  const schema = schemaAt(root, path, source.data);
  return schema === undefined ? [] : fieldsOf(schema).map(([name]) => name);
}

function describe(
  issue: Issue,
  source: SpecSource,
  root: z.ZodType,
  meant: ReadonlySet<string>,
): Diagnostic[] {
  const path = plainPath(issue);
  const schema = schemaAt(root, path, source.data);
  const value = valueAt(source.data, path);
  const field: Field = { path, meta: schema === undefined ? {} : metaOf(schema), value, source };
  if (value === undefined) {
    if (meant.has(showPath(path))) return [];
    const kinds = issue.code === 'invalid_union' ? kindsAt(root, path.slice(0, -1), source.data) : [];
    return [missing(field, schema, kinds)];
  }
  switch (issue.code) {
    case 'invalid_key':
      return [badKey(field)];
    case 'invalid_value':
      return [value === null ? empty(field, schema) : notAChoice(field, issue.values.map(String))];
    case 'invalid_union':
      return [
        value === null
          ? empty(field, schema)
          : notAChoice(field, kindsAt(root, path.slice(0, -1), source.data)),
      ];
    case 'custom':
      return [fromFacts(field, issue.params, issue.message)];
    case 'invalid_type':
      return value === null ? nothingIn(field, schema) : [wrongType(field, issue.expected)];
    default:
      return [outOfBounds(field, issue)];
  }
}

/** What must be there and has nothing in it is told by what is missing in it; anything else as empty. */
function nothingIn(field: Field, schema: z.ZodType | undefined): Diagnostic[] {
  const needed = isRequired(schema)
    ? fieldsOf(schema ?? z.null()).filter(([, each]) => isRequired(each))
    : [];
  if (needed.length === 0) return [empty(field, schema)];
  return needed.map(([name, each]) =>
    missing({ ...field, path: [...field.path, name], meta: metaOf(each), value: undefined }, each, []),
  );
}

function plainPath(issue: Issue): SpecPath {
  return issue.path.filter((part): part is string | number => typeof part !== 'symbol');
}

/** The words that tell the members of a union apart. */
function kindsAt(root: z.ZodType, path: SpecPath, data: unknown): readonly string[] {
  const union = schemaAt(root, path, data, { stopAtUnion: true });
  if (!(union instanceof z.ZodDiscriminatedUnion)) return [];
  return union.options.flatMap((option) => {
    const kind: unknown = option instanceof z.ZodObject ? option.shape.kind : undefined;
    return kind instanceof z.ZodLiteral ? [String(kind.value)] : [];
  });
}
