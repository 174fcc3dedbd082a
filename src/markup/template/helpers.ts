/**
 * Helpers: the functions a template may call.
 */

/** A helper takes values and gives a value. What it gives is text like any other value: it cannot make markup. */
export type Helper = (values: readonly unknown[], named: Readonly<Record<string, unknown>>) => unknown;

/** Helpers by name. */
export type Helpers = Readonly<Record<string, Helper>>;

/** What counts as "there is one" in `if`: anything but false, nothing, empty text, zero and an empty list. */
export function holds(value: unknown): boolean {
  return Array.isArray(value) ? value.length > 0 : Boolean(value);
}

/** The helpers every template has. */
export const builtInHelpers: Helpers = {
  lookup: ([group, key]) => {
    if (typeof group === 'object' && group !== null && Object.hasOwn(group, String(key))) {
      return (group as Readonly<Record<string, unknown>>)[String(key)];
    }
    throw new Error(`there is no \`${String(key)}\` in it`);
  },
  eq: ([a, b]) => a === b,
  not: ([a]) => !holds(a),
  and: (values) => values.every(holds),
  or: (values) => values.some(holds),
};
