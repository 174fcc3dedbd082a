/**
 * Names: every reference names a part of the right kind. Works on plain data, so that a field that cannot be read
 * elsewhere does not hide a name that leads nowhere.
 */
import type { Diagnostic } from '../diagnostic/diagnostic';
import { nearest } from '../diagnostic/nearest';
import { entryOf, isMapping } from './entry';
import { contentNames, kindsAndSections, namedThings, outsideNames, singleParts } from './named';
import { carSpecSchema } from './schema/carSpec';
import { metaOf, type PartKind } from './schema/field';
import { fieldsOf, isRequired, visit } from './schemaWalk';
import { type SpecPath, type SpecSource, showPath } from './source';

/** What can be named, and how surely it is known. */
interface Known {
  readonly kinds: ReadonlyMap<string, ReadonlySet<PartKind>>;
  /** Kinds whose section is missing or cannot be read: their names cannot be told from misspelt ones. */
  readonly unsure: ReadonlySet<PartKind>;
  /** Keys by the names, and the tags, that the papers print. */
  readonly called: ReadonlyMap<string, string>;
  /** Keys found in sections that the spec does not know; they may be anything. */
  readonly astray: ReadonlySet<string>;
}

/** Check every reference. `libraryLiquids` are the keys of the liquids that come with the program. */
export function checkReferences(source: SpecSource, libraryLiquids: readonly string[]): Diagnostic[] {
  const known = whatIsKnown(source.data, libraryLiquids);
  const able = ableIn(known);
  const problems: Diagnostic[] = [];
  visit(carSpecSchema, source.data, [], (schema, value, path) => {
    const wanted = metaOf(schema).names;
    if (wanted === undefined || typeof value !== 'string') return;
    const is = known.kinds.get(value);
    if (is === undefined) {
      if (known.astray.has(value) || wanted.some((kind) => known.unsure.has(kind))) return;
      problems.push(unknownName(value, wanted, { names: able(wanted), called: known.called }, path, source));
    } else if (!wanted.some((kind) => is.has(kind))) {
      problems.push(wrongPart(value, [...is], wanted, able(wanted), path, source));
    }
  });
  return problems;
}

function whatIsKnown(data: unknown, libraryLiquids: readonly string[]): Known {
  const kinds = new Map<string, Set<PartKind>>();
  const add = (id: string, kind: PartKind) => kinds.set(id, (kinds.get(id) ?? new Set()).add(kind));
  const called = new Map<string, string>();
  for (const { id, kind, name, tag } of namedThings(data)) {
    add(id, kind);
    for (const words of [name, tag]) if (words !== undefined) called.set(asKey(words), id);
  }
  for (const id of outsideNames) add(id, 'outside');
  for (const id of contentNames) add(id, 'content');
  for (const id of libraryLiquids) add(id, 'liquid');
  return { kinds, called, ...doubts(isMapping(data) ? data : {}) };
}

/** A printed name as somebody would write it for a key. */
function asKey(words: string): string {
  return words.toLowerCase().replace(/[\s-]+/g, '-');
}

/** Which kinds cannot be told, because their section is misspelt, missing or of another form. */
function doubts(data: Readonly<Record<string, unknown>>): Pick<Known, 'unsure' | 'astray'> {
  const sections = [...kindsAndSections, ...singleParts.map((part) => [part, part] as const)];
  const fields = new Map(fieldsOf(carSpecSchema));
  const strangers = Object.keys(data).filter((name) => !fields.has(name));
  const meant = new Set(strangers.map((name) => nearest(name, fields.keys())));
  const unsure = sections.filter(([, section]) => {
    const value = entryOf(data, section);
    if (value === undefined) return meant.has(section) || isRequired(fields.get(section));
    return !isMapping(value);
  });
  const astray = strangers.flatMap((name) => {
    const value = entryOf(data, name);
    return isMapping(value) ? Object.keys(value) : [];
  });
  return { unsure: new Set(unsure.map(([kind]) => kind)), astray: new Set(astray) };
}

/** The names a reference may stand for. Fields of one kind want the same list, which is made once. */
function ableIn(known: Known): (wanted: readonly PartKind[]) => readonly string[] {
  const made = new Map<readonly PartKind[], readonly string[]>();
  return (wanted) => {
    const list =
      made.get(wanted) ??
      [...known.kinds].filter(([, is]) => wanted.some((kind) => is.has(kind))).map(([id]) => id);
    made.set(wanted, list);
    return list;
  };
}

function unknownName(
  value: string,
  wanted: readonly PartKind[],
  { names, called }: { readonly names: readonly string[]; readonly called: Known['called'] },
  path: SpecPath,
  source: SpecSource,
): Diagnostic {
  const facts = {
    code: 'spec-unknown-name',
    severity: 'error',
    at: source.spotOfValue(path),
    found: `\`${value}\``,
  } as const;
  const printed = called.get(asKey(value));
  if (printed !== undefined && names.includes(printed))
    return {
      ...facts,
      message: `\`${value}\` is what the papers call \`${printed}\`, and not its key`,
      expected: `\`${printed}\``,
      mend: `write \`${printed}\``,
    };
  const near = nearest(value, names);
  return {
    ...facts,
    message: `nothing in the spec is called \`${value}\``,
    expected: near === undefined ? oneOfKinds(wanted) : `\`${near}\``,
    mend:
      (near === undefined
        ? `${adding(value, wanted)}, or name one that is there: ${few(names)}`
        : `write \`${near}\`, or add \`${value}\``) +
      (typeof path.at(-1) === 'number' ? '; if the car has none, take it out of this list' : ''),
  };
}

/** What adds a name. Liquids come with the program, so that it is not plain where another would stand. */
function adding(value: string, wanted: readonly PartKind[]): string {
  return wanted.includes('liquid')
    ? `describe \`${value}\` under \`liquids\` if it is a liquid (burners of solid fuel are not known here)`
    : `add \`${value}\``;
}

function wrongPart(
  value: string,
  is: readonly PartKind[],
  wanted: readonly PartKind[],
  names: readonly string[],
  path: SpecPath,
  source: SpecSource,
): Diagnostic {
  return {
    code: 'spec-wrong-part',
    severity: 'error',
    at: source.spotOfValue(path),
    message: `\`${value}\` is ${either(is.map(withArticle))}, which cannot stand in \`${showPath(path)}\``,
    found: `\`${value}\``,
    expected: oneOfKinds(wanted),
    mend: `name one of: ${few(names)}`,
  };
}

/** Names shown before the rest is only counted. */
const shownNames = 12;

function few(words: readonly string[]): string {
  if (words.length === 0) return 'there is none yet';
  const list = words
    .slice(0, shownNames)
    .map((word) => `\`${word}\``)
    .join(', ');
  return words.length > shownNames ? `${list} and ${words.length - shownNames} more` : list;
}

/** What a reference may name, in words: `the key of a tank or a burner, or `open-air``. */
export function oneOfKinds(kinds: readonly PartKind[]): string {
  const keyed = kinds.filter((kind) => kind !== 'outside' && kind !== 'content').map(withArticle);
  const fixed = [
    ...(kinds.includes('outside') ? outsideNames : []),
    ...(kinds.includes('content') ? contentNames : []),
  ];
  return either([
    ...(keyed.length === 0 ? [] : [`the key of ${either(keyed)}`]),
    ...fixed.map((word) => `\`${word}\``),
  ]);
}

function withArticle(kind: PartKind): string {
  switch (kind) {
    case 'outside':
      return 'an end of lines';
    case 'content':
      return 'a content of tanks';
    case 'equipment':
      return 'a piece of equipment';
    default:
      return `${/^[aeiou]/.test(kind) ? 'an' : 'a'} ${kind}`;
  }
}

function either(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} or ${words.at(-1) ?? ''}`;
}
