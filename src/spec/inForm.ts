/** Holding what was read to its form. */
import type * as z from 'zod';
import { foundInForm, keptForm } from './kept';
import type { SpecSource } from './source';

const named = new Map<string, z.ZodType>();

/**
 * The data of a source in a form, or what is wrong with them. `name` is the form’s own: what is known from before of a text
 * is known by it. Throws if another form has that name.
 */
export function inForm<T extends z.ZodType>(
  source: SpecSource,
  form: T,
  name: string,
): z.ZodSafeParseResult<z.output<T>> {
  const owner = named.get(name) ?? form;
  if (owner !== form) throw new Error(`two forms have the name “${name}”`);
  named.set(name, form);
  const known = keptForm(name, source.text);
  if (known !== undefined) return { success: true, data: known.data as z.output<T> };
  const read = form.safeParse(source.data);
  if (read.success) foundInForm(name, source.text, read.data);
  return read;
}
