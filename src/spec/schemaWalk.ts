/**
 * Going through the schema and the data together: one walk serves the checks of references, the problem
 * writer and the reference pages.
 */
import * as z from 'zod';
import type { SpecPath } from './source';

/** Take off `optional` and the like, down to what the field really is. */
export function bare(schema: z.ZodType): z.ZodType {
  let inner: unknown = schema;
  while (inner instanceof z.ZodOptional || inner instanceof z.ZodNullable || inner instanceof z.ZodDefault)
    inner = inner.def.innerType;
  return asType(inner);
}

/** True for a field that must be there. */
export function isRequired(schema: z.ZodType | undefined): boolean {
  return schema !== undefined && !(schema instanceof z.ZodOptional);
}

/** Every field of an object schema, or none for other schemas. */
export function fieldsOf(schema: z.ZodType): readonly (readonly [string, z.ZodType])[] {
  const inner = bare(schema);
  return inner instanceof z.ZodObject
    ? Object.entries(inner.shape).map(([name, field]) => [name, asType(field)] as const)
    : [];
}

/** The schema of what stands under `part` of a value with this schema. `value` decides between the kinds of a union. */
export function child(schema: z.ZodType, part: string | number, value: unknown): z.ZodType | undefined {
  const inner = choose(bare(schema), value);
  if (inner instanceof z.ZodObject) {
    const field: unknown = Object.getOwnPropertyDescriptor(inner.shape, part)?.value;
    return field === undefined ? undefined : asType(field);
  }
  if (inner instanceof z.ZodRecord) return asType(inner.def.valueType);
  if (inner instanceof z.ZodArray) return asType(inner.def.element);
  return undefined;
}

/** For a union told apart by `kind`: the member that `value` says it is; the union itself if it says none of them. */
export function choose(schema: z.ZodType, value: unknown): z.ZodType {
  if (!(schema instanceof z.ZodDiscriminatedUnion)) return schema;
  const kind: unknown =
    typeof value === 'object' && value !== null
      ? Object.getOwnPropertyDescriptor(value, 'kind')?.value
      : undefined;
  for (const option of schema.options) {
    const member = asType(option);
    if (!(member instanceof z.ZodObject)) continue;
    const field: unknown = member.shape.kind;
    if (field instanceof z.ZodLiteral && field.value === kind) return member;
  }
  return schema;
}

/** The schema at the end of a path. With `stopAtUnion`, a union there is returned whole. */
export function schemaAt(
  root: z.ZodType,
  path: SpecPath,
  data: unknown,
  how: { stopAtUnion?: boolean } = {},
): z.ZodType | undefined {
  let schema: z.ZodType | undefined = root;
  let value = data;
  for (const part of path) {
    if (schema === undefined) return undefined;
    schema = child(schema, part, value);
    value =
      typeof value === 'object' && value !== null
        ? Object.getOwnPropertyDescriptor(value, part)?.value
        : undefined;
  }
  if (schema === undefined) return undefined;
  return how.stopAtUnion === true ? bare(schema) : choose(bare(schema), value);
}

/** Visit every value of `data` that the schema knows, parents first. */
export function visit(
  schema: z.ZodType,
  value: unknown,
  path: SpecPath,
  each: (schema: z.ZodType, value: unknown, path: SpecPath) => void,
): void {
  if (value === undefined) return;
  each(bare(schema), value, path);
  if (typeof value !== 'object' || value === null) return;
  const entries: readonly (readonly [string | number, unknown])[] = Array.isArray(value)
    ? value.map((item, index) => [index, item] as const)
    : Object.entries(value);
  for (const [part, inner] of entries) {
    const next = child(schema, part, value);
    if (next !== undefined) visit(next, inner, [...path, part], each);
  }
}

function asType(schema: unknown): z.ZodType {
  if (schema instanceof z.ZodType) return schema;
  throw new TypeError('the spec schema holds something that is not a schema');
}
