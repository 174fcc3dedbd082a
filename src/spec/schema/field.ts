/**
 * The small pieces every part of the spec's schema is made of.
 *
 * Each field carries its own explanation and an example, from which the editor schema and
 * `docs/car-spec.md` are made; references to other parts carry what they may name, so that
 * one walk over the schema checks them all.
 */
import * as z from 'zod';
import type { DiagnosticCode } from '../../diagnostic/catalogue';
import type { Dimension } from '../../quantity/dimension';
import { parseQuantity } from '../../quantity/parse';
import type { Quantity } from '../../quantity/quantity';

/** The kinds of thing a reference in the spec can name. `outside` is where lines end, `content` what every car has in its tanks. */
export const partKinds = [
  'place',
  'liquid',
  'fuel',
  'tank',
  'boiler',
  'superheater',
  'feed-heater',
  'condenser',
  'burner',
  'vaporizer',
  'engine',
  'pump',
  'valve',
  'device',
  'gauge',
  'lock',
  'control',
  'fitting',
  'equipment',
  'outside',
  'content',
] as const;

/** One kind of thing a reference can name. */
export type PartKind = (typeof partKinds)[number];

/** What a field's definition says of itself beyond its type. */
export interface FieldMeta {
  /** What the field means, in a sentence or two. */
  description?: string;
  /** An example as it would stand in the file. */
  sample?: string;
  /** The field holds a quantity of this dimension. */
  dimension?: Dimension;
  /** The field names another part, of one of these kinds. */
  names?: readonly PartKind[];
}

/** What a schema says of itself. */
export function metaOf(schema: z.ZodType): FieldMeta {
  const { description, sample, dimension, names: kinds } = (schema.meta() ?? {}) as FieldMeta;
  return {
    ...(description === undefined ? {} : { description }),
    ...(sample === undefined ? {} : { sample }),
    ...(dimension === undefined ? {} : { dimension }),
    ...(kinds === undefined ? {} : { names: kinds }),
  };
}

/**
 * A schema, with what it says of itself. It has to be a new one: this is noted of the very schema and not, as `meta`
 * would, of a copy, which takes as long to make as the schema.
 */
function saying<T extends z.ZodType>(schema: T, meta: FieldMeta): T {
  z.globalRegistry.add(schema, { ...meta });
  return schema;
}

/** A text in one line, not empty. */
function line() {
  return z.string().check(z.trim(), z.minLength(1));
}

/** Facts a custom check hands to the problem writer. */
export interface CheckFacts {
  code: DiagnosticCode;
  found: string;
  expected: string;
  mend: string;
}

/** What a quantity may be at the least: more than nothing, nothing, or anything (also below nothing). */
export type Least = 'above-zero' | 'zero' | 'any';

/** A quantity with its unit, such as `25 US gal`. A number without a unit is refused, and so is one under its least. */
export function measure<D extends Dimension>(
  dimension: D,
  description: string,
  sample: string,
  least: Least = 'above-zero',
) {
  return saying(
    z.unknown().transform((written, context): Quantity<D> => {
      if (written === undefined || typeof written === 'object') {
        context.issues.push({
          code: 'invalid_type',
          expected: 'string',
          input: written,
          message: 'not an amount',
        });
        return z.NEVER;
      }
      const outcome = parseQuantity(typeof written === 'string' ? written : String(written), dimension);
      if (outcome.ok && isEnough(outcome.quantity.si, least)) return outcome.quantity;
      if (outcome.ok) {
        const expected = least === 'zero' ? 'nothing less than 0' : 'more than 0';
        const facts: CheckFacts = {
          code: 'spec-below-zero',
          found: outcome.quantity.written,
          expected,
          mend: 'measure again, and mind the sign',
        };
        context.issues.push({ code: 'custom', input: written, message: expected, params: { facts } });
        return z.NEVER;
      }
      const facts: CheckFacts = {
        code: 'spec-quantity',
        found: outcome.found,
        expected: outcome.expected,
        mend: outcome.mend,
      };
      context.issues.push({ code: 'custom', input: written, message: outcome.expected, params: { facts } });
      return z.NEVER;
    }),
    { description, sample, dimension },
  );
}

/** A short text in one line, not empty. */
export function words(description: string, sample: string) {
  return saying(line(), { description, sample });
}

/** A list of short texts. */
export function sentences(description: string, sample: string) {
  return saying(z.array(line()), { description, sample });
}

/** A whole number from `least` up. */
export function count(least: number, description: string, sample: string) {
  return saying(z.number().int().min(least), { description, sample });
}

/** One of a few fixed words. */
export function choice<const T extends readonly [string, ...string[]]>(
  options: T,
  description: string,
  sample: string,
) {
  return saying(z.enum(options), { description, sample });
}

/** Yes or no, written `true` or `false`. */
export function yesNo(description: string) {
  return saying(z.boolean(), { description, sample: 'true' });
}

/** A date written year-month-day. */
export function date(description: string, sample = '2026-03-14') {
  return saying(z.iso.date(), { description, sample });
}

/** The name of another part of the car, as its key stands in the file. */
export function names(kinds: readonly PartKind[], description: string, sample: string) {
  return saying(z.string(), { description, sample, names: kinds });
}

/** A key: lower-case words joined by hyphens. `constructor` is not one, because every plain object has it already. */
export const key = z.string().regex(/^(?!constructor$)[a-z][a-z0-9]*(-[a-z0-9]+)*$/);

/** A list of parts by key. */
export function keyed<T extends z.ZodType>(entry: T, description: string) {
  return saying(z.record(key, entry), { description });
}

function isEnough(si: number, least: Least): boolean {
  if (least === 'any') return true;
  return least === 'zero' ? si >= 0 : si > 0;
}
