/** Looking things up by a key that a keeper wrote, which may be any word at all. */

/** The entry a record holds of its own under `id`; never something every object inherits, such as `constructor`. */
export function entryOf<T>(record: Readonly<Record<string, T>> | undefined, id: string): T | undefined {
  return record !== undefined && Object.hasOwn(record, id) ? record[id] : undefined;
}

/** Keys and values, as plain data has them. */
export function isMapping(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** What stands in plain data at the end of a path, if anything does. */
export function valueAt(data: unknown, path: readonly (string | number)[]): unknown {
  let here = data;
  for (const part of path) {
    if (typeof here !== 'object' || here === null) return undefined;
    here = Object.getOwnPropertyDescriptor(here, part)?.value;
  }
  return here;
}
