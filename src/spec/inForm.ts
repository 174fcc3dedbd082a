/** Holding what was read to its form. */
import type { z } from 'zod';
import { foundInForm, keptForm } from './kept';
import type { SpecSource } from './source';

/**
 * The data of a source in a form, or what is wrong with them. `name` is the form’s own and no other’s: what is known from
 * before of a text is known by it.
 */
export function inForm<T extends z.ZodType>(
  source: SpecSource,
  form: T,
  name: string,
): z.ZodSafeParseResult<z.output<T>> {
  const known = keptForm(name, source.text);
  if (known !== undefined) return { success: true, data: known.data as z.output<T> };
  const read = form.safeParse(source.data);
  if (read.success) foundInForm(name, source.text, read.data);
  return read;
}
