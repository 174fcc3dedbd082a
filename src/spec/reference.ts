/**
 * `docs/car-spec.md`: how a spec is written. The opening pages are written by hand; the tables of fields and of units
 * are made from the schema and the units themselves, so that they cannot say anything else than the program does.
 */
import * as z from 'zod';
import type { Dimension } from '../quantity/dimension';
import { units } from '../quantity/units';
import { dimensionWords } from '../quantity/wording';
import { oneOfKinds } from './references';
import { carSpecSchema } from './schema/carSpec';
import { type FieldMeta, metaOf } from './schema/field';
import { bare, fieldsOf, isRequired } from './schemaWalk';

/** Marks in the hand-written pages that the tables take the place of. */
export const marks = { units: '<!-- units -->', fields: '<!-- fields -->' } as const;

/** The whole page. `head` is the hand-written part, with the marks in it. */
export function carSpecReference(head: string): string {
  for (const mark of Object.values(marks)) {
    if (head.split(mark).length !== 2) throw new Error(`the opening pages must hold ${mark} once`);
  }
  return head.replace(marks.units, () => unitTable()).replace(marks.fields, () => sections());
}

/** Every dimension a spec has a field of, with its units. */
function unitTable(): string {
  const used = new Set<Dimension>();
  const look = (schema: z.ZodType) => {
    const { dimension } = metaOf(bare(schema));
    if (dimension !== undefined) used.add(dimension);
    for (const each of partsOf(schema)) look(each);
  };
  look(carSpecSchema);
  return table(
    ['To write', 'Units', 'Such as'],
    [...used].map((dimension) => [
      dimensionWords[dimension].name,
      codes(units[dimension].map((unit) => unit.name)),
      codes(dimensionWords[dimension].examples),
    ]),
  );
}

/** The schemas right under a schema. */
function partsOf(schema: z.ZodType): readonly z.ZodType[] {
  const inner = bare(schema);
  if (inner instanceof z.ZodObject) return fieldsOf(inner).map(([, field]) => field);
  if (inner instanceof z.ZodArray) return [elementOf(inner)];
  if (inner instanceof z.ZodRecord) return [entryOf(inner)];
  if (inner instanceof z.ZodDiscriminatedUnion) return membersOf(inner);
  return [];
}

function sections(): string {
  return fieldsOf(carSpecSchema)
    .map(([name, field]) => section(name, field))
    .join('\n\n');
}

function section(name: string, field: z.ZodType): string {
  const meta = metaOf(bare(field));
  const rows = rowsUnder(field);
  const about =
    `${meta.description ?? ''} ${isRequired(field) ? 'Must be there.' : 'May be left out.'}`.trim();
  const form = formOf(field);
  const single =
    rows.length === 0 ? `\n\n${capital(form)}. Such as ${code(`${name}: ${meta.sample ?? ''}`)}.` : '';
  const intro = rows.length > 0 && form !== 'keys and values' ? `\n\n${capital(form)}:` : '';
  const fields =
    rows.length === 0 ? '' : `\n\n${table(['Key', 'Needed', 'Form', 'Meaning', 'Such as'], rows)}`;
  return `### ${code(name)}\n\n${about}${single}${intro}${fields}`;
}

type Row = readonly string[];

/** What stands before the key of a row: lists it is in, mappings it is in, and the kind it is for. */
interface Before {
  readonly lists: string;
  readonly mappings: string;
  readonly kind: string;
}

/** A row for each field under a schema, fields of fields after the field they belong to. */
function rowsUnder(
  schema: z.ZodType,
  before: Before = { lists: '', mappings: '', kind: '' },
): readonly Row[] {
  const inner = bare(schema);
  if (inner instanceof z.ZodArray) return rowsUnder(elementOf(inner), before);
  if (inner instanceof z.ZodRecord) return rowsUnder(entryOf(inner), before);
  if (inner instanceof z.ZodDiscriminatedUnion) {
    return membersOf(inner).flatMap((member) => rowsUnder(member, { ...before, kind: kindOf(member) }));
  }
  return fieldsOf(inner).flatMap(([name, field]): readonly Row[] => {
    if (before.kind !== '' && name === 'kind') return [];
    const path = `${before.mappings}${name}`;
    const within = inList(field)
      ? { ...before, lists: `${before.lists}${code(path)} each: `, mappings: '' }
      : { ...before, mappings: `${path}.` };
    return [fieldRow(path, field, before), ...rowsUnder(field, within)];
  });
}

function fieldRow(path: string, field: z.ZodType, { lists, kind }: Before): Row {
  const meta = metaOf(bare(field));
  return [
    `${lists}${code(path)}${kind === '' ? '' : ` if ${code(kind)}`}`,
    isRequired(field) ? 'yes' : '',
    formOf(field),
    meta.description ?? '',
    meta.sample === undefined ? '' : code(meta.sample),
  ];
}

/** What is written there, in words. */
function formOf(schema: z.ZodType): string {
  const inner = bare(schema);
  const meta: FieldMeta = metaOf(inner);
  if (meta.dimension !== undefined) return dimensionWords[meta.dimension].name;
  if (meta.names !== undefined) return oneOfKinds(meta.names);
  if (inner instanceof z.ZodEnum) return codes(inner.options.map(String));
  if (inner instanceof z.ZodLiteral) return code(String(inner.value));
  if (inner instanceof z.ZodBoolean) return codes(['true', 'false']);
  if (inner instanceof z.ZodNumber) return inner.format === 'safeint' ? 'a whole number' : 'a number';
  if (inner instanceof z.ZodISODate) return 'a date, year-month-day';
  if (inner instanceof z.ZodArray) return `a list; each ${formOf(elementOf(inner))}`;
  if (inner instanceof z.ZodRecord) return 'one entry or more, each under a key of its own';
  if (inner instanceof z.ZodDiscriminatedUnion) {
    return `keys and values; ${code('kind')} is ${codes(membersOf(inner).map(kindOf))}`;
  }
  return inner instanceof z.ZodObject ? 'keys and values' : 'text';
}

function inList(schema: z.ZodType): boolean {
  const inner = bare(schema);
  return inner instanceof z.ZodArray || inner instanceof z.ZodRecord;
}

function elementOf(schema: z.ZodArray): z.ZodType {
  return schema.element as z.ZodType;
}

function entryOf(schema: z.ZodRecord): z.ZodType {
  return schema.valueType as z.ZodType;
}

function membersOf(schema: z.ZodDiscriminatedUnion): readonly z.ZodType[] {
  return schema.options as readonly z.ZodType[];
}

function kindOf(member: z.ZodType): string {
  const kind = fieldsOf(member).find(([name]) => name === 'kind')?.[1];
  return kind instanceof z.ZodLiteral ? String(kind.value) : '';
}

function table(head: Row, rows: readonly Row[]): string {
  const line = (cells: Row) => `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
  return [line(head), `|${head.map(() => '---|').join('')}`, ...rows.map(line)].join('\n');
}

function code(text: string): string {
  return `\`${text}\``;
}

function codes(texts: readonly string[]): string {
  return texts.map(code).join(', ');
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
