/**
 * Names: every part has a key, a name and a tag of its own, and every reference names a part of the right kind.
 */
import type { Diagnostic } from '../diagnostic/diagnostic';
import { nearest } from '../diagnostic/nearest';
import { visit } from './schemaWalk';
import type { CarSpec } from './schema/carSpec';
import { carSpecSchema } from './schema/carSpec';
import { metaOf, type PartKind } from './schema/field';
import { type SpecPath, type SpecSource, showPath } from './source';

/** Ends of lines and contents of tanks that every car has, beside what the spec lists. */
export const outsideNames = ['open-air', 'ground', 'water', 'cylinder-oil'] as const;

/** Which section of the spec lists which kind of part. */
export const sectionsByKind = {
  place: 'places', liquid: 'liquids', fuel: 'fuels', tank: 'tanks', equipment: 'equipment', burner: 'burners', vaporizer: 'vaporizers', pump: 'pumps',
  valve: 'valves', device: 'devices', gauge: 'gauges', lock: 'locks', control: 'controls', fitting: 'fittings',
} as const satisfies Partial<Record<PartKind, keyof CarSpec>>;

/** Sections that describe one part each; their key is the part's key. */
export const singleParts = ['boiler', 'superheater', 'feed-heater', 'condenser', 'engine'] as const satisfies readonly (PartKind & keyof CarSpec)[];

/** One thing with a key. */
export interface Named {
  readonly id: string;
  readonly kind: PartKind;
  readonly path: SpecPath;
  readonly name?: string;
  readonly tag?: string;
}

/** Everything in the spec that can be named, in the order of the file's sections. */
export function namedThings(spec: CarSpec): readonly Named[] {
  const listed = Object.entries(sectionsByKind).flatMap(([kind, section]) =>
    Object.entries(spec[section] ?? {}).map(([id, entry]: [string, { name?: string; tag?: string | undefined }]) => ({
      id, kind: kind as PartKind, path: [section, id],
      ...(entry.name === undefined ? {} : { name: entry.name }),
      ...(entry.tag === undefined ? {} : { tag: entry.tag }),
    })));
  const single = singleParts.flatMap((kind) => {
    const entry = spec[kind];
    return entry === undefined ? [] : [{ id: kind, kind, path: [kind], name: entry.name }];
  });
  return [...single, ...listed];
}

/** Check that no two things share a key, and no two parts a name or a tag. Places and fuels may share a name with nothing either. */
export function checkNames(spec: CarSpec, source: SpecSource): Diagnostic[] {
  const things = namedThings(spec);
  const twice = (what: 'key' | 'name' | 'tag', pick: (thing: Named) => string | undefined, at: (thing: Named) => SpecPath): Diagnostic[] => {
    const first = new Map<string, Named>();
    return things.flatMap((thing) => {
      const word = pick(thing)?.toLowerCase();
      if (word === undefined) return [];
      const other = first.get(word);
      if (other === undefined) {
        first.set(word, thing);
        return [];
      }
      const spot = source.spotOfKey(other.path);
      return [{
        code: 'spec-name-twice' as const, severity: 'error' as const, at: source.spotOfValue(at(thing)),
        message: `the ${what} \`${pick(thing) ?? ''}\` is used twice`, found: `\`${showPath(thing.path)}\` and \`${showPath(other.path)}\` (line ${spot.line})`,
        expected: `a ${what} of its own for each`, mend: `give one of them another ${what}`,
      }];
    });
  };
  return [
    ...twice('key', (thing) => thing.id, (thing) => thing.path),
    ...twice('name', (thing) => thing.name, (thing) => [...thing.path, 'name']),
    ...twice('tag', (thing) => thing.tag, (thing) => [...thing.path, 'tag']),
  ];
}

/** Check every reference. `libraryLiquids` are the keys of the liquids that come with the program. */
export function checkReferences(spec: CarSpec, data: unknown, source: SpecSource, libraryLiquids: readonly string[]): Diagnostic[] {
  const things = new Map<string, PartKind>(namedThings(spec).map((thing) => [thing.id, thing.kind]));
  for (const id of outsideNames) things.set(id, 'outside');
  for (const id of libraryLiquids) if (!things.has(id)) things.set(id, 'liquid');
  const problems: Diagnostic[] = [];
  visit(carSpecSchema, data, [], (schema, value, path) => {
    const kinds = metaOf(schema).names;
    if (kinds === undefined || typeof value !== 'string') return;
    const kind = things.get(value);
    if (kind !== undefined && kinds.includes(kind)) return;
    const able = [...things].filter(([, each]) => kinds.includes(each)).map(([id]) => id);
    problems.push(kind === undefined ? unknownName(value, kinds, able, path, source) : wrongPart(value, kind, kinds, able, path, source));
  });
  return problems;
}

function unknownName(value: string, kinds: readonly PartKind[], able: readonly string[], path: SpecPath, source: SpecSource): Diagnostic {
  const near = nearest(value, able);
  return {
    code: 'spec-unknown-name', severity: 'error', at: source.spotOfValue(path),
    message: `nothing in the spec is called \`${value}\``, found: `\`${value}\``,
    expected: near === undefined ? `the key of ${oneOf(kinds)}` : `\`${near}\``,
    mend: near === undefined ? `add \`${value}\`, or name one that is there: ${few(able)}` : `write \`${near}\`, or add \`${value}\``,
  };
}

function wrongPart(value: string, kind: PartKind, kinds: readonly PartKind[], able: readonly string[], path: SpecPath, source: SpecSource): Diagnostic {
  return {
    code: 'spec-wrong-part', severity: 'error', at: source.spotOfValue(path),
    message: `\`${value}\` is ${article(kind)}; \`${showPath(path)}\` names ${oneOf(kinds)}`, found: `\`${value}\``,
    expected: `the key of ${oneOf(kinds)}`, mend: `name one of: ${few(able)}`,
  };
}

function few(words: readonly string[]): string {
  const shown = words.slice(0, 12).map((word) => `\`${word}\``).join(', ');
  return words.length === 0 ? 'there is none yet' : words.length > 12 ? `${shown} and ${words.length - 12} more` : shown;
}

function article(kind: PartKind): string {
  return kind === 'outside' || kind === 'equipment' ? kind : `${/^[aeiou]/.test(kind) ? 'an' : 'a'} ${kind}`;
}

function oneOf(kinds: readonly PartKind[]): string {
  const shown = kinds.map(article);
  return shown.length < 2 ? (shown[0] ?? '') : `${shown.slice(0, -1).join(', ')} or ${shown.at(-1) ?? ''}`;
}
