/** Keys that were changed in the file and nothing else: the part is still the same part. */
import * as z from 'zod';
import type { Car } from '../car/car';
import type { LoadedSpec } from '../spec/load';
import { namedThings } from '../spec/named';
import { carSpecSchema } from '../spec/schema/carSpec';
import { metaOf } from '../spec/schema/field';
import { bare, child } from '../spec/schemaWalk';

type Spec = LoadedSpec['spec'];

/** Old key → new key, for parts that kept their kind and their name or tag but have another key now. */
export type NewKeys = ReadonlyMap<string, string>;

/** Find them. A name or tag belongs to one part of a car only, so that the match is certain. */
export function newKeys(before: Spec, after: Spec): NewKeys {
  const [old, now] = [namedThings(before), namedThings(after)];
  const stays = (id: string, things: typeof old) => things.some((thing) => thing.id === id);
  const gone = old.filter(({ id }) => !stays(id, now));
  const come = now.filter(({ id }) => !stays(id, old));
  return new Map(
    gone.flatMap((thing) => {
      const heir = come.find(
        ({ kind, name, tag }) =>
          kind === thing.kind &&
          ((name !== undefined && name === thing.name) || (tag !== undefined && tag === thing.tag)),
      );
      return heir === undefined ? [] : [[thing.id, heir.id] as const];
    }),
  );
}

/** The older spec with the newer keys, wherever they stand. */
export function withKeys(spec: Spec, keys: NewKeys): Spec {
  return keys.size === 0 ? spec : (rekeyed(spec, carSpecSchema, keys) as Spec);
}

/** The older car with the newer keys, as far as a comparison looks at it. */
export function carWithKeys(car: Car, keys: NewKeys): Car {
  const to = (id: string) => keys.get(id) ?? id;
  return {
    ...car,
    spec: withKeys(car.spec, keys),
    parts: new Map([...car.parts.values()].map((part) => [to(part.id), { ...part, id: to(part.id) }])),
    places: new Map([...car.places.values()].map((place) => [to(place.id), { ...place, id: to(place.id) }])),
  };
}

function rekeyed(value: unknown, schema: z.ZodType | undefined, keys: NewKeys): unknown {
  if (schema === undefined) return value;
  if (typeof value === 'string')
    return metaOf(bare(schema)).names === undefined ? value : (keys.get(value) ?? value);
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value))
    return value.map((each, index) => rekeyed(each, child(schema, index, value), keys));
  const isKeyed = bare(schema) instanceof z.ZodRecord;
  return Object.fromEntries(
    Object.entries(value).map(([key, each]) => [
      isKeyed ? (keys.get(key) ?? key) : key,
      rekeyed(each, child(schema, key, value), keys),
    ]),
  );
}
