/** What the schema says of itself: to keepers in the reference, to editors in JSON Schema. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import * as z from 'zod';
import { specJsonSchema } from '../../src/spec/jsonSchema';
import { carSpecReference, marks } from '../../src/spec/reference';
import { carSpecSchema } from '../../src/spec/schema/carSpec';
import { metaOf } from '../../src/spec/schema/field';
import { bare, fieldsOf, isRequired } from '../../src/spec/schemaWalk';
import { spoiled, tinySpec } from '../helpers/tinySpec';

const root = join(import.meta.dirname, '..', '..');
const read = (path: string) => readFileSync(join(root, path), 'utf8');

interface FieldOfSpec {
  readonly path: string;
  readonly schema: z.ZodType;
}

/** Every field of the spec, fields of fields too. */
function allFields(schema: z.ZodType = carSpecSchema, path = ''): readonly FieldOfSpec[] {
  const inner = bare(schema);
  const under: readonly (readonly [string, unknown])[] =
    inner instanceof z.ZodObject
      ? fieldsOf(inner)
      : inner instanceof z.ZodRecord
        ? [['*', inner.valueType]]
        : inner instanceof z.ZodArray
          ? [['*', inner.element]]
          : inner instanceof z.ZodDiscriminatedUnion
            ? inner.options.map((option, index) => [`#${index}`, option])
            : [];
  return under.flatMap(([name, field]) => {
    if (!(field instanceof z.ZodType)) throw new TypeError(`${path}.${name} is not a schema`);
    const here = `${path}.${name}`;
    return [...(/[*#]/.test(name) ? [] : [{ path: here, schema: field }]), ...allFields(field, here)];
  });
}

const fields = allFields();
const isSingle = ({ schema }: FieldOfSpec) =>
  !(bare(schema) instanceof z.ZodObject) &&
  !(bare(schema) instanceof z.ZodRecord) &&
  !(bare(schema) instanceof z.ZodArray) &&
  !(bare(schema) instanceof z.ZodDiscriminatedUnion) &&
  !(bare(schema) instanceof z.ZodLiteral);

describe('fields', () => {
  test('are many', () => {
    expect(fields.length).toBeGreaterThan(200);
  });

  test('that hold one value say what they mean, in a sentence, and give an example', () => {
    for (const field of fields.filter(isSingle)) {
      const { description, sample } = metaOf(bare(field.schema));
      expect(description, field.path).toMatch(/^[\p{Lu}`].*\.$/u);
      expect(sample, field.path).toBeTruthy();
    }
  });

  test('take their own example', () => {
    for (const { path, schema } of fields) {
      const { sample, names } = metaOf(bare(schema));
      if (sample === undefined) continue;
      const value: unknown = parse(sample);
      expect(schema.safeParse(value).error?.issues, `${path}: ${sample}`).toBeUndefined();
      if (names !== undefined) expect(sample, path).toMatch(/^[a-z][a-z0-9-]*$/);
    }
  });
});

describe('for editors', () => {
  const schema = specJsonSchema();
  const readBack = z.fromJSONSchema(schema as Parameters<typeof z.fromJSONSchema>[0]);
  const accepts = (text: string) => readBack.safeParse(parse(text)).success;

  test('takes the demo cars and the smallest spec', () => {
    const cars = readdirSync(join(root, 'cars')).filter((file) => file.endsWith('.yaml'));
    expect(cars.length).toBeGreaterThan(0);
    for (const file of cars)
      expect(readBack.safeParse(parse(read(`cars/${file}`))).error?.issues, file).toBeUndefined();
    expect(accepts(tinySpec)).toBe(true);
  });

  test.each([
    ['a misspelt key', spoiled(['wheelbase:', 'wheelbasis:'])],
    ['a missing key', spoiled(['  year: 1905\n', ''])],
    ['a missing quantity', spoiled(['  length: 9 ft\n', ''])],
    ['a word that is no choice', spoiled(['steering: tiller', 'steering: reins'])],
    ['a bare number for a quantity', spoiled(['capacity: 20 US gal', 'capacity: 20'])],
    ['a text for a number', spoiled(['seats: 2', 'seats: two'])],
    ['a key with capitals', spoiled(['  hand-brake:', '  Hand-Brake:'])],
    ['a date that is none', spoiled(['date: 2026-03-14', 'date: 14.3.2026'])],
    ['another version', spoiled(['kettlebook: 1', 'kettlebook: 2'])],
  ])('refuses %s', (_, text) => {
    expect(accepts(text)).toBe(false);
  });

  test('a share may be a plain number', () => {
    expect(accepts(spoiled(['share: 90 %', 'share: 0.9']))).toBe(true);
  });

  test('needs and allows the same keys as the loader', () => {
    const same = (json: unknown, zod: z.ZodType, path: string): void => {
      const inner = bare(zod);
      if (!(inner instanceof z.ZodObject)) return;
      const { properties, required, additionalProperties } = json as z.core.JSONSchema.ObjectSchema;
      const own = fieldsOf(inner);
      expect(Object.keys(properties ?? {}), path).toEqual(own.map(([name]) => name));
      expect(required ?? [], path).toEqual(
        own.filter(([, field]) => isRequired(field)).map(([name]) => name),
      );
      expect(additionalProperties, path).toBe(false);
      for (const [name, field] of own) same(properties?.[name], field, `${path}.${name}`);
    };
    same(schema, carSpecSchema, '');
  });

  test('says what each field means and shows an example, and nothing of our own making', () => {
    const text = JSON.stringify(schema);
    expect(text).not.toMatch(/"(?:sample|dimension|names)":/);
    expect(schema.properties?.boiler).toMatchObject({
      description: 'The boiler.',
      properties: {
        'working-pressure': {
          type: 'string',
          description: 'What it is run at. Write a pressure as a gauge shows it with its unit.',
          examples: ['500 psi gauge'],
        },
        'safety-valve': { description: 'The safety valve. Names the key of a device.' },
      },
    });
  });
});

describe('the reference', () => {
  const head = read('docs/car-spec.head.md');
  const page = carSpecReference(head);

  test('has a heading for every section, in the order of the schema', () => {
    const headings = [...page.matchAll(/^### `(.+)`$/gm)].map((match) => match[1]);
    expect(headings).toEqual(fieldsOf(carSpecSchema).map(([name]) => name));
  });

  test('has a row for every field', () => {
    const rows = page.split('\n').filter((line) => line.startsWith('| `') || line.startsWith('| each'));
    const singles = fields.filter((field) => isSingle(field) && field.path.split('.').length > 2);
    const words = singles.map(({ schema: field }) => metaOf(bare(field)).description ?? '');
    const untold = words.filter(
      (word) => !rows.some((row) => row.includes(`| ${word.replaceAll('|', '\\|')} |`)),
    );
    expect(untold).toEqual([]);
  });

  test('shows keys in lists, in mappings and of one kind', () => {
    expect(page).toContain(
      '| `filler.place` | yes | the key of a place | Where the filler is. | `rear-frame` |',
    );
    expect(page).toContain('| `stick` each: `depth` | yes | a length |');
    expect(page).toContain('| `shape.diameter` if `lying-cylinder` | yes | a length |');
  });

  test('its examples of lines and changes are well-formed', () => {
    const blocks = [...head.matchAll(/```yaml\n(.*?)```/gs)].map((match): unknown => parse(match[1] ?? ''));
    const withKey = (key: string) =>
      blocks.flatMap((block) =>
        block instanceof Object && key in block ? [Reflect.get(block, key) as unknown] : [],
      );
    expect(withKey('lines').map((lines) => carSpecSchema.shape.lines.safeParse(lines).success)).toEqual([
      true,
    ]);
    expect(
      withKey('changes').map((changes) => carSpecSchema.shape.changes.safeParse(changes).success),
    ).toEqual([true]);
  });

  test('the opening pages must leave room for the tables', () => {
    expect(() => carSpecReference(head.replace(marks.units, ''))).toThrow('<!-- units -->');
    expect(() => carSpecReference(`${head}${marks.fields}`)).toThrow('<!-- fields -->');
  });
});
