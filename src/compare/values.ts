/** Parts and values that are not what they were: one walk down both specs, side by side. */
import type * as z from 'zod';
import { kindsAndSections, singleParts } from '../spec/named';
import { carSpecSchema } from '../spec/schema/carSpec';
import { metaOf } from '../spec/schema/field';
import { bare, child } from '../spec/schemaWalk';
import type { Change, ChangeGroup, ChangeKind } from './comparison';
import { asWords, isQuantity, nameOf, type Speech, sameAmount, sayAmounts, sayValue } from './said';

/** Told in a way of their own, or of the file and not of the car. */
const toldElsewhere: ReadonlySet<string> = new Set(['kettlebook', 'issue', 'lines', 'changes']);

const partSections: ReadonlySet<string> = new Set(kindsAndSections.map(([, section]) => section));
const singles: ReadonlySet<string> = new Set(singleParts);

/** How a valve is worked and how it stands. */
const valveFields: ReadonlySet<string> = new Set(['opens', 'turns', 'first-crack', 'parked', 'kind']);

/** Every difference of parts and values, in the order of the newer spec; what is gone comes where it stood. */
export function changedValues(speech: Speech): readonly Change[] {
  const { before, after } = speech;
  return keysOf(after.spec, before.spec)
    .filter((section) => !toldElsewhere.has(section))
    .flatMap((section) => {
      const schema = child(carSpecSchema, section, after.spec);
      const [was, is] = [at(before.spec, section), at(after.spec, section)];
      if (partSections.has(section)) return changedParts(section, schema, was, is, speech);
      if (singles.has(section) && (was === undefined) !== (is === undefined))
        return [wholePart(section, was === undefined ? 'added' : 'removed', speech)];
      const owner = singles.has(section) ? nameOf(section, speech) : asWords(section, speech);
      return differences({ owner, group: 'value', speech }, schema, was, is, []);
    });
}

function changedParts(
  section: string,
  schema: z.ZodType | undefined,
  was: unknown,
  is: unknown,
  speech: Speech,
): readonly Change[] {
  return keysOf(is, was).flatMap((id) => {
    const [old, now] = [at(was, id), at(is, id)];
    if (old === undefined) return [wholePart(id, 'added', speech)];
    if (now === undefined) return [wholePart(id, 'removed', speech)];
    const walk = { owner: nameOf(id, speech), group: 'value' as const, valve: section === 'valves', speech };
    return differences(walk, schema === undefined ? undefined : child(schema, id, is), old, now, []);
  });
}

/** A part that came or went, with its tag and its place. */
function wholePart(id: string, kind: 'added' | 'removed', speech: Speech): Change {
  const car = kind === 'added' ? speech.after : speech.before;
  const part = car.parts.get(id);
  const place = part?.place === undefined ? undefined : car.places.get(part.place)?.name;
  const facts = [part?.tag, place].filter((fact) => fact !== undefined).join(', ');
  const text = facts === '' ? 'there' : facts;
  return {
    group: 'part',
    kind,
    what: part?.name ?? nameOf(id, speech),
    was: kind === 'removed' ? text : '',
    is: kind === 'added' ? text : '',
  };
}

interface Walk {
  /** Whose values these are, in words. */
  readonly owner: string;
  readonly group: ChangeGroup;
  readonly valve?: boolean;
  readonly speech: Speech;
}

type Fields = readonly (string | number)[];

function differences(
  walk: Walk,
  schema: z.ZodType | undefined,
  was: unknown,
  is: unknown,
  fields: Fields,
): readonly Change[] {
  if (was === undefined && is === undefined) return [];
  if (isQuantity(was) && isQuantity(is)) {
    if (sameAmount(was, is)) return [];
    return [change(walk, fields, ...sayAmounts(was, is, walk.speech))];
  }
  if (Array.isArray(was) || Array.isArray(is))
    return changedList(walk, schema, listOf(was), listOf(is), fields);
  if (isGroup(was) || isGroup(is))
    return keysOf(is, was).flatMap((key) =>
      differences(walk, childOf(schema, key, is ?? was), at(was, key), at(is, key), [...fields, key]),
    );
  if (was === is) return [];
  const meta = schema === undefined ? {} : metaOf(bare(schema));
  const field = String(fields.at(-1) ?? '');
  const say = (value: unknown) => (value === undefined ? '' : sayValue(value, field, meta, walk.speech));
  return [change(walk, fields, say(was), say(is))];
}

/** Lists of sentences and names: what came, what went. Lists of entries: each by what it is about, or by its place. */
function changedList(
  walk: Walk,
  schema: z.ZodType | undefined,
  was: readonly unknown[],
  is: readonly unknown[],
  fields: Fields,
): readonly Change[] {
  const element = childOf(schema, 0, is.length > 0 ? is : was);
  const [old, now] = [byTopic(was), byTopic(is)];
  if (old === undefined || now === undefined) {
    const most = Math.max(was.length, is.length);
    return Array.from({ length: most }, (_, index) =>
      differences(walk, element, was[index], is[index], [...fields, index]),
    ).flat();
  }
  const topics = [...new Set([...now.keys(), ...old.keys()])];
  return topics.flatMap((topic) => {
    const [before, after] = [old.get(topic), now.get(topic)];
    if (isGroup(before) && isGroup(after))
      return differences(walk, element, before, after, [...fields, sayTopic(after, element, walk.speech)]);
    if (before !== undefined && after !== undefined) return [];
    const meta = element === undefined ? {} : metaOf(bare(element));
    const say = (entry: unknown) => (entry === undefined ? '' : sayEntry(entry, element, meta, walk.speech));
    return [change(walk, fields, say(before), say(after))];
  });
}

/** Entries by what they are about: a single value by itself, anything larger by its first field. Nothing if two are about the same. */
function byTopic(list: readonly unknown[]): ReadonlyMap<string, unknown> | undefined {
  const topics = new Map(list.map((entry) => [topicOf(entry), entry] as const));
  return topics.size === list.length ? topics : undefined;
}

function topicOf(entry: unknown): string {
  if (isQuantity(entry)) return `${entry.dimension} ${entry.si.toPrecision(12)}`;
  if (typeof entry !== 'object' || entry === null) return String(entry);
  return topicOf(Object.values(entry)[0]);
}

function sayTopic(entry: object, schema: z.ZodType | undefined, speech: Speech): string {
  const [[key, value] = ['', undefined]] = Object.entries(entry);
  const field = childOf(schema, key, entry);
  return sayValue(value, key, field === undefined ? {} : metaOf(bare(field)), speech);
}

/** A whole entry: its values one after the other. */
function sayEntry(
  entry: unknown,
  schema: z.ZodType | undefined,
  meta: Parameters<typeof sayValue>[2],
  speech: Speech,
): string {
  if (!isGroup(entry)) return sayValue(entry, '', meta, speech);
  return Object.entries(entry)
    .map(([key, value]) => {
      const field = childOf(schema, key, entry);
      return sayEntry(value, field, field === undefined ? {} : metaOf(bare(field)), speech);
    })
    .join(', ');
}

function change(walk: Walk, fields: Fields, was: string, is: string): Change {
  const [first = ''] = fields;
  const what = [walk.owner, fields.map((field) => fieldWords(field, walk.speech)).join(' ')].filter(
    (each) => each !== '',
  );
  const isValve = walk.valve === true && valveFields.has(String(first));
  return {
    group: isValve ? 'valve' : isLabel(first) || isPlace(first) ? 'part' : walk.group,
    kind: kindOf(first, was, is),
    what: what.join(': '),
    was,
    is,
  };
}

function kindOf(field: string | number, was: string, is: string): ChangeKind {
  if (was === '') return 'added';
  if (is === '') return 'removed';
  if (isLabel(field)) return 'renamed';
  return isPlace(field) ? 'moved' : 'changed';
}

function isLabel(field: string | number): boolean {
  return field === 'name' || field === 'tag';
}

function isPlace(field: string | number): boolean {
  return field === 'place' || field === 'at';
}

function fieldWords(field: string | number, speech: Speech): string {
  return typeof field === 'number' ? `${field + 1}` : asWords(field, speech);
}

function isGroup(value: unknown): value is object {
  return typeof value === 'object' && value !== null && !isQuantity(value) && !Array.isArray(value);
}

function listOf(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}

function at(value: unknown, key: string): unknown {
  return typeof value === 'object' && value !== null && Object.hasOwn(value, key)
    ? Object.getOwnPropertyDescriptor(value, key)?.value
    : undefined;
}

/** The keys of both, those of the first in its order, then those it has not got. */
function keysOf(first: unknown, second: unknown): readonly string[] {
  const keys = (value: unknown) => (isGroup(value) ? Object.keys(value) : []);
  return [...new Set([...keys(first), ...keys(second)])];
}

function childOf(
  schema: z.ZodType | undefined,
  part: string | number,
  value: unknown,
): z.ZodType | undefined {
  return schema === undefined ? undefined : child(schema, part, value);
}
