/**
 * The liquids that blends are made of: those that come with the program, and a keeper's own.
 */
import * as z from 'zod';
import { bad, good, type Outcome } from '../../diagnostic/diagnostic';
import { inForm } from '../../spec/inForm';
import { problemsOf } from '../../spec/problems';
import { keyed } from '../../spec/schema/field';
import { liquid as liquidSchema } from '../../spec/schema/stores';
import { readSource } from '../../spec/source';

/** A liquid fuel as it comes in the can; densities at about 15 °C. */
export interface Liquid {
  /** The key it is named by. */
  readonly key: string;
  readonly name: string;
  readonly densityKgPerM3: number;
  /** With the water of burning condensed, J/kg. */
  readonly higherHeatingValue: number;
  /** With the water of burning gone as vapour, J/kg. */
  readonly lowerHeatingValue: number;
  /** Closed cup, the lowest that is usual. */
  readonly flashPointK: number;
  readonly startsBoilingK: number;
  readonly source: string;
}

/** Liquids by key. */
export type Liquids = ReadonlyMap<string, Liquid>;

const fileSchema = z.strictObject({ liquids: keyed(liquidSchema, 'Liquids by key.') });

/** Read a file of liquids (`shared/liquids.yaml`). Every problem in it is reported, each at its line. */
export function readLiquids(yamlText: string, file: string): Outcome<Liquids> {
  const source = readSource(yamlText, file);
  if (!source.ok) return source;
  const parsed = inForm(source.value, fileSchema, 'liquids');
  if (!parsed.success) return bad(problemsOf(parsed.error.issues, source.value, fileSchema));
  const entries = Object.entries(parsed.data.liquids);
  return good(new Map(entries.map(([key, written]) => [key, liquidOf(key, written)])));
}

/** A liquid as a spec or a file of liquids writes it. */
export function liquidOf(key: string, written: z.infer<typeof liquidSchema>): Liquid {
  return {
    key,
    name: written.name,
    densityKgPerM3: written.density.si,
    higherHeatingValue: written['higher-heating-value'].si,
    lowerHeatingValue: written['lower-heating-value'].si,
    flashPointK: written['flash-point'].si,
    startsBoilingK: written['starts-boiling'].si,
    source: written.source,
  };
}
