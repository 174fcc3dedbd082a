/** How values of a spec are said in a comparison: with the car's own names, in its keeper's units. */
import type { Car } from '../car/car';
import type { Language } from '../language/language';
import type { Words } from '../language/languageForm';
import type { Phrases } from '../paper/phrase';
import type { Quantity } from '../quantity/quantity';
import type { FieldMeta } from '../spec/schema/field';

/** What saying needs to know: both cars, because a name that is gone is only in the older. */
export interface Speech {
  readonly before: Car;
  readonly after: Car;
  readonly phrases: Phrases;
  readonly words: Words;
  readonly language: Language;
}

/** An amount as the schema reads it. */
export function isQuantity(value: unknown): value is Quantity {
  return typeof value === 'object' && value !== null && 'si' in value && 'dimension' in value;
}

/**
 * Whether two amounts are one and the same: equal in whatever units they were written, and both measured or both
 * estimated. Units are turned into SI with a relative error of some 1e-15.
 */
export function sameAmount(a: Quantity, b: Quantity): boolean {
  const scale = Math.max(Math.abs(a.si), Math.abs(b.si));
  return a.estimated === b.estimated && Math.abs(a.si - b.si) <= scale * 1e-12;
}

/** The name of a part, place, fuel or liquid by its key; the new car's name for it if both have it. */
export function nameOf(id: string, { before, after, language }: Speech): string {
  for (const car of [after, before]) {
    const name =
      car.parts.get(id)?.name ??
      car.places.get(id)?.name ??
      own(car.spec.fuels, id)?.name ??
      own(car.spec.liquids, id)?.name;
    if (name !== undefined) return name;
  }
  return asWords(id, { language });
}

/** A key of the spec as words, in the English of the papers: `fill-to` is `fill to`, `tyres` is `tires` in America. */
export function asWords(key: string | number, { language }: Pick<Speech, 'language'>): string {
  return language.texts.say(String(key).replaceAll('-', ' '));
}

/** A single value in words. `field` is the key it stands under, `meta` what the schema says of it. */
export function sayValue(value: unknown, field: string, meta: FieldMeta, speech: Speech): string {
  if (isQuantity(value)) return sayAmount(value, speech);
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value !== 'string') return String(value);
  if (meta.names !== undefined) return nameOf(value, speech);
  const { opens, parked, reach, read } = speech.words;
  const lists: Readonly<Record<string, Readonly<Record<string, string>>>> = { opens, parked, reach, read };
  return own(own(lists, field), value) ?? value;
}

/** An amount as the papers print it; turns of a handle in halves, quarters and so on. */
function sayAmount(amount: Quantity, { phrases }: Speech): string {
  return phrases.both(amount, amount.dimension === 'turns' ? { fractions: 16 } : {});
}

/** Two amounts in words; as they were written, where print would round both to the same. */
export function sayAmounts(was: Quantity, is: Quantity, speech: Speech): readonly [string, string] {
  const [old, now] = [sayAmount(was, speech), sayAmount(is, speech)];
  return old === now ? [was.written, is.written] : [old, now];
}

function own<T>(record: Readonly<Record<string, T>> | undefined, key: string): T | undefined {
  return record !== undefined && Object.hasOwn(record, key) ? record[key] : undefined;
}
