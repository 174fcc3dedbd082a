/**
 * The spec's schema in the form editors read (JSON Schema, draft 2020-12), so that they can complete keys, show what
 * a field means and mark what is misspelt while the keeper types.
 *
 * It knows fields, choices and kinds of value. Units, references and everything that needs the whole car are for the
 * loader.
 */
import { parse } from 'yaml';
import * as z from 'zod';
import { dimensionWords } from '../quantity/wording';
import { oneOfKinds } from './references';
import { carSpecSchema } from './schema/carSpec';
import { type FieldMeta, metaOf } from './schema/field';

/** A JSON Schema, or a piece of one. */
export type JsonSchema = z.core.JSONSchema.BaseSchema;

/** The schema for editors, as data. */
export function specJsonSchema(): JsonSchema {
  const { $schema, ...rest } = z.toJSONSchema(carSpecSchema, {
    target: 'draft-2020-12',
    io: 'input',
    unrepresentable: 'any',
    override: ({ zodSchema, jsonSchema }) => {
      // every schema of ours is of the classic kind; the core kind is what the library hands over
      if (zodSchema instanceof z.ZodType) explain(jsonSchema, metaOf(zodSchema));
    },
  });
  return {
    $schema: $schema ?? 'https://json-schema.org/draft/2020-12/schema',
    title: 'Kettlebook spec, version 1',
    description: 'One antique steam car, from which its papers are made. See docs/car-spec.md.',
    ...rest,
  };
}

/** The schema for editors, as the text of its file. */
export function specJsonSchemaText(): string {
  return `${JSON.stringify(specJsonSchema(), null, 2)}\n`;
}

/** Put what a field says of itself where editors look for it. */
function explain(schema: JsonSchema, meta: FieldMeta): void {
  const { sample, dimension, names } = meta;
  if (schema.maximum === Number.MAX_SAFE_INTEGER) delete schema.maximum;
  if (schema.format === 'date') schema.pattern = '^\\d{4}-\\d{2}-\\d{2}$';
  delete schema.sample;
  delete schema.dimension;
  delete schema.names;
  const words = [
    ...(meta.description === undefined ? [] : [meta.description]),
    ...(names === undefined ? [] : [`Names ${oneOfKinds(names)}.`]),
  ];
  if (dimension !== undefined) {
    schema.type = dimension === 'share' ? ['string', 'number'] : 'string';
    words.push(`Write ${dimensionWords[dimension].name} with its unit.`);
  }
  if (words.length > 0) schema.description = words.join(' ');
  if (sample !== undefined) {
    const value: unknown = dimension === undefined ? parse(sample) : sample;
    schema.examples = [value as z.core.JSONSchema.JSONSchema['default']];
  }
}
